import { toteTerms } from "../../terms/book-totes";
import { matchings } from "../../trade/totes/matching";
import { usuallyPrinted } from "../../trade/totes/ticket-amount";
import type { Block, Line, SheetDescription } from "../model";
import { column, money, type Reference, weight } from "./columns";
import type { ToteFacts } from "./facts";
import { toteSheetNames } from "./names";
import { ticketsBlock } from "./tickets-block";
import { disputesBlock } from "./weight-columns";

/** Moneys the book knows. */
export const currencies = toteTerms.currency.choices;

const digits = (name: string, label: string, content: number): Line => ({
  name,
  label,
  unit: "decimals",
  role: "input",
  format: "0",
  content,
  hint: "as the weight ticket prints them; the buyer works the invoice out from these. Common practice, no source",
  rule: { kind: "whole number", min: 0, max: 9 },
  ruleSays: "Decimals, from 0 to 9.",
});

const inputs = (facts: ToteFacts): Block => ({
  kind: "lines",
  title: "What you can change",
  lines: [
    {
      name: "as_of",
      label: "As of",
      role: "input",
      format: "yyyy-mm-dd",
      content:
        typeof facts.day === "number"
          ? facts.day
          : { formula: `=${facts.day}` },
      hint: "the newest date in the book, unless you type another",
      rule: { kind: "date", min: 36526, max: 73050 },
    },
    {
      name: "matching",
      label: "Receipts that name no invoice",
      role: "input",
      content: matchings[0],
      hint: "wait to be matched by hand, or pay what has been due longest",
      rule: { kind: "list", choices: matchings },
      ruleSays: 'Either "by hand" or "oldest first".',
    },
    {
      name: "tolerance",
      label: "Weight tolerance",
      unit: "of our weight",
      role: "input",
      format: "0.0%",
      content: facts.tolerance,
      hint: "a buyer's weight farther from ours is a dispute; what binds is what the contract says",
      rule: { kind: "number", min: 0, max: 0.1 },
      ruleSays: "A percentage from 0 to 10.",
    },
    {
      name: "plate_limit",
      label: "Plate limit of a tote",
      unit: "lb",
      role: "input",
      format: weight,
      content: facts.plateLimit,
      hint: "for tickets that give none of their own; blank: not known, so not checked. Read it off the plate",
      rule: { kind: "number", min: 1, max: 100_000 },
      ruleSays: "Pounds above 0, or blank while it is not known.",
    },
    digits("gallon_digits", "Gallons on a ticket", usuallyPrinted.gallons),
    digits(
      "density_digits",
      "Pounds per gallon on a ticket",
      usuallyPrinted.poundsPerGallon,
    ),
    digits(
      "kilogram_digits",
      "Kilograms on a ticket",
      usuallyPrinted.kilograms,
    ),
  ],
});

const says = (name: string, label: string, formula: string): Line => ({
  name,
  label,
  role: "check",
  content: { formula: `=${formula}` },
});

const glance = (
  facts: ToteFacts,
  owed: Reference,
  contracts: Reference,
): Block => {
  const rows = (table: string): string => `ROWS(${table})`;
  const { column: of } = facts;
  return {
    kind: "lines",
    title: "At a glance",
    lines: [
      says(
        "went_out",
        "Went out",
        'COUNTIF({tickets.counts},"yes")&" totes, "&TEXT(SUM({tickets.net}),"#,##0")&" lb"',
      ),
      says(
        "withheld",
        "Withheld",
        'IF(COUNTIF({tickets.needs},"?*")=0,"none",COUNTIF({tickets.needs},"?*")&" tickets: see Needs, right of Invoice")',
      ),
      says(
        "unlike",
        "Tickets and register",
        'IF(COUNT({tickets.differs})=0,"agree to the cent",COUNT({tickets.differs})&" tickets show another amount")',
      ),
      says(
        "to_invoice",
        "To invoice",
        'IF(COUNTIF({tickets.invoiced},"to invoice")=0,"nothing",COUNTIF({tickets.invoiced},"to invoice")&" totes")',
      ),
      says(
        "light_totes",
        "Lighter than agreed",
        'IF(COUNT({tickets.light})=0,"none",COUNT({tickets.light})&" totes")',
      ),
      says(
        "in_dispute",
        "Weights in dispute",
        'IF(COUNT({tickets.buyer_net})=0,"no buyer has reported a weight",MAX({tickets.dispute_no})&" of "&COUNT({tickets.buyer_net})&" reported, "&TEXT(SUMIFS({tickets.apart},{tickets.beyond},"yes"),"#,##0")&" lb")',
      ),
      says(
        "plates",
        "Above the plate",
        'IF(COUNT({tickets.over_plate})>0,COUNT({tickets.over_plate})&IF(COUNT({tickets.over_plate})=1," tote"," totes")&": draw off before it moves",IF(COUNT({tickets.plate})=0,"not checked: no plate limit is known","none of the "&COUNT({tickets.plate})&" whose limit is known"))',
      ),
      says(
        "deposits_out",
        "Totes still out",
        'COUNTIF({tickets.state},"out")&", deposits "&TEXT(SUMIFS({tickets.deposit},{tickets.state},"out"),"#,##0.00")&", the longest "&MAX({tickets.still_out})&" days"',
      ),
      says(
        "long_enough",
        "These sheets look at every row",
        `IF(AND(${[
          [of("toteShipments", "ticket"), "{tickets.ticket}"],
          [of("toteContracts", "contract"), contracts("contracts.contract")],
          [of("invoices", "billOfLading"), owed("invoices.bill")],
          [of("payments", "receipt"), owed("receipts.receipt")],
        ]
          .map(([table = "", own = ""]) => `${rows(table)}<=${rows(own)}`)
          .join(
            ",",
          )},MAX(${owed("invoices.account_no")})<=ROWS(${owed("accounts.buyer")})),"ok","the book has grown: build these sheets anew")`,
      ),
    ],
  };
};

const moneyBlock = (owed: Reference): Block => {
  const sum = (figures: string, currency: string): string =>
    `SUMIFS(${figures},${currency},{row.currency})`;
  const ofTickets = (name: string): string =>
    sum(`{tickets.${name}}`, "{tickets.currency}");
  const ofOwed = (table: string, name: string): string =>
    sum(owed(`${table}.${name}`), owed(`${table}.currency`));
  return {
    kind: "table",
    name: "money",
    title: "Each money by itself",
    rows: currencies.length,
    columns: [
      column(
        "currency",
        "Money",
        `CHOOSE({n},${currencies.map((c) => `"${c}"`).join(",")})`,
      ),
      column(
        "totes",
        "Totes",
        "COUNTIFS({tickets.currency},{row.currency})",
        "0",
      ),
      column("net", "Net lb", ofTickets("net"), weight),
      column("sold", "Amount of tickets", ofTickets("amount"), money),
      column(
        "per_lb",
        "Mean per lb",
        'IF({row.net}>0,{row.sold}/{row.net},"")',
        "0.0000",
      ),
      column("invoiced", "Invoiced", ofOwed("invoices", "known"), money),
      column("received", "Received", ofOwed("receipts", "known"), money),
      column("owed", "Owed", ofOwed("invoices", "balance"), money),
      column("late", "Of it late", ofOwed("invoices", "late"), money),
      column("credits", "Credits", ofOwed("invoices", "overpaid"), money),
      column(
        "unapplied",
        "Unapplied receipts",
        `ROUND(${ofOwed("receipts", "free")}+${ofOwed("receipts", "misfit")}-${ofOwed("invoices", "from_free")},2)`,
        money,
      ),
    ],
  };
};

/** What went out, at what price, and what is still to be done about it. */
export const describeRegister = (
  facts: ToteFacts,
  {
    owed,
    contracts,
  }: { readonly owed: Reference; readonly contracts: Reference },
): SheetDescription => ({
  name: toteSheetNames.register,
  tabColor: "#5b3a21",
  widths: [
    27, 12, 11, 24, 12, 12, 12, 12, 11, 10, 11, 12, 8, 11, 34, 32, 12, 9, 13,
    13, 11, 10, 13, 18, 11, 12, 10, 9, 11, 11, 11, 11, 10, 11, 11, 10,
  ],
  frozenRows: 1,
  print: {
    paper: "letter",
    landscape: true,
    fit: "one page wide",
    headings: { first: 0, rows: 1 },
    foot: toteSheetNames.register,
  },
  blocks: [
    {
      kind: "title",
      content: { formula: '="Tote register on "&TEXT({as_of},"yyyy-mm-dd")' },
    },
    {
      kind: "notes",
      lines: [
        "Yellow cells are yours to change; everything else follows from them and from the tables of this book. Deposits are never part of an amount, and two moneys are never added.",
      ],
    },
    glance(facts, owed, contracts),
    moneyBlock(owed),
    disputesBlock,
    inputs(facts),
    ticketsBlock(facts),
  ],
});
