import type { Block, Column } from "../model";
import { column, day, numberAt, textAt, weight } from "./columns";
import type { ToteFacts } from "./facts";

/** What becomes of syrup, in the words of the table Lot use. */
export const uses = [
  ["bottled", "Bottled"],
  ["tote sale", "Totes"],
  ["into oak barrel", "Into oak"],
  ["sold otherwise", "Sold otherwise"],
  ["lost or adjusted", "Lost"],
  ["used before the season", "Used before"],
] as const;

/** The columns of both tables before their working: name, two facts, in, the uses, out, left, two of the count, in words. */
export const LOT_COLUMNS = 4 + uses.length + 5;

const useColumns = (facts: ToteFacts, asOf: string): readonly Column[] =>
  uses.map(([what, label], i) =>
    column(
      `use_${i}`,
      label,
      `IF({row.counts}="yes",SUMIFS(${facts.column("lotUse", "pounds")},${facts.column("lotUse", "from")},{row.name},${facts.column("lotUse", "what")},"${what}",${facts.column("lotUse", "date")},"<="&${asOf}),"")`,
      weight,
    ),
  );

const allUses = uses.map((_, i) => `{row.use_${i}}`).join("+");

const afterwards = (facts: ToteFacts, asOf: string): readonly Column[] => {
  const drawn = (from: string): string =>
    `SUMIFS(${facts.column("lotUse", "pounds")},${facts.column("lotUse", "from")},{row.name},${facts.column("lotUse", "date")},">"&${from},${facts.column("lotUse", "date")},"<="&${asOf})`;
  const found = facts.hasCount
    ? `INDEX(${facts.column("stockCount", "counted")},MATCH({row.name},${facts.column("stockCount", "lot")},0))`
    : '""';
  return [
    column(
      "left",
      "Left lb",
      'IF({row.counts}="yes",ROUND({row.in}-{row.out},10),"")',
      weight,
    ),
    column(
      "counted",
      "Counted lb",
      `IF(AND({row.counts}="yes",{count_date}<=${asOf}),IFERROR(IF(ISNUMBER(${found}),${found}-${drawn("{count_date}")},""),""),"")`,
      weight,
    ),
    column(
      "unexplained",
      "Not explained, lb",
      'IF({row.counts}="yes",IF(ISNUMBER({row.counted}),ROUND({row.left}-{row.counted},10),0),"")',
      weight,
    ),
    column(
      "says",
      "In words",
      'IF({row.counts}="yes",IF({row.left}<-0.000001,"overdrawn by "&TEXT(-{row.left},"#,##0")&" lb",IF(ABS({row.unexplained})>0.5,"the count is "&TEXT(-{row.unexplained},"+#,##0;-#,##0")&" lb off","")),"")',
    ),
  ];
};

/** Every lot by the day: what came in, what became of it, what is left. */
export const lotsBlock = (facts: ToteFacts, asOf: string): Block => ({
  kind: "table",
  name: "lots",
  title: "Lots: in, out, left",
  rows: facts.lots,
  columns: [
    column("name", "Lot", textAt(facts.column("lots", "lot"))),
    column("grade", "Grade", textAt(facts.column("lots", "grade"))),
    column(
      "since",
      "Received",
      numberAt(facts.column("lots", "received")),
      day,
    ),
    column("in", "In lb", numberAt(facts.column("lots", "net")), weight),
    ...useColumns(facts, asOf),
    column("out", "Out lb", `IF({row.counts}="yes",${allUses},"")`, weight),
    ...afterwards(facts, asOf),
    counts(asOf),
    column(
      "overdrawn",
      "Overdrawn lots so far",
      '{row_above.overdrawn}+IF({row.counts}="yes",IF({row.left}<-0.000001,1,0),0)',
      "0",
    ),
  ],
});

/** The same for oak barrels, with what the oak took. */
export const barrelsBlock = (facts: ToteFacts, asOf: string): Block => ({
  kind: "table",
  name: "barrels",
  title: "Oak barrels: in, out, left",
  rows: facts.barrels,
  columns: [
    column("name", "Barrel", textAt(facts.column("oakBarrels", "barrel"))),
    column(
      "emptied",
      "Emptied",
      numberAt(facts.column("oakBarrels", "emptiedOn")),
      day,
    ),
    column(
      "since",
      "Filled",
      numberAt(facts.column("oakBarrels", "filledOn")),
      day,
    ),
    column(
      "in",
      "In lb",
      numberAt(facts.column("oakBarrels", "poundsIn")),
      weight,
    ),
    ...useColumns(facts, asOf),
    column(
      "out",
      "Out lb",
      `IF({row.counts}="yes",${allUses}+{row.oak},"")`,
      weight,
    ),
    ...afterwards(facts, asOf),
    counts(asOf),
    column(
      "oak",
      "Taken by oak, lb",
      `IF({row.counts}="yes",IF(ISNUMBER({row.emptied}),IF(AND({row.emptied}<=${asOf},ISNUMBER({row.came_out})),MAX(0,{row.in}-{row.came_out}),0),0),"")`,
      weight,
    ),
    column(
      "came_out",
      "Came out, lb",
      numberAt(facts.column("oakBarrels", "poundsOut")),
      weight,
    ),
  ],
});

const counts = (asOf: string): Column =>
  column(
    "counts",
    "There by the day",
    `IF({row.name}="","",IF(AND(ISNUMBER({row.since}),ISNUMBER({row.in})),IF({row.since}<=${asOf},"yes","no"),"no"))`,
  );
