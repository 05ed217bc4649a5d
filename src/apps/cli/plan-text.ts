import { findingText, type Finding } from "../../book/finding";
import { scalds } from "../../functions/caution";
import type { PlanAnswer } from "./plan-answer";

/** A run plan as a person reads it at a terminal; what the book itself holds is only counted. */
export const planText = (
  answer: PlanAnswer,
  found: readonly Finding[],
): readonly string[] => [
  `${answer.product}, a run of ${count(answer.bottles)} bottles, prices as of ${answer.asOf}`,
  ...lineText(answer),
  "",
  ...hoursText(answer),
  ...kettleText(answer),
  ...packedText(answer),
  "",
  row("Lots, oldest first", ["lb", "left after, lb"]),
  ...answer.lots.map(({ lot, lb, leftLb }) =>
    row(lot, [count(lb, 1), count(leftLb, 1)]),
  ),
  ...(answer.syrupLb === null ? ["The syrup is left open."] : []),
  "",
  row("Materials", ["pull", "on hand", "short", "order", "order by"]),
  ...answer.materials.map((m) =>
    row(m.part, [
      count(m.need),
      count(m.onHand),
      count(m.short),
      m.buy === 0 ? "–" : count(m.buy),
      m.orderBy ?? "–",
    ]),
  ),
  ...findingLines(answer.findings.filter((f) => !found.includes(f))),
  ...(found.length === 0
    ? []
    : [
        "",
        `The book itself has ${count(found.length)} findings; --json lists them.`,
      ]),
];

function lineText({
  line,
  lines,
  saved,
  crossoverBottles: from,
  crossoverCases: cases,
  bottles,
}: PlanAnswer): readonly string[] {
  if (!line) return ["Line: none can be chosen"];
  return [
    `Line: ${line.name}, ${count(Math.round(line.ratePerHour))} an hour, limited by ${line.limitedBy}`,
    ...(saved
      ? [
          `${saved.amount >= 0 ? "Saves" : "Costs"} $${Math.abs(saved.amount).toFixed(2)} ${saved.amount >= 0 ? "against" : "more than"} ${saved.against}${from === null ? "; no run size changes that" : `; even at ${count(from)} bottles, ${count(cases)} cases`}`,
        ]
      : []),
    "",
    row("Line", ["cost of the run", "a bottle"]),
    ...lines.map(({ name, cost, usual }) =>
      row(usual ? name : `${name} (only when asked)`, [
        cost.toFixed(2),
        (cost / bottles).toFixed(4),
      ]),
    ),
  ];
}

function hoursText(answer: PlanAnswer): readonly string[] {
  const { hours, people, crewHours, breaks, overtimeCrewHours: over } = answer;
  if (hours === null || crewHours === null) return [];
  return [
    `Crew: ${count(people)} people, ${hours.toFixed(2)} h of work, ${crewHours.toFixed(2)} crew-hours${breaks === null || breaks === 0 ? "" : `, ${count(breaks)} ${breaks === 1 ? "break" : "breaks"}`}${over === null || over === 0 ? "" : `, ${over.toFixed(2)} of them overtime`}`,
    answer.finish === null
      ? "Finish: give --start for the clock time"
      : `Finish: ${answer.finish.replace("T", " ")}, begun ${(answer.start ?? "").replace("T", " ")}`,
  ];
}

function kettleText({
  kettleFills,
  kettle,
  fuel,
}: PlanAnswer): readonly string[] {
  if (kettleFills === null || !kettle) return [];
  return [
    `Kettle: ${count(kettleFills)} ${kettleFills === 1 ? "fill" : "fills"}; the first gives ${count(kettle.bottlesFromFirst)} good bottles; the last is ${count(kettle.lastFillHotGal, 1)} gal hot for ${count(kettle.lastFillBottles)} bottles`,
    ...(fuel
      ? [
          `Fuel: $${fuel.runCost.toFixed(2)} for the run; a full kettle $${fuel.kettleCost.toFixed(2)} to warm, $${fuel.holdingCostPerHour.toFixed(2)} an hour to hold`,
        ]
      : []),
    scalds,
  ];
}

function packedText(answer: PlanAnswer): readonly string[] {
  const { load, lotCode, bestBy } = answer;
  const loose =
    load.looseBottles > 0 ? `, ${count(load.looseBottles)} bottles loose` : "";
  return [
    `Pallets: ${count(answer.pallets)}: ${count(load.fullPallets)} full, ${count(load.casesOnLast)} cases on the last${loose}`,
    ...(load.caseLb === null
      ? []
      : [
          `Weights: a case ${load.caseLb.toFixed(2)} lb, a full pallet ${count(load.fullPalletLb)} lb, all ${count(load.allLb)} lb`,
        ]),
    ...(lotCode === null ? [] : [`Lot code: ${lotCode}`]),
    ...(bestBy === null ? [] : [`Best by: ${bestBy}`]),
  ];
}

const findingLines = (findings: readonly Finding[]): readonly string[] =>
  findings.length === 0
    ? []
    : ["", "Findings", ...findings.map((f) => `- ${findingText(f)}`)];

const row = (label: string, cells: readonly string[]): string =>
  label.padEnd(28) + cells.map((cell) => cell.padStart(16)).join("");

const count = (value: number | null, decimals = 0): string =>
  value === null
    ? "–"
    : value.toLocaleString("en-US", {
        minimumFractionDigits: decimals,
        maximumFractionDigits: decimals,
      });
