import type { ReactNode } from "react";
import {
  type Preview,
  shortly,
  type SheetPreview,
  type Told,
} from "../../../sheets/handover/preview";
import { Fold } from "../guide/fold";
import { Section } from "../section";
import { usePaneStyles } from "../styles";

/** What the copy keeps, removes and fixes, with the reasons, before anything is written. */
export function PreviewView(props: { readonly preview: Preview }): ReactNode {
  const pane = usePaneStyles();
  const { sheets, tables, leftInUnit = [] } = props.preview;
  return (
    <>
      {sheets.map((sheet) => (
        <SheetView key={sheet.sheet} sheet={sheet} />
      ))}
      {tables.length > 0 && (
        <Section title="Rows of the book that go along">
          <p className={pane.quiet}>
            The formulas read them, so they stand on a sheet of their own:{" "}
            {tables.map(({ name, rows }) => `${name} ${rows}`).join(", ")}.
          </p>
        </Section>
      )}
      {leftInUnit.length > 0 && (
        <Section title="Not in metric">
          <ul className={pane.list}>
            {leftInUnit.map(({ sheet, what, why }) => (
              <li key={`${sheet}|${what}`}>
                <p className={pane.plain}>
                  {sheet}: {what}
                </p>
                <p className={pane.quiet}>{why}</p>
              </li>
            ))}
          </ul>
        </Section>
      )}
    </>
  );
}

function SheetView({ sheet }: { readonly sheet: SheetPreview }): ReactNode {
  const pane = usePaneStyles();
  const { kept, removed, fixed, inputs } = sheet;
  return (
    <Section title={sheet.sheet}>
      <p className={pane.plain}>
        Kept:{" "}
        {kept
          .filter(({ block }) => block !== "Title")
          .map(({ block }) => block)
          .join("; ")}
        .
      </p>
      {inputs.length > 0 && (
        <p className={pane.plain}>May be tried: {inputs.join(", ")}.</p>
      )}
      <Fold title={`Removed, ${count(removed)}`}>
        <Lines all={shortly(removed, kept)} />
      </Fold>
      <Fold title={`Fixed to its value, ${count(fixed)}`}>
        <Lines all={shortly(fixed, kept)} />
      </Fold>
    </Section>
  );
}

function Lines({ all }: { readonly all: readonly Told[] }): ReactNode {
  const pane = usePaneStyles();
  if (all.length === 0) return <p className={pane.quiet}>Nothing.</p>;
  return (
    <ul className={pane.list}>
      {all.map(({ block, what, why }) => (
        <li key={`${block}|${why}`}>
          <p className={pane.plain}>
            {block}: {what}
          </p>
          <p className={pane.quiet}>{why}</p>
        </li>
      ))}
    </ul>
  );
}

function count(all: readonly Told[]): string {
  const figures = all.reduce((sum, one) => sum + one.figures, 0);
  return `${figures.toLocaleString("en-US")} ${figures === 1 ? "figure" : "figures"}`;
}
