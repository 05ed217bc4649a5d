import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  channelsBook,
  overheadsBook,
  yearsBook,
} from "../../src/apps/cli/year-workbooks";
import { gridFunctions } from "../../src/apps/grid-functions";
import { productChannels } from "../../src/book/channel-orders";
import { overheadsAnswer } from "../../src/book/overheads-answer";
import { yearsOf } from "../../src/book/year-bridge";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../src/hosts/file/write-xlsx";
import { calculate } from "../../src/hosts/grid/calculate";
import { KG_PER_LB } from "../../src/measures/units";
import { channelsPlaces } from "../../src/sheets/channels/channels-sheet";
import type { NamedPlace } from "../../src/sheets/costing/names";
import { overheadsPlaces } from "../../src/sheets/overheads/overheads-sheet";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { yearsPlaces } from "../../src/sheets/year-to-year/years-sheet";
import { demoTables } from "../book/csv-folder";
import { demoBook } from "../support/demo-workbook";
import { agree, differences } from "../support/agreement";
import { convertWithLibreOffice } from "../support/libre-office";

const contents = demoTables();
const { book } = demoBook();
const run = "RUN-32";
const channelsAsked = {
  product: "G250-AM",
  bottles: 12_000,
  mailer: 1.35,
  salesTax: 0.06,
  shippingFurther: 0.9,
} as Parameters<typeof channelsBook>[1];

/** Two products: one drawn from lots, one from oak barrels that only one season ran. */
const books = {
  overheads: (plain: boolean) => overheadsBook(contents, { run }, plain),
  channels: (plain: boolean) => channelsBook(contents, channelsAsked, plain),
  years: (plain: boolean) => yearsBook(contents, { product: "G750-AM" }, plain),
  barrels: (plain: boolean) =>
    yearsBook(contents, { product: "B250-OAK" }, plain),
} as const;
type Which = keyof typeof books;
const all = Object.keys(books) as readonly Which[];

const live = new Map<Which, Workbook>();
const readBack = new Map<Which, Workbook>();
const recalculated = new Map<Which, Workbook>();

beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-agreement-"));
  const files: string[] = [];
  for (const which of all) {
    const { workbook } = await calculate(books[which](false), gridFunctions);
    live.set(which, workbook);
    const bytes = await writeXlsx(workbook);
    readBack.set(which, (await readXlsx(bytes, "book.xlsx")).workbook);
    const file = join(folder, `${which}.xlsx`);
    writeFileSync(file, await writeXlsx(books[which](true)));
    files.push(file);
  }
  const converted = convertWithLibreOffice(files, {
    to: "xlsx",
    recalculate: true,
  });
  for (const [i, which] of all.entries())
    recalculated.set(
      which,
      (await readXlsx(readFileSync(converted[i] ?? ""), "book.xlsx")).workbook,
    );
}, 400_000);

const cellsOf = (workbook: Workbook | undefined, sheet: string) =>
  new Map(
    workbook?.sheets
      .find(({ name }) => name === sheet)
      ?.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value]),
  );

test.each(all)(
  "LibreOffice, made to recalculate the plain twin of %s, gives every figure of the grid",
  (which) =>
    expect(differences(live.get(which), recalculated.get(which))).toEqual([]),
);

test.each(all)("the file of %s read back holds every figure", (which) =>
  expect(differences(live.get(which), readBack.get(which))).toEqual([]),
);

/** The rows of a named place of a worked-out book. */
function rowsAt(
  which: Which,
  place: NamedPlace | undefined,
): readonly (readonly Stored[])[] {
  if (!place) throw new Error("the sheet has no such name");
  const cells = cellsOf(live.get(which), place.sheet);
  return Array.from({ length: place.rows }, (_, r) =>
    Array.from(
      { length: place.columns },
      (__, c) => cells.get(`${place.row + r},${place.column + c}`) ?? null,
    ),
  );
}

const expectAgree = (found: Stored | undefined, wanted: number | undefined) =>
  expect([found, agree(found, wanted ?? "")]).toEqual([found, true]);

test("the trade gives the sheet's overheads under each driver, its bills and its lines", () => {
  const answer = overheadsAnswer(book, { run });
  const places = overheadsPlaces(live.get("overheads")?.names ?? []);
  const ways = rowsAt("overheads", places.ways);
  expect(ways).toHaveLength(answer.compared.ways.length);
  answer.compared.ways.forEach(({ shared, ofRun }, i) => {
    expectAgree(ways[i]?.[1], shared?.whole);
    expectAgree(ways[i]?.[2], shared?.rate);
    expectAgree(ways[i]?.[4], ofRun);
  });
  const bills = rowsAt("overheads", places.bills);
  answer.bills.forEach((bill, i) => {
    expect(bills[i]?.[0]).toBe(bill.row.item);
    expectAgree(bills[i]?.[3], bill.toBulk);
    expectAgree(bills[i]?.[4], bill.toRuns);
    expectAgree(bills[i]?.[5], bill.toLots);
    expectAgree(bills[i]?.[6], bill.gap);
  });
  const hours = rowsAt("overheads", places.hours);
  const changes = rowsAt("overheads", places.changes);
  answer.lines.forEach((line, i) => {
    expectAgree(hours[i]?.[1], line.hours);
    expectAgree(hours[i]?.[2], line.bills);
    if (line.rate !== undefined) expectAgree(hours[i]?.[3], line.rate);
    expectAgree(hours[i]?.[4], line.crew);
    expectAgree(changes[i]?.[4], line.change?.total);
  });
});

test("the trade gives what the sheet says each channel leaves", () => {
  const answer = productChannels(book, channelsAsked);
  const places = channelsPlaces(live.get("channels")?.names ?? [], "G250-AM");
  const orders = rowsAt("channels", places.orders);
  const small = rowsAt("channels", places.small);
  const chain = rowsAt("channels", places.chain);
  answer.channels.forEach((channel, i) => {
    const { usual, firstPays, firstPaysDirect, shelf, onShelf } = channel;
    expect(orders[i]?.[0]).toBe(channel.channel.channel);
    expectAgree(orders[i]?.[1], channel.price);
    expectAgree(orders[i]?.[5], usual?.fees);
    expectAgree(orders[i]?.[6], usual?.goodsFees);
    expectAgree(orders[i]?.[7], usual?.sending);
    expectAgree(orders[i]?.[9], usual?.left);
    expectAgree(orders[i]?.[11], firstPays);
    expectAgree(orders[i]?.[12], firstPaysDirect);
    channel.sizes.forEach(({ left }, k) =>
      expectAgree(small[i]?.[k + 1], left),
    );
    if (shelf) {
      const row = chain.find(([name]) => name === channel.channel.channel);
      expectAgree(row?.[3], shelf.invoice);
      expectAgree(row?.[4], shelf.broker);
      expectAgree(row?.[5], shelf.promotion);
      expectAgree(row?.[7], shelf.left);
      expectAgree(row?.[10], onShelf);
    }
  });
  expect(answer.channels.filter(({ usual }) => usual)).toHaveLength(4);
});

test("the trade gives the sheet's two seasons and every step between them", () => {
  const [product] = yearsOf(book, { product: "G750-AM" }).products;
  const places = yearsPlaces(live.get("years")?.names ?? [], "G750-AM");
  const sides = rowsAt("years", places.sides);
  const steps = rowsAt("years", places.steps);
  const { before, after, bridge } = product ?? {};
  [before, after].forEach((side, c) => {
    expectAgree(sides[0]?.[c + 1], side?.bottles);
    expectAgree(sides[1]?.[c + 1], (side?.cost?.syrupPrice ?? NaN) * KG_PER_LB);
    expectAgree(sides[2]?.[c + 1], (side?.cost?.filled ?? NaN) / KG_PER_LB);
    expectAgree(sides[3]?.[c + 1], (side?.cost?.drawn ?? NaN) / KG_PER_LB);
    expectAgree(sides[5]?.[c + 1], side?.cost?.materials);
    expectAgree(sides[6]?.[c + 1], side?.cost?.labour);
    expectAgree(sides[7]?.[c + 1], side?.cost?.heat);
    expectAgree(sides[8]?.[c + 1], side?.cost?.overhead);
    expectAgree(sides[9]?.[c + 1], side?.cost?.ownBills);
  });
  expectAgree(sides[10]?.[1], bridge?.before);
  expectAgree(sides[10]?.[2], bridge?.after);
  bridge?.steps.forEach(({ name, change }, i) => {
    expect(steps[i]?.[0]).toBe(name);
    expect(typeof steps[i]?.[1]).toBe("number");
    // A step is a small difference of large costs, so it is held to a billionth of a cent.
    expect(Math.abs(Number(steps[i]?.[1]) - change)).toBeLessThan(1e-11);
  });
});

test("a product that one season did not run is withheld on the sheet as in the trade", () => {
  const [product] = yearsOf(book, { product: "B250-OAK" }).products;
  expect(product?.missing).toEqual(["a run of B250-OAK in 2025"]);
  const places = yearsPlaces(live.get("barrels")?.names ?? [], "B250-OAK");
  const checks = rowsAt("barrels", places.checks);
  expect(checks[0]?.[1]).toBe("withheld: needs a run of B250-OAK in 2025; ");
  expect(rowsAt("barrels", places.steps).at(-1)?.[1]).toBe("");
});

test("the season an oak product was run costs the same on the sheet and in the trade", () => {
  const { after } = yearsOf(book, { product: "B250-OAK" }).products[0] ?? {};
  expect(after?.missing).toEqual([]);
  const places = yearsPlaces(live.get("barrels")?.names ?? [], "B250-OAK");
  const sides = rowsAt("barrels", places.sides);
  expectAgree(sides[1]?.[2], (after?.cost?.syrupPrice ?? NaN) * KG_PER_LB);
  expectAgree(sides[5]?.[2], after?.cost?.materials);
});
