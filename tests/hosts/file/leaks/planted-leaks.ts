import { strToU8, type Zippable } from "fflate";

export type Put = (
  part: string,
  from: string | RegExp,
  to: string,
) => Record<string, Uint8Array>;

const SHEET = "xl/worksheets/sheet1.xml";

/** One leak of each kind, and how its finding reads; `put` changes a part of the clean copy. */
export const plantedLeaks = (
  put: Put,
): readonly (readonly [string, () => Zippable, RegExp])[] => [
  [
    "a cell where nothing was planned",
    () =>
      put(
        SHEET,
        "</sheetData>",
        '<row r="9999"><c r="A9999"><v>7</v></c></row></sheetData>',
      ),
    /sheet1\.xml has in A9999/,
  ],
  [
    "the stored result of a formula",
    () => put(SHEET, /(<\/f><v>)[^<]+(<\/v>)/, "$124.78$2"),
    /sheet1\.xml holds the figure 24\.78/,
  ],
  [
    "a figure rounded to one decimal",
    () => put(SHEET, /(<\/f><v>)[^<]+(<\/v>)/, "$130.7$2"),
    /sheet1\.xml holds the figure 30\.7 /,
  ],
  [
    "a formula",
    () => put(SHEET, /<f>([^<]+)<\/f>/, "<f>$1+0*24.78</f>"),
    /sheet1\.xml holds the figure 24\.78/,
  ],
  [
    "an inline text cut into runs",
    () =>
      put(
        SHEET,
        "</sheetData>",
        '<row r="9999"><c r="A9999" t="inlineStr"><is><r><t>25</t></r><r><t>-01</t></r></is></c></row></sheetData>',
      ),
    /sheet1\.xml holds "25-01"/,
  ],
  [
    "a shared text cut into runs",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><r><t>Oatloft Ba</t></r><r><t>kery</t></r></si></sst>",
      ),
    /sharedStrings\.xml holds "oatloft bakery"/,
  ],
  [
    "a figure cut into runs",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><r><t>2.3</t></r><r><t>761</t></r></si></sst>",
      ),
    /sharedStrings\.xml holds the figure 2\.3761/,
  ],
  [
    "a text with signs written as codes",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><t>G_x0030_1 and 2&#46;3761</t></si></sst>",
      ),
    /sharedStrings\.xml holds "g01"/,
  ],
  [
    "a figure with a comma for the decimals, grouped",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><t>cost 24\u202f192,36 in all</t></si></sst>",
      ),
    /sharedStrings\.xml holds the figure 24192\.36/,
  ],
  [
    "a defined name",
    () =>
      put(
        "xl/workbook.xml",
        "<definedNames>",
        '<definedNames><definedName name="wage">24.78</definedName>',
      ),
    /workbook\.xml (defines the name wage|holds the figure 24\.78)/,
  ],
  [
    "the name of a hidden sheet",
    () => put("xl/workbook.xml", /<sheet /, '<sheet state="hidden" '),
    /workbook\.xml hides the sheet/,
  ],
  [
    "a hidden row",
    () => put(SHEET, /<row r="4"/, '<row hidden="1" r="4"'),
    /sheet1\.xml hides row 4/,
  ],
  [
    "a hidden column",
    () => put(SHEET, /<col /, '<col hidden="1" '),
    /sheet1\.xml hides column/,
  ],
  [
    "the cache of a chart",
    () =>
      put(
        "xl/charts/chart1.xml",
        /<\/c:numRef>/,
        '<c:numCache><c:pt idx="0"><c:v>24.78</c:v></c:pt></c:numCache></c:numRef>',
      ),
    /chart1\.xml holds the figure 24\.78/,
  ],
  [
    "the title of a chart, cut into runs",
    () =>
      put(
        "xl/charts/chart1.xml",
        /<a:t>/,
        "<a:t>Lot 26</a:t></a:r><a:r><a:t>-05 </a:t></a:r><a:r><a:t>",
      ),
    /chart1\.xml holds "26-05"/,
  ],
  [
    "the foot of the page",
    () => put(SHEET, "&amp;RPage", " grower G02&amp;RPage"),
    /sheet1\.xml holds "g02"/,
  ],
  [
    "a list of choices",
    () =>
      put(
        SHEET,
        /(<dataValidation [^>]*type="list"[^>]*>\s*<formula1>)"/,
        '$1"Oatloft Bakery,',
      ),
    /sheet1\.xml (offers choices|holds "oatloft bakery")/,
  ],
  [
    "the words beside an input",
    () => put(SHEET, / prompt="/, ' prompt="26-05 '),
    /sheet1\.xml holds "26-05"/,
  ],
  [
    "a conditional format",
    () =>
      put(
        SHEET,
        /<pageMargins/,
        '<conditionalFormatting sqref="A1"><cfRule type="cellIs"><formula>24.78</formula></cfRule></conditionalFormatting><pageMargins',
      ),
    /sheet1\.xml (has a conditional format|holds the figure 24\.78)/,
  ],
  [
    "a number format",
    () =>
      put(
        "xl/styles.xml",
        /<styleSheet[^>]*>/,
        '$&<numFmts count="1"><numFmt numFmtId="190" formatCode="&quot;G02&quot;"/></numFmts>',
      ),
    /styles\.xml holds "g02"/,
  ],
  [
    "the author",
    () =>
      put(
        "docProps/core.xml",
        "</cp:coreProperties>",
        "<dc:creator>A. Clerk</dc:creator></cp:coreProperties>",
      ),
    /core\.xml names its creator/,
  ],
  [
    "the company",
    () =>
      put(
        "docProps/app.xml",
        "</Properties>",
        "<Company>Oatloft Bakery</Company></Properties>",
      ),
    /app\.xml (names a company|holds "oatloft bakery")/,
  ],
  [
    "a property of its own",
    () => ({ "docProps/custom.xml": strToU8("<Properties/>") }),
    /custom\.xml is a part no copy has/,
  ],
  [
    "custom data",
    () => ({ "customXml/item1.xml": strToU8("<a>RUN-22</a>") }),
    /item1\.xml holds "run-22"/,
  ],
  [
    "a comment",
    () => ({
      "xl/comments1.xml": strToU8(
        "<comments><text><r><t>24.</t></r><r><t>78</t></r></text></comments>",
      ),
    }),
    /comments1\.xml holds the figure 24\.78/,
  ],
  [
    "the cache of a pivot",
    () => ({
      "xl/pivotCache/pivotCacheRecords1.xml": strToU8('<r><n v="24.78"/></r>'),
    }),
    /pivotCacheRecords1\.xml holds the figure 24\.78/,
  ],
  [
    "a link to another workbook",
    () =>
      put(
        "xl/_rels/workbook.xml.rels",
        "</Relationships>",
        '<Relationship Id="rId99" Type="x/externalLinkPath" Target="file:///farm/G02%20lots.xlsx" TargetMode="External"/></Relationships>',
      ),
    /workbook\.xml\.rels leads out of the file/,
  ],
  [
    "a function of ours",
    () => put(SHEET, /<f>[^<]+<\/f>/, "<f>_xldudf_SYRUP_MARGIN(1,2)</f>"),
    /sheet1\.xml needs the add-in/,
  ],
  [
    "the settings of a printer, in wide letters",
    () => ({
      "xl/printerSettings/printerSettings1.bin": Uint8Array.from(
        [..."at Oatloft Bakery"].flatMap((c) => [c.charCodeAt(0), 0]),
      ),
    }),
    /printerSettings1\.bin holds "oatloft bakery"/,
  ],
  [
    "a text in a picture's bytes",
    () => ({ "xl/media/image1.png": strToU8("\u0089PNG tEXt lot 26-05 ") }),
    /image1\.png holds "26-05"/,
  ],
  [
    "the name of a part",
    () => ({ "xl/worksheets/RUN-22.xml": strToU8("<worksheet/>") }),
    /RUN-22\.xml (is a part no copy has|holds)/,
  ],
  [
    "a remark in the markup",
    () => put(SHEET, "<sheetData>", "<!-- lot 26-05 --><sheetData>"),
    /sheet1\.xml holds "26-05"/,
  ],
  [
    "a text behind a code of letters",
    () =>
      put(
        "xl/theme/theme1.xml",
        / name="[^"]*"/,
        ` name="${Buffer.from("Oatloft Bakery!!").toString("base64")}"`,
      ),
    /theme1\.xml holds "oatloft bakery"/,
  ],
  [
    "the heading of a table",
    () => put("xl/tables/table1.xml", /( name=")([^"]*)("[^>]*\/>)/, "$1G02$3"),
    /table1\.xml holds "g02"/,
  ],
  [
    "a figure grouped in thousands",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><t>it came to $24,192.36</t></si></sst>",
      ),
    /sharedStrings\.xml holds the figure 24192\.36/,
  ],
  [
    "an amount behind the letters of its money",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><t>paid US$24,192.36 in all</t></si></sst>",
      ),
    /sharedStrings\.xml holds the figure 24192\.36/,
  ],
  [
    "a figure in powers of ten",
    () => put(SHEET, /(<\/f><v>)[^<]+(<\/v>)/, "$12.419236E4$2"),
    /sheet1\.xml holds the figure 24192\.36/,
  ],
  [
    "a figure rounded from four decimals to two",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><t>at 2.38 a lb</t></si></sst>",
      ),
    /sharedStrings\.xml holds the figure 2\.38/,
  ],
  [
    "a figure in cents",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><t>237.61 cents landed</t></si></sst>",
      ),
    /sharedStrings\.xml holds the figure 237\.61/,
  ],
  [
    "a day in words",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><t>the lot of 2025-03-28</t></si></sst>",
      ),
    /sharedStrings\.xml holds "2025-03-28" \(Lots, Received\)/,
  ],
  [
    "a name with another kind of dash and space",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><t>OATLOFT\u00a0Bakery, lot 25\u201301</t></si></sst>",
      ),
    /sharedStrings\.xml holds "25-01"/,
  ],
  [
    "letters of a name written as codes",
    () =>
      put(
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><t>_x004f_atloft &#66;akery</t></si></sst>",
      ),
    /sharedStrings\.xml holds "oatloft bakery"/,
  ],
  [
    "a property the file is given",
    () => ({
      "docProps/custom.xml": strToU8(
        "<Properties><property name='of'><lpwstr>Oatloft Bakery</lpwstr></property></Properties>",
      ),
    }),
    /custom\.xml holds "oatloft bakery"/,
  ],
  [
    "words on a drawing, cut into runs",
    () =>
      put(
        "xl/drawings/drawing1.xml",
        /<\/xdr:wsDr>/,
        "<xdr:sp><a:p xmlns:a='a'><a:r><a:t>RUN</a:t></a:r><a:r><a:t>-22</a:t></a:r></a:p></xdr:sp></xdr:wsDr>",
      ),
    /drawing1\.xml holds "run-22"/,
  ],
  [
    "the values kept of another workbook",
    () => ({
      "xl/externalLinks/externalLink1.xml": strToU8(
        '<externalLink><cell r="A1"><v>24.78</v></cell></externalLink>',
      ),
    }),
    /externalLink1\.xml holds the figure 24\.78/,
  ],
  [
    "the name of a sheet",
    () => put("xl/workbook.xml", /<sheet name="/, '<sheet name="25-01 '),
    /workbook\.xml holds "25-01"/,
  ],
  [
    "the name of a table",
    () =>
      put("xl/tables/table1.xml", / displayName="/, ' displayName="RUN-22 '),
    /table1\.xml holds "run-22"/,
  ],
  [
    "a formula of a table's column",
    () =>
      put(
        "xl/tables/table1.xml",
        /<tableColumn ([^>]*?)\/>/,
        "<tableColumn $1><calculatedColumnFormula>1*24.78</calculatedColumnFormula></tableColumn>",
      ),
    /table1\.xml holds the figure 24\.78/,
  ],
  [
    "the name of a cell's look",
    () =>
      put("xl/styles.xml", /<cellStyle name="Normal"/, '<cellStyle name="G02"'),
    /styles\.xml holds "g02"/,
  ],
  [
    "a remark behind the package",
    () => ({}),
    /the end of the package carries a remark/,
  ],
];

/** As it is put into the bytes of a package once it is packed. */
export function behindThePackage(bytes: Uint8Array): Uint8Array {
  const withRemark = new Uint8Array(bytes.length + 3);
  withRemark.set(bytes);
  withRemark.set(strToU8("G02"), bytes.length);
  withRemark[bytes.length - 2] = 3;
  return withRemark;
}
