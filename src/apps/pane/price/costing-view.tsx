import type { ReactNode } from "react";
import { Button } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import { useGoTo } from "../go-to";
import { count } from "../money";
import type { OpenBook } from "../open-book";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { ChannelList } from "./channel-list";
import type { Costing } from "./costing";
import { CostTable } from "./cost-table";
import { KnownParts } from "./known-parts";
import { Headline } from "./headline";
import { MoneyBar } from "./money-bar";
import type { Product } from "./products";
import { RunInputs } from "./run-inputs";
import { Withheld } from "./withheld";

/** Everything a costing sheet says, read from its cells. */
export function CostingView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly product: Product;
  readonly costing: Costing;
  readonly dark: boolean;
}): ReactNode {
  const { host, book, product, costing, dark } = props;
  const pane = usePaneStyles();
  const goTo = useGoTo();
  const { figure, sheet, checks } = costing;
  const isWithheld = typeof figure.full_replacement?.value !== "number";
  return (
    <>
      <Withheld host={host} costing={costing} isWithheld={isWithheld} />
      {!isWithheld && <Headline costing={costing} perCase={product.perCase} />}
      <RunInputs host={host} book={book} product={product} costing={costing} />
      {!isWithheld && (
        <Section title="Cost of a bottle three ways">
          <CostTable costing={costing} />
        </Section>
      )}
      <Section title="Where the money in a bottle goes">
        {isWithheld ? (
          <KnownParts parts={costing.parts} />
        ) : (
          <MoneyBar parts={costing.parts} dark={dark} />
        )}
      </Section>
      <Section title="Line">
        <p className={pane.plain}>{lineSentence(costing)}</p>
        {otherLines(costing).map((other) => (
          <p key={other} className={pane.plain}>
            {other}.
          </p>
        ))}
      </Section>
      <Section title="Prices by channel">
        <ChannelList channels={costing.channels} />
      </Section>
      {checks.length > 0 && (
        <Section title="Checks that do not hold">
          <ul className={pane.list}>
            {checks.map(({ what, says }) => (
              <li key={what}>
                <strong>{what}:</strong> {says}
              </li>
            ))}
          </ul>
        </Section>
      )}
      <Button onClick={() => goTo({ sheet, row: 0, column: 0 })}>
        Go to the sheet “{sheet}”
      </Button>
    </>
  );
}

function lineSentence({ figure }: Costing): string {
  const line = says(figure.chosen_line?.value);
  if (!line) return "The sheet has not chosen a line.";
  const limit = says(figure.limited_by?.value);
  const rate = figure.rate?.value;
  const pace =
    typeof rate === "number"
      ? `, ${count(Math.round(rate))} bottles an hour${limit ? `, limited by ${limit}` : ""}`
      : "";
  return `${line}${pace}.`;
}

/** The sheet strings the other lines together: "Big line: cheaper from 6,853 bottles; ". */
const otherLines = ({ figure }: Costing): readonly string[] =>
  says(figure.crossover_text?.value)
    .split(";")
    .map((part) => part.trim())
    .filter(Boolean);

const says = (value: unknown): string =>
  typeof value === "string" ? value.trim() : "";
