import { figure } from "../../functions/wording";
import type { Brix } from "../../measures/quantity";
import { pricePerPound } from "../../trade/totes/price-per-pound";
import { BASE_BRIX, type SaleBasis } from "../../trade/totes/sale-amount";
import type { BookRow } from "../book";
import { basisIn, currencyIn, type Currency } from "../ledger/written-units";
import { readWrittenNumber } from "../ledger/written-number";
import { priceBases } from "../price-bases";
import { asked, refused, type Reason } from "./reason";
import { asText } from "./ticket-cells";

export interface PriceQuestion {
  /** The price as pasted; undefined where there is no such column. */
  readonly price: string | undefined;
  readonly priceBasis: SaleBasis | undefined;
  /** The currency as pasted; undefined where there is no such column. */
  readonly currency: string | undefined;
  readonly headingCurrency: Currency | undefined;
  readonly brix: Brix | undefined;
}

/** This many times the contract's price, or as small a part of it, is a price for something else. Common practice, no source. */
const UNUSUAL = 3;

/** A ticket is billed at its contract's price, so what a paste says of price and money is only held against that. */
export function priceReasons(
  contract: BookRow<"toteContracts">,
  pasted: PriceQuestion,
): readonly Reason[] {
  const agreed = priceBases[contract.basis];
  const bills = `${contract.contract} bills ${contract.price} ${contract.basis}`;
  return [
    ...moneyReasons(contract, agreed.currency, pasted),
    ...figureReasons(contract.price, agreed.basis, bills, pasted),
  ];
}

function moneyReasons(
  contract: BookRow<"toteContracts">,
  agreed: Currency,
  { price = "", currency, headingCurrency }: PriceQuestion,
): readonly Reason[] {
  const said =
    currencyIn(currency ?? "") ?? currencyIn(price) ?? headingCurrency;
  if (said === undefined)
    return currency === undefined
      ? []
      : [
          currency.trim() === ""
            ? asked(
                `Currency is missing; ${contract.contract} is in ${agreed}, so the amount is read as ${agreed}`,
              )
            : refused(`Currency: "${currency}" is neither USD nor CAD`),
        ];
  return said === agreed
    ? []
    : [
        refused(
          `The price is in ${said}, but ${contract.contract} is in ${agreed}; two moneys are never mixed`,
        ),
      ];
}

function figureReasons(
  agreed: number,
  basis: SaleBasis,
  bills: string,
  { price, priceBasis, brix }: PriceQuestion,
): readonly Reason[] {
  if (price === undefined || price.trim() === "") return [];
  const written = readWrittenNumber(price);
  if (!written || written.value <= 0)
    return [refused(`Price: "${price}" is not a price; ${bills}`)];
  const own = basisIn(written.beside) ?? priceBasis ?? basis;
  const ratio =
    perPound(written.value, own, brix) / perPound(agreed, basis, brix);
  const texts = asText("Price", price, written);
  if (ratio > UNUSUAL || ratio < 1 / UNUSUAL) {
    const other = likelyBasis(written.value, agreed, basis, brix);
    return [
      ...texts,
      asked(
        `Price: ${price} is ${figure(ratio, 3)} times what is usual${other === undefined ? "" : ` and looks like a price ${other}`}; ${bills}, which is what counts`,
      ),
    ];
  }
  return Math.abs(ratio - 1) < 0.0005
    ? texts
    : [
        ...texts,
        asked(
          `Price: ${price} is not the contract's; ${bills}, which is what counts`,
        ),
      ];
}

const likelyBasis = (
  price: number,
  agreed: number,
  basis: SaleBasis,
  brix: Brix | undefined,
): SaleBasis | undefined =>
  (["per gal", "per lb", "per kg"] as const).find((other) => {
    const ratio = perPound(price, other, brix) / perPound(agreed, basis, brix);
    return other !== basis && ratio > 0.66 && ratio < 1.5;
  });

/** To tell prices apart only; nothing is billed at it. */
const perPound = (
  price: number,
  basis: SaleBasis,
  brix: Brix = BASE_BRIX as Brix,
): number => pricePerPound(price, basis, brix);
