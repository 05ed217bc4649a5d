import type { ReactNode } from "react";
import { Field, Input } from "@fluentui/react-components";
import { cellsText, fullReference } from "./reference";
import type { Selected } from "./selected";
import { TakeRow } from "./take-row";
import type { Shown } from "./use-preview";

/** The cell for the answer: the selected one until cells are taken for an argument or an address is typed. */
export function TargetField(props: {
  readonly target: string;
  readonly shown: Shown;
  readonly selected: Selected | undefined;
  readonly change: (target: string) => void;
}): ReactNode {
  const { target, selected, change } = props;
  const { preview, landing } = props.shown;
  // While the form is being filled, a place without room is no news yet.
  const isWhole = preview !== undefined && preview.missing.length === 0;
  const trouble =
    typeof landing === "string"
      ? landing
      : isWhole
        ? landing?.obstacle
        : undefined;
  const fills = typeof landing === "object" && !trouble && landing.fills;
  return (
    <Field
      label="Cell for the answer"
      hint={fills ? `The answer fills ${fills}` : null}
      validationMessage={trouble ?? null}
    >
      {(field) => (
        <TakeRow
          label="the answer"
          cells={selected && cellsText(selected.cell)}
          take={() => selected && change(fullReference(selected.cell))}
        >
          <Input
            {...field}
            value={target}
            placeholder="B7"
            input={{ style: { minWidth: 0, width: "100%" } }}
            onChange={(_, { value }) => change(value)}
          />
        </TakeRow>
      )}
    </Field>
  );
}
