import { unusable } from "../../measures/cannot-answer";
import {
  elementString,
  type ElementString,
  logisticUnit,
  lotElement,
  poundsElement,
  soldItem,
} from "../../trade/codes/gs1-elements";
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
}

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
              logisticUnit(
                palletCode(prefix, serialOf(ticket, typed(choices.serial)), 0),
              ),
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

function measuredItem(item: string): ReturnType<typeof soldItem> {
  const element = soldItem(item);
  if (!element.value.startsWith("9"))
    throw unusable(
      `the item number: "${item}" begins with ${element.value.charAt(0)}; goods sold by measured weight have a number that begins with 9`,
    );
  return element;
}

function serialOf({ row }: PaperTicket, written: string | undefined): number {
  const digits = written ?? row.ticket.replace(/\D/g, "");
  if (!/^\d{1,12}$/.test(digits))
    throw unusable(
      written === undefined
        ? `serial: the ticket ${row.ticket} has no digits to take; give a serial`
        : `serial: "${written}" is not a whole number of up to 12 digits`,
    );
  return Number(digits);
}

const typed = (text: string | undefined): string | undefined =>
  text === undefined || text.trim() === "" ? undefined : text.trim();
