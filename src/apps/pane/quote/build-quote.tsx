import { useMemo, useState, type ReactNode } from "react";
import { Field, Input, Select } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import type { LeftoverTerms } from "../../../trade/pricing/quote";
import type { OpenBook } from "../open-book";
import { usePaneStyles } from "../styles";
import { plannedQuote } from "./build";
import { BuildButton, planOrTrouble } from "./build-button";
import { readQuantities } from "./typed";

/** Asks for the quantities and whose the leftovers are, and offers to build the quote. */
export function BuildQuote(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly product: string;
}): ReactNode {
  const { host, book, product } = props;
  const pane = usePaneStyles();
  const [typed, setTyped] = useState("300; 600; 1,200");
  const [leftovers, setLeftovers] = useState<LeftoverTerms>("charged");
  const plan = useMemo(
    () =>
      planOrTrouble(() =>
        plannedQuote({
          tables: book.tables,
          sheets: book.sheets,
          product,
          leftovers,
          quantities: readQuantities(typed),
        }),
      ),
    [book, product, leftovers, typed],
  );
  return (
    <div className={pane.card}>
      <p className={pane.plain}>
        There is no quote for {product} in this workbook yet. It costs each
        quantity on its cheapest line and puts the prices on one page for the
        customer.
      </p>
      <Field
        label="Quantities, bottles"
        hint="Up to six, with a semicolon between them"
      >
        <Input
          value={typed}
          style={{ minWidth: 0 }}
          input={{ style: { minWidth: 0, width: "100%" } }}
          onChange={(_, { value }) => setTyped(value)}
        />
      </Field>
      <LeftoversField value={leftovers} choose={setLeftovers} />
      <BuildButton host={host} text="Build quote" plan={plan} />
    </div>
  );
}

/** Who the labels and containers left over belong to. */
export function LeftoversField(props: {
  readonly value: string;
  readonly choose: (value: LeftoverTerms) => void;
  readonly hint?: string;
}): ReactNode {
  return (
    <Field label="Leftover labels and containers" hint={props.hint ?? null}>
      <Select
        select={{ style: { minWidth: 0, width: "100%" } }}
        value={props.value}
        onChange={(_, { value }) =>
          props.choose(value === "kept" ? "kept" : "charged")
        }
      >
        <option value="charged">Charged to the customer</option>
        <option value="kept">Kept as our stock</option>
      </Select>
    </Field>
  );
}
