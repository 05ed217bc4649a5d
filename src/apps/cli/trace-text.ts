import type { TraceAnswer } from "./trace-answer";

/** A trace as a person reads it at a terminal. */
export function traceText(answer: TraceAnswer): readonly string[] {
  const forward = answer.direction === "forward";
  return [
    forward
      ? `Where ${answer.lot} went: ${pounds(answer.totalLb)} lb left it`
      : `Where ${answer.lot} came from: ${pounds(answer.totalLb)} lb came into it`,
    "",
    row(["step", "date", "from", "to", "lb", "share"]),
    ...answer.steps.map(({ step, date, from, to, lb, share }) =>
      row([
        String(step),
        date,
        from,
        to,
        pounds(lb),
        `${(share * 100).toFixed(1)} %`,
      ]),
    ),
    "",
    forward ? "What to call back" : "What it was made of",
    ...answer.containers
      .filter(
        ({ kind, restsLb }) =>
          !forward || (restsLb > 0 && !["loss", "buyer"].includes(kind)),
      )
      .map(
        ({ name, kind, lb, restsLb, product, cases }) =>
          `  ${kind} ${name}: ${pounds(forward ? restsLb : lb)} lb${product === null ? "" : `, ${product}`}${cases === null ? "" : `, ${cases.toLocaleString("en-US")} cases in all`}${kind === "season before" ? "; that season's book says where it went" : ""}`,
      ),
    ...answer.buyers.map(
      ({ buyer, lb, totes }) =>
        `  call ${buyer}: ${pounds(lb)} lb in ${totes.join(", ")}`,
    ),
    "",
    answer.unexplainedLb === 0
      ? "Every pound is accounted for."
      : `Not accounted for: ${pounds(answer.unexplainedLb)} lb`,
    "A list is as complete as the book; your food-safety authority decides what must be called back.",
  ];
}

const row = ([
  step = "",
  date = "",
  from = "",
  to = "",
  lb = "",
  share = "",
]: readonly string[]): string =>
  `${step.padEnd(6)}${date.padEnd(12)}${from.padEnd(12)}${to.padEnd(34)}${lb.padStart(12)}${share.padStart(10)}`;

const pounds = (value: number): string =>
  value.toLocaleString("en-US", { maximumFractionDigits: 1 });
