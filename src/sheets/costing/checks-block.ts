import type { Block, Line } from "../model";
import { energy } from "./book-references";
import { ownOverheads } from "./season-before";
import type { SyrupFrom } from "./syrup-blocks";

const says = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "check",
  content: { formula: `=${formula}` },
});

const number = (name: string, words: string): string =>
  `IF(ISNUMBER({${name}}),"",${words}&"; ")`;

/** What must hold for the figures to be believed; each says "ok" or what to do. */
export const checksBlock = (from: SyrupFrom, rolled = false): Block => ({
  kind: "lines",
  title: "Checks",
  lines: [
    says(
      "nothing_missing",
      "Nothing is missing",
      'IF({missing}="","ok","withheld: needs "&{missing})',
    ),
    says(
      "cross_foots",
      "The run's bills add up to its bottles",
      'IF(ISNUMBER({cost.direct.replacement}),IF(ABS({need}*{bulk_price}+SUM({materials.order_cost})+SUM({materials.freight})+{crew}*{hours}+{fuel_cost}+{power_cost}-{cost.direct.replacement}*{bottles})<0.005,"ok","the parts and the total differ"),"withheld")',
    ),
    says(
      "brix_is_legal",
      "Brix is 66.0 to 68.9",
      'IF(ISNUMBER({brix}),IF({brix}<66,"below 66.0 °Bx: too thin to pack",IF({brix}>68.9,"above 68.9 °Bx: may crystallise, and over the grade limit","ok")),"no Brix")',
    ),
    says(
      "fill_covers_label",
      "The fill covers the label",
      'IF({fill}>={declared_ml},"ok","filled "&TEXT({fill},"0.0")&" mL, but "&TEXT({declared_ml},"0.0")&" mL is declared")',
    ),
    says(
      "stock_covers_run",
      "Lots in stock cover the run",
      'IF(ISNUMBER({need}),IF(SUM({lots.left})>={need},"ok","short by "&TEXT({need}-SUM({lots.left}),"#,##0")&" lb of "&{kind}),"withheld")',
    ),
    says(
      "freight_entered",
      "Freight is entered for what is bought",
      'IF({freight_blank}="","ok","freight not entered for "&{freight_blank}&" counted as 0")',
    ),
    ...(rolled ? [ownOverheads()] : []),
    says(
      "sheet_is_long_enough",
      "This sheet looks at every row",
      `IF(AND(ROWS(${from === "lots" ? "Lots[Lot]" : "OakBarrels[Barrel]"})<=ROWS({lots.lot}),COUNTIF(ProductMaterials[Product],{product})<=ROWS({materials.part}),COUNTIF(Overheads[Season],{season})<=ROWS({overheads.item}),ROWS(Lines[Line])=COLUMNS({lines.name}),ROWS(Channels[Channel])<=ROWS({channels.channel})),"ok","the book has grown: build this sheet anew")`,
    ),
  ],
});

const missingSyrup = {
  lots: `${number("bulk_price", '"a bulk price for "&{kind}')}&${number("brix", '"a Brix, as no "&{kind}&" lot is in stock"')}`,
  barrels: `{lots.needs&}&IF(COUNTIF({lots.counts},"yes")=0,"an emptied oak barrel; ","")&IF(N({barrel_fills})>0,"","Fill number in Oak barrels; ")&${number("brix", '"a Brix, as no run of "&{product}&" gives one"')}`,
};

/** What the checks stand on. */
export const missingBlock = (from: SyrupFrom): Block => ({
  kind: "lines",
  title: "What is missing",
  lines: [
    {
      name: "missing",
      label: "Missing parts",
      role: "check",
      content: {
        formula: `=IF(COUNTIF(ProductMaterials[Product],{product})=0,"any material for "&{product}&"; ","")&{materials.needs&}&{overheads.needs&}&${missingSyrup[from]}&${number("fill", '"the fill of "&{product}')}&${number("crew_known", '"a line with its crew and wages"')}&${number("heat_known", '"Energy rows for fuel, its price and heat, efficiency, hold loss and start temperature"')}`,
      },
    },
    {
      name: "crew_known",
      label: "Crew cost known",
      role: "calculated",
      content: { formula: '=IF(COUNTIF({lines.crewed},"yes")>0,1,"")' },
    },
    {
      name: "heat_known",
      label: "Figures for heat known",
      role: "calculated",
      content: {
        formula: `=IF(AND(ISNUMBER({fuel_price}),ISNUMBER({fuel_heat}),ISNUMBER({efficiency}),ISNUMBER(${energy('"Hold loss"')}),ISNUMBER(${energy('"Start temperature"')}),ISNUMBER({pack_temperature})),1,"")`,
      },
    },
    {
      name: "freight_blank",
      label: "Bought without freight",
      role: "calculated",
      content: { formula: "={materials.no_freight&}" },
    },
    {
      name: "crossover_text",
      label: "Other lines",
      role: "calculated",
      content: { formula: "={lines.told&}" },
    },
  ],
});
