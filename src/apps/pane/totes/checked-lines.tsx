import type { ReactNode } from "react";
import {
  Button,
  Checkbox,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import type { CheckedLine } from "../../../book/tickets/check-tickets";
import type { Offer } from "../../../book/tickets/reason";
import { isoDate } from "../../../measures/read-date";
import { KG_PER_LB } from "../../../measures/units";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { moneyIn } from "./money-in";

const verdictWords = {
  fine: "Fine",
  asked: "Look at it",
  refused: "Refused",
} as const;

/** Every line of a paste with what there is to say about it, how it is read, and ways to put it right. */
export function CheckedLines(props: {
  readonly lines: readonly CheckedLine[];
  readonly accepted: ReadonlySet<string>;
  readonly accept: (line: CheckedLine, isRight: boolean) => void;
  readonly take: (line: CheckedLine, offer: Offer) => void;
}): ReactNode {
  const { lines, accepted, accept, take } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  return (
    <ul className={pane.list} aria-label="Tickets in the paste">
      {lines.map((line) => (
        <li key={line.line} className={styles.line}>
          <div className={pane.row}>
            <strong>{line.name}</strong>
            <span className={styles[line.verdict]}>
              {verdictWords[line.verdict]}
            </span>
          </div>
          {line.reasons.map(({ says, offers }) => (
            <div key={says}>
              <p className={pane.plain}>{sentence(says)}</p>
              {offers.length > 0 && (
                <div className={pane.buttons}>
                  {offers.map((offer) => (
                    <Button
                      key={offer.label}
                      size="small"
                      aria-label={`${line.name}: ${offer.label}`}
                      onClick={() => take(line, offer)}
                    >
                      {offer.label}
                    </Button>
                  ))}
                </div>
              )}
            </div>
          ))}
          {line.ready && <p className={pane.quiet}>{readAs(line.ready)}</p>}
          {line.verdict === "asked" && line.ready && (
            <Checkbox
              label="This reading is right; post it so"
              checked={accepted.has(line.text)}
              onChange={(_, { checked }) => accept(line, checked === true)}
            />
          )}
        </li>
      ))}
    </ul>
  );
}

const readAs = ({
  shipped,
  net,
  brix,
  amount,
  currency,
  contract,
}: NonNullable<CheckedLine["ready"]>): string =>
  `${isoDate(shipped)} · ${(net / KG_PER_LB).toLocaleString("en-US", { maximumFractionDigits: 1 })} lb net · ${brix} °Bx · ${contract.contract}, ${contract.customer} · ${moneyIn(amount, currency)}`;

const useStyles = makeStyles({
  line: {
    display: "flex",
    flexDirection: "column",
    gap: "4px",
    paddingBottom: "8px",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  fine: { color: tokens.colorPaletteGreenForeground1, whiteSpace: "nowrap" },
  asked: {
    color: tokens.colorPaletteDarkOrangeForeground1,
    whiteSpace: "nowrap",
  },
  refused: { color: tokens.colorPaletteRedForeground1, whiteSpace: "nowrap" },
});
