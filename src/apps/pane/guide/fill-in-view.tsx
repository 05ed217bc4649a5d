import { useRef, type ReactNode } from "react";
import { makeStyles } from "@fluentui/react-components";
import type { Definition } from "../../../functions/define";
import type { Host } from "../../../hosts/host";
import type { OpenBook } from "../open-book";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { ArgumentField } from "./argument-field";
import type { FillIn } from "./fill-in";
import { AnswerView } from "./answer-view";
import { PutView } from "./put-view";
import { fullReference } from "./reference";
import { useSelected } from "./selected";
import { TargetField } from "./target-field";
import { look, targetOf, usePreview } from "./use-preview";

/** A form with a field for each argument, the answer as it stands, and the way into a cell. */
export function FillInView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly definition: Definition;
  readonly fillIn: FillIn;
  readonly change: (how: (fillIn: FillIn) => FillIn) => void;
}): ReactNode {
  const { host, book, definition, fillIn, change } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const form = useRef<HTMLDivElement>(null);
  const selected = useSelected(host);
  const target = targetOf(fillIn, selected);
  const shown = usePreview(host, book, definition, fillIn, target);
  const { preview } = shown;
  const type = (name: string, typed: string): void =>
    change((now) => ({ ...now, typed: { ...now.typed, [name]: typed } }));
  const take = (name: string, reference: string): void =>
    change((now) => ({
      typed: { ...now.typed, [name]: reference },
      // The first cells taken are no place for the answer; what was selected before them is.
      target:
        now.target ??
        (selected?.before ? fullReference(selected.before) : undefined),
    }));
  return (
    <Section title="Use it in a cell">
      <div ref={form} className={pane.card}>
        <p className={pane.quiet}>
          Type each figure, or select its cells in the sheet and press Take.
        </p>
        {Object.entries(definition.args).map(([name, term], i) => (
          <ArgumentField
            key={name}
            definition={definition}
            name={name}
            term={term}
            typed={fillIn.typed[name] ?? ""}
            reads={preview?.call?.args[i]}
            trouble={preview?.troubles[name]}
            selected={selected}
            type={(typed) => type(name, typed)}
            take={(reference) => take(name, reference)}
          />
        ))}
        <div className={styles.result}>
          <AnswerView definition={definition} preview={preview} />
          <TargetField
            target={target}
            shown={shown}
            selected={selected}
            change={(typed) => change((now) => ({ ...now, target: typed }))}
          />
          <PutView
            host={host}
            definition={definition}
            shown={shown}
            lookAgain={() => look(host, book, definition, fillIn, target)}
            goToArgument={(name) =>
              form.current
                ?.querySelector<HTMLElement>(`[data-argument="${name}"]`)
                ?.focus()
            }
          />
        </div>
      </div>
    </Section>
  );
}

const useStyles = makeStyles({
  result: { display: "flex", flexDirection: "column", gap: "12px" },
});
