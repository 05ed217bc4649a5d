import type { ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import { as } from "../../../measures/quantity";
import { isoDate } from "../../../measures/read-date";
import { useGoTo } from "../go-to";
import { amount, count, share } from "../money";
import type { OpenBook } from "../open-book";
import { ProductPicker } from "../price/product-picker";
import { productsOf } from "../price/products";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { BuildQuote } from "./build-quote";
import { BulkOrBottle } from "./bulk-or-bottle";
import { QuoteInputs } from "./quote-inputs";
import { QuoteTable } from "./quote-table";
import { readQuote, type ReadQuote } from "./read-quote";
import { useReading } from "./use-reading";

/** "Quote": what to ask one customer for some quantities, and whether the syrup is better sold in bulk. */
export function QuoteView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly chosen: string | undefined;
  readonly choose: (code: string) => void;
}): ReactNode {
  const { host, book, chosen, choose } = props;
  const pane = usePaneStyles();
  const products = productsOf(book.tables);
  const product = products.find(({ code }) => code === chosen);
  const reading = useReading(host, book, product?.code, readQuote);
  if (products.length === 0)
    return (
      <p className={pane.plain}>
        This workbook has no table Products with a product in it, so there is
        nothing to quote.
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
        <p className={pane.plain}>{product.description}</p>
      ) : (
        <p className={pane.quiet}>
          Pick the product a customer asks for: each quantity gets a price of
          its own, ready to print.
        </p>
      )}
      {product && reading.trouble && <p role="alert">{reading.trouble}</p>}
      {product && reading.isReading && (
        <Spinner size="small" label="Reading the quote …" />
      )}
      {product && reading.read && (
        <QuoteFigures host={host} book={book} quote={reading.read} />
      )}
      {product && !reading.isReading && !reading.read && !reading.trouble && (
        <BuildQuote
          key={product.code}
          host={host}
          book={book}
          product={product.code}
        />
      )}
      {product && !reading.isReading && (
        <Section title="Bulk or bottle">
          <BulkOrBottle host={host} book={book} product={product.code} />
        </Section>
      )}
    </>
  );
}

function QuoteFigures(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly quote: ReadQuote;
}): ReactNode {
  const { host, book, quote } = props;
  const pane = usePaneStyles();
  const goTo = useGoTo();
  const { valid_until: until, artwork, goal, channel } = quote.cell;
  return (
    <>
      <div>
        <QuoteTable quote={quote} />
        <p className={pane.quiet}>
          {[
            channel &&
              goal &&
              `Goal of ${String(channel.value)}: ${share(goal.value)}`,
            typeof artwork?.value === "number" &&
              `artwork ${amount(artwork.value)}, once`,
            typeof until?.value === "number" &&
              `stands until ${isoDate(as(until.value))}`,
          ]
            .filter(Boolean)
            .join(" · ")}
        </p>
      </div>
      {quote.tiers.map(
        ({ bottles, below }, i) =>
          below.length > 0 && (
            <p key={i} className={pane.plain}>
              <strong>{count(bottles.value)} bottles:</strong>{" "}
              {below.join("; ")}.
            </p>
          ),
      )}
      {quote.checks
        .filter(({ says }) => !says.startsWith("see "))
        .map(({ what, says }) => (
          <p key={what} className={pane.plain}>
            <strong>{what}:</strong> {says}.
          </p>
        ))}
      <div className={pane.buttons}>
        <Button appearance="primary" onClick={() => goTo(quote.page)}>
          Go to the customer's page
        </Button>
        <Button onClick={() => goTo(quote.working)}>Go to our costs</Button>
      </div>
      <Section title="Change the quote">
        <QuoteInputs host={host} book={book} quote={quote} />
      </Section>
    </>
  );
}
