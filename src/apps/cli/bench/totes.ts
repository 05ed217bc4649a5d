import { bookTables, type Book, type BookRow } from "../../../book/book";
import { type Contents, contentsOf } from "../../../book/contents";
import { readBook } from "../../../book/read";
import { checkTickets } from "../../../book/tickets/check-tickets";
import { ticketFacts } from "../../../book/tickets/ticket-facts";
import { lotUseRows, shipmentRow } from "../../../book/tickets/ticket-rows";
import { totesOf } from "../../../book/totes";
import { traceOf } from "../../../book/totes-trace";
import { as, type DaySerial } from "../../../measures/quantity";
import { KG_PER_LB } from "../../../measures/units";
import { compared } from "./clock";
import { type Figure, milliseconds } from "./figure";

const FIRST_DAY = 40_000;
const TOTES = 20_000;
/** Draws for totes and runs, of as many again. */
const MOVEMENTS = 100_000;
/** A long book may take so many times what ten of a tenth take: growth close to a straight line. */
const GROWTH = 3;

/** The register and a trace of a farm with decades of totes; each against ten times the work over a tenth of the rows. */
export async function toteFigures(
  contents: readonly Contents[],
  rounds: number,
): Promise<readonly Figure[]> {
  const { book } = readBook(contents);
  const [long, short] = [longBook(book, 1), longBook(book, 10)];
  const day = as<DaySerial>(FIRST_DAY + TOTES);
  const facts = ticketFacts(book, contents, { contract: "C-2604" });
  const headings =
    contentsOf(contents, bookTables.toteShipments)?.headings ?? [];
  const posted = ({ toteShipments }: Book): unknown => {
    const { lines } = checkTickets(pastedTickets(toteShipments.length), facts);
    const ready = lines.flatMap((line) => line.ready ?? []);
    if (ready.length < toteShipments.length)
      throw new Error("a pasted ticket is not fit to post");
    return [
      ready.map((ticket) => shipmentRow(ticket, headings)),
      ready.flatMap(lotUseRows),
    ];
  };
  const works: readonly {
    readonly work: string;
    readonly aim: number;
    readonly of: (book: Book) => unknown;
  }[] = [
    {
      work: `${TOTES.toLocaleString("en-US")} pasted tickets checked and made into rows`,
      aim: 1000,
      of: posted,
    },
    {
      work: `The register of ${TOTES.toLocaleString("en-US")} totes with contracts and accounts`,
      aim: 1000,
      of: (one) => totesOf(one, { asOf: day, matching: "oldest first" }),
    },
    {
      work: `A lot traced through ${MOVEMENTS.toLocaleString("en-US")} movements`,
      aim: 200,
      of: (one) => traceOf(one, "L-1", "forward", day),
    },
  ];
  const figures: Figure[] = [];
  for (const { work, aim, of } of works) {
    const times = await compared(
      rounds,
      () => of(long),
      () => {
        for (let i = 0; i < 10; i += 1) of(short);
      },
    );
    figures.push({
      work,
      takes: milliseconds(times.milliseconds),
      yardstick: milliseconds(times.yardstick),
      ratio: times.ratio,
      aim: `under ${aim} ms, at most ${GROWTH} times ten tenths`,
      isMet: times.milliseconds < aim && times.ratio < GROWTH,
    });
  }
  return figures;
}

const pastedTickets = (count: number): string =>
  [
    "ticket,date,gross,tare,brix,lot",
    ...Array.from(
      { length: count },
      (_, i) => `N-${i},2026-11-20,${3040 + (i % 9)},132,66.6,26-06`,
    ),
  ].join("\n");

/** The farm's book with a tote a day for decades, each invoiced and paid, and five draws a tote. */
function longBook(from: Book, divided: number): Book {
  const [tote] = from.toteShipments;
  const [contract] = from.toteContracts;
  const [lot] = from.lots;
  const [invoice] = from.invoices;
  const [payment] = from.payments;
  if (!tote || !contract || !lot || !invoice || !payment)
    throw new Error("the book to lengthen has no totes");
  const count = TOTES / divided;
  const lots = Math.max(20, count / 100);
  const numbers = Array.from({ length: count }, (_, i) => i);
  const on = (i: number): DaySerial => as<DaySerial>(FIRST_DAY + i);
  const perTote = MOVEMENTS / TOTES;
  return {
    ...from,
    lots: Array.from({ length: lots }, (_, i) => ({
      ...lot,
      lot: `L-${i}`,
      received: on(0),
    })),
    toteContracts: Array.from({ length: 200 / divided }, (_, i) => ({
      ...contract,
      contract: `C-${i}`,
    })),
    toteShipments: numbers.map((i) => ({
      ...tote,
      ticket: `T-${i}`,
      shipped: on(i),
      contract: `C-${i % (200 / divided)}`,
      customer: `Buyer ${i % 40}`,
      billOfLading: `B-${i}`,
      sourceLots: `L-${i % lots}:2912`,
    })),
    invoices: numbers.map((i) => ({
      ...invoice,
      billOfLading: `B-${i}`,
      customer: `Buyer ${i % 40}`,
      date: on(i),
      due: on(i + 30),
    })),
    payments: numbers.map((i) => ({
      ...payment,
      receipt: `P-${i}`,
      customer: `Buyer ${i % 40}`,
      billOfLading: i % 3 === 0 ? undefined : `B-${i}`,
      paidOn: on(i + 20),
    })),
    lotUse: numbers.flatMap((i) =>
      Array.from({ length: perTote }, (_, k): BookRow<"lotUse"> => ({
        date: on(i),
        from: `L-${(i + k * 7) % lots}`,
        what: "tote sale",
        to: `T-${i}`,
        pounds: as((2912 / perTote) * KG_PER_LB),
        place: `Lot use row ${i * perTote + k + 2}`,
      })),
    ),
  };
}
