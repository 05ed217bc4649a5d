import { part } from "../costing/book-references";
import { materialsBlock } from "../costing/materials-block";
import type { Block, Column } from "../model";
import { columnOf, formulaOf } from "../prices/rebind";

const forPart = (text: string): string => `IF({row.part}="","",${text})`;
const whenShort = (text: string, otherwise = '""'): string =>
  forPart(`IF(N({row.short})>0,${text},${otherwise})`);

const FROM = "PartPrices[From quantity]";
const IS_PART = "(PartPrices[Part]={row.part})";

/** An order for what is short is worked out as a costing works out one for a whole run. */
const AS_BOUGHT = { "row.bought": '"for each run"' };

/** What a run pulls of each part, what is short, and the order that covers it. */
export function pullBlock(rows: number): Block {
  const costing = materialsBlock(rows);
  const own = (
    name: string,
    label: string,
    formula: string,
    format = "#,##0",
  ): Column => ({
    name,
    label,
    format,
    content: { formula: `=${formula}` },
  });
  return {
    kind: "table",
    name: "materials",
    title: "Materials",
    rows,
    columns: [
      columnOf(costing, "title"),
      columnOf(costing, "part"),
      columnOf(costing, "description"),
      columnOf(costing, "row"),
      columnOf(costing, "per"),
      columnOf(costing, "needed"),
      columnOf(costing, "bought"),
      columnOf(costing, "carton"),
      columnOf(costing, "drawn"),
      own(
        "pieces_needed",
        "Whole pieces with spoilage",
        forPart(
          `IFERROR(SYRUP.PIECES_TO_DRAW({row.needed},1,${part("Spoilage")},1),"")`,
        ),
      ),
      own(
        "on_hand",
        "On hand",
        forPart(
          `IFERROR(IF(ISNUMBER(${part("On hand")}),${part("On hand")},""),"")`,
        ),
      ),
      own(
        "due",
        "Ordered already",
        forPart("SUMIFS({ordered.pieces},{ordered.part},{row.part})"),
      ),
      own(
        "short",
        "Short",
        forPart(
          'IF(AND(ISNUMBER({row.drawn}),ISNUMBER({row.on_hand})),IF({row.on_hand}+{row.due}>={row.pieces_needed},0,{row.drawn}-{row.on_hand}-{row.due}),"")',
        ),
      ),
      own(
        "least",
        "Not below the minimum",
        forPart(
          `IF(ISNUMBER({row.short}),MAX({row.short},IFERROR(N(${part("Minimum order")}),0)),"")`,
        ),
      ),
      own(
        "order_cost",
        "Order costs",
        whenShort(formulaOf(costing, "order_cost", AS_BOUGHT)),
        "#,##0.00",
      ),
      own(
        "buy",
        "Order",
        whenShort(
          `IF(ISNUMBER({row.order_cost}),${formulaOf(costing, "pieces", AS_BOUGHT)},ROUNDUP({row.least}/{row.carton},0)*{row.carton})`,
          'IF(ISNUMBER({row.short}),0,"")',
        ),
      ),
      own(
        "enough",
        "Least order that would do",
        whenShort(
          `IF(ISNUMBER({row.order_cost}),ROUNDUP(MAX({row.least},SUMPRODUCT(MIN((PartPrices[Part]<>{row.part})*10^12+${FROM})))/{row.carton},0)*{row.carton},"")`,
        ),
      ),
      own(
        "saving",
        "Saved by buying up",
        whenShort(
          `IF(ISNUMBER({row.enough}),IF({row.buy}>{row.enough},{row.enough}*AVERAGEIFS(PartPrices[Price each],PartPrices[Part],{row.part},${FROM},SUMPRODUCT(MAX(${IS_PART}*(${FROM}<={row.enough})*${FROM})))-{row.order_cost},0),"")`,
        ),
        "#,##0.00",
      ),
      own(
        "left_over",
        "Left over after the run",
        whenShort("{row.on_hand}+{row.due}+{row.buy}-{row.pieces_needed}"),
      ),
      own(
        "order_by",
        "Order by",
        whenShort(
          `IF(AND(ISNUMBER({start}),ISNUMBER(${part("Lead days")})),INT({start})-${part("Lead days")},"")`,
        ),
        "yyyy-mm-dd",
      ),
      {
        name: "advice",
        label: "What to do",
        role: "aside",
        content: {
          formula: `=${whenShort(
            'IF(ISNUMBER({row.order_by}),IF({row.order_by}<{as_of},"late: order at once; ",""),"")&IF(N({row.saving})>0,"next break saves $"&TEXT({row.saving},"#,##0.00")&", leaves "&TEXT({row.left_over},"#,##0")&" over","")',
          )}`,
        },
      },
      {
        name: "needs",
        label: "Missing",
        role: "check",
        content: {
          formula: `=${forPart(
            `IF({row.description}="not in Parts",{row.part}&" in Parts; ",IF(NOT(ISNUMBER({row.drawn})),"spoilage or quantity of "&{row.part}&"; ",IF(NOT(ISNUMBER({row.on_hand})),"On hand of "&{row.part}&"; ",IF(N({row.short})>0,IF(ISNUMBER({row.order_cost}),"","a price for "&{row.part}&"; ")&IF(ISNUMBER(${part("Lead days")}),"","Lead days of "&{row.part}&"; "),""))))`,
          )}`,
        },
      },
    ],
  };
}
