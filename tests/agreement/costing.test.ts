import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gridFunctions } from "../../src/apps/grid-functions";
import { costingFacts } from "../../src/book/costing-facts";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../src/hosts/file/write-xlsx";
import { calculate } from "../../src/hosts/grid/calculate";
import { as, type Money } from "../../src/measures/quantity";
import { costingNames, type CostingKey } from "../../src/sheets/costing/names";
import { portable } from "../../src/sheets/portable";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { bottleCost } from "../../src/trade/costing/bottle-cost";
import { channelPrice } from "../../src/trade/pricing/channel-price";
import { demoBook, demoProducts, demoWorkbook } from "../support/demo-workbook";
import { agree, differences } from "../support/agreement";
import { convertWithLibreOffice } from "../support/libre-office";

const BOTTLES = 1200;
const products = demoProducts();
const { book } = demoBook();

let live: Workbook;
let readBack: Workbook;
let recalculated: Workbook;

beforeAll(async () => {
  live = (await calculate(demoWorkbook(products, BOTTLES), gridFunctions))
    .workbook;
  readBack = (await readXlsx(await writeXlsx(live), "demo.xlsx")).workbook;
  const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-agreement-"));
  const file = join(folder, "portable.xlsx");
  writeFileSync(
    file,
    await writeXlsx(portable(demoWorkbook(products, BOTTLES, true))),
  );
  const [converted] = convertWithLibreOffice([file], {
    to: "xlsx",
    recalculate: true,
  });
  recalculated = (
    await readXlsx(readFileSync(converted ?? ""), "portable.xlsx")
  ).workbook;
}, 240_000);

const cellsOf = (workbook: Workbook, sheet: string) =>
  new Map(
    workbook.sheets
      .find(({ name }) => name === sheet)
      ?.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value]),
  );

test("LibreOffice, made to recalculate the portable twin, gives every figure of the grid", () => {
  expect(differences(live, recalculated)).toEqual([]);
});

test("the file read back holds every figure of the grid", () => {
  expect(differences(live, readBack)).toEqual([]);
});

test.each(products)("the trade gives %s the costs of its sheet", (product) => {
  const places = costingNames(live.names, product);
  const value = (key: CostingKey): Stored | undefined => {
    const place = places[key];
    return (
      place && cellsOf(live, place.sheet).get(`${place.row},${place.column}`)
    );
  };
  const facts = costingFacts(book, { product, bottles: BOTTLES });
  const cost = bottleCost(facts.bottle);
  const pairs: readonly (readonly [CostingKey, number | string | undefined])[] =
    [
      ["full_replacement", cost.full.replacement],
      ["full_average", cost.full.average],
      ["full_oldest", cost.full.oldestFirst],
      ["direct_replacement", cost.direct.replacement],
      ["direct_average", cost.direct.average],
      ["direct_oldest", cost.direct.oldestFirst],
      ["case_replacement", cost.perCase.replacement],
      ["overhead", cost.overhead],
      ["chosen_line", cost.choice.chosen?.line.name],
      ["rate", cost.choice.chosen?.rate],
      ["limited_by", cost.choice.chosen?.limitedBy],
    ];
  for (const [key, wanted] of pairs) {
    const found = value(key);
    if (wanted === undefined)
      expect([key, typeof found]).toEqual([key, "object"]);
    else expect([key, found, agree(found, wanted)]).toEqual([key, found, true]);
  }
  for (const channel of facts.channels) {
    const priced = channelPrice(
      channel,
      cost.full.replacement,
      cost.direct.replacement,
      as<Money>(0.99),
    );
    const row = channelRow(product, channel.name);
    if (priced.margin !== undefined)
      expect(agree(row[2], priced.margin)).toBe(true);
    if (priced.markup !== undefined)
      expect(agree(row[4], priced.markup)).toBe(true);
    if (priced.goalPrice !== undefined)
      expect(agree(row[5], priced.goalPrice)).toBe(true);
    if (priced.kept !== undefined)
      expect(row[6] === "meets its goal").toBe(!priced.underGoal);
  }
});

function channelRow(
  product: string,
  channel: string,
): readonly (Stored | undefined)[] {
  const place = costingNames(live.names, product).channels;
  if (!place) throw new Error(`no channels on the sheet of ${product}`);
  const cells = cellsOf(live, place.sheet);
  for (let row = place.row; row < place.row + place.rows; row += 1)
    if (cells.get(`${row},${place.column}`) === channel)
      return Array.from({ length: place.columns }, (_, c) =>
        cells.get(`${row},${place.column + c}`),
      );
  throw new Error(`${channel} is not on the sheet of ${product}`);
}
