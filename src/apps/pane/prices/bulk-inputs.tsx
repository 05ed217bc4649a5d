import type { ReactNode } from "react";
import type { Host } from "../../../hosts/host";
import { CommitField } from "../commit-field";
import { useAnnounce } from "../last-write";
import type { OpenBook } from "../open-book";
import { Pair } from "../pair";
import { readBulkPrice } from "../price/bottles";
import { newestBulkPrice, type BulkPrice } from "../price/bulk-price";
import { usePaneStyles } from "../styles";
import { tableRows } from "../table-rows";
import { type ListedPrices, readPriceList } from "./price-list";

/** Today's bulk price of each kind of syrup: one cell each, and every product moves with it. */
export function BulkInputs(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly list: ListedPrices;
}): ReactNode {
  const { host, book, list } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const write = async (bulk: BulkPrice, value: number): Promise<void> => {
    await host.setCell(bulk.place, value);
    const after = await readPriceList(host, book.names);
    announce({
      says: `Bulk ${bulk.kind} is now $${shown(value)} a pound. ${movedSentence(list, after)}`,
      takeBack: async () => {
        await host.setCell(bulk.place, bulk.price ?? null);
        return `${bulk.where} holds ${bulk.price ?? "nothing"} again.`;
      },
    });
  };
  const prices = kindsOf(book).flatMap(
    (kind) => newestBulkPrice(book.tables, kind) ?? [],
  );
  if (prices.length === 0)
    return (
      <p className={pane.plain}>
        The table Bulk prices has no row, so no product has a price for its
        syrup.
      </p>
    );
  return (
    <div className={pane.card}>
      <Pair>
        {prices.map((bulk) => (
          <CommitField
            key={bulk.kind}
            label={`Bulk ${bulk.kind}, per lb`}
            shown={bulk.price === undefined ? "" : shown(bulk.price)}
            hint={`Writes ${bulk.where}`}
            read={readBulkPrice}
            write={(value) => write(bulk, value)}
          />
        ))}
      </Pair>
    </div>
  );
}

/** "2 products fall under their goal: A, B." */
export function movedSentence(
  before: ListedPrices,
  after: ListedPrices | undefined,
): string {
  if (!after) return "";
  const under = (list: ListedPrices): ReadonlySet<string> =>
    new Set(
      list.products.flatMap(({ product, under: channels }) =>
        channels.map((channel) => `${product} in ${channel}`),
      ),
    );
  const was = under(before);
  const is = under(after);
  const fallen = [...is].filter((price) => !was.has(price));
  const risen = [...was].filter((price) => !is.has(price));
  const parts = [
    counted(fallen, "falls under its goal", "fall under their goal"),
    counted(risen, "meets its goal again", "meet their goal again"),
  ].filter(Boolean);
  return parts.length === 0
    ? "No price crosses its goal."
    : `${parts.join("; ")}.`;
}

function counted(names: readonly string[], one: string, many: string): string {
  const [first] = names;
  if (first === undefined) return "";
  return names.length === 1
    ? `${first} ${one}`
    : `${names.length} prices ${many}, ${first} among them`;
}

function kindsOf(book: OpenBook): readonly string[] {
  const kinds = new Map<string, string>();
  for (const row of tableRows(book.tables, "BulkPrices")) {
    const kind = row.text("Syrup kind");
    if (kind !== "" && !kinds.has(kind.toLowerCase()))
      kinds.set(kind.toLowerCase(), kind);
  }
  return [...kinds.values()];
}

/** Prices a pound have cents; a tenth of a cent is kept where someone typed it. */
const shown = (price: number): string =>
  price.toFixed(
    Math.max(2, Math.min(4, (String(price).split(".")[1] ?? "").length)),
  );
