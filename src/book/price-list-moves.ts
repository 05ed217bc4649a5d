import type { ByMethod } from "../trade/costing/by-method";
import { pricedProduct, type PriceList } from "./price-list";

/** A product's full cost in two price lists. */
export interface CostMoved {
  readonly product: string;
  readonly before: ByMethod["replacement"];
  readonly now: ByMethod["replacement"];
  /** Of the cost before; undefined where one of them is withheld or the product is new. */
  readonly share: number | undefined;
  /** Moved by more than was asked, up or down. */
  readonly isOver: boolean;
  readonly isNew: boolean;
}

/** What a new list of prices did to every product: old against new, and which moved by more than a share. */
export const costsMoved = (
  before: PriceList,
  now: PriceList,
  over: number,
): readonly CostMoved[] =>
  now.products.map(({ product, cost }) => {
    const old = pricedProduct(before, product.product);
    const was = old?.cost.full.replacement;
    const is = cost.full.replacement;
    const share =
      was === undefined || is === undefined ? undefined : is / was - 1;
    return {
      product: product.product,
      before: was,
      now: is,
      share,
      isOver: share !== undefined && Math.abs(share) > over,
      isNew: old === undefined,
    };
  });
