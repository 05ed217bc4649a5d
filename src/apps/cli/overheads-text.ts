import { findingText } from "../../book/finding";
import type { OverheadsJson } from "./overheads-answer";

/** Who carries the season's bills, as a person reads it at a terminal. */
export function overheadsText(answer: OverheadsJson): readonly string[] {
  const { compared } = answer;
  return [
    `Overheads of ${answer.season}: ${answer.runs} runs, ${answer.lotsBought} lots bought`,
    "",
    row("Bill", ["a year", "to bulk", "to runs", "to lots", "carried"]),
    ...answer.bills.map((bill) =>
      row(bill.item, [
        money(bill.perYear),
        money(bill.toBulk),
        money(bill.toRuns),
        money(bill.toLots),
        percent(bill.carried),
      ]),
    ),
    answer.addsUp
      ? "Adds up to 100 %."
      : `Does not add up: ${money(answer.gap)} is carried by nothing.`,
    "",
    `${compared.bills}: ${money(compared.amount)}, and what ${compared.run} (${compared.bottles.toLocaleString("en-US")} bottles) carries of it`,
    row("Shared by", [
      "in all",
      "for each",
      "the run",
      "¢ a bottle",
      "by runs",
    ]),
    ...compared.ways.map((way) =>
      row(way.driver, [
        way.whole === null
          ? "–"
          : way.whole.toLocaleString("en-US", { maximumFractionDigits: 1 }),
        money(way.each),
        money(way.ofRun),
        way.perBottle === null ? "–" : (way.perBottle * 100).toFixed(1),
        percent(way.carriedByRuns),
      ]),
    ),
    ...(compared.timesApart === null
      ? []
      : [`The same bill, ${compared.timesApart.toFixed(1)} times apart.`]),
    "",
    row("Line", [
      "hours",
      "bills",
      "machine per h",
      "crew per h",
      "a change-over",
    ]),
    ...answer.lines.map((line) =>
      row(line.line, [
        line.hours.toFixed(1),
        money(line.bills),
        money(line.machinePerHour),
        money(line.crewPerHour),
        money(line.changeOver?.total ?? null),
      ]),
    ),
    ...(answer.findings.length === 0
      ? []
      : ["", "Findings", ...answer.findings.map((f) => `- ${findingText(f)}`)]),
  ];
}

const row = (label: string, cells: readonly string[]): string =>
  (label.length > 44 ? `${label.slice(0, 42)} …` : label).padEnd(46) +
  cells.map((cell) => cell.padStart(14)).join("");

const money = (value: number | null): string =>
  value === null
    ? "–"
    : value.toLocaleString("en-US", {
        minimumFractionDigits: 2,
        maximumFractionDigits: 2,
      });
const percent = (share: number | null): string =>
  share === null ? "–" : `${(share * 100).toFixed(1)} %`;
