import { as, type ColdLitres, type Kilograms } from "../../measures/quantity";
import { LITRES_PER_GALLON } from "../../measures/units";
import type { Book, BookRow } from "../book";
import { type Contents, contentsOf, columnAt } from "../contents";
import { bookTables } from "../book";
import { type ContractPrice, contractPrice } from "../contract-price";
import { sameName } from "../keys";
import { lotBalances } from "../totes-lots";

/** What the book knows that a ticket is held against. */
export interface TicketFacts {
  readonly contracts: readonly BookRow<"toteContracts">[];
  readonly priceOf: (contract: BookRow<"toteContracts">) => ContractPrice;
  /** Where each ticket already posted stands, by its name; rows that cannot be used count too. */
  readonly posted: ReadonlyMap<string, string>;
  /** What each lot still holds by the book, by its name. */
  readonly lots: ReadonlyMap<string, Kilograms>;
  /** The contract of tickets that name none. */
  readonly contract: string | undefined;
  readonly plateLimit: Kilograms | undefined;
  readonly toteVolume: ColdLitres;
}

/** The usual tote holds 275 gal. Common practice, no source. */
export const USUAL_TOTE_GALLONS = 275;

export interface TicketChoices {
  readonly contract?: string | undefined;
  readonly plateLimit?: Kilograms | undefined;
  readonly toteGallons?: number | undefined;
}

export function ticketFacts(
  book: Book,
  tables: readonly Contents[],
  {
    contract,
    plateLimit,
    toteGallons = USUAL_TOTE_GALLONS,
  }: TicketChoices = {},
): TicketFacts {
  return {
    contracts: book.toteContracts,
    priceOf: (row) => contractPrice(book, row),
    posted: postedTickets(tables),
    lots: new Map(
      lotBalances(book).map(({ name, left }) => [sameName(name), left]),
    ),
    contract,
    plateLimit,
    toteVolume: as<ColdLitres>(toteGallons * LITRES_PER_GALLON),
  };
}

/** Every ticket of the table Tote shipments as it stands, with its row. */
export function postedTickets(
  tables: readonly Contents[],
): ReadonlyMap<string, string> {
  const given = contentsOf(tables, bookTables.toteShipments);
  const at = given
    ? columnAt(given.headings, bookTables.toteShipments.columns.ticket)
    : -1;
  if (!given || at < 0) return new Map();
  return new Map(
    given.rows.flatMap((cells, i) => {
      const ticket = cells[at];
      return ticket === null || ticket === undefined || ticket === ""
        ? []
        : [
            [
              sameName(ticket),
              `${given.sheet} row ${given.row + i + 2}`,
            ] as const,
          ];
    }),
  );
}
