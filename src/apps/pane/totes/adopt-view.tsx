import { useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import { tableList } from "../../../book/book";
import { gallonIn } from "../../../book/gallon";
import type { Cells } from "../../../book/ledger/headings";
import { ledgerGallon } from "../../../book/ledger/ledger-gallon";
import {
  proposeLedger,
  type LedgerProposal,
} from "../../../book/ledger/propose";
import type { LedgerReading } from "../../../book/ledger/read-ledger";
import type { Host } from "../../../hosts/host";
import {
  rangeText,
  type LedgerRange,
} from "../../../sheets/ledger/ledger-range";
import { LEDGER_COLUMNS, remembered } from "../../../sheets/ledger/remembered";
import { useSelected } from "../guide/selected";
import { useAnnounce } from "../last-write";
import { ChoiceField, TextField } from "../new-product/form-parts";
import { sentenceOf, type OpenBook } from "../open-book";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { atRightChange, ownSheetChange, rangeIn, readingOf } from "./adopt";
import { LedgerFields } from "./ledger-fields";

interface Looked {
  readonly range: LedgerRange;
  readonly cells: Cells;
  readonly proposal: LedgerProposal;
  readonly wasRemembered: boolean;
}

/** "Your ledger": a ledger the workbook already has, read as it stands. Its columns stay the user's. */
export function AdoptView(props: {
  readonly host: Host;
  readonly open: OpenBook;
}): ReactNode {
  const { host, open } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const selected = useSelected(host);
  const [asked, setAsked] = useState("");
  const [looked, setLooked] = useState<Looked>();
  const [how, setHow] = useState<LedgerReading>();
  const [busy, setBusy] = useState<string>();
  const [trouble, setTrouble] = useState<string>();
  const run = async (
    words: string,
    work: () => Promise<void>,
  ): Promise<void> => {
    setBusy(words);
    setTrouble(undefined);
    try {
      await work();
    } catch (problem) {
      setTrouble(sentence(sentenceOf(problem)));
    } finally {
      setBusy(undefined);
    }
  };
  const look = (): Promise<void> =>
    run("Looking …", async () => {
      const range = rangeIn(asked, open);
      const cells = await host.readArea(
        range.sheet,
        range.row,
        range.column,
        range.rows,
        range.columns,
      );
      const proposal = proposeLedger(cells);
      const known = remembered(open.tables, rangeText(range));
      setLooked({ range, cells, proposal, wasRemembered: known !== undefined });
      setHow({
        ...(known ?? readingOf(proposal)),
        gallon: ledgerGallon(proposal, gallonIn(open.tables)),
      });
    });
  const keep = (where: "own sheet" | "right"): Promise<void> =>
    run("Writing …", async () => {
      if (!looked || !how) return;
      const adoption = { ...looked, rows: looked.proposal.rows, how };
      const takeBack = (): Promise<string | undefined> => host.undo();
      if (where === "right") {
        await host.apply(atRightChange(adoption, open));
        announce({ says: "Added our columns right of the ledger.", takeBack });
        return;
      }
      const { sheet, ...change } = ownSheetChange(adoption, open);
      await host.apply(change);
      await host.select({ sheet, row: 0, column: 0 });
      announce({ says: `Added the sheet “${sheet}”.`, takeBack });
    });
  const own = new Set([
    ...tableList.map(([, table]) => table.name),
    LEDGER_COLUMNS,
  ]);
  const theirs = open.tables.filter(({ name }) => !own.has(name));
  return (
    <>
      <p className={pane.quiet}>
        Point at a table or at cells with headings. We say which column is what;
        you put right what is wrong. Your columns stay as they are.
      </p>
      {theirs.length > 0 && (
        <ChoiceField
          label="A table"
          none="None: cells"
          value={theirs.some(({ name }) => name === asked) ? asked : ""}
          choices={theirs.map(({ name, sheet }) => ({
            value: name,
            text: `${name}, on “${sheet}”`,
          }))}
          change={setAsked}
        />
      )}
      <TextField
        label="Cells of the ledger"
        hint="For example Sales!A3:L200"
        value={asked}
        change={setAsked}
      />
      <div className={pane.buttons}>
        <Button
          appearance={looked ? "secondary" : "primary"}
          disabled={busy !== undefined || asked.trim() === ""}
          onClick={() => void look()}
        >
          Look at it
        </Button>
        {selected && selected.now.rows > 1 && (
          <Button onClick={() => setAsked(rangeText(selected.now))}>
            Use the selected cells
          </Button>
        )}
      </div>
      {looked && how && (
        <>
          <LedgerFields {...looked} how={how} change={setHow} />
          <div className={pane.buttons}>
            <Button
              appearance="primary"
              disabled={busy !== undefined}
              onClick={() => void keep("own sheet")}
            >
              Keep ours on a sheet of their own
            </Button>
            <Button
              disabled={busy !== undefined}
              onClick={() => void keep("right")}
            >
              Put ours right of it
            </Button>
          </div>
        </>
      )}
      {busy !== undefined && <Spinner size="tiny" label={busy} />}
      {trouble !== undefined && <p role="alert">{trouble}</p>}
    </>
  );
}
