import { scalds } from "../../functions/caution";
import type { Block, Line, SheetDescription } from "../model";
import type { RunPlanFacts, RunPlanSheetQuestion } from "./facts";
import {
  checksBlock,
  linesBlock,
  lotsBlock,
  materialsBlock,
  type Working,
} from "./plan-tables";

/** The page for the floor: what to change at its head, every answer under it, one printed page. */
export const describePlan = (
  facts: RunPlanFacts,
  question: RunPlanSheetQuestion,
  name: string,
  w: Working,
): SheetDescription => ({
  name,
  tabColor: "#b06a2c",
  widths: [42, 17, 11, 10, 10, 10, 12, 36],
  frozenRows: 1,
  print: {
    paper: "letter",
    landscape: false,
    fit: "one page",
    foot: `Run plan of ${facts.product}`,
  },
  blocks: [
    {
      kind: "title",
      content: {
        formula: `="Run plan: "&${w("description")}&" ("&${w("product")}&")"`,
      },
    },
    { kind: "notes", lines: scalds.split(/(?<=\.) /) },
    inputsBlock(facts, question),
    answersBlock(w),
    linesBlock(Math.max(1, facts.lines), w),
    lotsBlock(w),
    materialsBlock(facts.materials, w),
    checksBlock(w, facts),
  ],
});

const inputsBlock = (
  facts: RunPlanFacts,
  { bottles, start, line, asOf }: RunPlanSheetQuestion,
): Block => ({
  kind: "lines",
  title: "What you can change",
  lines: [
    {
      name: "bottles",
      label: "Bottles in this run",
      unit: "bottles",
      role: "input",
      format: "#,##0",
      content: bottles,
      rule: { kind: "whole number", min: 1, max: 10_000_000 },
      ruleSays: "A whole number of bottles, 1 or more.",
    },
    {
      name: "start",
      label: "Set-up begins",
      role: "input",
      format: "yyyy-mm-dd hh:mm",
      content: start,
      hint: "blank = hours only, no finish, no order dates",
      rule: { kind: "number", min: 36526, max: 73050 },
      ruleSays: "A day and a time, such as 2026-11-26 07:00.",
    },
    {
      name: "line",
      label: "Line to run on",
      role: "input",
      content: line,
      hint: "blank = the cheapest of your usual lines",
      rule: { kind: "list", choices: facts.lineNames },
      ruleSays: "One of the lines in the Lines table, or blank.",
    },
    {
      name: "as_of",
      label: "Prices as of",
      role: "input",
      format: "yyyy-mm-dd",
      content: asOf ?? { formula: `=${facts.newestDay}` },
      hint: "the newest date in the book, unless you type another",
      rule: { kind: "date", min: 36526, max: 73050 },
    },
  ],
});

const answersBlock = (w: Working): Block => ({
  kind: "lines",
  title: "The run",
  lines: [
    shown(w, "chosen_line", "Run it on", { role: "result" }),
    shown(w, "rate", "Rate", { unit: "bottles per h", format: "#,##0" }),
    shown(w, "limited_by", "Limited by"),
    shown(w, "saved", "Saved against the other line", {
      format: "#,##0.00",
    }),
    {
      ...shown(w, "crossover", "Even with the other line at", {
        format: "#,##0",
      }),
      unit: "bottles",
    },
    {
      name: "crossover_cases",
      label: "That is",
      unit: "cases",
      role: "calculated",
      format: "#,##0",
      content: {
        formula: `=IF(ISNUMBER({crossover}),ROUNDUP({crossover}/${w("per_case")},0),"")`,
      },
    },
    shown(w, "crew_hours", "Crew-hours of work", {
      role: "result",
      format: "0.00",
    }),
    shown(w, "overtime", "Of them overtime", { format: "0.00" }),
    shown(w, "finish", "Clean-down is over", {
      role: "result",
      format: "yyyy-mm-dd hh:mm",
    }),
    shown(w, "hot_fill", "Fill hot, a bottle", {
      unit: "mL",
      format: "#,##0.0",
    }),
    shown(w, "fills", "Kettle fills", { role: "result", format: "#,##0" }),
    shown(w, "kettle_first", "Good bottles from the first", {
      format: "#,##0",
    }),
    shown(w, "last_hot", "Hot syrup in the last", {
      unit: "gal",
      format: "#,##0.0",
    }),
    shown(w, "fuel_cost", "Fuel for the run", { format: "#,##0.00" }),
    shown(w, "full_pallets", "Full pallets", { format: "#,##0" }),
    {
      name: "last_pallet",
      label: "The last pallet",
      role: "calculated",
      content: {
        formula: `=IF(${w("last_cases")}+${w("loose")}=0,"none",TEXT(${w("last_cases")},"#,##0")&" cases"&IF(${w("loose")}>0," and "&${w("loose")}&" bottles",""))`,
      },
    },
    shown(w, "pallet_lb", "A full pallet weighs", {
      unit: "lb",
      format: "#,##0",
    }),
    shown(w, "last_lb", "The last pallet weighs", {
      unit: "lb",
      format: "#,##0",
    }),
    shown(w, "lot_code", "Lot code", { role: "result" }),
    shown(w, "best_by", "Best by", { role: "result", format: "yyyy-mm-dd" }),
    shown(w, "bottle_barcode", "Barcode of a bottle"),
    shown(w, "case_barcode", "Barcode of a case"),
  ],
});

const shown = (
  w: Working,
  name: string,
  label: string,
  said: {
    readonly unit?: string;
    readonly format?: string;
    readonly role?: Line["role"];
  } = {},
): Line => ({
  name,
  label,
  role: "calculated",
  content: { formula: `=${w(name)}` },
  ...said,
});
