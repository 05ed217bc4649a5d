import { countDay } from "../../book/newest-day";
import type { Contents } from "../../book/contents";
import type { Block, Line, SheetDescription } from "../model";
import { day, type Reference, weight } from "./columns";
import type { ToteFacts } from "./facts";
import { barrelsBlock, lotsBlock, uses } from "./lots-blocks";
import { toteSheetNames } from "./names";
import { overdrawBlock, overdrawnBlock } from "./overdraw-block";

const line = (
  name: string,
  label: string,
  formula: string,
  hint?: string,
): Line => ({
  name,
  label,
  unit: "lb",
  role: "calculated",
  format: weight,
  content: { formula: `=${formula}` },
  ...(hint === undefined ? {} : { hint }),
});

/** What must come out even, each figure found in two ways. */
const closesBlock = (
  facts: ToteFacts,
  register: Reference,
  asOf: string,
): Block => ({
  kind: "lines",
  title: "Does it close?",
  lines: [
    line(
      "bought",
      "Bought",
      'SUM({lots.in})-SUMIFS({lots.in},{lots.counts},"no")',
    ),
    ...uses.map(([, label], i) =>
      line(`all_${i}`, label, `SUM({lots.use_${i}})`),
    ),
    line("stock", "Left in lots", "SUM({lots.left})"),
    line(
      "open",
      "Bought less all that",
      `ROUND({bought}-${uses.map((_, i) => `{all_${i}}`).join("-")}-{stock},6)`,
      "0 when it closes",
    ),
    line(
      "totes_open",
      "Totes in the register less draws for totes",
      `ROUND(SUM(${register("tickets.net")})-SUMIFS(${facts.column("lotUse", "pounds")},${facts.column("lotUse", "what")},"tote sale",${facts.column("lotUse", "date")},"<="&${asOf}),6)`,
      "0 when every tote has its draws",
    ),
    ...(facts.hasRuns
      ? [
          line(
            "runs_open",
            "Syrup drawn by runs less draws for bottling",
            `ROUND(SUMIFS(${facts.column("runs", "drawn")},${facts.column("runs", "date")},"<="&${asOf})-SUMIFS(${facts.column("lotUse", "pounds")},${facts.column("lotUse", "what")},"bottled",${facts.column("lotUse", "date")},"<="&${asOf}),6)`,
            "0 when every run has its draws",
          ),
        ]
      : []),
    line(
      "unexplained",
      "The count does not explain",
      "SUM({lots.unexplained})",
    ),
  ],
});

/** The mass balance of every lot and barrel in pounds, and of the farm. */
export const describeLots = (
  facts: ToteFacts,
  register: Reference,
  contents: readonly Contents[],
): SheetDescription => {
  const asOf = register("as_of");
  return {
    name: toteSheetNames.lots,
    tabColor: "#5b3a21",
    widths: [34, 13, 12, 10, 10, 9, 9, 11, 9, 10, 9, 10, 10, 12, 27, 9],
    frozenRows: 1,
    print: {
      paper: "letter",
      landscape: true,
      fit: "one page wide",
      headings: { first: 0, rows: 1 },
      foot: toteSheetNames.lots,
    },
    blocks: [
      {
        kind: "title",
        content: { formula: `="Lot balance on "&TEXT(${asOf},"yyyy-mm-dd")` },
      },
      {
        kind: "lines",
        title: "What you can change",
        lines: [
          {
            name: "count_date",
            label: "Stock was counted on",
            role: "input",
            format: day,
            content: countDay(contents) ?? { formula: `=${asOf}` },
            hint: "what was drawn after that day is taken off the count",
            rule: { kind: "date", min: 36526, max: 73050 },
          },
        ],
      },
      closesBlock(facts, register, asOf),
      overdrawnBlock,
      lotsBlock(facts, asOf),
      ...(facts.barrels > 0 ? [barrelsBlock(facts, asOf)] : []),
      overdrawBlock(facts),
    ],
  };
};
