import type { Book } from "../../book/book";
import { isSameName } from "../../book/keys";
import { setting } from "../../book/setting";
import { unusable } from "../../measures/cannot-answer";
import {
  elementString,
  type ElementString,
  logisticUnit,
  lotElement,
  poundsElement,
} from "../../trade/codes/gs1-elements";
import { measuredItem } from "../../trade/codes/measured-item";
import { palletCode } from "../../trade/codes/pallet-code";
import type { PaperFacts, PaperTicket } from "./facts";

/** What the numbers on a tote are made of, as typed; blank where the farm has none. */
export interface CodeChoices {
  /** The farm's own company prefix. */
  readonly prefix?: string | undefined;
  /** The 14 digits of bulk syrup sold by measured weight; they begin with 9. */
  readonly item?: string | undefined;
  /** The tote's own serial; by default the digits of its ticket. */
  readonly serial?: string | undefined;
  /** Every ticket of the book: no two totes may bear one number. */
  readonly tickets?: readonly string[] | undefined;
}

/** The numbers of Settings where none are typed. */
export const farmCodes = (
  book: Pick<Book, "settings" | "toteShipments">,
  choices: Pick<CodeChoices, "prefix" | "item" | "serial"> = {},
): CodeChoices => ({
  prefix: typed(choices.prefix) ?? setting(book, "Company prefix"),
  item: typed(choices.item) ?? setting(book, "Tote item number"),
  serial: choices.serial,
  tickets: book.toteShipments.map(({ ticket }) => ticket),
});

/** The contents of a label's bar codes, and what is left off for want of a number. */
export interface ToteCodes {
  readonly lot: string;
  readonly codes: readonly ElementString[];
  readonly missing: readonly string[];
}

/**
 * The first bar code holds the tote's number (SSCC) and gross weight, the second the item, net weight and lot. A number
 * not given leaves its bar code off and is named. Refuses (#VALUE!) numbers that cannot be right.
 */
export function toteCodes(
  { ticket }: PaperFacts,
  choices: CodeChoices = {},
): ToteCodes {
  const lot = lotOf(ticket);
  const prefix = typed(choices.prefix);
  const item = typed(choices.item);
  return {
    lot,
    codes: [
      ...(prefix === undefined
        ? []
        : [
            elementString([
              logisticUnit(palletCode(prefix, serialOf(ticket, choices), 0)),
              poundsElement("gross", ticket.row.gross),
            ]),
          ]),
      ...(item === undefined
        ? []
        : [
            elementString([
              measuredItem(item),
              poundsElement("net", ticket.net),
              lotElement(lot),
            ]),
          ]),
    ],
    missing: [
      ...(prefix === undefined
        ? ["a company prefix, for the tote's number and gross weight"]
        : []),
      ...(item === undefined
        ? ["an item number, for the net weight and the lot"]
        : []),
    ],
  };
}

/** A tote of several lots is a lot of its own, under its ticket, from which the register traces back. */
export const lotOf = ({ lots, row }: PaperTicket): string =>
  lots.length === 1 ? (lots[0]?.lot ?? row.ticket) : row.ticket;

function serialOf({ row }: PaperTicket, choices: CodeChoices): number {
  const written = typed(choices.serial);
  const digits = written ?? digitsOf(row.ticket);
  if (!/^\d{1,12}$/.test(digits))
    throw unusable(
      written === undefined
        ? `serial: the ticket ${row.ticket} has no digits to take; give a serial`
        : `serial: "${written}" is not a whole number of up to 12 digits`,
    );
  const serial = Number(digits);
  const other = (choices.tickets ?? []).find(
    (ticket) =>
      !isSameName(ticket, row.ticket) &&
      digitsOf(ticket) !== "" &&
      Number(digitsOf(ticket)) === serial,
  );
  if (other !== undefined)
    throw unusable(
      `serial: ${row.ticket} and ${other} would both be tote ${serial}, and no two totes may bear one number; give ${row.ticket} a serial of its own`,
    );
  return serial;
}

const digitsOf = (ticket: string): string => ticket.replace(/\D/g, "");

const typed = (text: string | undefined): string | undefined =>
  text === undefined || text.trim() === "" ? undefined : text.trim();
