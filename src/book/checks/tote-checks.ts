import { KG_PER_LB, LITRES_PER_GALLON } from "../../measures/units";
import { densityInAir } from "../../trade/syrup/density";
import type { Book, BookRow } from "../book";
import { type Finding, listed } from "../finding";
import { sameName } from "../keys";
import { setting } from "../setting";
import { gathered, pounds } from "./gathered";

/** The largest tote in ordinary use holds 330 gal. Common practice, no source. */
const LARGEST_TOTE = 330 * LITRES_PER_GALLON;
/** The usual tote holds 275 gal. Common practice, no source. */
const USUAL_TOTE = 275 * LITRES_PER_GALLON;

/** Totes whose weights or density do not fit their tickets, contracts and invoices. */
export function toteChecks(book: Book): readonly Finding[] {
  return [
    ...book.toteShipments.flatMap(weighing),
    ...gathered(
      book.toteShipments.filter(
        ({ net, brix, gross, tare }) =>
          tare < gross && net > USUAL_TOTE * densityInAir(brix),
      ),
      {
        column: "Net lb",
        found: (rows) =>
          `more than a 275 gal tote holds: ${listed(rows.map((row) => `${row.ticket} (${pounds(row.net)})`))}`,
        meaning: sizeInDoubt(book),
        todo: "check the weights, and the size of the tote",
      },
    ),
    ...abovePlate(book),
    ...lightTotes(book),
    ...unlikeInvoices(book),
  ];
}

function weighing(tote: BookRow<"toteShipments">): readonly Finding[] {
  const { gross, tare, net, place, ticket } = tote;
  if (tare >= gross)
    return [
      {
        where: `${place}, Tare lb`,
        found: `tare ${pounds(tare)} is not below gross ${pounds(gross)}`,
        meaning: `gross and tare of tote ${ticket} look swapped`,
        todo: "swap the two weights, or weigh again",
      },
    ];
  const weighed = gross - tare;
  return Math.abs(weighed - net) <= 0.5 * KG_PER_LB
    ? []
    : [
        {
          where: `${place}, Net lb`,
          found: `${pounds(net)}, but gross less tare is ${pounds(weighed)}`,
          meaning: `the net weight of tote ${ticket} is used as typed`,
          todo: "check the three weights against the scale ticket",
        },
      ];
}

function abovePlate(book: Book): readonly Finding[] {
  const usual = setting(book, "Tote plate limit");
  const limitOf = (row: BookRow<"toteShipments">): number =>
    row.plateLimit ?? usual ?? Infinity;
  return gathered(
    book.toteShipments.filter((row) => row.gross > limitOf(row)),
    {
      column: "Gross lb",
      found: (rows) =>
        `above the limit on the tote's plate: ${listed(rows.map((row) => `${row.ticket} (${pounds(row.gross)} against ${pounds(limitOf(row))})`))}`,
      meaning: "such a tote may burst or drop, and no carrier should take it",
      todo: "check the weight and the plate; draw off what is too much before it is moved",
    },
  );
}

function lightTotes(book: Book): readonly Finding[] {
  const floors = new Map(
    book.toteContracts.map((row) => [sameName(row.contract), row.minimumBrix]),
  );
  return gathered(
    book.toteShipments.filter((tote) => {
      const floor = floors.get(sameName(tote.contract));
      return floor !== undefined && tote.brix < floor;
    }),
    {
      column: "Brix at 68 °F",
      found: (rows) =>
        `lighter than the contract allows: ${listed(
          rows.map((row) => row.ticket),
          20,
        )}, at ${Math.min(...rows.map((row) => row.brix))} °Bx and up`,
      meaning: "a customer may refuse such a tote or take money off its price",
      todo: "agree it with the customer, and blend before the next tote",
    },
  );
}

function unlikeInvoices(book: Book): readonly Finding[] {
  const sums = new Map<string, number>();
  for (const { billOfLading, amount } of book.toteShipments) {
    if (billOfLading === undefined || amount === undefined) continue;
    const name = sameName(billOfLading);
    sums.set(name, (sums.get(name) ?? 0) + amount);
  }
  return gathered(
    book.invoices.filter((invoice) => {
      const sum = sums.get(sameName(invoice.billOfLading));
      return sum !== undefined && Math.abs(sum - invoice.amount) > 0.005;
    }),
    {
      column: "Amount",
      found: (rows) =>
        `not the sum of its totes: ${listed(rows.map((row) => row.billOfLading))}`,
      meaning: "the invoice and the tote tickets disagree",
      todo: "correct the one that is wrong",
    },
  );
}

const sizeInDoubt = (book: Book): string =>
  book.toteShipments.some(
    ({ net, brix }) => net > LARGEST_TOTE * densityInAir(brix),
  )
    ? "at least one would not even fit a 330 gal tote, so a weight is wrong"
    : "it is a larger tote, or a weight is wrong";
