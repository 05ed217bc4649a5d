import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { compareWorkbooks } from "../../../src/sheets/compare/compare-workbooks";
import type { Cell, Workbook } from "../../../src/sheets/workbook";
import { convertWithLibreOffice } from "../../support/libre-office";
import { withCell, withRowsMoved } from "./edited";

const COSTING = "Cost P250-LOFT";
const BOTTLES = "Bottles in this run";
let sent: Workbook;

beforeAll(async () => {
  const { workbook } = await readXlsx(
    new Uint8Array(
      readFileSync("sample-workbooks/costing-p250-loft-plain.xlsx"),
    ),
    "costing-p250-loft-plain.xlsx",
  );
  sent = workbook;
});

/** Figures a person typed, with the sheet each is on: the costing's own inputs and two tables of the book. */
const constants = (): readonly (Cell & { readonly sheet: string })[] =>
  sent.sheets
    .filter(({ name }) => [COSTING, "Wages", "Lots"].includes(name))
    .flatMap(({ name, cells }) =>
      cells
        .filter(
          ({ formula, value }) =>
            formula === undefined && typeof value === "number",
        )
        .map((cell) => ({ ...cell, sheet: name })),
    );

test("a copy that came back untouched has no changes", () => {
  expect(compareWorkbooks(sent, sent)).toEqual({ changes: [], unmatched: [] });
});

test("an untouched copy saved by another program has no changes either", async () => {
  const folder = mkdtempSync(join(tmpdir(), "compare-"));
  const file = join(folder, "copy.xlsx");
  writeFileSync(file, await writeXlsx(sent));
  const [saved = ""] = convertWithLibreOffice([file], { to: "xlsx" });
  const { workbook } = await readXlsx(
    new Uint8Array(readFileSync(saved)),
    "copy.xlsx",
  );
  rmSync(folder, { recursive: true, force: true });
  rmSync(dirname(saved), { recursive: true, force: true });
  expect(compareWorkbooks(sent, workbook)).toEqual({
    changes: [],
    unmatched: [],
  });
}, 60_000);

test("a changed figure is told in the words of its row", () => {
  const bottles = sent.sheets
    .find(({ name }) => name === COSTING)
    ?.cells.find(({ value }) => value === BOTTLES);
  expect(bottles).toBeDefined();
  const row = bottles?.row ?? 0;
  const back = withCell(sent, COSTING, { row, column: 1, value: 2400 });
  const { changes, unmatched } = compareWorkbooks(sent, back);
  expect(unmatched).toEqual([]);
  expect(changes).toEqual([
    expect.objectContaining({
      sheet: COSTING,
      row,
      column: 1,
      kind: "changed",
      was: 1200,
      now: 2400,
    }),
  ]);
  expect(changes[0]?.what).toContain(BOTTLES);
});

test("fifty edits, with rows put in and taken out before and after, are found one and all", () => {
  const places = constants();
  expect(places.length).toBeGreaterThan(100);
  fc.assert(
    fc.property(
      fc.constantFrom(...places),
      fc.constantFrom("changed", "text", "cleared", "formula"),
      fc.integer({ min: 0, max: 120 }),
      fc.constantFrom(1, -1, 0),
      ({ sheet, ...cell }, edit, place, by) => {
        const last = Math.max(
          ...(sent.sheets.find(({ name }) => name === sheet)?.cells ?? []).map(
            ({ row }) => row,
          ),
        );
        const at = place % (last + 1);
        fc.pre(!(by < 0 && at === cell.row));
        const now: Cell =
          edit === "changed"
            ? { ...cell, value: Number(cell.value) + 7 }
            : edit === "text"
              ? { ...cell, value: `${String(cell.value)} lb` }
              : edit === "cleared"
                ? { row: cell.row, column: cell.column, value: null }
                : { ...cell, formula: "=1+1", value: 2 };
        let back = withCell(sent, sheet, now);
        if (by !== 0) back = withRowsMoved(back, sheet, at, by);
        if (by > 0)
          back = withCell(back, sheet, {
            row: at,
            column: 0,
            value: "A new row of theirs",
          });
        const { changes, unmatched } = compareWorkbooks(sent, back);
        const mine = changes.filter(
          (c) => c.row === cell.row && c.column === cell.column,
        );
        expect(mine).toHaveLength(1);
        expect(mine[0]?.kind).toBe(
          {
            changed: "changed",
            text: "figure came back as text",
            cleared: "cleared",
            formula: "figure replaced by a formula",
          }[edit],
        );
        if (by > 0) expect(unmatched.join()).toContain("A new row of theirs");
        if (by >= 0) expect(changes).toHaveLength(1);
      },
    ),
    { numRuns: 50, seed: 20_261_125 },
  );
});

test("a formula typed over with a figure is told, with both", () => {
  const formula = sent.sheets
    .find(({ name }) => name === COSTING)
    ?.cells.find((c) => c.formula?.includes("SUM("));
  const { changes } = compareWorkbooks(
    sent,
    withCell(sent, COSTING, {
      row: formula?.row ?? 0,
      column: formula?.column ?? 0,
      value: 99,
    }),
  );
  expect(changes).toEqual([
    expect.objectContaining({
      kind: "formula replaced by a figure",
      now: 99,
      formulaWas: formula?.formula,
    }),
  ]);
});

test("a row taken out and a sheet that is missing or new are named", () => {
  const label = sent.sheets
    .find(({ name }) => name === COSTING)
    ?.cells.find(({ value }) => value === BOTTLES);
  const row = label?.row ?? 0;
  const back = withRowsMoved(sent, COSTING, row, -1);
  expect(compareWorkbooks(sent, back).unmatched).toEqual([
    `Sheet "${COSTING}": row ${row + 1} as sent ("${BOTTLES}") is not in the copy that came back.`,
  ]);
  const [first, ...rest] = sent.sheets;
  const renamed = {
    ...sent,
    sheets: [
      { ...(first as (typeof sent.sheets)[number]), name: "Theirs" },
      ...rest,
    ],
  };
  expect(compareWorkbooks(sent, renamed).unmatched).toEqual([
    `The sheet "${first?.name ?? ""}" did not come back.`,
    'The sheet "Theirs" was not in the copy we sent.',
  ]);
});
