import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import {
  compareWorkbooks,
  type CopyChange,
} from "../../../src/sheets/compare/compare-workbooks";
import type { Cell, Stored, Workbook } from "../../../src/sheets/workbook";
import { convertWithLibreOffice } from "../../support/libre-office";
import { withCell, withRowsMoved } from "./edited";

const COSTING = "Cost P250-LOFT";
const FILES = 5;
const EDITS = 10;

interface Edit {
  readonly sheet: string;
  readonly cell: Cell;
  readonly kind: CopyChange["kind"];
  readonly now: Stored;
}

interface Returned {
  readonly edits: readonly Edit[];
  /** Rows of the costing sheet, as sent, before which one was put in and which was taken out. */
  readonly putIn: number;
  readonly takenOut: number;
  readonly workbook: Workbook;
}

let sent: Workbook;
const returned: Returned[] = [];

/** How somebody retypes a figure so that it is no number any more. */
const asText = (value: number): readonly string[] => [
  `${value} lb`,
  `${value.toFixed(2)} $`,
  `$${value.toFixed(2)}`,
  value.toLocaleString("en-US", { minimumFractionDigits: 2 }),
  `ca. ${value}`,
  `${value} gal`,
];

const editOf =
  (cells: readonly (Cell & { readonly sheet: string })[]) =>
  ([place, way, by]: readonly [number, number, number]): Edit => {
    const { sheet, ...cell } = cells[
      place % cells.length
    ] as (typeof cells)[number];
    const value = Number(cell.value);
    const told = (kind: Edit["kind"], now: Stored): Edit => ({
      sheet,
      cell,
      kind,
      now,
    });
    if (way < 4) return told("changed", Number((value + by).toFixed(4)));
    if (way < 8) {
      const texts = asText(value);
      return told("figure came back as text", texts[by % texts.length] ?? "");
    }
    return told("cleared", null);
  };

beforeAll(async () => {
  const file = "costing-p250-loft-plain.xlsx";
  const bytes = readFileSync(join("sample-workbooks", file));
  ({ workbook: sent } = await readXlsx(new Uint8Array(bytes), file));
  const cells = sent.sheets
    .filter(({ name }) => [COSTING, "Wages", "Lots"].includes(name))
    .flatMap(({ name, cells: all }) =>
      all
        .filter(
          ({ formula, value }) =>
            formula === undefined && typeof value === "number",
        )
        .map((cell) => ({ ...cell, sheet: name })),
    );
  const sampled = fc.sample(
    fc.record({
      edits: fc.uniqueArray(
        fc.tuple(
          fc.nat(cells.length - 1),
          fc.nat(9),
          fc.integer({ min: 1, max: 90 }),
        ),
        { minLength: EDITS, maxLength: EDITS, selector: ([place]) => place },
      ),
      rows: fc.tuple(fc.nat(1000), fc.nat(1000)),
    }),
    { numRuns: FILES, seed: 20_261_130 },
  );
  const free = freeRows(sent);
  const books = sampled.map(({ edits, rows: [a, b] }) => {
    const made = edits.map(editOf(cells));
    const takenOut = free[a % free.length] as number;
    const others = free.filter((row) => row !== takenOut);
    const putIn = others[b % others.length] as number;
    return { edits: made, takenOut, putIn };
  });
  const folder = mkdtempSync(join(tmpdir(), "saved-again-"));
  const files = await Promise.all(
    books.map(async (book, i) => {
      const path = join(folder, `returned-${i}.xlsx`);
      writeFileSync(path, await writeXlsx(edited(book)));
      return path;
    }),
  );
  const saved = convertWithLibreOffice(files, { to: "xlsx" });
  for (const [i, path] of saved.entries())
    returned.push({
      ...(books[i] as (typeof books)[number]),
      workbook: (await readXlsx(new Uint8Array(readFileSync(path)), path))
        .workbook,
    });
  rmSync(folder, { recursive: true, force: true });
  rmSync(dirname(saved[0] ?? folder), { recursive: true, force: true });
}, 120_000);

/** Rows of the costing with words in them that no formula names. */
function freeRows({ sheets }: Workbook): readonly number[] {
  const costing = sheets.find(({ name }) => name === COSTING);
  const named = new Set(
    sheets.flatMap(({ name, cells }) =>
      cells.flatMap(({ formula = "" }) =>
        name === COSTING || formula.includes(COSTING)
          ? [...formula.matchAll(/\$?[A-Z]{1,2}\$?(\d+)/g)].map(
              ([, row]) => Number(row) - 1,
            )
          : [],
      ),
    ),
  );
  const typed = new Set(
    (costing?.cells ?? [])
      .filter(
        ({ formula, value }) =>
          formula !== undefined || typeof value === "number",
      )
      .map(({ row }) => row),
  );
  return [
    ...new Set(
      (costing?.cells ?? [])
        .filter(
          ({ row, column, value }) =>
            row > 0 &&
            column === 0 &&
            typeof value === "string" &&
            value.trim() !== "" &&
            !named.has(row) &&
            !typed.has(row),
        )
        .map(({ row }) => row),
    ),
  ];
}

function edited({
  edits,
  takenOut,
  putIn,
}: Omit<Returned, "workbook">): Workbook {
  const typedOver = edits.reduce(
    (book, { sheet, cell, now }) =>
      withCell(book, sheet, { ...cell, value: now }),
    sent,
  );
  const without = withRowsMoved(typedOver, COSTING, takenOut, -1);
  const at = putIn - (putIn > takenOut ? 1 : 0);
  return withCell(withRowsMoved(without, COSTING, at, 1), COSTING, {
    row: at,
    column: 0,
    value: "A row the reader put in",
  });
}

test("fifty edits are spread over copies that came back by way of another program", () => {
  expect(returned.flatMap(({ edits }) => edits)).toHaveLength(FILES * EDITS);
  const kinds = new Set(
    returned.flatMap(({ edits }) => edits.map((e) => e.kind)),
  );
  expect([...kinds].sort()).toEqual([
    "changed",
    "cleared",
    "figure came back as text",
  ]);
});

test.each(Array.from({ length: FILES }, (_, i) => i))(
  "copy %i: every edit is told, in the words of its row, and nothing else",
  (i) => {
    const { edits, workbook } = returned[i] as Returned;
    const { changes } = compareWorkbooks(sent, workbook);
    const plain = (value: Stored): Stored =>
      typeof value === "string" ? value.trim() : value;
    const told = changes.map(
      ({ sheet, row, column, kind, was, now }) =>
        `${sheet} ${row},${column}: ${kind}, ${String(was)} to ${String(plain(now))}`,
    );
    expect([...told].sort()).toEqual(
      edits
        .map(
          ({ sheet, cell, kind, now }) =>
            `${sheet} ${cell.row},${cell.column}: ${kind}, ${String(cell.value)} to ${String(plain(now))}`,
        )
        .sort(),
    );
    for (const { what } of changes)
      expect(what).not.toMatch(/^cell [A-Z]+\d+$/);
  },
);

test.each(Array.from({ length: FILES }, (_, i) => i))(
  "copy %i: the row put in and the row taken out are named",
  (i) => {
    const { takenOut, putIn, workbook } = returned[i] as Returned;
    const words = sent.sheets
      .find(({ name }) => name === COSTING)
      ?.cells.find(
        ({ row, column }) => row === takenOut && column === 0,
      )?.value;
    const at = putIn - (putIn > takenOut ? 1 : 0);
    expect(compareWorkbooks(sent, workbook).unmatched).toEqual([
      `Sheet "${COSTING}": row ${takenOut + 1} as sent ("${String(words)}") is not in the copy that came back.`,
      `Sheet "${COSTING}": row ${at + 1} of the copy that came back ("A row the reader put in") was not in what we sent.`,
    ]);
  },
);
