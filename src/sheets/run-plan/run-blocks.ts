import { energy, setting } from "../costing/book-references";
import { linesBlock } from "../costing/lines-block";
import { syrupBlock, type SyrupFrom } from "../costing/syrup-blocks";
import type { Block } from "../model";
import { calculated } from "./calculated";

type Kind<K extends Block["kind"]> = Extract<Block, { readonly kind: K }>;

const PLAN_SYRUP = [
  "brix",
  "lb_per_gal",
  "pack_temperature",
  "shrinkage",
  "hot_fill",
  "lb_per_bottle",
  "purge",
  "bulk_price",
  "fill_seconds",
];

/** The syrup of a costing, as far as a plan needs it, and the pounds of the run with those for bottles that break. */
export function planSyrupBlock(from: SyrupFrom, rolled: boolean): Block {
  const costing = syrupBlock(from, rolled) as Kind<"lines">;
  return {
    ...costing,
    title: "Syrup",
    lines: [
      ...costing.lines.filter(({ name }) => PLAN_SYRUP.includes(name)),
      calculated("breakage", "Filled bottles that break", {
        format: "0.0%",
        formula: "=IF(ISNUMBER({breakage_typed}),{breakage_typed},0)",
      }),
      calculated("filled", "Bottles to fill", {
        unit: "bottles",
        format: "#,##0",
        formula: "=-INT(-ROUND({bottles}/(1-{breakage}),6))",
      }),
      calculated("need", "Syrup for the whole run", {
        unit: "lb",
        format: "#,##0.0",
        formula: "={filled}*{lb_per_bottle}+{purge}",
      }),
      calculated("syrup_short", "Short of it", {
        unit: "lb",
        format: "#,##0.0",
        formula:
          "=IF({need}-SUM({lots.drawn})>{need}*0.000000000001,{need}-SUM({lots.drawn}),0)",
      }),
    ],
  };
}

/** The lines of a costing, and which of the others is the cheapest usual one. */
export function planLinesBlock(count: number): Block {
  const costing = linesBlock(count) as Kind<"comparison">;
  return {
    ...costing,
    lines: [
      ...costing.lines,
      {
        name: "others",
        label: "Another usual line, at",
        format: "#,##0.00",
        content: {
          formula:
            '=IF(AND(ISNUMBER({chosen_no}),ISNUMBER({row.cost})),IF(AND({n}<>{chosen_no},{row.usual}="yes",{row.crew}>0),{row.cost},""),"")',
        },
      },
    ],
  };
}

/** Which other line there is, how long the run takes, and when it is over. */
export const hoursBlock: Block = {
  kind: "lines",
  title: "The other line, and the hours",
  lines: [
    calculated("other_no", "Row of the other line in Lines", {
      formula:
        '=IF(COUNT({lines.others})>0,MATCH(MIN({lines.others}),{lines.others},0),"")',
    }),
    calculated("saved", "Saved against the other line", {
      format: "#,##0.00",
      formula:
        '=IF(ISNUMBER({other_no}),INDEX({lines.cost},{other_no})-{line_cost},"")',
    }),
    calculated("crossover", "Even with the other line at", {
      unit: "bottles",
      format: "#,##0",
      formula:
        '=IF(ISNUMBER({other_no}),INDEX({lines.crossover},{other_no}),"")',
    }),
    calculated("people", "People at the line", {
      formula: "=SUMIFS(Crew[People],Crew[Line],{chosen_line})",
    }),
    calculated("breaks", "Breaks", {
      formula:
        "=IF(AND(N({break_after})>0,ISNUMBER({break_length})),MAX(0,-INT(-ROUND({hours}/{break_after},6))-1),0)",
    }),
    calculated("elapsed", "From start to finish", {
      unit: "h",
      format: "0.00",
      formula: "={hours}+{breaks}*N({break_length})/60",
    }),
    calculated("crew_hours", "Crew-hours of work", {
      format: "0.00",
      formula: "={hours}*{people}",
    }),
    calculated("overtime", "Of them overtime", {
      format: "0.00",
      formula: '=IF(N({day_length})>0,MAX(0,{hours}-{day_length})*{people},"")',
    }),
    calculated("finish", "Finish", {
      format: "yyyy-mm-dd hh:mm",
      formula:
        '=IF(ISNUMBER({start}),{start}-INT(-ROUND({elapsed}*60,6))/1440,"")',
    }),
  ],
};

/** How often the kettle is filled; the purge of the line comes out of the first fill. */
export const kettleBlock: Block = {
  kind: "lines",
  title: "Kettle",
  lines: [
    calculated("kettle_hot", "Kettle working fill", {
      unit: "gal hot",
      format: "#,##0.0",
      formula: `=${setting("Kettle working fill")}`,
    }),
    calculated("kettle_left", "Stays in kettle, pump and hoses", {
      unit: "gal hot",
      format: "#,##0.0",
      formula: `=IFERROR(N(${setting("Kettle left-behind")}),0)`,
    }),
    calculated("kettle_first", "Good bottles from the first fill", {
      format: "#,##0",
      formula:
        "=SYRUP.KETTLE_BOTTLES({kettle_hot},{brix},{pack_temperature},{fill},{kettle_left},{purge},{breakage})",
    }),
    calculated("kettle_later", "Good bottles from each later fill", {
      format: "#,##0",
      formula:
        "=SYRUP.KETTLE_BOTTLES({kettle_hot},{brix},{pack_temperature},{fill},{kettle_left},0,{breakage})",
    }),
    calculated("fills", "Kettle fills", {
      format: "#,##0",
      formula:
        "=IF({bottles}<={kettle_first},1,1+ROUNDUP(({bottles}-{kettle_first})/{kettle_later},0))",
    }),
    calculated("last_bottles", "Bottles from the last fill", {
      format: "#,##0",
      formula:
        "=IF({fills}=1,{bottles},{bottles}-{kettle_first}-({fills}-2)*{kettle_later})",
    }),
    calculated("last_hot", "Hot syrup in the last fill", {
      unit: "gal hot",
      format: "#,##0.0",
      formula:
        "={kettle_left}+({last_bottles}/(1-{breakage})*{fill}/3785.411784+IF({fills}=1,{purge}/{lb_per_gal},0))/(1-{shrinkage})",
    }),
  ],
};

/** What the kettle burns; a costing's heat block has the fuel and the whole run. */
export const fuelBlock: Block = {
  kind: "lines",
  title: "Fuel of the kettle",
  lines: [
    calculated("kettle_lb", "Syrup in a full kettle", {
      unit: "lb",
      format: "#,##0.0",
      formula: "={kettle_hot}*(1-{shrinkage})*{lb_per_gal}",
    }),
    calculated("kettle_fuel", "Fuel to warm a full kettle", {
      unit: "as it is sold",
      format: "0.000",
      formula: `=SYRUP.HEAT_ENERGY({kettle_lb},{brix},IF(ISNUMBER(${energy('"Start temperature"')}),${energy('"Start temperature"')},NA()),{pack_temperature})/{efficiency}/{fuel_heat}`,
    }),
    calculated("kettle_cost", "That costs", {
      format: "#,##0.00",
      formula: "={kettle_fuel}*{fuel_price}",
    }),
    calculated("hold_cost", "An hour of holding costs", {
      format: "#,##0.00",
      formula: "={holding}/{hours}/{efficiency}/{fuel_heat}*{fuel_price}",
    }),
  ],
};
