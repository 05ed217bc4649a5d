import { useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import {
  channelsPlaces,
  type ChannelsKey,
} from "../../../sheets/channels/channels-sheet";
import {
  overheadsPlaces,
  type OverheadsKey,
} from "../../../sheets/overheads/overheads-sheet";
import {
  yearsPlaces,
  type YearsKey,
} from "../../../sheets/year-to-year/years-sheet";
import { useGoTo } from "../go-to";
import type { OpenBook } from "../open-book";
import { ProductPicker } from "../price/product-picker";
import { productsOf } from "../price/products";
import { usePaneStyles } from "../styles";
import { Tabs } from "../tabs";
import type { Part } from "./build";
import { BuildCard } from "./build-card";
import { ChannelsPart } from "./channels-part";
import { type Figures, useFigures } from "./figures";
import { OverheadsPart } from "./overheads-part";
import { YearsPart } from "./years-part";

type Key = ChannelsKey | OverheadsKey | YearsKey;

/** "Channels and years": what each channel leaves, who carries the bills, and what changed since last season. */
export function YearView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly dark: boolean;
  readonly chosen: string | undefined;
  readonly choose: (code: string) => void;
}): ReactNode {
  const { host, book, dark, chosen, choose } = props;
  const pane = usePaneStyles();
  const goTo = useGoTo();
  const [part, setPart] = useState<Part>("channels");
  const products = productsOf(book.tables);
  const product = products.find(({ code }) => code === chosen)?.code;
  const ofProduct = part !== "overheads";
  const reading = useFigures<Key>(
    host,
    book,
    `${part} ${ofProduct ? (product ?? "") : ""}`,
    ({ names }) =>
      part === "overheads"
        ? overheadsPlaces(names)
        : product === undefined
          ? {}
          : part === "channels"
            ? channelsPlaces(names, product)
            : yearsPlaces(names, product),
  );
  const { figures } = reading;
  return (
    <>
      <Tabs
        label="Parts of channels and years"
        tabs={[
          { value: "channels", text: "Channels" },
          { value: "overheads", text: "Overheads" },
          { value: "years", text: "Year to year" },
        ]}
        chosen={part}
        choose={setPart}
      />
      {ofProduct && (
        <ProductPicker products={products} chosen={product} choose={choose} />
      )}
      {ofProduct && product === undefined && (
        <p className={pane.quiet}>
          {part === "channels"
            ? "Pick a product to see what an order leaves in each channel."
            : "Pick a product to see what changed since last season."}
        </p>
      )}
      {reading.trouble && <p role="alert">{reading.trouble}</p>}
      {reading.isReading && (
        <Spinner size="small" label="Reading the sheet …" />
      )}
      {figures && <PartView {...{ host, figures, dark, part }} />}
      {figures && (
        <Button
          onClick={() => goTo({ sheet: figures.sheet, row: 0, column: 0 })}
        >
          Go to the sheet “{figures.sheet}”
        </Button>
      )}
      {!figures &&
        !reading.isReading &&
        !reading.trouble &&
        (!ofProduct || product !== undefined) && (
          <BuildCard
            key={`${part} ${product ?? ""}`}
            host={host}
            book={book}
            part={part}
            product={product ?? ""}
          />
        )}
    </>
  );
}

function PartView(props: {
  readonly host: Host;
  readonly figures: Figures<Key>;
  readonly dark: boolean;
  readonly part: Part;
}): ReactNode {
  const { host, figures, dark, part } = props;
  if (part === "overheads")
    return <OverheadsPart host={host} figures={figures} dark={dark} />;
  if (part === "years")
    return <YearsPart host={host} figures={figures} dark={dark} />;
  return <ChannelsPart host={host} figures={figures} dark={dark} />;
}
