import { addToWorkbook } from "../../../src/hosts/file/patch/add-to-workbook";
import { appendRows } from "../../../src/hosts/file/patch/append-rows";
import { unpack } from "../../../src/hosts/file/package-parts";
import { checkPackage } from "../../../src/hosts/file/check-package";
import { withCells } from "../../../src/hosts/file/patch/sheet-cells";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import type { Workbook } from "../../../src/sheets/workbook";
import { strangers } from "./strangers";

const TOTES = "Totes & more";

const book = (below?: string): Workbook => ({
  title: "",
  names: [],
  sheets: [
    {
      name: TOTES,
      cells: [
        { row: 2, column: 1, value: "Ticket" },
        { row: 2, column: 2, value: "Gross" },
        { row: 2, column: 3, value: "Net" },
        { row: 3, column: 1, value: "W-1", style: { bold: true } },
        { row: 3, column: 2, value: 3044, style: { format: "#,##0" } },
        {
          row: 3,
          column: 3,
          value: 2912,
          formula: "=OurTotes[[#This Row],[Gross]]-132",
        },
        { row: 4, column: 8, value: "a remark beside the table" },
        ...(below ? [{ row: 5, column: 2, value: below }] : []),
        { row: 40, column: 0, value: "far below" },
      ],
      tables: [
        {
          name: "OurTotes",
          area: { row: 2, column: 1, rows: 2, columns: 3 },
          columns: [
            { heading: "Ticket" },
            { heading: "Gross" },
            {
              heading: "Net",
              formula: "=OurTotes[[#This Row],[Gross]]-132",
            },
          ],
        },
      ],
      validations: [],
      merges: [],
      widths: {},
      heights: {},
      frozen: { rows: 0, columns: 0 },
    },
  ],
});

const more = [
  { Ticket: "W-2 <&>", Gross: 3050, Net: 2918 },
  { Ticket: "W-3", Gross: null, Net: { error: "#VALUE!" } },
];

test("rows come after the last one, with the table's looks and formulas, and leave the cells beside them alone", async () => {
  const bytes = await writeXlsx(book());
  const after = appendRows(bytes, "totes.xlsx", "ourtotes", more);
  const { workbook } = await readXlsx(after, "totes.xlsx");
  const [sheet] = workbook.sheets;
  expect(sheet?.tables[0]?.area).toEqual({
    row: 2,
    column: 1,
    rows: 4,
    columns: 3,
  });
  const at = (row: number, column: number) =>
    sheet?.cells.find((c) => c.row === row && c.column === column);
  expect(at(4, 1)).toMatchObject({ value: "W-2 <&>", style: { bold: true } });
  expect(at(4, 2)).toMatchObject({ value: 3050, style: { format: "#,##0" } });
  expect(at(4, 3)).toMatchObject({
    value: 2918,
    formula: "=OurTotes[[#This Row],[Gross]]-132",
  });
  expect(at(5, 2)?.value ?? null).toBeNull();
  expect(at(5, 3)?.value).toEqual({ error: "#VALUE!" });
  expect(at(4, 8)?.value).toBe("a remark beside the table");
  expect(at(40, 0)?.value).toBe("far below");
  expect(checkPackage(after)).toEqual([]);
});

test("the blank row an empty table has to have is filled first", async () => {
  const [sheet] = book().sheets;
  if (!sheet) throw new Error("no sheet");
  const empty: Workbook = {
    title: "",
    names: [],
    sheets: [
      {
        ...sheet,
        cells: sheet.cells.filter(
          ({ row, formula }) => row !== 3 || formula !== undefined,
        ),
      },
    ],
  };
  const after = appendRows(
    await writeXlsx(empty),
    "totes.xlsx",
    "OurTotes",
    more,
  );
  const { workbook } = await readXlsx(after, "totes.xlsx");
  const [grown] = workbook.sheets;
  expect(grown?.tables[0]?.area).toEqual({
    row: 2,
    column: 1,
    rows: 3,
    columns: 3,
  });
  const at = (row: number, column: number) =>
    grown?.cells.find((c) => c.row === row && c.column === column);
  expect([at(3, 1)?.value, at(4, 1)?.value]).toEqual(["W-2 <&>", "W-3"]);
  expect(at(3, 3)?.formula).toBe("=OurTotes[[#This Row],[Gross]]-132");
  expect(checkPackage(after)).toEqual([]);
});

test("in a stranger's workbook only the table and its sheet are written to", async () => {
  for (const { bytes, fileName } of await strangers()) {
    const added = await addToWorkbook(bytes, fileName, book());
    const before = unpack(added);
    const after = unpack(appendRows(added, fileName, "OurTotes", more));
    const changed = Object.keys(after).filter(
      (part) =>
        !before[part] ||
        !Buffer.from(before[part]).equals(after[part] as Uint8Array),
    );
    expect(changed).toHaveLength(2);
    expect(changed.sort()).toEqual([
      expect.stringMatching(/^xl\/tables\//),
      expect.stringMatching(/^xl\/worksheets\//),
    ]);
  }
}, 60_000);

test("what stands in the way is named, and nothing is written", async () => {
  const bytes = await writeXlsx(book("a total"));
  expect(() => appendRows(bytes, "totes.xlsx", "OurTotes", more)).toThrow(
    `totes.xlsx, sheet ${TOTES}: cell C6 below table OurTotes is not blank; nothing was added.`,
  );
  expect(() => appendRows(bytes, "totes.xlsx", "Lots", more)).toThrow(
    "totes.xlsx has no table Lots; it may have been deleted or renamed. Nothing was added.",
  );
  expect(() =>
    appendRows(bytes, "totes.xlsx", "OurTotes", [{ Weight: 1 }]),
  ).toThrow(
    'Table OurTotes in totes.xlsx has no column "Weight"; nothing was added.',
  );
});

test("parts under a prefix of their own are written to under that prefix", () => {
  expect(
    withCells(
      '<x:worksheet xmlns:x="m"><x:sheetData><x:row r="1"><x:c r="B1"><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>',
      [
        { row: 0, column: 0, value: 5 },
        { row: 1, column: 2, value: "a" },
      ],
    ),
  ).toBe(
    '<x:worksheet xmlns:x="m"><x:sheetData><x:row r="1"><x:c r="A1"><x:v>5</x:v></x:c><x:c r="B1"><x:v>1</x:v></x:c></x:row><x:row r="2"><x:c r="C2" t="inlineStr"><x:is><x:t xml:space="preserve">a</x:t></x:is></x:c></x:row></x:sheetData></x:worksheet>',
  );
});
