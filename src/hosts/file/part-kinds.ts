/** What kind of thing a part of a package is. */
export interface PartKind {
  readonly pattern: RegExp;
  /** Its name in a list of what a save would lose; none when the model carries it or nothing is lost with it. */
  readonly one?: string;
  readonly many?: string;
}

/** The kinds of parts in the order they are tried; a part of no kind here is reported by its name. */
export const partKinds: readonly PartKind[] = [
  { pattern: /^\[Content_Types\]\.xml$|\.rels$/ },
  { pattern: /^docProps\/(core|app)\.xml$|^docProps\/thumbnail\./ },
  {
    pattern:
      /^xl\/(workbook|styles|sharedStrings|calcChain|metadata)\.(xml|bin)$/i,
  },
  { pattern: /^xl\/(theme|worksheets|tables|tableSingleCells)\/[^/]+\.xml$/ },
  { pattern: /^xl\/(chartsheets|dialogsheets|macrosheets)\/[^/]+\.xml$/ },
  { pattern: /comments\d*\.xml$|vmlDrawing\d*\.vml$/i },
  { pattern: /^xl\/charts\/(style|colors)\d*\.xml$/ },
  { pattern: /^xl\/(drawings\/drawing|persons\/)/ },
  { pattern: /^xl\/pivotCache\/|^xl\/(slicerCaches|timelineCaches)\// },
  { pattern: /^xl\/printerSettings\//, one: "print settings" },
  { pattern: /^xl\/(charts|chartEx)\/chart/, one: "a chart", many: "charts" },
  { pattern: /\/media\//, one: "a picture", many: "pictures" },
  { pattern: /^xl\/diagrams\/data/, one: "a diagram", many: "diagrams" },
  { pattern: /^xl\/diagrams\// },
  { pattern: /^xl\/pivotTables\//, one: "a pivot table", many: "pivot tables" },
  { pattern: /^xl\/slicers\//, one: "slicers" },
  { pattern: /^xl\/timelines\//, one: "timelines" },
  { pattern: /^xl\/threadedComments\//, one: "comment threads" },
  { pattern: /^xl\/(ctrlProps|activeX)\//, one: "form controls" },
  {
    pattern: /^xl\/embeddings\//,
    one: "an embedded object",
    many: "embedded objects",
  },
  {
    pattern: /^xl\/(queryTables\/|connections\.xml)/,
    one: "a data connection",
  },
  { pattern: /vba(Project|Data)/, one: "macros" },
  {
    pattern: /^xl\/externalLinks\//,
    one: "a link to another workbook",
    many: "links to other workbooks",
  },
  { pattern: /^customXml\/item\d*\.xml$/, one: "custom XML data" },
  { pattern: /^customXml\// },
  { pattern: /^docProps\/custom\.xml$/, one: "custom document properties" },
  {
    pattern: /^xl\/webextensions\//,
    one: "the record of which add-ins the file uses",
  },
  { pattern: /^xl\/richData\//, one: "linked data or pictures inside cells" },
  { pattern: /^xl\/featurePropertyBag\//, one: "check boxes in cells" },
  { pattern: /^xl\/model\//, one: "a data model" },
  { pattern: /^customUI\//, one: "custom commands" },
  { pattern: /^_xmlsignatures\//, one: "the digital signature" },
  { pattern: /^docMetadata\//, one: "a sensitivity label" },
];
