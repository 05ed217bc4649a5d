import type { BottleFacts } from "../trade/costing/bottle-cost";
import type { Pull } from "../trade/costing/pull-list";
import type { Book, BookRow } from "./book";
import { listed } from "./finding";
import { isSameName as same } from "./keys";
import { setting, type SettingName } from "./setting";

/** Something to enter, and what the plan leaves open without it. */
export interface PlanNeed {
  readonly needs: string;
  readonly open: string;
  /** Without it there is no plan to speak of. */
  readonly isVital?: boolean;
}

interface Planned {
  readonly product: BookRow<"products">;
  readonly start: number | undefined;
  readonly materials: readonly Pull[];
}

/** What a plan lacks; a figure that nobody needs for this run is not asked for. */
export function planNeeds(
  book: Book,
  plan: Planned,
  facts: BottleFacts,
  trouble: { readonly kettle?: string },
): readonly PlanNeed[] {
  const need = (
    needs: readonly string[],
    open: string,
    isVital = false,
  ): readonly PlanNeed[] =>
    needs.length === 0 ? [] : [{ needs: listed(needs), open, isVital }];
  const missing = (...names: readonly SettingName[]): readonly string[] => {
    const blank = names
      .filter((name) => setting(book, name) === undefined)
      .map((name) => `“${name}”`);
    return blank.length === 0 ? [] : [`${listed(blank)} in Settings`];
  };
  const short = plan.materials.filter(({ order }) => order);
  const partOf = (name: string): Book["parts"][number] | undefined =>
    book.parts.find(({ part }) => same(part, name));
  return [
    ...need(
      [
        ...new Set([
          ...(facts.syrupNeeds ?? []),
          ...(facts.lines.some(({ crew }) => crew > 0)
            ? []
            : ["a line with its crew and wages"]),
        ]),
      ],
      "the line, the hours and the syrup",
      true,
    ),
    ...need(
      facts.unknownParts.map((part) => `${part} in Parts`),
      "its pieces",
    ),
    ...need(
      facts.materials.length + facts.unknownParts.length === 0
        ? [`the materials of ${plan.product.product} in Product materials`]
        : [],
      "the pull list",
      true,
    ),
    ...need(
      plan.materials
        .filter(({ onHand }) => onHand === undefined)
        .map(({ part }) => `On hand of ${part}`),
      "whether it is short",
    ),
    ...need(
      short
        .filter(({ order }) => order?.cost === undefined)
        .map(({ part }) => `a price for ${part}`),
      "what its order costs",
    ),
    ...need(
      short
        .filter(({ part }) => partOf(part)?.leadDays === undefined)
        .map(({ part }) => `Lead days of ${part}`),
      "its latest order date",
    ),
    ...need(
      missing("Kettle working fill", "Pack temperature"),
      "the kettle fills",
    ),
    ...need(
      facts.heating === undefined
        ? [
            "Energy rows for fuel, its price and heat, efficiency, hold loss and start temperature",
          ]
        : [],
      "the fuel",
    ),
    ...(trouble.kettle === undefined
      ? []
      : [
          {
            needs: `another figure: ${trouble.kettle}`,
            open: "the kettle fills",
          },
        ]),
    ...need(
      [
        ...missing("Empty case", "Empty pallet"),
        ...(plan.product.emptyBottle === undefined
          ? [`Empty bottle g of ${plan.product.product}`]
          : []),
      ],
      "what cases and pallets weigh",
    ),
    ...need(
      plan.start === undefined ? [] : missing("Best-by months"),
      "the best-by date",
    ),
  ];
}
