import type { NamedPlace } from "../costing/names";
import { figurePlaces } from "../named-figures";
import type { DefinedName } from "../workbook";

/** The sheets about totes, by what they are for. */
export const toteSheetNames = {
  register: "Tote register",
  contracts: "Contracts left",
  owed: "Who owes",
  statement: "Statement",
  lots: "Lot balance",
} as const;

export type ToteSheet = keyof typeof toteSheetNames;

/** Goes before every name: "totes_as_of". */
export const TOTES = "totes";

/** What these sheets give names to, so that the pane and the command line find it wherever it is moved. */
export const toteKeys = [
  "as_of",
  "matching",
  "glance",
  "money",
  "tickets",
  "disputes",
  "contracts",
  "freight",
  "accounts",
  "invoices",
  "receipts",
  "statement_buyer",
  "statement_money",
  "statement",
  "lots",
  "overdraws",
  "barrels",
  "closes",
] as const;

export type ToteKey = (typeof toteKeys)[number];

/** Where the workbook's tote sheets keep their figures; empty without them. */
export const toteNames = (
  names: readonly DefinedName[],
): Partial<Readonly<Record<ToteKey, NamedPlace>>> =>
  figurePlaces(TOTES, toteKeys, names);
