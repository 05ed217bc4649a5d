import type { AdoptAnswer } from "./adopt";

/** What a ledger is understood to be, in words, a line each. */
export const adoptText = (answer: AdoptAnswer): readonly string[] => [
  `${answer.ledger}: ${answer.tickets} tickets, headings in row ${answer.headingRows.join(" and ") || "none"}.`,
  ...answer.columns.map(
    ({ label, column, heading, because }) =>
      `${label}: column ${column}${heading === "" ? "" : ` "${heading}"`}, by its ${because}.`,
  ),
  `Weights are read as ${answer.understood.weights.is}, from ${answer.understood.weights.from}.`,
  ...(answer.understood.price
    ? [
        `Prices are read ${answer.understood.price.is}, from ${answer.understood.price.from}.`,
      ]
    : []),
  ...(answer.understood.currency
    ? [
        `The money is ${answer.understood.currency.is}, from ${answer.understood.currency.from}.`,
      ]
    : []),
  ...(answer.understood.dates === null
    ? []
    : [`Days are written ${answer.understood.dates}.`]),
  ...answer.others.map(
    ({ column, heading }) => `Column ${column} "${heading}" stays as it is.`,
  ),
  ...hiddenText(answer.hidden),
  ...answer.passedOver.map(
    ({ row, why }) => `Row ${row} is passed over: ${why}.`,
  ),
  ...answer.findings.map(({ cell, says }) => `${cell}: ${says}.`),
];

const hiddenText = ({
  columns,
  rows,
}: AdoptAnswer["hidden"]): readonly string[] => [
  ...columns.map(
    (column) => `Column ${column} is hidden; it is read like the others.`,
  ),
  ...(rows.length === 0
    ? []
    : [
        `${rows.length === 1 ? `Row ${rows[0]} is` : `${rows.length} rows are`} hidden${rows.length === 1 ? "" : `, the first is row ${rows[0]}`}; what stands there is read like the rest.`,
      ]),
];
