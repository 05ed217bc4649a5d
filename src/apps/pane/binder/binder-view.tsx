import { useMemo, useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Binder } from "../../../book/binder-contents";
import { gapsByRun } from "../../../book/binder-gaps";
import { readBook } from "../../../book/read";
import type { Host } from "../../../hosts/host";
import { isoDate } from "../../../measures/read-date";
import { Fold } from "../guide/fold";
import { FindingLines } from "../finding-lines";
import { useAnnounce } from "../last-write";
import { ChoiceField } from "../new-product/form-parts";
import { sentenceOf, type OpenBook } from "../open-book";
import { Section } from "../section";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { fileOf, handOut, type WorkOut } from "../work-out";
import { binderBook, plannedBinder, seasonsIn } from "./season-binder";

/** "Audit binder": a season's records as one set to print, and what they lack, before it is made. */
export function BinderView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly workOut: WorkOut | undefined;
}): ReactNode {
  const { host, book, workOut } = props;
  const pane = usePaneStyles();
  const reading = useMemo(() => readBook(book.tables), [book]);
  const seasons = useMemo(() => seasonsIn(reading), [reading]);
  const [chosen, setChosen] = useState<string>();
  const [lot, setLot] = useState("");
  const season = seasons.find((one) => String(one) === chosen) ?? seasons[0];
  const planned = useMemo(
    () =>
      season === undefined ? undefined : plannedBinder(reading, season, lot),
    [reading, season, lot],
  );
  if (season === undefined || !planned)
    return (
      <p className={pane.plain}>
        The book holds no run and no lot yet, so there is nothing to put into a
        binder.
      </p>
    );
  return (
    <>
      <p className={pane.quiet}>
        Everything the book holds of a season for whoever audits it, as sheets
        to print. What an audit asks for is for your certifier, inspector or
        food-safety authority to say.
      </p>
      <ChoiceField
        label="Season"
        value={String(season)}
        choices={seasons.map((one) => ({
          value: String(one),
          text: String(one),
        }))}
        change={setChosen}
      />
      <ChoiceField
        label="Lot to trace to its buyers"
        value={lot}
        none="The season’s lot with the most draws"
        choices={reading.book.lots.map((one) => ({
          value: one.lot,
          text: one.lot,
        }))}
        change={setLot}
      />
      {"trouble" in planned ? (
        <p role="alert">{planned.trouble}</p>
      ) : (
        <Planned {...{ host, book, workOut }} binder={planned.binder} />
      )}
    </>
  );
}

function Planned(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly workOut: WorkOut | undefined;
  readonly binder: Binder;
}): ReactNode {
  const { host, book, workOut, binder } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const [busy, setBusy] = useState<"file" | "sheets">();
  const [trouble, setTrouble] = useState<string>();
  const during = async (
    what: "file" | "sheets",
    work: () => Promise<void>,
  ): Promise<void> => {
    setBusy(what);
    setTrouble(undefined);
    try {
      await work();
    } catch (problem) {
      setTrouble(sentence(sentenceOf(problem)));
    } finally {
      setBusy(undefined);
    }
  };
  const save = async (): Promise<void> => {
    const made = binderBook(binder);
    const bytes = await fileOf(made, workOut);
    announce({
      says: `The binder of season ${binder.season} ${await handOut(host, bytes, made.title.replace(":", ","))}.`,
    });
  };
  const add = async (): Promise<void> => {
    const { sheets } = binderBook(binder);
    await host.apply({
      says: `the binder of season ${binder.season}`,
      append: [],
      addSheets: sheets,
      names: [],
    });
    await host.select({
      sheet: sheets[0]?.name ?? "",
      row: 0,
      column: 0,
    });
    announce({
      says: `Added ${sheets.length} sheets, from “${sheets[0]?.name}” on.`,
      takeBack: () => host.undo(),
    });
  };
  return (
    <>
      <Holds binder={binder} />
      <Gaps binder={binder} tables={book.tables} />
      {trouble !== undefined && <p role="alert">{trouble}</p>}
      <div className={pane.buttons}>
        <Button
          appearance="primary"
          disabled={busy !== undefined}
          icon={busy === "file" ? <Spinner size="tiny" /> : null}
          onClick={() => void during("file", save)}
        >
          {busy === "file" ? "Writing …" : "Make the binder as a file"}
        </Button>
        <Button
          disabled={busy !== undefined}
          icon={busy === "sheets" ? <Spinner size="tiny" /> : null}
          onClick={() => void during("sheets", add)}
        >
          {busy === "sheets" ? "Adding …" : "Add its sheets to this workbook"}
        </Button>
      </div>
    </>
  );
}

function Holds({ binder }: { readonly binder: Binder }): ReactNode {
  const pane = usePaneStyles();
  const { runs, fills, lots, received, totes, traces, season, asOf } = binder;
  const lines: readonly (readonly [string, string])[] = [
    ["Runs", String(runs.length)],
    ["Runs with a fill check", `${fills.length} of ${runs.length}`],
    ["Densities of lots and totes", String(received.length + totes.length)],
    ["Lots and barrels", String(lots.length)],
    ["Trace tests", traces.map(({ name }) => name).join(", ") || "none"],
  ];
  return (
    <Section title="What it will hold">
      <p className={pane.quiet}>
        Season {season}, as the book stands on {isoDate(asOf)}.
      </p>
      <ul className={pane.list}>
        {lines.map(([what, many]) => (
          <li key={what} className={pane.row}>
            <span>{what}</span>
            <span className={pane.numeric}>{many}</span>
          </li>
        ))}
      </ul>
    </Section>
  );
}

function Gaps(props: {
  readonly binder: Binder;
  readonly tables: OpenBook["tables"];
}): ReactNode {
  const { binder, tables } = props;
  const pane = usePaneStyles();
  const byRun = gapsByRun(binder);
  return (
    <Section title="Gaps by run">
      {byRun.length === 0 ? (
        <p className={pane.plain}>No run of this season lacks anything.</p>
      ) : (
        <ul className={pane.list}>
          {byRun.map(({ run, gaps }) => (
            <li key={run} className={pane.row}>
              <span style={{ whiteSpace: "nowrap" }}>{run}</span>
              <span style={{ textAlign: "right" }}>{gaps.join("; ")}</span>
            </li>
          ))}
        </ul>
      )}
      {binder.gaps.length > 0 && (
        <Fold
          title={`All ${binder.gaps.length} gaps, and what to do about them`}
        >
          <FindingLines findings={binder.gaps} tables={tables} />
        </Fold>
      )}
    </Section>
  );
}
