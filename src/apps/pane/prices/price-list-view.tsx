import { useEffect, useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import { isoDate } from "../../../measures/read-date";
import { as } from "../../../measures/quantity";
import { useGoTo } from "../go-to";
import { sentenceOf, type OpenBook } from "../open-book";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { Tabs } from "../tabs";
import { WhatIfView } from "../what-if/what-if-view";
import { BuildCard } from "./build-card";
import { BulkInputs } from "./bulk-inputs";
import { type ListedPrices, readPriceList } from "./price-list";
import { ProductList } from "./product-list";

/** "Price list": every product at today's bulk price, and what happens if it moves. */
export function PriceListView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly dark: boolean;
  /** Goes to one product by itself. */
  readonly open: (product: string) => void;
}): ReactNode {
  const { host, book, dark, open } = props;
  const pane = usePaneStyles();
  const goTo = useGoTo();
  const [part, setPart] = useState<"products" | "what-if">("products");
  const { list, trouble, isReading } = usePriceList(host, book);
  if (trouble) return <p role="alert">{trouble}</p>;
  if (isReading)
    return <Spinner size="small" label="Reading the price list …" />;
  if (!list) return <BuildCard host={host} book={book} />;
  return (
    <>
      <Tabs
        label="Parts of the price list"
        tabs={[
          { value: "products", text: "All products" },
          { value: "what-if", text: "What if" },
        ]}
        chosen={part}
        choose={setPart}
      />
      {part === "what-if" ? (
        <WhatIfView host={host} book={book} dark={dark} />
      ) : (
        <>
          <BulkInputs host={host} book={book} list={list} />
          <div>
            {list.glance.map(({ what, says }) => (
              <p key={what} className={pane.plain}>
                {what}: <strong>{says}</strong>
              </p>
            ))}
          </div>
          {list.checks.map(({ what, says }) => (
            <p key={what} role="alert" className={pane.plain}>
              {what}: {says}
            </p>
          ))}
          <Section title={`Cost of a bottle${dayOf(list)}`}>
            <ProductList products={list.products} open={open} />
          </Section>
          <Button
            onClick={() => goTo({ sheet: list.sheet, row: 0, column: 0 })}
          >
            Go to the sheet “{list.sheet}”
          </Button>
        </>
      )}
    </>
  );
}

const dayOf = ({ asOf }: ListedPrices): string =>
  typeof asOf === "number" && asOf >= 1 ? `, ${isoDate(as(asOf))}` : "";

interface Reading {
  readonly list: ListedPrices | undefined;
  readonly trouble: string | undefined;
  readonly isReading: boolean;
}

/** The list, read again after every edit; the old figures stay until the new ones are there. */
function usePriceList(host: Host, book: OpenBook): Reading {
  const [held, setHeld] = useState<{
    readonly list?: ListedPrices | undefined;
    readonly trouble?: string;
  }>();
  useEffect(() => {
    let isLate = false;
    readPriceList(host, book.names).then(
      (list) => !isLate && setHeld({ list }),
      (problem: unknown) =>
        !isLate && setHeld({ trouble: sentenceOf(problem) }),
    );
    return () => {
      isLate = true;
    };
  }, [host, book]);
  return {
    list: held?.list,
    trouble: held?.trouble,
    isReading: held === undefined,
  };
}
