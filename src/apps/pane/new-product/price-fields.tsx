import type { ReactNode } from "react";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { tableRows } from "../table-rows";
import { TextField } from "./form-parts";
import type { FormPart } from "./packing-fields";

/** A price for each channel that is to have one. */
export function PriceFields(props: FormPart): ReactNode {
  const { tables, draft, change, troubles } = props;
  const pane = usePaneStyles();
  // A channel with no bottles in its usual order sells by the pound and has no price of a bottle.
  const channels = tableRows(tables, "Channels")
    .filter((row) => (row.number("Bottles per order") ?? 0) > 0)
    .map((row) => row.text("Channel"));
  return (
    <Section title="Prices by channel">
      <p className={pane.quiet}>
        Leave a price blank and the sheet only says what it would have to be.
      </p>
      {channels.map((channel) => (
        <TextField
          key={channel}
          label={channel}
          unit="a bottle"
          value={draft.prices[channel] ?? ""}
          trouble={troubles[`prices.${channel}`]}
          change={(price) =>
            change({ ...draft, prices: { ...draft.prices, [channel]: price } })
          }
        />
      ))}
      <TextField
        label="Prices valid from"
        value={draft.pricesFrom}
        hint="The newest day in the book, unless you type another"
        trouble={troubles["pricesFrom"]}
        change={(pricesFrom) => change({ ...draft, pricesFrom })}
      />
    </Section>
  );
}
