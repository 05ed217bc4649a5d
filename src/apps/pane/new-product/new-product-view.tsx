import { useMemo, useState, type ReactNode } from "react";
import {
  Button,
  MessageBar,
  MessageBarBody,
  Spinner,
} from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import { focusView } from "../focus-view";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import type { Draft } from "./draft";
import { TextField } from "./form-parts";
import { ContainerFields, PartFields } from "./packing-fields";
import { plannedProduct, type PlannedProduct } from "./plan";
import { PriceFields } from "./price-fields";
import { CaseFields, FillFields, NameFields } from "./product-fields";
import { readDraft, type Troubles } from "./read-draft";

/** "New product": one form, then exactly what it will write, then one write. */
export function NewProductView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly draft: Draft;
  readonly change: (draft: Draft) => void;
  readonly done: (product: string) => void;
  readonly leave: () => void;
}): ReactNode {
  const { host, book, draft, change, done, leave } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const [isTried, setTried] = useState(false);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const read = useMemo(() => readDraft(draft, book.tables), [draft, book]);
  const plan = useMemo(() => planOrTrouble(read.rows, book), [read.rows, book]);
  const shownTroubles = isTried
    ? read.troubles
    : withoutEmpty(read.troubles, draft);
  const form = { tables: book.tables, draft, change, troubles: shownTroubles };
  const write = async (): Promise<void> => {
    setTried(true);
    if (!read.rows || !plan?.planned) return;
    const { product } = read.rows;
    const { change: all, sheet } = plan.planned;
    setBusy(true);
    setTrouble(undefined);
    try {
      await host.apply(all);
      announce({
        says: `Added ${product} to the book and its sheet “${sheet}”.`,
        takeBack: () => host.undo(),
      });
      done(product);
      await host.select({ sheet, row: 0, column: 0 });
      focusView();
    } catch (problem) {
      setTrouble(sentenceOf(problem));
    } finally {
      setBusy(false);
    }
  };
  const open = Object.keys(read.troubles).length;
  return (
    <>
      <div className={pane.row}>
        <h2 className={pane.heading}>A new product</h2>
        <Button size="small" appearance="subtle" onClick={leave}>
          Back to prices
        </Button>
      </div>
      <ContainerFields {...form} />
      <NameFields {...form} />
      <FillFields {...form} />
      <PartFields {...form} />
      <CaseFields {...form} />
      <PriceFields {...form} />
      <TextField
        label="Bottles in a run, for its costing sheet"
        needed
        value={draft.bottles}
        trouble={shownTroubles["bottles"]}
        change={(bottles) => change({ ...draft, bottles })}
      />
      <Section title="What will be written">
        {plan?.planned ? (
          <WriteList planned={plan.planned} />
        ) : (
          <p className={pane.quiet}>
            {plan?.trouble ??
              `Nothing yet: ${open === 1 ? "one field still needs" : `${open} fields still need`} something.`}
          </p>
        )}
      </Section>
      {isTried && open > 0 && (
        <MessageBar intent="error">
          <MessageBarBody>
            Nothing was written. {Object.values(read.troubles)[0]}
          </MessageBarBody>
        </MessageBar>
      )}
      {trouble && (
        <MessageBar intent="error">
          <MessageBarBody>{trouble}</MessageBarBody>
        </MessageBar>
      )}
      <Button
        appearance="primary"
        disabled={busy}
        icon={busy ? <Spinner size="tiny" /> : null}
        onClick={() => void write()}
      >
        {busy ? "Writing …" : "Write it to the book"}
      </Button>
    </>
  );
}

function WriteList(props: { readonly planned: PlannedProduct }): ReactNode {
  const pane = usePaneStyles();
  return (
    <ul className={pane.list}>
      {props.planned.writes.map(({ what, rows }) => (
        <li key={what}>
          <strong>{what}</strong>
          {rows.map((row) => (
            <div key={row} className={pane.quiet}>
              {row}
            </div>
          ))}
        </li>
      ))}
    </ul>
  );
}

function planOrTrouble(
  rows: ReturnType<typeof readDraft>["rows"],
  book: OpenBook,
):
  { readonly planned?: PlannedProduct; readonly trouble?: string } | undefined {
  if (!rows) return undefined;
  try {
    return { planned: plannedProduct(rows, book.tables, book.sheets) };
  } catch (problem) {
    return { trouble: sentenceOf(problem) };
  }
}

/** Before the first try, only what was typed is judged: an untouched form is not red. */
function withoutEmpty(troubles: Troubles, draft: Draft): Troubles {
  const isTyped = (field: string): boolean => {
    const value = (draft.fields as Readonly<Record<string, string>>)[field];
    return value === undefined ? !field.startsWith("parts.") : value !== "";
  };
  return Object.fromEntries(
    Object.entries(troubles).filter(([field]) => isTyped(field)),
  );
}
