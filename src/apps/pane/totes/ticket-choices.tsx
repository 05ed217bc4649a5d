import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import type { Book } from "../../../book/book";
import type { Contents } from "../../../book/contents";
import { readWrittenNumber } from "../../../book/ledger/written-number";
import {
  ticketFacts,
  USUAL_TOTE_GALLONS,
  type TicketFacts,
} from "../../../book/tickets/ticket-facts";
import { setting } from "../../../book/setting";
import { inPounds } from "../../../functions/by-weight";
import { as, type Kilograms } from "../../../measures/quantity";
import { isoDate } from "../../../measures/read-date";
import { KG_PER_LB } from "../../../measures/units";
import { ChoiceField, TextField } from "../new-product/form-parts";
import { Pair } from "../pair";

/** What holds for all tickets about to be posted, as typed. */
export interface Choices {
  readonly contract: string;
  readonly toteGallons: string;
  readonly plateLimit: string;
  /** Somebody looked at the plates, for the tickets about to be posted alone. */
  readonly platesSeen: boolean;
}

/** The contract that ends last is the likeliest one. */
export function startChoices(book: Book): Choices {
  const limit = setting(book, "Tote plate limit");
  return {
    contract:
      [...book.toteContracts].sort((a, b) => b.end - a.end)[0]?.contract ?? "",
    toteGallons: String(USUAL_TOTE_GALLONS),
    plateLimit: limit === undefined ? "" : String(inPounds(limit)),
    platesSeen: false,
  };
}

export const hasPlateLimit = ({ plateLimit }: Choices): boolean =>
  above0(plateLimit) !== undefined;

export function factsFor(
  book: Book,
  tables: readonly Contents[],
  { contract, toteGallons, plateLimit }: Choices,
): TicketFacts {
  const limit = above0(plateLimit);
  return ticketFacts(book, tables, {
    contract: contract || undefined,
    toteGallons: above0(toteGallons),
    plateLimit:
      limit === undefined ? undefined : as<Kilograms>(limit * KG_PER_LB),
  });
}

export function TicketChoicesFields(props: {
  readonly book: Book;
  readonly choices: Choices;
  readonly choose: (choices: Choices) => void;
  readonly needed?: boolean;
}): ReactNode {
  const { book, choices, choose } = props;
  const styles = useStyles();
  return (
    <>
      <ChoiceField
        label={props.needed ? "Contract" : "Contract of tickets that name none"}
        value={choices.contract}
        none="None"
        choices={book.toteContracts.map(({ contract, customer, end }) => ({
          value: contract,
          text: `${contract}, ${customer}, to ${isoDate(end)}`,
        }))}
        change={(contract) => choose({ ...choices, contract })}
      />
      <details>
        <summary className={styles.summary}>
          Tote size and plate: {choices.toteGallons} gal
          {choices.plateLimit === ""
            ? ", plate not checked"
            : `, at most ${choices.plateLimit} lb gross`}
        </summary>
        <Pair>
          <TextField
            label="A tote holds"
            unit="gal"
            value={choices.toteGallons}
            trouble={wrong(
              choices.toteGallons,
              `${USUAL_TOTE_GALLONS} gal counts`,
            )}
            change={(toteGallons) => choose({ ...choices, toteGallons })}
          />
          <TextField
            label="Most gross on its plate"
            unit="lb"
            value={choices.plateLimit}
            trouble={
              choices.plateLimit === ""
                ? undefined
                : wrong(choices.plateLimit, "it is not checked")
            }
            change={(plateLimit) => choose({ ...choices, plateLimit })}
          />
        </Pair>
      </details>
    </>
  );
}

const wrong = (typed: string, until: string): string | undefined =>
  (readWrittenNumber(typed)?.value ?? 0) > 0
    ? undefined
    : `Type a number above 0; ${until} until then.`;

const above0 = (typed: string): number | undefined => {
  const value = readWrittenNumber(typed)?.value ?? 0;
  return value > 0 ? value : undefined;
};

const useStyles = makeStyles({
  summary: {
    cursor: "pointer",
    padding: "2px 0 6px",
    fontSize: tokens.fontSizeBase200,
    color: tokens.colorNeutralForeground3,
  },
});
