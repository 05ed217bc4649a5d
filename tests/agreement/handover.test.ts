import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import {
  handoverCopy,
  workedOut,
  type WorkedOut,
} from "../../src/apps/cli/handover-copy";
import type { Contents } from "../../src/book/contents";
import { gridFunctions } from "../../src/apps/grid-functions";
import { checkPackage } from "../../src/hosts/file/check-package";
import { writeCopy } from "../../src/hosts/file/leaks/write-copy";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../src/hosts/file/write-xlsx";
import { calculate } from "../../src/hosts/grid/calculate";
import { liveSheets } from "../../src/sheets/handover/asked-sheets";
import {
  type Audience,
  audienceNames,
  noTicks,
} from "../../src/sheets/handover/audiences";
import type { Copy } from "../../src/sheets/handover/copy";
import { readAsked } from "../../src/sheets/handover/read-asked";
import { valuesIn } from "../../src/sheets/handover/values-in";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { demoTables } from "../book/csv-folder";
import {
  fewProducts,
  type Pair,
  pairsOf,
  typed,
  valueAt,
} from "../support/handed-over";
import { convertWithLibreOffice } from "../support/libre-office";

interface Case {
  readonly audience: Audience;
  readonly asked: string;
  /** Figures the copy shows at the least. */
  readonly shows: number;
  /** Handed over without the sheets that say whose products it may show. */
  readonly isAlone?: boolean;
}

/** Every audience with every kind of sheet it may have; a partner and a broker see nothing of an account. */
const cases: readonly Case[] = audienceNames.flatMap((audience) =>
  [
    { asked: "costing:P250-LOFT", shows: 10 },
    { asked: "prices", shows: 60 },
    { asked: "prices", shows: 50, isAlone: true },
    { asked: "quote:P250-LOFT", shows: 6 },
    { asked: "totes:Oatloft Bakery", shows: 100 },
  ]
    .filter(
      ({ asked }) =>
        !asked.startsWith("totes") ||
        audience === "customer" ||
        audience === "lender",
    )
    .map((one) => ({ audience, ...one })),
);

const nameOf = ({ audience, asked, isAlone }: Case): string =>
  `${audience}, ${asked.split(":")[0] ?? ""}${isAlone ? " alone" : ""}`;

/** What a reader types over in the costing that has inputs: each by itself, then all at once. */
const figures: readonly (readonly [string, number, number])[] = [
  ["bottles", 0, 2400],
  ["fill", 0, 375.5],
  ["loss", 0, 0.031],
  ["bulk_price", 0, 3.17],
  ["brix", 0, 67.2],
  ["channels.price", 6, 8.35],
  ["channels.goal", 6, 0.41],
];
const tries = [
  ...figures.map((one) => ({ what: one[0], typed: [one] })),
  { what: "all at once", typed: figures },
];
const TRIED = "partner, costing";
const SHEET = "Cost P250-LOFT";
const tryName = (i: number): string => `Try ${i + 1}`;

const book = (): readonly Contents[] => fewProducts(demoTables());

let folder: string;
let worked: WorkedOut;
let copies: ReadonlyMap<string, Copy>;
/** As LibreOffice works the files out anew. */
let answered: ReadonlyMap<string, Workbook>;
/** The live sheet once for every try, all over the same book. */
let tried: Workbook;
let pairs: readonly Pair[];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "tare-and-tally-handover-"));
  worked = await workedOut(book(), {
    asked: readAsked([...new Set(cases.map(({ asked }) => asked))].join(",")),
  });
  copies = new Map(
    cases.map((one) => [
      nameOf(one),
      handoverCopy(
        {
          ...worked,
          sheets: (one.isAlone ? byItself(one.asked) : worked.sheets).filter(
            ({ asked }) => asked === one.asked,
          ),
        },
        one.audience,
        noTicks,
      ),
    ]),
  );
  const partner = copies.get(TRIED) as Copy;
  pairs = pairsOf(partner);
  const files = new Map<string, Uint8Array>();
  for (const [name, copy] of copies) files.set(name, await writeCopy(copy));
  for (const { what, typed: over } of tries)
    files.set(
      `try ${what}`,
      await writeXlsx(typedOver(partner.workbook, "inCopy", over)),
    );
  for (const bytes of files.values()) expect(checkPackage(bytes)).toEqual([]);
  answered = await recalculated(files);
  ({ workbook: tried } = await calculate(liveTries(), gridFunctions));
}, 300_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A sheet asked for by itself, with the results of the same sheet among the others. */
const byItself = (asked: string): WorkedOut["sheets"] =>
  liveSheets(book(), readAsked(asked)).sheets.map((sheet) => ({
    ...sheet,
    valueAt: valuesIn(worked.live)(sheet.placed.description.name),
  }));

function typedOver(
  workbook: Workbook,
  side: "inCopy" | "live",
  over: typeof figures,
): Workbook {
  return over.reduce((book, [name, index, value]) => {
    const pair = pairs.filter((one) => one.name === name)[index];
    if (!pair) throw new Error(`the copy has no ${name}`);
    expect([name, pair.fate]).toEqual([name, "input"]);
    return typed(book, SHEET, pair[side], value);
  }, workbook);
}

/** The book with the live costing once for every try, under a name of its own; its formulas name no sheet but the book's. */
function liveTries(): Workbook {
  const { live } = worked;
  const others = worked.sheets.map(({ placed }) => placed.description.name);
  const [costing] = live.sheets.filter(({ name }) => name === SHEET);
  expect(costing?.cells.filter((c) => c.formula?.includes(SHEET))).toEqual([]);
  return {
    ...live,
    sheets: [
      ...tries.flatMap(({ typed: over }, i) =>
        typedOver(live, "live", over)
          .sheets.filter(({ name }) => name === SHEET)
          .map(({ charts: _, ...sheet }) => ({ ...sheet, name: tryName(i) })),
      ),
      ...live.sheets.filter(
        ({ name, tables }) => tables.length > 0 && !others.includes(name),
      ),
    ],
    names: [],
  };
}

async function recalculated(
  files: ReadonlyMap<string, Uint8Array>,
): Promise<ReadonlyMap<string, Workbook>> {
  const paths = [...files].map(([name, bytes]) => {
    const file = join(folder, `${name.replace(/\W+/g, "-")}.xlsx`);
    writeFileSync(file, bytes);
    return file;
  });
  const made = convertWithLibreOffice(paths, { to: "xlsx", recalculate: true });
  const read = await Promise.all(
    made.map(
      async (file) => (await readXlsx(readFileSync(file), file)).workbook,
    ),
  );
  rmSync(dirname(made[0] ?? ""), { recursive: true, force: true });
  return new Map(
    [...files.keys()].map((name, i) => [name, read[i] as Workbook]),
  );
}

/** Numbers agree to 1e-9 relative; everything else to the letter, where a blank and an empty text are one. */
function agree(a: Stored | undefined, b: Stored | undefined): boolean {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-3);
  const plain = (value: Stored | undefined): string =>
    value === undefined || value === null
      ? ""
      : typeof value === "object"
        ? value.error
        : String(value);
  return plain(a) === plain(b);
}

const differences = (
  compared: readonly Pair[],
  copy: Workbook | undefined,
  live: Workbook,
  liveName: (sheet: string) => string = (sheet) => sheet,
): readonly string[] =>
  compared
    .map((pair) => ({
      pair,
      theirs: copy && valueAt(copy, pair.sheet, pair.inCopy),
      ours: valueAt(live, liveName(pair.sheet), pair.live),
    }))
    .filter(({ theirs, ours }) => !agree(theirs, ours))
    .map(
      ({ pair, theirs, ours }) =>
        `${pair.sheet}, ${pair.name} (${pair.label}), ${pair.fate}: ${JSON.stringify(theirs)} in the copy, ${JSON.stringify(ours)} live`,
    );

// Beside our own engine: LibreOffice, which works every formula of the file out anew.
test.each(cases.map((one) => [nameOf(one), one] as const))(
  "%s: every kept figure is the live sheet's, worked out anew by LibreOffice",
  (name, { shows }) => {
    const kept = pairsOf(copies.get(name) as Copy);
    expect(kept.length).toBeGreaterThanOrEqual(shows);
    expect(differences(kept, answered.get(name), worked.live)).toEqual([]);
  },
);

test("most of a partner's costing is alive", () => {
  expect(pairs.filter(({ fate }) => fate === "live").length).toBeGreaterThan(
    150,
  );
});

test.each(tries.map(({ what }, i) => [what, i] as const))(
  "what a partner tries moves the copy as it moves the live sheet: %s",
  (what, i) => {
    const moved = pairs.filter(
      ({ live: at }) =>
        !agree(valueAt(tried, tryName(i), at), valueAt(worked.live, SHEET, at)),
    );
    expect(moved.length).toBeGreaterThanOrEqual(
      what === "all at once" ? 60 : 2,
    );
    expect(moved.filter(({ fate }) => fate === "fixed")).toEqual([]);
    expect(
      differences(pairs, answered.get(`try ${what}`), tried, () => tryName(i)),
    ).toEqual([]);
  },
);

test("every figure a reader may try is tried", () => {
  const inputs = [...copies].flatMap(([name, copy]) =>
    pairsOf(copy)
      .filter(({ fate }) => fate === "input")
      .map((pair) => `${name}: ${pair.name}`),
  );
  const untried = new Set(inputs);
  for (const [name] of figures) untried.delete(`${TRIED}: ${name}`);
  // The line is a word and the ending of prices is cents; both are left as they are.
  expect([...untried].sort()).toEqual([`${TRIED}: ending`, `${TRIED}: line`]);
});
