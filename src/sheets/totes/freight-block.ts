import type { Block } from "../model";
import { column, money, numberAt, textAt, weight } from "./columns";
import type { ToteFacts } from "./facts";

const perPound = "0.0000";

/** Every contract's price a pound at our dock and delivered, so that two prices are held against each other on one footing. */
export const freightBlock = (facts: ToteFacts): Block => {
  const own = (
    key: Parameters<typeof facts.columnIfAny<"toteContracts">>[1],
  ): string | undefined => facts.columnIfAny("toteContracts", key);
  const aGallon =
    facts.gallonsEach === "1"
      ? "{row.price}"
      : `{row.price}/(${facts.gallonsEach})`;
  const known = (names: readonly string[], formula: string): string =>
    `IF(AND(${names.map((name) => `ISNUMBER({row.${name}})`).join(",")}),${formula},"")`;
  return {
    kind: "table",
    name: "freight",
    title: "Dock or delivered: the price of a pound on one footing",
    rows: facts.contracts,
    columns: [
      column("contract", "Contract", "INDEX({contracts.contract},{n})"),
      column("buyer", "Buyer", "INDEX({contracts.buyer},{n})"),
      column("price", "Price", numberAt(own("price")), "#,##0.00##"),
      column("currency", "Money", "INDEX({contracts.currency},{n})"),
      column("holds", "Price holds", textAt(own("delivery"))),
      column("freight", "Freight of a load", numberAt(own("freight")), money),
      column("load", "Load lb", numberAt(own("loadWeight")), weight),
      column(
        "per_lb",
        "Price per lb",
        `IFERROR(IF(ISNUMBER({row.price}),IF({row.basis}="USD per lb",{row.price},IF({row.basis}="CAD per kg",{row.price}*0.45359237,IF(ISNUMBER({row.brix}),IF({row.basis}="USD per gallon",${aGallon}/{row.density},IF({row.basis}="USD per lb of syrup at 66.0 Brix",{row.price}*{row.brix}/66,"")),""))),""),"")`,
        perPound,
      ),
      column(
        "freight_lb",
        "Freight per lb",
        known(
          ["freight", "load"],
          'IF({row.load}>0,{row.freight}/{row.load},"")',
        ),
        perPound,
      ),
      column(
        "dock",
        "At our dock per lb",
        known(
          ["per_lb", "freight_lb"],
          'IF({row.holds}="dock",{row.per_lb},IF({row.holds}="delivered",{row.per_lb}-{row.freight_lb},""))',
        ),
        perPound,
      ),
      column(
        "delivered",
        "Delivered per lb",
        known(
          ["per_lb", "freight_lb"],
          'IF({row.holds}="delivered",{row.per_lb},IF({row.holds}="dock",{row.per_lb}+{row.freight_lb},""))',
        ),
        perPound,
      ),
      column(
        "needs",
        "Needs",
        'IF({row.contract}="","",IF(ISNUMBER({row.freight}),IF(ISNUMBER({row.load}),"","pounds of a load not entered; "),"freight not entered; ")&IF({row.holds}="","dock or delivered not entered; ","")&IF(ISNUMBER({row.per_lb}),"","what its price comes to for a pound; "))',
      ),
      column(
        "brix",
        "Brix it is worked with",
        'IF(ISNUMBER(INDEX({contracts.brix},{n})),INDEX({contracts.brix},{n}),IF(ISNUMBER(INDEX({contracts.floor},{n})),INDEX({contracts.floor},{n}),""))',
        "0.00",
      ),
      column(
        "density",
        "Lb per gallon",
        'IF(ISNUMBER({row.brix}),IF(AND({row.brix}>=60,{row.brix}<=75),SYRUP.POUNDS_PER_GALLON({row.brix}),""),"")',
        perPound,
      ),
      column("basis", "Price basis", textAt(own("basis"))),
    ],
  };
};
