import type { ReactNode } from "react";
import { Field, Input, Select } from "@fluentui/react-components";

export interface Choice {
  readonly value: string;
  readonly text: string;
}

interface Common {
  readonly label: string;
  readonly value: string;
  readonly change: (value: string) => void;
  readonly hint?: string;
  readonly trouble?: string | undefined;
  readonly needed?: boolean;
}

/** A text field with its sentence beneath it when something is wrong. */
export function TextField(
  props: Common & { readonly unit?: string; readonly leave?: () => void },
): ReactNode {
  return (
    <Field
      label={props.label}
      required={props.needed ?? false}
      hint={props.trouble ? null : (props.hint ?? null)}
      validationMessage={props.trouble ?? null}
    >
      <Input
        value={props.value}
        contentAfter={
          props.unit ? (
            <span style={{ whiteSpace: "nowrap" }}>{props.unit}</span>
          ) : null
        }
        input={{ style: { minWidth: 0, width: "100%" } }}
        onChange={(_, { value }) => props.change(value)}
        onBlur={() => props.leave?.()}
      />
    </Field>
  );
}

/** A choice from a list; the first line stands for none. */
export function ChoiceField(
  props: Common & {
    readonly choices: readonly Choice[];
    readonly none?: string;
  },
): ReactNode {
  return (
    <Field
      label={props.label}
      required={props.needed ?? false}
      hint={props.trouble ? null : (props.hint ?? null)}
      validationMessage={props.trouble ?? null}
    >
      <Select
        style={{ minWidth: 0 }}
        select={{ style: { minWidth: 0, width: "100%" } }}
        value={props.value}
        onChange={(_, { value }) => props.change(value)}
      >
        {props.none !== undefined && <option value="">{props.none}</option>}
        {props.choices.map(({ value, text }) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </Select>
    </Field>
  );
}
