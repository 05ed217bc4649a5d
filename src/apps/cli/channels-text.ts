import { findingText } from "../../book/finding";
import { estimateLines } from "./estimate-lines";
import type { ChannelsJson } from "./channels-answer";

/** What each channel leaves, as a person reads it at a terminal. */
export function channelsText(answer: ChannelsJson): readonly string[] {
  const sold = answer.channels.filter(({ usualOrder }) => usualOrder !== null);
  const sizes = sold[0]?.orders.map(({ bottles }) => bottles) ?? [];
  const chains = answer.channels.filter(({ fromShelf }) => fromShelf !== null);
  return [
    `Channels of ${answer.product} on ${answer.asOf}, a run of ${answer.bottles.toLocaleString("en-US")}: full cost ${money(answer.cost, 4)}, direct ${money(answer.direct, 4)}`,
    ...estimateLines(answer.estimateFromSeason),
    ...answer.needs.map((need) => `needs ${need}`),
    "",
    row("Left of an order of", [
      "price",
      "usual order",
      "left",
      "of the goods",
      ...sizes.map((size) => `${size}`),
      "pays from",
    ]),
    ...sold.map((one) =>
      row(one.channel, [
        money(one.price),
        String(one.usualOrder?.bottles ?? ""),
        money(one.usualOrder?.left ?? null),
        percent(one.usualOrder?.leftOfGoods ?? null),
        ...one.orders.map(({ left }) => money(left)),
        one.firstOrderThatPays === null
          ? "never"
          : String(one.firstOrderThatPays),
      ]),
    ),
    ...(chains.length === 0 || answer.shelfPrice === null
      ? []
      : [
          "",
          row(`Back from ${money(answer.shelfPrice)} on the shelf`, [
            "invoice",
            "broker",
            "promotion",
            "net",
            "left",
            "of invoice",
            "our price",
            "on the shelf",
          ]),
          ...chains.map((one) =>
            row(one.channel, [
              money(one.fromShelf?.invoice ?? null, 4),
              money(one.fromShelf?.broker ?? null, 4),
              money(one.fromShelf?.promotion ?? null, 4),
              money(one.fromShelf?.net ?? null, 4),
              money(one.fromShelf?.left ?? null, 4),
              percent(one.fromShelf?.leftOfInvoice ?? null),
              money(one.price),
              money(one.onShelf),
            ]),
          ),
        ]),
    ...(answer.findings.length === 0
      ? []
      : ["", "Findings", ...answer.findings.map((f) => `- ${findingText(f)}`)]),
  ];
}

const row = (label: string, cells: readonly string[]): string =>
  label.padEnd(32) + cells.map((cell) => cell.padStart(13)).join("");

const money = (value: number | null, digits = 2): string =>
  value === null ? "–" : value.toFixed(digits);
const percent = (share: number | null): string =>
  share === null ? "–" : `${(share * 100).toFixed(1)} %`;
