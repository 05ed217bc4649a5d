import { useState, type ReactNode } from "react";
import { Field, Select } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import { CommitField } from "../commit-field";
import { amount, count } from "../money";
import { sentenceOf, type OpenBook } from "../open-book";
import { Pair } from "../pair";
import { readBottles } from "../price/bottles";
import { usePaneStyles } from "../styles";
import { LeftoversField } from "./build-quote";
import { readQuote, type QuoteCell, type ReadQuote } from "./read-quote";
import { readAmount, readDays, readForecast } from "./typed";
import { addressOf, useWrite } from "./use-write";

/** What a person turns while the customer is on the telephone. Each writes one cell and says which. */
export function QuoteInputs(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly quote: ReadQuote;
}): ReactNode {
  const { host, book, quote } = props;
  const pane = usePaneStyles();
  const [trouble, setTrouble] = useState<string>();
  const write = useWrite(host, async () =>
    pricesNow(await readQuote(host, book.names, quote.product)),
  );
  const choose = (cell: QuoteCell, value: string, says: string): void => {
    setTrouble(undefined);
    write(cell, value, says).catch((problem: unknown) =>
      setTrouble(sentenceOf(problem)),
    );
  };
  const {
    leftovers,
    goal_on: goalOn,
    artwork,
    valid_days: days,
    one_time: oneTime,
    forecast,
  } = quote.cell;
  return (
    <div className={pane.card}>
      <Pair>
        {quote.tiers.map(({ bottles }, i) => (
          <CommitField
            key={i}
            label={`Quantity ${i + 1}`}
            shown={count(bottles.value)}
            read={readBottles}
            write={(value) =>
              write(bottles, value, `Quantity ${i + 1} is ${count(value)}.`)
            }
          />
        ))}
      </Pair>
      {leftovers && (
        <LeftoversField
          value={String(leftovers.value)}
          choose={(value) =>
            choose(
              leftovers,
              value,
              value === "kept"
                ? "Leftovers are our stock."
                : "Leftovers are charged.",
            )
          }
          hint={`Writes ${addressOf(leftovers.place)}`}
        />
      )}
      {goalOn && (
        <Field
          label="Goal held against"
          validationMessage={trouble ?? null}
          hint={`Writes ${addressOf(goalOn.place)}`}
        >
          <Select
            select={{ style: { minWidth: 0, width: "100%" } }}
            value={String(goalOn.value)}
            onChange={(_, { value }) =>
              choose(goalOn, value, `The goal is held against ${value} cost.`)
            }
          >
            <option value="full">Full cost, with overheads</option>
            <option value="direct">Direct cost</option>
          </Select>
        </Field>
      )}
      <Pair>
        {artwork && (
          <CommitField
            label="Artwork, once"
            shown={blankOr(artwork, amountText)}
            read={readAmount}
            write={(value) =>
              write(artwork, value, `Artwork is ${amount(value)}, paid apart.`)
            }
          />
        )}
        {days && (
          <CommitField
            label="Stands for, days"
            shown={count(days.value)}
            read={readDays}
            write={(value) => write(days, value, `It stands ${value} days.`)}
          />
        )}
        {oneTime && (
          <CommitField
            label="Our money, once"
            shown={blankOr(oneTime, amountText)}
            read={readAmount}
            write={(value) =>
              write(oneTime, value, `Spent once: ${amount(value)}.`)
            }
          />
        )}
        {forecast && (
          <CommitField
            label="Bottles a year"
            shown={blankOr(forecast, count)}
            read={readForecast}
            write={(value) =>
              write(forecast, value, `Expected a year: ${count(value)}.`)
            }
          />
        )}
      </Pair>
    </div>
  );
}

const amountText = (value: QuoteCell["value"]): string =>
  typeof value === "number" ? value.toFixed(2) : "";

const blankOr = (
  { value }: QuoteCell,
  say: (value: QuoteCell["value"]) => string,
): string => (typeof value === "number" ? say(value) : "");

/** "Prices are now $15.40, $10.82 and $9.02." */
function pricesNow(after: ReadQuote | undefined): string {
  const prices = (after?.tiers ?? []).map(({ price }) => amount(price));
  if (prices.length === 0) return "";
  return prices.length === 1
    ? `The price is now ${prices[0] ?? ""}.`
    : `Prices are now ${prices.slice(0, -1).join(", ")} and ${prices.at(-1) ?? ""}.`;
}
