import { useState, type ReactNode } from "react";
import {
  Button,
  Spinner,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import { cellAddress } from "../../../sheets/address";
import type { CopyChange } from "../../../sheets/compare/compare-workbooks";
import { useGoTo } from "../go-to";
import { sentenceOf } from "../open-book";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import type { Offer } from "./offers";
import { shownAs } from "./shown-as";

/** One change of a copy: what it is, what it was and is, and where it would go. Nothing goes there unasked. */
export function ChangeItem(props: {
  readonly change: CopyChange;
  readonly offer: Offer | undefined;
  /** The number format of its cell. */
  readonly format: string | undefined;
  readonly take: (offer: Offer) => Promise<void>;
}): ReactNode {
  const { change, offer, format, take } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  // Where a figure was typed over a formula, the figures tell more than the formula does.
  const isRewritten = change.formulaNow !== undefined;
  const press = async (own: Offer): Promise<void> => {
    setBusy(true);
    setTrouble(undefined);
    try {
      await take(own);
    } catch (problem) {
      setTrouble(sentence(sentenceOf(problem)));
    } finally {
      setBusy(false);
    }
  };
  return (
    <li className={styles.change}>
      <span className={styles.what}>{change.what}</span>
      <span className={pane.quiet}>
        {change.sheet}, {cellAddress(change.row, change.column)}: {change.kind}
      </span>
      <dl className={styles.values}>
        <div>
          <dt className={styles.term}>was</dt>
          <dd className={styles.value}>
            {isRewritten && change.formulaWas !== undefined
              ? change.formulaWas
              : shownAs(change.was, format)}
          </dd>
        </div>
        <div>
          <dt className={styles.term}>is</dt>
          <dd className={styles.value}>
            {change.formulaNow ?? shownAs(change.now, format)}
          </dd>
        </div>
      </dl>
      {offer && (
        <Offered {...{ offer, format, busy, what: change.what, press }} />
      )}
      {trouble !== undefined && <p role="alert">{trouble}</p>}
    </li>
  );
}

function Offered(props: {
  readonly offer: Offer;
  readonly format: string | undefined;
  readonly busy: boolean;
  readonly what: string;
  readonly press: (offer: Offer) => Promise<void>;
}): ReactNode {
  const { offer, format, busy, what, press } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const goTo = useGoTo();
  if (offer.can === "nothing")
    return (
      <p className={pane.quiet}>Cannot be taken over: {sentence(offer.why)}</p>
    );
  return (
    <>
      <p className={pane.quiet}>
        In the book:{" "}
        <Button
          appearance="transparent"
          className={styles.link}
          onClick={() => goTo(offer.place)}
        >
          {offer.where}
        </Button>
        {offer.isDone
          ? ` holds ${shownAs(offer.value, format)}, as the copy does.`
          : offer.isMoved
            ? ` has changed since and holds ${shownAs(offer.holds, format)} now.`
            : `, holds ${shownAs(offer.holds, format)}.`}
      </p>
      {!offer.isDone && (
        <div>
          <Button
            size="small"
            disabled={busy}
            icon={busy ? <Spinner size="tiny" /> : null}
            aria-label={`Take over ${shownAs(offer.value, format)}, ${what}`}
            onClick={() => void press(offer)}
          >
            {busy ? "Writing …" : `Take over ${shownAs(offer.value, format)}`}
          </Button>
        </div>
      )}
    </>
  );
}

const useStyles = makeStyles({
  change: {
    display: "flex",
    flexDirection: "column",
    gap: "4px",
    paddingTop: "8px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  what: { fontWeight: tokens.fontWeightSemibold, overflowWrap: "anywhere" },
  values: {
    margin: 0,
    display: "flex",
    flexWrap: "wrap",
    gap: "2px 18px",
    "& > div": { display: "flex", gap: "6px" },
  },
  term: { color: tokens.colorNeutralForeground3 },
  value: {
    margin: 0,
    fontVariantNumeric: "tabular-nums",
    overflowWrap: "anywhere",
  },
  link: {
    padding: 0,
    minWidth: 0,
    minHeight: "24px",
    textAlign: "left",
    textDecorationLine: "underline",
    textUnderlineOffset: "3px",
    color: tokens.colorBrandForegroundLink,
    fontSize: tokens.fontSizeBase200,
    fontWeight: tokens.fontWeightRegular,
  },
});
