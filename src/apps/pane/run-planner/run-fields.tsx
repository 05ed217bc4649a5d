import type { ReactNode } from "react";
import { Field, Input, Select } from "@fluentui/react-components";
import { Pair } from "../pair";
import { usePaneStyles } from "../styles";
import type { ReadRun, RunDraft } from "./run-draft";

/** Run size, start and line; nothing is written by typing here. */
export function RunFields(props: {
  readonly draft: RunDraft;
  readonly trouble: ReadRun["trouble"];
  readonly lines: readonly string[];
  readonly change: (draft: RunDraft) => void;
}): ReactNode {
  const { draft, trouble, lines, change } = props;
  const pane = usePaneStyles();
  return (
    <div className={pane.card}>
      <Pair>
        <Field
          label="Bottles in this run"
          validationState={trouble.bottles ? "error" : "none"}
          validationMessage={trouble.bottles ?? null}
        >
          <Input
            value={draft.bottles}
            inputMode="numeric"
            style={{ minWidth: 0 }}
            input={{ style: { minWidth: 0, width: "100%" } }}
            onChange={(_, { value }) => change({ ...draft, bottles: value })}
          />
        </Field>
        <Field label="Line to run on">
          <Select
            select={{ style: { minWidth: 0, width: "100%" } }}
            value={draft.line}
            onChange={(_, { value }) => change({ ...draft, line: value })}
          >
            <option value="">Cheapest</option>
            {lines.map((line) => (
              <option key={line} value={line}>
                {line}
              </option>
            ))}
          </Select>
        </Field>
      </Pair>
      <Field
        label="Set-up begins"
        hint="For the finish, the latest order dates, the lot code and best-by"
        validationState={trouble.start ? "error" : "none"}
        validationMessage={trouble.start ?? null}
      >
        <Input
          type="datetime-local"
          value={draft.start}
          style={{ minWidth: 0 }}
          input={{ style: { minWidth: 0, width: "100%" } }}
          onChange={(_, { value }) => change({ ...draft, start: value })}
        />
      </Field>
    </div>
  );
}
