import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gridFunctions } from "../../src/apps/grid-functions";
import { writeCopy } from "../../src/hosts/file/leaks/write-copy";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../src/hosts/file/write-xlsx";
import { calculate } from "../../src/hosts/grid/calculate";
import { handoverCopy, workedOut } from "../../src/apps/cli/handover-copy";
import { audienceNames, noTicks } from "../../src/sheets/handover/audiences";
import { readAsked } from "../../src/sheets/handover/read-asked";
import { demoTables } from "../book/csv-folder";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import {
  demoCopy,
  type DemoCopy,
  type Pair,
  pairsOf,
  typed,
  valueAt,
} from "../support/handed-over";
import { convertWithLibreOffice } from "../support/libre-office";

const SHEET = "Cost P250-LOFT";

let partner: DemoCopy;
let folder: string;

/** What the partner tries: run, volume in the bottle, loss, bulk price and a goal, all at once. */
const tries: readonly (readonly [string, number, number])[] = [
  ["bottles", 0, 2400],
  ["fill", 0, 375.5],
  ["loss", 0, 0.031],
  ["bulk_price", 0, 3.17],
  ["brix", 0, 67.2],
  ["channels.goal", 6, 0.41],
];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "tare-and-tally-handover-"));
  partner = await demoCopy("partner", "costing:P250-LOFT");
}, 240_000);

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

async function recalculated(
  bytes: Uint8Array,
  name: string,
): Promise<Workbook> {
  const file = join(folder, `${name}.xlsx`);
  writeFileSync(file, bytes);
  const [made] = convertWithLibreOffice([file], {
    to: "xlsx",
    recalculate: true,
  });
  return (await readXlsx(readFileSync(made ?? ""), `${name}.xlsx`)).workbook;
}

const differences = (
  pairs: readonly Pair[],
  copy: Workbook,
  live: Workbook,
): readonly string[] =>
  pairs
    .map((pair) => ({
      pair,
      theirs: valueAt(copy, pair.sheet, pair.inCopy),
      ours: valueAt(live, pair.sheet, pair.live),
    }))
    .filter(({ theirs, ours }) => !agree(theirs, ours))
    .map(
      ({ pair, theirs, ours }) =>
        `${pair.sheet}, ${pair.name} (${pair.label}), ${pair.fate}: ${JSON.stringify(theirs)} in the copy, ${JSON.stringify(ours)} live`,
    );

test("every kept figure of a partner's copy is the live sheet's, worked out anew by LibreOffice", async () => {
  const pairs = pairsOf(partner);
  expect(pairs.filter(({ fate }) => fate === "live").length).toBeGreaterThan(
    150,
  );
  const copy = await recalculated(await writeCopy(partner), "partner");
  expect(differences(pairs, copy, partner.live)).toEqual([]);
}, 240_000);

test("what the partner tries moves the copy as it moves the live sheet", async () => {
  const pairs = pairsOf(partner);
  let copy = partner.workbook;
  let live = partner.live;
  for (const [name, index, value] of tries) {
    const pair = pairs.filter((one) => one.name === name)[index];
    if (!pair) throw new Error(`the copy has no ${name}`);
    expect([name, pair.fate]).toEqual([name, "input"]);
    copy = typed(copy, SHEET, pair.inCopy, value);
    live = typed(live, SHEET, pair.live, value);
  }
  const answered = await recalculated(await writeXlsx(copy), "tried");
  const { workbook } = await calculate(live, gridFunctions);
  const moved = pairs.filter(
    ({ live: at }) =>
      !agree(valueAt(workbook, SHEET, at), valueAt(partner.live, SHEET, at)),
  );
  expect(moved.length).toBeGreaterThan(60);
  expect(moved.filter(({ fate }) => fate === "fixed")).toEqual([]);
  expect(differences(pairs, answered, workbook)).toEqual([]);
}, 240_000);

test("every kept figure of every audience's copy is the live sheets', worked out anew by LibreOffice", async () => {
  const sheets = [
    "costing:P250-LOFT",
    "prices",
    "quote:P250-LOFT",
    "totes:Oatloft Bakery",
  ];
  const worked = await workedOut(demoTables(), {
    asked: readAsked(sheets.join(",")),
  });
  const copies = audienceNames.map((audience) => {
    const mayHaveAccount = audience === "customer" || audience === "lender";
    return handoverCopy(
      {
        ...worked,
        sheets: worked.sheets.filter(
          ({ kind }) => kind !== "totes" || mayHaveAccount,
        ),
      },
      audience,
      noTicks,
    );
  });
  const files = await Promise.all(
    copies.map(async (copy, i) => {
      const file = join(folder, `${audienceNames[i] ?? ""}-all.xlsx`);
      writeFileSync(file, await writeCopy(copy));
      return file;
    }),
  );
  const made = convertWithLibreOffice(files, { to: "xlsx", recalculate: true });
  for (const [i, copy] of copies.entries()) {
    const { workbook } = await readXlsx(readFileSync(made[i] ?? ""), "a.xlsx");
    const pairs = pairsOf(copy);
    expect(pairs.length).toBeGreaterThan(80);
    expect(differences(pairs, workbook, worked.live)).toEqual([]);
  }
}, 300_000);
