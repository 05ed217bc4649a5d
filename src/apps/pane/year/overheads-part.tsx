import type { ReactNode } from "react";
import type { Host } from "../../../hosts/host";
import type { OverheadsKey } from "../../../sheets/overheads/overheads-sheet";
import { amount, count } from "../money";
import { Pair } from "../pair";
import { BarsPicture } from "../pictures/bars-picture";
import { FiguresTable } from "../pictures/figures-table";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { type Figures, isNumber, openChecks, words } from "./figures";
import { InputField } from "./input-field";
import { typedName } from "./typed";

/** Who carries the season's bills, and the same bills shared each way, read from the sheet. */
export function OverheadsPart(props: {
  readonly host: Host;
  readonly figures: Figures<OverheadsKey>;
  readonly dark: boolean;
}): ReactNode {
  const { host, figures, dark } = props;
  const pane = usePaneStyles();
  const ways = figures.rows("ways");
  const bills = figures.rows("bills").filter(([item]) => words(item) !== "");
  const hours = figures.rows("hours").filter(([line]) => words(line) !== "");
  const changes = figures.rows("changes");
  const sizes = (figures.rows("sizes")[0] ?? []).slice(5);
  return (
    <>
      <div className={pane.card}>
        <Pair>
          <InputField
            host={host}
            label="Run"
            value={figures.value("run")}
            place={figures.place("run")}
            read={typedName}
          />
          <InputField
            host={host}
            label="Bills compared"
            value={figures.value("asked")}
            place={figures.place("asked")}
            read={typedName}
          />
        </Pair>
        <p className={pane.plain}>
          They come to {amount(figures.value("compared"))}.
        </p>
      </div>
      <div>
        {openChecks(figures.rows("glance"))
          .filter(({ says }) => says !== "nothing")
          .map(({ what, says }) => (
            <p key={what} className={pane.plain}>
              {what}: <strong>{says}</strong>
            </p>
          ))}
      </div>
      <Section title="A bottle of this run carries">
        <BarsPicture
          label="Cents a bottle carries, by what the bills are shared by"
          bars={ways.map((way) => ({
            name: words(way[0]),
            value: isNumber(way[5]) ? way[5] : 0,
            shown: isNumber(way[5]) ? `${way[5].toFixed(1)} ¢` : "withheld",
          }))}
          dark={dark}
        />
        <FiguresTable
          caption="The same bills, shared each way"
          columns={[
            "Shared by",
            "In all",
            "For each",
            "This run",
            "Lots carry",
          ]}
          rows={ways.map((way) => [
            words(way[0]),
            round(way[1]),
            amount(way[2]),
            amount(way[4]),
            percent(way[7]),
          ])}
        />
      </Section>
      <Section title="Who carries the season's bills">
        <ul className={pane.list}>
          {bills.map((bill) => (
            <li key={words(bill[0])}>
              <div className={pane.row}>
                <span>{words(bill[0])}</span>
                <span className={pane.numeric}>{amount(bill[1])}</span>
              </div>
              <p className={pane.quiet}>
                by {words(bill[2])}
                {words(bill[8]) === "ok" ? "" : `: ${words(bill[8])}`}
              </p>
            </li>
          ))}
        </ul>
      </Section>
      <Section title="An hour and a change of each line">
        <ul className={pane.list}>
          {hours.map((line, i) => (
            <li key={words(line[0])}>
              <div className={pane.row}>
                <strong>{words(line[0])}</strong>
                <span className={pane.numeric}>
                  {isNumber(line[3])
                    ? `${amount(line[5])} an hour with its crew`
                    : words(line[3])}
                </span>
              </div>
              <p className={pane.quiet}>
                A change costs {amount(changes[i]?.[4])}:{" "}
                {sizes
                  .map(
                    (size, k) =>
                      `${centsOf(changes[i]?.[5 + k])} a bottle at ${count(size)}`,
                  )
                  .join(", ")}
                .
              </p>
            </li>
          ))}
        </ul>
      </Section>
    </>
  );
}

const centsOf = (value: unknown): string =>
  typeof value === "number" ? `${value.toFixed(1)} ¢` : "–";
const round = (value: unknown): string =>
  typeof value === "number"
    ? value.toLocaleString("en-US", { maximumFractionDigits: 1 })
    : "–";
const percent = (value: unknown): string =>
  typeof value === "number" ? `${value.toFixed(1)} %` : "–";
