import { answerOrNone } from "../../measures/cannot-answer";
import {
  as,
  type Brix,
  type DaySerial,
  type Kilograms,
  type Money,
} from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import { ticketAmount } from "../../trade/totes/ticket-amount";
import type { BookRow } from "../book";
import { isSameName, sameName } from "../keys";
import type { LedgerColumns } from "../ledger/propose";
import type { LedgerRole } from "../ledger/roles";
import type { Understanding } from "../ledger/understanding";
import type { Currency } from "../ledger/written-units";
import { sourceLots, type SourceLot } from "../source-lots";
import { priceBases } from "../price-bases";
import { priceReasons } from "./check-price";
import { weightReasons } from "./check-weights";
import type { PastedLine } from "./pasted-lines";
import { asked, refused, type Reason } from "./reason";
import { brixIn, dayIn, pounds, weightIn } from "./ticket-cells";
import type { TicketFacts } from "./ticket-facts";

/** A ticket with everything read, as it will be posted. */
export interface ReadyTicket {
  readonly ticket: string;
  readonly shipped: DaySerial;
  readonly contract: BookRow<"toteContracts">;
  readonly billOfLading: string | undefined;
  readonly gross: Kilograms;
  readonly tare: Kilograms;
  readonly net: Kilograms;
  readonly brix: Brix;
  readonly amount: Money;
  readonly currency: Currency;
  readonly lots: readonly SourceLot[];
  /** The largest gross weight on its plate; undefined where it was not typed. */
  readonly plateLimit: Kilograms | undefined;
}

export interface HowToRead {
  readonly columns: LedgerColumns;
  readonly understood: Understanding;
  readonly headingCurrency: Currency | undefined;
  readonly missing: readonly LedgerRole[];
}

/** Reads one ticket and says everything there is to say about it, but for its name. */
export function checkTicket(
  { cells }: PastedLine,
  how: HowToRead,
  facts: TicketFacts,
): {
  readonly reasons: readonly Reason[];
  readonly ready: ReadyTicket | undefined;
} {
  const { columns, understood } = how;
  const at = (role: LedgerRole): number => columns[role] ?? -1;
  const cell = (role: LedgerRole): string | undefined =>
    columns[role] === undefined ? undefined : (cells[at(role)] ?? "").trim();
  const text = (role: LedgerRole): string => cell(role) ?? "";
  const day = dayIn(text("date"), at("date"), understood.dates);
  const gross = weightIn(text("gross"), "Gross", understood.weight.is);
  const tare = weightIn(text("tare"), "Tare", understood.weight.is);
  const netText = text("net");
  const givenNet =
    netText === "" ? undefined : weightIn(netText, "Net", understood.weight.is);
  const brix = brixIn(text("brix"), at("brix"));
  const { contract, reasons: aboutContract } = contractOf(
    text("contract") || facts.contract || "",
    facts,
  );
  const net =
    gross.value !== undefined &&
    tare.value !== undefined &&
    tare.value < gross.value
      ? as<Kilograms>(gross.value - tare.value)
      : undefined;
  const lots = lotsOf(text("lot"), net, facts);
  const agreed = contract && facts.priceOf(contract);
  const reasons = [
    ...how.missing.map((role) =>
      refused(`No column is the ${role}; head one "${role}"`),
    ),
    ...aboutContract,
    ...(how.missing.includes("date") ? [] : day.reasons),
    ...(how.missing.includes("gross") ? [] : gross.reasons),
    ...(how.missing.includes("tare") ? [] : tare.reasons),
    ...(givenNet?.reasons ?? []),
    ...(how.missing.includes("brix") ? [] : brix.reasons),
    ...weightReasons(
      {
        gross: gross.value,
        tare: tare.value,
        net: givenNet?.value,
        brix: brix.value,
        cells: { gross: at("gross"), tare: at("tare") },
        texts: { gross: text("gross"), tare: text("tare") },
      },
      facts,
    ),
    ...lots.reasons,
    ...(agreed?.needs === undefined ? [] : [refused(`Needs ${agreed.needs}`)]),
    ...(contract
      ? [
          ...termsReasons(contract, day.value, brix.value, text("buyer")),
          ...priceReasons(contract, {
            price: cell("price"),
            priceBasis: understood.basis?.is,
            currency: cell("currency"),
            headingCurrency: how.headingCurrency,
            brix: brix.value,
          }),
        ]
      : []),
  ];
  if (
    !contract ||
    day.value === undefined ||
    gross.value === undefined ||
    tare.value === undefined ||
    net === undefined ||
    brix.value === undefined ||
    agreed?.price === undefined
  )
    return { reasons, ready: undefined };
  const { basis, currency } = priceBases[contract.basis];
  const { price } = agreed;
  const [shipped, grossWeight, tareWeight, density] = [
    day.value,
    gross.value,
    tare.value,
    brix.value,
  ];
  const billed = answerOrNone(() => ticketAmount(net, price, basis, density));
  return {
    reasons,
    ready: billed && {
      ticket: text("ticket"),
      shipped,
      contract,
      billOfLading: text("invoice") || undefined,
      gross: grossWeight,
      tare: tareWeight,
      net,
      brix: density,
      amount: billed.amount,
      currency,
      lots: lots.lots,
      plateLimit: facts.plateLimit,
    },
  };
}

function contractOf(
  name: string,
  { contracts }: TicketFacts,
): {
  readonly contract: BookRow<"toteContracts"> | undefined;
  readonly reasons: readonly Reason[];
} {
  if (name === "")
    return {
      contract: undefined,
      reasons: [refused("No contract: choose one for tickets that name none")],
    };
  const contract = contracts.find((row) => isSameName(row.contract, name));
  return {
    contract,
    reasons: contract
      ? []
      : [
          refused(
            `Contract ${name} is not in Tote contracts${contracts.length > 0 ? `, which has ${contracts.map((row) => row.contract).join(", ")}` : ""}`,
          ),
        ],
  };
}

function termsReasons(
  contract: BookRow<"toteContracts">,
  day: DaySerial | undefined,
  brix: Brix | undefined,
  buyer: string,
): readonly Reason[] {
  const floor = contract.minimumBrix;
  return [
    ...(day !== undefined && (day < contract.start || day > contract.end)
      ? [
          asked(
            `${isoDate(day)} is outside contract ${contract.contract}, ${isoDate(contract.start)} to ${isoDate(contract.end)}`,
          ),
        ]
      : []),
    ...(brix !== undefined && floor !== undefined && brix < floor
      ? [
          asked(
            `°Brix ${brix} is below the ${floor} of contract ${contract.contract}; the buyer may refuse the tote or take money off`,
          ),
        ]
      : []),
    ...(buyer !== "" && !isSameName(buyer, contract.customer)
      ? [
          asked(
            `"${buyer}" is not the buyer of contract ${contract.contract}, which is ${contract.customer}'s`,
          ),
        ]
      : []),
  ];
}

function lotsOf(
  written: string,
  net: Kilograms | undefined,
  facts: TicketFacts,
): {
  readonly lots: readonly SourceLot[];
  readonly reasons: readonly Reason[];
} {
  const lots = sourceLots(written.replace(/,/g, ";"));
  const unknown = lots.filter(({ lot }) => !facts.lots.has(sameName(lot)));
  const [only, more] = lots;
  if (only && !more && only.weight === undefined)
    return {
      lots: [{ lot: only.lot, weight: net }],
      reasons: unknown.map(strange),
    };
  const sum = lots.reduce((total, { weight }) => total + (weight ?? 0), 0);
  const uneven =
    lots.length > 0 && net !== undefined && Math.abs(sum - net) > 1;
  return {
    lots,
    reasons: [
      ...unknown.map(strange),
      ...(uneven
        ? [
            asked(
              `The lots add up to ${pounds(as<Kilograms>(sum))} lb, the tote holds ${pounds(net)} lb`,
            ),
          ]
        : []),
    ],
  };
}

const strange = ({ lot }: SourceLot): Reason =>
  refused(`Lot ${lot} is not in the book`);
