import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { execFileSync } from "node:child_process";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import ExcelJS from "exceljs";
import { checkPackage } from "../../../src/hosts/file/check-package";
import { pack, unpack } from "../../../src/hosts/file/package-parts";
import { addToWorkbook } from "../../../src/hosts/file/patch/add-to-workbook";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import type { Sheet } from "../../../src/sheets/workbook";
import { convertWithLibreOffice } from "../../support/libre-office";
import { crowdedParts, crowdedWorkbook } from "./crowded-workbook";
import { fernkettleBook } from "./fernkettle-book";
import { type Stranger, strangers } from "./strangers";

let known: readonly Stranger[];
let totes: Sheet;

beforeAll(async () => {
  known = [
    ...(await strangers()),
    {
      title: "one with macros, slicers, a calculation chain and custom XML",
      fileName: "crowded.xlsm",
      bytes: await crowdedWorkbook(),
    },
  ];
  totes = {
    name: "Tare & tally",
    cells: [
      { row: 0, column: 0, value: "Ticket", style: { bold: true } },
      { row: 0, column: 1, value: "Net", note: "Gross less tare" },
      { row: 1, column: 0, value: "W-9" },
      {
        row: 1,
        column: 1,
        formula: "=3044-132",
        value: 2912,
        style: { format: '#,##0" pounds"' },
      },
    ],
    tables: [
      {
        name: "OurTotes",
        area: { row: 0, column: 0, rows: 2, columns: 2 },
        columns: [{ heading: "Ticket" }, { heading: "Net" }],
      },
    ],
    validations: [],
    merges: [],
    widths: { 0: 20, 1: 18 },
    heights: {},
    frozen: { rows: 1, columns: 0 },
    charts: [
      {
        kind: "columns",
        title: "Net by ticket",
        says: "One ticket",
        categories: "'Tare & tally'!$A$2:$A$2",
        series: [
          { name: "lb", values: "'Tare & tally'!$B$2:$B$2", color: "#5a2e15" },
        ],
        area: { row: 4, column: 0, rows: 12, columns: 5 },
      },
    ],
    print: {
      paper: "letter",
      landscape: false,
      fit: "one page wide",
      headings: { first: 0, rows: 1 },
    },
  };
}, 120_000);

const names = [{ name: "our_net", refersTo: "'Tare & tally'!$B$2" }];

/** The parts that adding a sheet has to write to. */
const touched =
  /^\[Content_Types\]\.xml$|^xl\/workbook\.xml$|^xl\/_rels\/workbook\.xml\.rels$|^xl\/styles\.xml$/;

test.each([0, 1, 2, 3, 4, 5])(
  "stranger %# gains a sheet, and every part not named beforehand stays byte for byte as it was",
  async (i) => {
    const { bytes, fileName } = known[i] as Stranger;
    const before = unpack(bytes);
    const after = unpack(
      await addToWorkbook(bytes, fileName, { sheets: [totes], names }),
    );
    const changed = Object.keys(before).filter(
      (part) =>
        !after[part] ||
        !Buffer.from(before[part] as Uint8Array).equals(after[part]),
    );
    expect(changed.filter((part) => !touched.test(part))).toEqual([]);
    const grown = Object.keys(after).filter((part) => !before[part]);
    expect(grown.some((part) => part.startsWith("xl/worksheets/"))).toBe(true);
    for (const part of grown)
      expect(part).toMatch(
        /^xl\/(worksheets|tables|drawings|charts)\/|^xl\/comments\d+\.xml$/,
      );
  },
);

test("what was added reads back with its table, its looks, its chart and its name", async () => {
  for (const { bytes, fileName } of known) {
    const more = await addToWorkbook(bytes, fileName, {
      sheets: [totes],
      names,
    });
    const { workbook } = await readXlsx(more, fileName);
    const sheet = workbook.sheets.find((s) => s.name === totes.name);
    expect(sheet?.tables).toEqual(totes.tables);
    expect(sheet?.charts).toEqual(totes.charts);
    expect(sheet?.print).toEqual(totes.print);
    expect(
      sheet?.cells.find((c) => c.row === 1 && c.column === 1),
    ).toMatchObject({
      formula: "=3044-132",
      value: 2912,
      style: { format: '#,##0" pounds"' },
    });
    expect(sheet?.cells[1]).toMatchObject({
      value: "Net",
      note: "Gross less tare",
    });
    expect(workbook.names).toContainEqual(names[0]);
  }
});

test("a worksheet program finds nothing new to object to", async () => {
  for (const { bytes, fileName } of known) {
    const complaints = new Set(checkPackage(bytes));
    const more = await addToWorkbook(bytes, fileName, {
      sheets: [totes],
      names,
    });
    expect(checkPackage(more).filter((c) => !complaints.has(c))).toEqual([]);
  }
});

test("a whole farm book goes in beside a stranger's sheets, and the same book does not go in twice", async () => {
  const { bytes, fileName } = known[0] as Stranger;
  const more = await addToWorkbook(bytes, fileName, fernkettleBook);
  const { workbook } = await readXlsx(more, fileName);
  const mine = new Set(fernkettleBook.sheets.map(({ name }) => name));
  expect(workbook.sheets.filter(({ name }) => mine.has(name))).toEqual(
    fernkettleBook.sheets,
  );
  await expect(
    addToWorkbook(more, "theirs.xlsx", fernkettleBook),
  ).rejects.toThrow(
    `theirs.xlsx already has a sheet "${fernkettleBook.sheets[0]?.name}"; rename that one, or add under another name.`,
  );
});

test("macros, slicers, the calculation chain, custom XML, printer settings and unknown extensions stay as they were", async () => {
  const { bytes, fileName } = known[5] as Stranger;
  const before = unpack(bytes);
  const after = unpack(
    await addToWorkbook(bytes, fileName, { sheets: [totes], names }),
  );
  for (const part of crowdedParts) {
    expect(before[part]?.length).toBeGreaterThan(0);
    expect(after[part]).toEqual(before[part]);
  }
  const text = (part: string): string => new TextDecoder().decode(after[part]);
  expect(text("xl/workbook.xml")).toContain(
    '<un:known xmlns:un="urn:example:nobody">kept</un:known>',
  );
  expect(text("xl/workbook.xml")).toContain("slicerCache r:id");
  expect(text("[Content_Types].xml")).toContain("macroEnabled");
});

describe("other programs", () => {
  const folder = mkdtempSync(join(tmpdir(), "added-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test("print the old pages as before and open the new sheet", async () => {
    const files = await Promise.all(
      known.flatMap(({ bytes }, i) =>
        [
          ["before", async () => bytes] as const,
          [
            "after",
            () => addToWorkbook(bytes, "x.xlsx", { sheets: [totes], names }),
          ] as const,
        ].map(async ([when, make]) => {
          const file = join(folder, `${i}-${when}.xlsx`);
          writeFileSync(file, await make());
          return file;
        }),
      ),
    );
    const pdfs = convertWithLibreOffice(files, { to: "pdf" });
    try {
      for (let i = 0; i < pdfs.length; i += 2) {
        const before = pagesOf(pdfs[i] as string);
        const after = pagesOf(pdfs[i + 1] as string);
        expect(before.length).toBeGreaterThan(0);
        expect(after.slice(0, before.length).map(withoutCounts)).toEqual(
          before.map(withoutCounts),
        );
        expect(after.slice(before.length).join()).toContain("2,912 pounds");
      }
    } finally {
      rmSync(dirname(pdfs[0] as string), { recursive: true, force: true });
    }
  }, 120_000);

  test("read what was added to a workbook of their own", async () => {
    const { bytes } = known[3] as Stranger;
    const book = new ExcelJS.Workbook();
    await book.xlsx.load(
      Buffer.from(
        await addToWorkbook(bytes, "x.xlsx", { sheets: [totes], names }),
      ) as never,
    );
    expect(book.getWorksheet(totes.name)?.getCell("B2").result).toBe(2912);
    expect(book.getWorksheet("Ledger 2026")?.getCell("C31").result).toBe(2898);
  });
});

const pagesOf = (pdf: string): readonly string[] =>
  execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8" })
    .split("\f")
    .filter((page) => page.trim() !== "");

/** Pages count themselves, and there are more of them now. */
const withoutCounts = (page: string): string =>
  page.replace(/Page \d+( of \d+)?/g, "Page").trim();

describe("what cannot be added to safely is refused in one sentence", () => {
  const add = (bytes: Uint8Array): Promise<Uint8Array> =>
    addToWorkbook(bytes, "theirs.xlsx", { sheets: [totes], names });

  test("a file cut short", async () => {
    const { bytes } = known[0] as Stranger;
    for (const share of [0.2, 0.5, 0.9, 0.999])
      await expect(
        add(bytes.slice(0, Math.floor(bytes.length * share))),
      ).rejects.toThrow(/^theirs\.xlsx is damaged/);
  });

  test("a part that does not match its checksum", async () => {
    const { bytes } = known[0] as Stranger;
    const broken = bytes.slice();
    const view = new DataView(broken.buffer);
    for (let at = broken.length - 46; at > 0; at -= 1)
      if (view.getUint32(at, true) === 0x02014b50) {
        view.setUint32(at + 16, 1, true);
        break;
      }
    await expect(add(broken)).rejects.toThrow(
      /^theirs\.xlsx is damaged: .* does not match its checksum\. Nothing was changed\.$/,
    );
  });

  test("a password, another kind, nothing at all", async () => {
    await expect(add(new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]))).rejects.toThrow(
      /locked with a password/,
    );
    await expect(add(new TextEncoder().encode("a,b"))).rejects.toThrow(
      "theirs.xlsx is not an .xlsx workbook.",
    );
    await expect(add(new Uint8Array())).rejects.toThrow(
      "theirs.xlsx is empty.",
    );
  });

  test("a signature, a Strict workbook, a zip of something else", async () => {
    const parts = unpack((known[3] as Stranger).bytes);
    const encoded = new TextEncoder().encode.bind(new TextEncoder());
    await expect(
      add(pack({ ...parts, "_xmlsignatures/sig1.xml": encoded("<s/>") })),
    ).rejects.toThrow(/is signed/);
    const book = new TextDecoder()
      .decode(parts["xl/workbook.xml"])
      .replace(
        "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
        "http://purl.oclc.org/ooxml/spreadsheetml/main",
      );
    await expect(
      add(pack({ ...parts, "xl/workbook.xml": encoded(book) })),
    ).rejects.toThrow(/Strict Open XML/);
    await expect(add(pack({ "a.txt": encoded("hello") }))).rejects.toThrow(
      "theirs.xlsx holds no workbook.",
    );
  });

  test("a sheet, a table or a name that is there already", async () => {
    const { bytes, fileName } = known[3] as Stranger;
    const once = await addToWorkbook(bytes, fileName, {
      sheets: [totes],
      names,
    });
    await expect(add(once)).rejects.toThrow(/already has a sheet/);
    const other = { ...totes, name: "Other", charts: [] };
    await expect(
      addToWorkbook(once, fileName, { sheets: [other], names: [] }),
    ).rejects.toThrow(/already has a table or name "OurTotes"/);
    await expect(
      addToWorkbook(bytes, fileName, {
        sheets: [],
        names: [{ name: "Net_All", refersTo: "Terms!$A$1" }],
      }),
    ).rejects.toThrow(/already has a table or name "Net_All"/);
  });
});
