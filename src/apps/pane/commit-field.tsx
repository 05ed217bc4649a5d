import { useEffect, useState, type ReactNode } from "react";
import { Field, Input } from "@fluentui/react-components";
import { sentenceOf } from "./open-book";

/**
 * A field that shows a cell and writes it when the person is done: on Enter or when leaving the field.
 * Escape brings the cell's value back. What cannot be used is said at the field, and nothing is written.
 */
export function CommitField<T>(props: {
  readonly label: string;
  readonly hint?: string;
  readonly shown: string;
  readonly unit?: string;
  /** Turns the text into the value; throws a sentence. */
  readonly read: (typed: string) => T;
  readonly write: (value: T) => Promise<void>;
  readonly disabled?: boolean;
}): ReactNode {
  const { label, hint, shown, unit, read, write, disabled } = props;
  const [typed, setTyped] = useState(shown);
  const [trouble, setTrouble] = useState<string>();
  const [writing, setWriting] = useState(false);
  useEffect(() => {
    setTyped(shown);
    setTrouble(undefined);
  }, [shown]);
  const commit = async (): Promise<void> => {
    if (typed === shown || writing) return;
    try {
      const value = read(typed);
      setWriting(true);
      setTrouble(undefined);
      await write(value);
    } catch (problem) {
      setTrouble(sentenceOf(problem));
    } finally {
      setWriting(false);
    }
  };
  return (
    <Field
      label={label}
      hint={hint ?? null}
      validationState={trouble ? "error" : "none"}
      validationMessage={trouble ?? null}
    >
      <Input
        value={typed}
        inputMode="decimal"
        contentAfter={unit === undefined ? null : <span>{unit}</span>}
        disabled={disabled ?? false}
        aria-busy={writing}
        style={{ minWidth: 0 }}
        input={{ style: { minWidth: 0, width: "100%" } }}
        onChange={(_, { value }) => setTyped(value)}
        onBlur={() => void commit()}
        onKeyDown={(event) => {
          if (event.key === "Enter") void commit();
          if (event.key === "Escape") {
            setTyped(shown);
            setTrouble(undefined);
          }
        }}
      />
    </Field>
  );
}
