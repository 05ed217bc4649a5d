import { Suspense, useEffect, useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import { BuildCard } from "../lazy-views";
import { sentenceOf, type OpenBook } from "../open-book";
import { usePaneStyles } from "../styles";
import { readCosting, type Costing } from "./costing";
import { CostingView } from "./costing-view";
import { ProductPicker } from "./product-picker";
import { productsOf } from "./products";

/** "Price a product": pick one and see what it costs and what each channel leaves. */
export function PriceView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly dark: boolean;
  readonly chosen: string | undefined;
  readonly choose: (code: string) => void;
  readonly startNew: () => void;
}): ReactNode {
  const { host, book, dark, chosen, choose, startNew } = props;
  const pane = usePaneStyles();
  const products = productsOf(book.tables);
  const product = products.find(({ code }) => code === chosen);
  const reading = useCosting(host, book, product?.code);
  if (products.length === 0)
    return (
      <p className={pane.plain}>
        This workbook has no table Products with a product in it. Open a farm
        book, or add the first product to that table.
      </p>
    );
  return (
    <>
      <ProductPicker
        products={products}
        chosen={product?.code}
        choose={choose}
      />
      {product ? (
        <div>
          <p className={pane.plain}>{product.description}</p>
          <p className={pane.quiet}>
            {[
              product.declared,
              `${product.kind} syrup`,
              product.owner && `label: ${product.owner}`,
            ]
              .filter(Boolean)
              .join(" · ")}
          </p>
        </div>
      ) : (
        <p className={pane.quiet}>
          Pick a product to see what a bottle costs today and what each channel
          leaves, or set up one you have not made before.
        </p>
      )}
      {product && reading.trouble && <p role="alert">{reading.trouble}</p>}
      {product && reading.isReading && (
        <Spinner size="small" label="Reading the sheet …" />
      )}
      {product && reading.costing && (
        <CostingView
          host={host}
          book={book}
          product={product}
          costing={reading.costing}
          dark={dark}
        />
      )}
      {product &&
        !reading.isReading &&
        !reading.costing &&
        !reading.trouble && (
          <Suspense fallback={<Spinner size="small" label="Opening …" />}>
            <BuildCard
              key={product.code}
              host={host}
              book={book}
              product={product.code}
            />
          </Suspense>
        )}
      <Button appearance={product ? "subtle" : "secondary"} onClick={startNew}>
        Set up a new product
      </Button>
    </>
  );
}

interface Reading {
  readonly costing: Costing | undefined;
  readonly trouble: string | undefined;
  readonly isReading: boolean;
}

/** The chosen product's costing, read again after every edit; the old figures stay until the new ones are there. */
function useCosting(
  host: Host,
  book: OpenBook,
  product: string | undefined,
): Reading {
  const [held, setHeld] = useState<{
    readonly product: string;
    readonly costing?: Costing | undefined;
    readonly trouble?: string;
  }>();
  useEffect(() => {
    if (product === undefined) return;
    let isLate = false;
    readCosting(host, book.names, product).then(
      (costing) => !isLate && setHeld({ product, costing }),
      (problem: unknown) =>
        !isLate && setHeld({ product, trouble: sentenceOf(problem) }),
    );
    return () => {
      isLate = true;
    };
  }, [host, book, product]);
  const current = held?.product === product ? held : undefined;
  return {
    costing: current?.costing,
    trouble: current?.trouble,
    isReading: current === undefined,
  };
}
