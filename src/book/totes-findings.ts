import { inPounds } from "../functions/by-weight";
import { isoDate } from "../measures/read-date";
import { figure, gathered, moneyText, pounds } from "./checks/gathered";
import { type Finding, listed } from "./finding";
import type { Totes } from "./totes";
import { disputeFindings } from "./weight-disputes";

/** What the register itself shows, beside the findings of the book it was read from. */
export const totesFindings = (totes: Totes): readonly Finding[] => [
  ...ticketFindings(totes),
  ...contractFindings(totes),
  ...disputeFindings(totes.disputes),
  ...accountFindings(totes),
];

function ticketFindings({ tickets }: Totes): readonly Finding[] {
  const rows = tickets.map((ticket) => ({
    ...ticket,
    place: ticket.row.place,
  }));
  return [
    ...rows
      .filter(({ needs }) => needs.length > 0)
      .map(({ row, place, needs }) => ({
        where: `${place}, Tote ticket`,
        found: `${row.ticket} needs ${needs.join(" and ")}`,
        meaning: "what depends on it is withheld",
        todo: "correct the ticket",
      })),
    ...gathered(
      rows.filter(
        ({ amount, row }) =>
          amount !== undefined &&
          row.amount !== undefined &&
          Math.abs(amount - row.amount) > 0.005,
      ),
      {
        column: "Amount",
        found: (those) =>
          `not what weight and price come to: ${listed(those.map(({ row, amount }) => `${row.ticket} (${figure(row.amount ?? 0, 2)} against ${figure(amount ?? 0, 2)})`))}`,
        meaning: "the ticket was billed at another weight, price or basis",
        todo: "check weight, Brix and the contract's price, and correct the amount",
      },
    ),
    ...gathered(
      rows.filter(
        ({ row, contract, currency }) =>
          contract !== undefined &&
          row.currency !== undefined &&
          row.currency !== currency,
      ),
      {
        column: "Currency",
        found: (those) =>
          `not the money of the contract: ${listed(those.map(({ row }) => row.ticket))}`,
        meaning: "the register counts it in the contract's money",
        todo: "correct the currency, or the contract's price basis",
      },
    ),
    ...gathered(
      rows.filter(({ gradesRefused }) => gradesRefused.length > 0),
      {
        column: "Source lots",
        found: (those) =>
          `a grade the contract does not take: ${listed(those.map(({ row, gradesRefused }) => `${row.ticket} (${gradesRefused.join(", ")})`))}`,
        meaning: "a customer may refuse such a tote",
        todo: "agree it with the customer, or draw another lot",
      },
    ),
  ];
}

function contractFindings({ contracts, asOf }: Totes): readonly Finding[] {
  return contracts.flatMap(({ row, progress }) => {
    const { left } = progress;
    const where = `${row.place}, Contract lb`;
    if (left < 0)
      return [
        {
          where,
          found: `contract ${row.contract} is over by ${pounds(-left)}`,
          meaning: "more was shipped than the contract says",
          todo: "ask what the contract allows, or enter a new one",
        },
      ];
    return row.end < asOf && inPounds(left) >= 0.5
      ? [
          {
            where,
            found: `contract ${row.contract} closed ${pounds(left)} short on ${isoDate(row.end)}`,
            meaning: "the contract was not filled",
            todo: "agree with the customer whether it is closed",
          },
        ]
      : [];
  });
}

function accountFindings({
  receivables,
  toInvoice,
}: Totes): readonly Finding[] {
  return [
    ...toInvoice.map(({ bill, buyer, amount, currency, totes }) => ({
      where: `Invoices, ${bill}`,
      found: `${totes === 1 ? "1 tote has" : `${totes} totes have`} left without an invoice: ${buyer} ${moneyText(amount, currency)}`,
      meaning: "nobody has been asked for this money yet",
      todo: "write the invoice",
    })),
    ...receivables.unapplied.map(({ receipt, left, reason }) => ({
      where: `Payments, ${receipt.receipt}`,
      found: `${moneyText(left, receipt.currency)} of ${receipt.buyer} is unapplied: ${reason}`,
      meaning: "the money is set against no invoice",
      todo: "enter the invoice it pays, or send it back",
    })),
  ];
}
