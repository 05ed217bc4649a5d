import { useMemo, useState, type ReactNode } from "react";
import { Button, Checkbox, Spinner } from "@fluentui/react-components";
import { listed } from "../../../book/finding";
import type { CarriedBalance } from "../../../book/season-roll/opening";
import type { SeasonRoll } from "../../../book/season-roll/roll-season";
import type { Host } from "../../../hosts/host";
import { isoDate } from "../../../measures/read-date";
import { farmName } from "../../../sheets/farm-book";
import { FindingLines } from "../finding-lines";
import { useAnnounce } from "../last-write";
import { ChoiceField } from "../new-product/form-parts";
import { sentenceOf, type OpenBook } from "../open-book";
import { FiguresTable } from "../pictures/figures-table";
import { Section } from "../section";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { handOut, type WorkOut } from "../work-out";
import {
  nextBookFile,
  plannedRoll,
  seasonsToOpen,
  sheetsLeft,
} from "./next-season";

/** "New season": what the next season's book opens with beside what this one closes with, then the new book as a file. */
export function SeasonView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly workOut: WorkOut | undefined;
}): ReactNode {
  const { host, book, workOut } = props;
  const pane = usePaneStyles();
  const seasons = useMemo(() => seasonsToOpen(book.tables), [book]);
  const [chosen, setChosen] = useState<string>();
  const season = seasons.find((one) => String(one) === chosen) ?? seasons[0];
  const planned = useMemo(
    () => (season === undefined ? undefined : plannedRoll(book.tables, season)),
    [book, season],
  );
  if (season === undefined || !planned)
    return (
      <p className={pane.plain}>
        The book holds no date of anything that happened, so it has no season to
        close.
      </p>
    );
  return (
    <>
      <p className={pane.quiet}>
        Makes the next season’s book as a file of its own: what is left, owed or
        promised is carried, and prices go along with their dates. Only tables
        of the book go along, not what you keep beside them. This book stays as
        it is; put it away as the record of its season.
      </p>
      <ChoiceField
        label="Season to open"
        value={String(season)}
        choices={seasons.map((one) => ({
          value: String(one),
          text: String(one),
        }))}
        change={setChosen}
      />
      {"trouble" in planned ? (
        <p role="alert">{planned.trouble}</p>
      ) : (
        <Planned
          key={season}
          host={host}
          book={book}
          roll={planned.roll}
          balances={planned.balances}
          workOut={workOut}
        />
      )}
    </>
  );
}

function Planned(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly roll: SeasonRoll;
  readonly balances: readonly CarriedBalance[];
  readonly workOut: WorkOut | undefined;
}): ReactNode {
  const { host, book, roll, balances, workOut } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const [mayStay, setMayStay] = useState(false);
  const { season } = roll;
  const left = sheetsLeft(book, season);
  const make = async (): Promise<void> => {
    setBusy(true);
    setTrouble(undefined);
    try {
      const bytes = await nextBookFile(roll, workOut);
      const name = `${farmName(book.tables)}, season ${season}`;
      announce({
        says: `The book of season ${season} ${await handOut(host, bytes, name)}. This book is as it was.`,
      });
    } catch (problem) {
      setTrouble(sentence(sentenceOf(problem)));
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <Section title="Closing and opening">
        <p className={pane.plain} role="status">
          {balances.length} balances open season {season} as they close on{" "}
          {isoDate(roll.closingDay)}.
        </p>
        <div>
          {grouped(balances).map(([what, own]) => (
            <FiguresTable
              key={what}
              title={`${what}: ${own.length}`}
              caption={what}
              columns={["Of", "Closing", "Opening", "Unit"]}
              rows={own.map(({ name, closing, opening, unit }) => [
                name,
                figure(closing),
                figure(opening),
                unit,
              ])}
            />
          ))}
        </div>
      </Section>
      {roll.findings.length > 0 && (
        <Section title="Before this book is put away">
          <FindingLines findings={roll.findings} tables={book.tables} />
        </Section>
      )}
      {left.length > 0 && (
        <Section title="Stays behind">
          <p className={pane.plain}>
            {left.length === 1
              ? "One sheet holds"
              : `${left.length} sheets hold`}{" "}
            no table of the book: {listed(left)}.
          </p>
          <p className={pane.quiet}>
            Costings, lists and quotes are built anew in the new book; what is
            your own is copied over by hand.
          </p>
          <Checkbox
            label="They may stay behind"
            checked={mayStay}
            onChange={(_, { checked }) => setMayStay(checked === true)}
          />
        </Section>
      )}
      {trouble !== undefined && <p role="alert">{trouble}</p>}
      <div>
        <Button
          appearance="primary"
          disabled={busy || (left.length > 0 && !mayStay)}
          icon={busy ? <Spinner size="tiny" /> : null}
          onClick={() => void make()}
        >
          {busy ? "Making and checking it …" : `Make the book of ${season}`}
        </Button>
      </div>
    </>
  );
}

function grouped(
  balances: readonly CarriedBalance[],
): readonly (readonly [string, readonly CarriedBalance[]])[] {
  const groups = new Map<string, CarriedBalance[]>();
  for (const balance of balances)
    groups.set(balance.what, [...(groups.get(balance.what) ?? []), balance]);
  return [...groups];
}

const figure = (amount: number): string =>
  amount.toLocaleString("en-US", { maximumFractionDigits: 2 });
