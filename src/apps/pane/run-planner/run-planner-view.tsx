import { useDeferredValue, useMemo, useRef, type ReactNode } from "react";
import { readBook } from "../../../book/read";
import type { Book } from "../../../book/book";
import { runPlan, type RunPlan } from "../../../book/run-plan";
import type { Host } from "../../../hosts/host";
import { sentenceOf, type OpenBook } from "../open-book";
import { ProductPicker } from "../price/product-picker";
import { productsOf, usualRun } from "../price/products";
import { usePaneStyles } from "../styles";
import { BuildPlan } from "./build-plan";
import { PlanAnswers } from "./plan-answers";
import { type ReadRun, readRun, type RunDraft } from "./run-draft";
import { RunFields } from "./run-fields";

/** "Run planner": product, bottles and start in; line, hours, kettle, lots, materials and pallets out, redrawn as one types. */
export function RunPlannerView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly dark: boolean;
  readonly chosen: string | undefined;
  readonly choose: (code: string) => void;
  readonly draft: RunDraft;
  readonly change: (draft: RunDraft) => void;
}): ReactNode {
  const { host, book, dark, chosen, choose, draft, change } = props;
  const pane = usePaneStyles();
  const products = productsOf(book.tables);
  const product = products.find(({ code }) => code === chosen);
  const farm = useFarmBook(book);
  const typed: RunDraft =
    product === undefined || draft.product === product.code
      ? draft
      : {
          ...draft,
          product: product.code,
          bottles: usualRun(book.tables, product.code).toLocaleString("en-US"),
        };
  const run = readRun(typed);
  const { plan, trouble } = usePlan(farm, product?.code, run);
  if (products.length === 0)
    return (
      <p className={pane.plain}>
        This workbook has no table Products with a product in it. Open a farm
        book to plan a run.
      </p>
    );
  return (
    <>
      <ProductPicker
        products={products}
        chosen={product?.code}
        choose={choose}
      />
      {!product && (
        <p className={pane.quiet}>
          Pick a product to see which line to run it on, when it is done, and
          what to draw, pull and order.
        </p>
      )}
      {product && (
        <>
          <p className={pane.plain}>{product.description}</p>
          <RunFields
            draft={typed}
            trouble={run.trouble}
            lines={farm.lines.map(({ line }) => line)}
            change={change}
          />
          {trouble && <p role="alert">{trouble}</p>}
          {plan && <PlanAnswers plan={plan} dark={dark} />}
          <BuildPlan
            key={product.code}
            host={host}
            book={book}
            product={product.code}
            run={run}
          />
        </>
      )}
    </>
  );
}

/** Reading the whole book takes a moment; what is being typed goes first. */
function useFarmBook(book: OpenBook): Book {
  const quiet = useDeferredValue(book);
  return useMemo(() => readBook(quiet.tables).book, [quiet]);
}

/** The plan of what is typed; while a field cannot be read, the last one that could be stays. */
function usePlan(
  farm: Book,
  product: string | undefined,
  { bottles, start, line, trouble }: ReadRun,
): { readonly plan: RunPlan | undefined; readonly trouble?: string } {
  const last = useRef<RunPlan>(undefined);
  const isReadable =
    trouble.bottles === undefined && trouble.start === undefined;
  const current = useMemo(() => {
    if (product === undefined || bottles === undefined || !isReadable)
      return undefined;
    try {
      return {
        plan: runPlan(farm, {
          product,
          bottles,
          ...(start === undefined ? {} : { start }),
          ...(line === undefined ? {} : { line }),
        }),
      };
    } catch (problem) {
      return { plan: undefined, trouble: sentenceOf(problem) };
    }
  }, [farm, product, bottles, start, line, isReadable]);
  if (current?.plan) last.current = current.plan;
  if (current) return current;
  const held = last.current;
  return { plan: held?.product.product === product ? held : undefined };
}
