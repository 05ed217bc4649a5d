import { barrelsBlock } from "../costing/barrels-block";
import { lotsBlock } from "../costing/syrup-blocks";
import type { Block, Column } from "../model";
import { columnOf } from "./rebind";

const plain = (
  name: string,
  label: string,
  formula: string,
  format?: string,
): Column => ({
  name,
  label,
  ...(format === undefined ? {} : { format }),
  content: { formula: `=${formula}` },
});

const inLots = (text: string): string => `IF({n}>ROWS(Lots[Lot]),"",${text})`;

/** Every lot by its pool: the syrup kind and whether it is organic. */
export const everyLotBlock = (rows: number): Block => {
  const lots = lotsBlock(rows);
  return {
    kind: "table",
    name: "lots",
    title: "Lots",
    rows,
    columns: [
      columnOf(lots, "lot"),
      plain(
        "pool",
        "Kind and organic",
        inLots(
          'INDEX(Lots[Grade],{n})&"|"&IF(INDEX(Lots[Organic],{n})="yes","yes","no")',
        ),
      ),
      columnOf(lots, "brix"),
      columnOf(lots, "received"),
      plain(
        "left",
        "Left, lb",
        inLots("MAX(0,INDEX(Lots[Left lb],{n}))"),
        "#,##0",
      ),
      columnOf(lots, "price"),
    ],
  };
};

/** Every oak barrel, whatever product it may go into. */
export const everyBarrelBlock = (rows: number): Block => {
  const barrels = barrelsBlock(rows);
  // A costing sheet calls its barrels lots.
  const own = {
    organic: "{row.organic}",
    "lots.kind_in": "{barrels.kind_in}",
  };
  return {
    kind: "table",
    name: "barrels",
    title: "Oak barrels",
    rows,
    columns: [
      columnOf(barrels, "lot"),
      columnOf(barrels, "source"),
      plain(
        "organic",
        "Organic",
        'IF({row.lot}="","",IFERROR(IF(INDEX(Lots[Organic],MATCH({row.source},Lots[Lot],0))="yes","yes","no"),"no"))',
      ),
      columnOf(barrels, "counts", own),
      plain(
        "pool",
        "Kind and organic",
        'IF({row.counts}="yes","barrels|"&{row.organic},"")',
      ),
      ...["received", "left", "out", "months", "kind_in", "bulk_in"].map(
        (name) => columnOf(barrels, name),
      ),
      columnOf(barrels, "price"),
      columnOf(barrels, "today"),
      plain(
        "dearer",
        "Aged price for each dollar of bulk",
        // The aged price is a straight line over the price of what went in, so one dollar tells its slope.
        `IF(ISNUMBER({row.today}),${agedAtOneDollarMore(barrels)}-{row.today},"")`,
        "0.0000",
      ),
      columnOf(barrels, "needs", own),
    ],
  };
};

function agedAtOneDollarMore(barrels: Block): string {
  const { content } = columnOf(barrels, "today", {
    "row.bulk_in": "({row.bulk_in}+1)",
  });
  if (typeof content !== "object")
    throw new Error("An aged price is a formula");
  return content.formula.slice(1);
}

/** Lots and emptied barrels one under the other, as numbers throughout, with the pounds that go before each of them. */
export const stockBlock = (facts: {
  readonly lots: number;
  readonly barrels: number;
}): Block => {
  const { lots, barrels } = facts;
  const either = (lot: string, barrel: string): string =>
    barrels === 0 ? lot : `IF({n}<=${lots},${lot},${barrel})`;
  const figure = (name: string): string =>
    either(`INDEX({lots.${name}},{n})`, `INDEX({barrels.${name}},{n}-${lots})`);
  return {
    kind: "table",
    name: "stock",
    title: "Syrup that may be drawn, oldest first within its kind",
    rows: lots + barrels,
    columns: [
      plain(
        "name",
        "Lot or barrel",
        either("INDEX({lots.lot},{n})", `INDEX({barrels.lot},{n}-${lots})`),
      ),
      plain("pool", "Kind and organic", figure("pool")),
      plain("left", "Left, lb", `N(${figure("left")})`, "#,##0"),
      plain("price", "Price per lb", `N(${figure("price")})`, "0.0000"),
      plain(
        "priced",
        "Priced",
        'IF(AND({row.left}>0,{row.price}<=0),"no","yes")',
      ),
      plain(
        "brix",
        "Brix at 68 °F",
        either("N(INDEX({lots.brix},{n}))", "0"),
        "0.0",
      ),
      plain("received", "Received", `N(${figure("received")})`, "yyyy-mm-dd"),
      plain("no", "No.", "{n}"),
      plain(
        "before",
        "Drawn before it, lb",
        'SUMIFS({stock.left},{stock.pool},{row.pool},{stock.received},"<"&{row.received})+SUMIFS({stock.left},{stock.pool},{row.pool},{stock.received},{row.received},{stock.no},"<"&{row.no})',
        "#,##0",
      ),
    ],
  };
};
