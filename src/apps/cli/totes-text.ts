import { findingText } from "../../book/finding";
import type { TotesAnswer } from "./totes-answer";

/** The tote register as a person reads it at a terminal: what went out, what is left, who owes. */
export function totesText(answer: TotesAnswer): readonly string[] {
  const { deposits } = answer;
  return [
    `Totes on ${answer.asOf}`,
    "",
    line("Ticket", ["shipped", "contract", "net lb", "gallons", "amount", ""]),
    ...answer.tickets.map((ticket) =>
      line(ticket.ticket, [
        ticket.shipped,
        ticket.contract,
        whole(ticket.netLb),
        ticket.gallons?.toFixed(2) ?? "withheld",
        money(ticket.amount),
        ticket.currency ?? "",
      ]),
    ),
    "",
    line("Contract", [
      "lb left",
      "totes left",
      "shipped",
      "of its days",
      "ends on",
    ]),
    ...answer.contracts.map((contract) =>
      line(contract.contract, [
        whole(contract.leftLb),
        contract.totesLeft === null ? "–" : String(contract.totesLeft),
        percent(contract.shareShipped),
        percent(contract.shareOfTime),
        contract.endsOn,
      ]),
    ),
    ...freight(answer),
    ...disputes(answer),
    ...owed(answer),
    "",
    `Totes out: ${deposits.totesOut}, deposits ${money(deposits.amount)} ${deposits.currency}, the longest for ${deposits.longestOut} days`,
    ...(answer.findings.length === 0
      ? []
      : ["", "Findings", ...answer.findings.map((f) => `- ${findingText(f)}`)]),
  ];
}

/** Only contracts of which something about freight is known; the rest would be a page of "not entered". */
const freight = ({ contracts }: TotesAnswer): readonly string[] => {
  const known = contracts.filter(
    ({ freight: { holds, freightPerLb } }) =>
      holds !== null || freightPerLb !== null,
  );
  return known.length === 0
    ? []
    : [
        "",
        line("Price a lb", ["freight", "at our dock", "delivered", ""]),
        ...known.map(({ contract, currency, freight: of }) =>
          line(contract, [
            perLb(of.freightPerLb),
            perLb(of.dockPerLb),
            perLb(of.deliveredPerLb),
            currency,
            of.needs.length === 0 ? "" : `  ${of.needs.join("; ")}`,
          ]),
        ),
      ];
};

const disputes = ({
  disputes: all,
  weights,
}: TotesAnswer): readonly string[] =>
  weights.reported === 0
    ? []
    : [
        "",
        all.length === 0
          ? `Buyers' weights: ${weights.reported} reported, none beyond ${percent(weights.tolerance)}`
          : line("Weight dispute", [
              "our net lb",
              "buyer's lb",
              "buyer less us",
              "",
              "in money",
              "",
            ]),
        ...all.map((one) =>
          line(one.ticket, [
            whole(one.ourNetLb),
            whole(one.buyerNetLb),
            whole(one.differenceLb),
            `${(one.differenceShare * 100).toFixed(2)} %`,
            money(one.money),
            one.currency ?? "",
          ]),
        ),
      ];

const owed = (answer: TotesAnswer): readonly string[] => [
  "",
  line("Who owes", ["owed", "not due", "late", "credits", "unapplied", ""], 30),
  ...answer.receivables.map((account) =>
    line(
      account.buyer,
      [
        money(account.balance),
        money(account.notDue),
        money(account.late.reduce((sum, { amount }) => sum + amount, 0)),
        money(account.credits),
        money(account.unapplied),
        account.currency,
      ],
      30,
    ),
  ),
  ...answer.receivables.flatMap(({ buyer, currency, late }) =>
    late.map(
      ({ invoice, amount, days }) =>
        `  ${invoice} ${buyer}: ${money(amount)} ${currency}, ${days} ${days === 1 ? "day" : "days"} late`,
    ),
  ),
  ...answer.totals.map(
    ({ currency, balance, late }) =>
      `  In all ${money(balance)} ${currency}, of it late ${money(late)}`,
  ),
];

const line = (label: string, cells: readonly string[], width = 14): string =>
  `${label.padEnd(width)}${cells.map((cell) => cell.padStart(13)).join("")}`.trimEnd();

const perLb = (value: number | null): string =>
  value === null ? "not entered" : value.toFixed(4);
const money = (value: number | null): string =>
  value === null
    ? "withheld"
    : value.toLocaleString("en-US", {
        minimumFractionDigits: 2,
        maximumFractionDigits: 2,
      });
const whole = (value: number | null): string =>
  value === null
    ? "withheld"
    : value.toLocaleString("en-US", { maximumFractionDigits: 1 });
const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;
