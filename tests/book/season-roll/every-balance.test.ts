import type { CellContent, Contents } from "../../../src/book/contents";
import { readBook } from "../../../src/book/read";
import {
  openingOf,
  rollSeason,
} from "../../../src/book/season-roll/roll-season";
import { KG_PER_LB } from "../../../src/measures/units";
import { demoTables } from "../csv-folder";

const demo = readBook(demoTables()).book;
const roll = rollSeason(demoTables(), 2027);
const closing = (what: string) =>
  roll.closing.filter((one) => one.what === what);

/** The rolled tables with the cells of one row changed, or the row taken out. */
function tampered(
  table: string,
  at: (cell: (heading: string) => CellContent) => boolean,
  changes: Readonly<Record<string, CellContent>> | undefined,
): readonly Contents[] {
  let met = 0;
  const tables = roll.contents.map((contents): Contents => {
    if (contents.name !== table) return contents;
    const rows = contents.rows.flatMap((row) => {
      const cell = (heading: string): CellContent =>
        row[contents.headings.indexOf(heading)] ?? null;
      if (met > 0 || !at(cell)) return [row];
      met += 1;
      return changes === undefined
        ? []
        : [
            contents.headings.map((heading, i) =>
              heading in changes
                ? (changes[heading] ?? null)
                : (row[i] ?? null),
            ),
          ];
    });
    return { ...contents, rows };
  });
  if (met === 0) throw new Error(`no such row in ${table}`);
  return tables;
}

test.each<[string, Parameters<typeof tampered>, RegExp]>([
  [
    "what is left of a lot",
    ["Lots", (cell) => cell("Lot") === "26-08", { "Net lb": 9000 }],
    /Left of lot 26-08, closing 5,128 lb and opening [-\d,]+ lb/,
  ],
  [
    "what is left in a barrel",
    ["OakBarrels", (cell) => cell("Barrel") === "OAK-07", { "Pounds in": 500 }],
    /Left in barrel OAK-07, closing 549 lb and opening 500 lb/,
  ],
  [
    "what is left of a contract",
    [
      "ToteContracts",
      (cell) => cell("Contract") === "C-2603",
      { "Contract lb": 1 },
    ],
    /Left to send on contract C-2603, closing [\d,]+ lb/,
  ],
  [
    "what a buyer owes in one currency",
    [
      "Payments",
      (cell) => cell("Customer") === "Larkspindle Foods (Canada)",
      undefined,
    ],
    /Owed by Larkspindle Foods \(Canada\), closing 11,822\.06 CAD/,
  ],
  [
    "deposits on totes",
    [
      "ToteShipments",
      (cell) =>
        Number(cell("Tote deposit")) > 0 && cell("Tote returned on") === null,
      { "Tote deposit": 1 },
    ],
    /Deposits on them all, closing [\d,.]+ USD/,
  ],
  [
    "totes out",
    [
      "ToteShipments",
      (cell) =>
        Number(cell("Tote deposit")) > 0 && cell("Tote returned on") === null,
      { "Tote returned on": 46_380 },
    ],
    /Totes out with buyers all, closing \d+ totes and opening \d+ totes/,
  ],
  [
    "parts on hand",
    ["Parts", (cell) => cell("Part") === "BTL-250", { "On hand": 6047 }],
    /Part on hand BTL-250, closing 6,048 pieces and opening 6,047 pieces/,
  ],
])(
  "a new book off in %s is stopped, and the figure is named",
  (_, how, says) => {
    expect(() => openingOf(roll, tampered(...how))).toThrow(says);
    expect(() => openingOf(roll, tampered(...how))).toThrow(
      "Nothing was written",
    );
  },
);

test("deposits are the farm's own: 120 on each tote that has not come back", () => {
  // Source: tote_shipments.csv, deposit_usd of the rows without returned_on.
  const out = demo.toteShipments.filter(
    ({ deposit, returnedOn }) =>
      deposit !== undefined && deposit > 0 && returnedOn === undefined,
  );
  expect(closing("Deposits on them")).toEqual([
    expect.objectContaining({
      unit: "USD",
      amount: out.reduce((sum, { deposit = 0 }) => sum + deposit, 0),
    }),
  ]);
  expect(closing("Totes out with buyers")[0]?.amount).toBe(out.length);
});

test("of each contract is left what was agreed less what was sent", () => {
  for (const { name, amount } of closing("Left to send on contract")) {
    const agreed = demo.toteContracts.find(({ contract }) => contract === name);
    const sent = demo.toteShipments
      .filter(({ contract }) => contract === name)
      .reduce((sum, { gross, tare }) => sum + (gross - tare), 0);
    expect(amount).toBeCloseTo(((agreed?.weight ?? 0) - sent) / KG_PER_LB, 4);
  }
  expect(closing("Left to send on contract")).toHaveLength(4);
});

test("every part's stock, every price with its date and every break of a part's price goes along as it stands", () => {
  const next = readBook(roll.contents).book;
  const bare = <R extends { readonly place: string }>(rows: readonly R[]) =>
    rows.map(({ place: _, ...row }) => row);
  expect(bare(next.parts)).toEqual(bare(demo.parts));
  expect(bare(next.prices)).toEqual(bare(demo.prices));
  expect(bare(next.partPrices)).toEqual(bare(demo.partPrices));
  expect(bare(next.bulkPrices)).toEqual(bare(demo.bulkPrices));
  expect(next.prices.length).toBeGreaterThan(50);
});

test("what was used before the season is called that, and no sale", () => {
  const next = readBook(roll.contents).book;
  const before = next.lotUse.filter(({ to }) => to === "used before 2027");
  expect(before.length).toBeGreaterThan(5);
  expect(new Set(before.map(({ what }) => what))).toEqual(
    new Set(["used before the season"]),
  );
  expect(next.lotUse.map(({ what }) => what)).not.toContain("sold otherwise");
});
