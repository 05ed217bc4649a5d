import { useState, type ReactNode } from "react";
import { Button } from "@fluentui/react-components";
import type { Book } from "../../../book/book";
import { traceOf, type BookTrace } from "../../../book/totes-trace";
import { isoDate } from "../../../measures/read-date";
import { KG_PER_LB } from "../../../measures/units";
import { ChoiceField, TextField } from "../new-product/form-parts";
import { sentenceOf, type OpenBook } from "../open-book";
import { useAnnounce } from "../last-write";
import { newestDay } from "../../../book/newest-day";
import type { Host } from "../../../hosts/host";
import { recallChange } from "./tote-sheets";
import { FiguresTable } from "../pictures/figures-table";
import { Section } from "../section";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";

interface Asked {
  readonly name: string;
  readonly direction: "forward" | "back";
  /** A recall is timed from here. */
  readonly at: Date;
}

/** "Trace a lot": where its syrup went, or where that of a run or tote came from. */
export function TraceView(props: {
  readonly host: Host;
  readonly open: OpenBook;
  readonly book: Book;
}): ReactNode {
  const { host, open, book } = props;
  const announce = useAnnounce();
  const pane = usePaneStyles();
  const [name, setName] = useState("");
  const [direction, setDirection] = useState<"forward" | "back">("forward");
  const [asked, setAsked] = useState<Asked>();
  const answer = asked && answerOf(book, asked);
  const recall = async (found: BookTrace): Promise<void> => {
    try {
      const day = newestDay(book);
      if (!asked || day === undefined) return;
      const { sheet, ...change } = recallChange(found, day, asked.at, open);
      await host.apply(change);
      await host.select({ sheet, row: 0, column: 0 });
      announce({
        says: `Added the sheet “${sheet}”.`,
        takeBack: () => host.undo(),
      });
    } catch (problem) {
      announce({ says: sentence(sentenceOf(problem)) });
    }
  };
  return (
    <form
      style={{ display: "contents" }}
      onSubmit={(event) => {
        event.preventDefault();
        setAsked({ name: name.trim(), direction, at: new Date() });
      }}
    >
      <TextField
        label="Lot, barrel, run or tote"
        hint="For example 26-04, OAK-01, RUN-29 or T-044"
        value={name}
        change={setName}
      />
      <ChoiceField
        label="Which way"
        value={direction}
        choices={[
          { value: "forward", text: "Where it went" },
          { value: "back", text: "Where it came from" },
        ]}
        change={(way) => setDirection(way === "back" ? "back" : "forward")}
      />
      <div>
        <Button
          appearance="primary"
          type="submit"
          disabled={name.trim() === ""}
        >
          Trace
        </Button>
      </div>
      {answer && "trouble" in answer && <p role="alert">{answer.trouble}</p>}
      {answer && "steps" in answer && (
        <>
          <Traced found={answer} />
          <div>
            <Button onClick={() => void recall(answer)}>
              Make a recall list to print
            </Button>
          </div>
        </>
      )}
      {!answer && (
        <p className={pane.quiet}>
          Every container is taken as well mixed: a draw carries a share of all
          that went in before it.
        </p>
      )}
    </form>
  );
}

function Traced(props: { readonly found: BookTrace }): ReactNode {
  const { found } = props;
  const pane = usePaneStyles();
  const isForward = found.direction === "forward";
  const { buyers } = found;
  return (
    <>
      <Section
        title={
          isForward
            ? `Where ${found.name} went`
            : `Where ${found.name} came from`
        }
      >
        <p className={pane.plain} role="status">
          <strong>{lb(found.total)}</strong>{" "}
          {isForward ? "left it" : "came into it"}, in {found.steps.length}{" "}
          {found.steps.length === 1 ? "movement" : "movements"}.{" "}
          {found.unexplained === 0
            ? "Every pound is accounted for."
            : found.unexplained > 0
              ? `${lb(found.unexplained)} are not accounted for.`
              : `${lb(-found.unexplained)} more went out than came in.`}
        </p>
        <ul className={pane.list}>
          {found.containers.map(({ name, kind, weight, rests, run, cases }) => (
            <li key={name} className={pane.row}>
              <span>
                {name}
                <span className={pane.quiet}>
                  {" "}
                  {[
                    kind === "other" ? undefined : kind,
                    run?.product,
                    cases === undefined
                      ? undefined
                      : `${cases.toLocaleString("en-US")} cases`,
                    rests > 0 && kind === "lot" && !isForward
                      ? "first there"
                      : undefined,
                  ]
                    .filter(Boolean)
                    .join(", ")}
                </span>
              </span>
              <span className={pane.numeric}>{lb(weight)}</span>
            </li>
          ))}
        </ul>
      </Section>
      {buyers.length > 0 && (
        <Section title="Buyers to call">
          <ul className={pane.list}>
            {buyers.map(({ buyer, weight, totes }) => (
              <li key={buyer}>
                <div className={pane.row}>
                  <strong>{buyer}</strong>
                  <span className={pane.numeric}>{lb(weight)}</span>
                </div>
                <div className={pane.quiet}>{totes.join(", ")}</div>
              </li>
            ))}
          </ul>
        </Section>
      )}
      <FiguresTable
        caption="Movements"
        columns={["Day", "From", "To", "Pounds", "Share"]}
        rows={found.steps.map(({ day, from, to, weight, share }) => [
          isoDate(day),
          from,
          to,
          lb(weight).replace(" lb", ""),
          `${(share * 100).toFixed(1)} %`,
        ])}
      />
    </>
  );
}

const lb = (weight: number): string =>
  `${(weight / KG_PER_LB).toLocaleString("en-US", { maximumFractionDigits: 1 })} lb`;

function answerOf(
  book: Book,
  { name, direction }: Asked,
): BookTrace | { readonly trouble: string } {
  try {
    return traceOf(book, name, direction);
  } catch (problem) {
    return { trouble: sentence(sentenceOf(problem)) };
  }
}
