import type { ReactNode } from "react";
import { Field, Input, Select } from "@fluentui/react-components";
import type { Args, Definition } from "../../../functions/define";
import {
  argumentFacts,
  type ArgumentFacts,
} from "../../../functions/page-arguments";
import type { Term } from "../../../terms/term";
import type { ArgumentShown } from "../why/call";
import { fullReference, cellsText } from "./reference";
import type { Selected } from "./selected";
import { TakeRow } from "./take-row";

/** One argument: a value, or the cells it stands in. */
export function ArgumentField(props: {
  readonly definition: Definition;
  readonly name: string;
  readonly term: Args[string];
  readonly typed: string;
  /** What the formula would read there. */
  readonly reads: ArgumentShown | undefined;
  readonly trouble: string | undefined;
  readonly selected: Selected | undefined;
  readonly type: (typed: string) => void;
  readonly take: (reference: string) => void;
}): ReactNode {
  const { definition, name, term, typed, reads, trouble, selected } = props;
  const facts = argumentFacts(definition).find((f) => f.name === name);
  const takes = takesSeveral(term) ? selected?.now : selected?.cell;
  const choices = choicesOf(term);
  const isOffered = typed === "" || choices?.includes(typed);
  return (
    <Field
      label={labelOf(term, facts)}
      required={!("otherwise" in term)}
      hint={hintOf(term, facts, reads)}
      validationMessage={trouble ?? null}
    >
      {(field) => (
        <TakeRow
          label={term.label}
          cells={takes && cellsText(takes)}
          take={() => takes && props.take(fullReference(takes))}
        >
          {choices ? (
            <Select
              {...field}
              select={
                {
                  "data-argument": name,
                  style: { minWidth: 0, width: "100%" },
                } as object
              }
              value={typed}
              onChange={(_, { value }) => props.type(value)}
            >
              <option value="">{unchosen(facts)}</option>
              {choices.map((choice) => (
                <option key={choice} value={choice}>
                  {choice}
                </option>
              ))}
              {!isOffered && <option value={typed}>{typed}</option>}
            </Select>
          ) : (
            <Input
              {...field}
              value={typed}
              placeholder={placeholder(term, facts)}
              input={
                {
                  "data-argument": name,
                  style: { minWidth: 0, width: "100%" },
                } as object
              }
              onChange={(_, { value }) => props.type(value)}
            />
          )}
        </TakeRow>
      )}
    </Field>
  );
}

const takesSeveral = (term: Term): boolean =>
  term.kind === "rows" || term.kind === "list";

const choicesOf = (term: Term): readonly string[] | undefined =>
  term.kind === "choice"
    ? term.choices
    : term.kind === "yes or no"
      ? ["TRUE", "FALSE"]
      : undefined;

/** "Brix, °Bx"; a trade word that already ends in its unit does not say it twice. */
function labelOf(term: Term, facts: ArgumentFacts | undefined): string {
  const unit = facts?.unit ?? "";
  return unit === "" || term.label.endsWith(unit)
    ? term.label
    : `${term.label}, ${unit}`;
}

const isRequired = (facts: ArgumentFacts | undefined): boolean =>
  facts?.otherwise === "required";

const plain = (text: string): string =>
  text.replaceAll("`", "").replaceAll("\\|", "|");

/** What the argument is, what is allowed, and what stands in the cells taken. */
function hintOf(
  term: Args[string],
  facts: ArgumentFacts | undefined,
  reads: ArgumentShown | undefined,
): string {
  if (!facts) return term.about;
  const allowed = term.kind === "choice" ? "" : plain(facts.allowed);
  const columns = facts.columns.map(({ name }) => name.replaceAll("_", " "));
  const about = [
    facts.about,
    columns.length > 0
      ? `${columns.length} columns: ${columns.join(", ")}`
      : allowed,
  ].filter((text) => text !== "" && text !== "any" && text !== "any text");
  const found = reads?.place ? `. There now: ${reads.value}` : "";
  return `${about.join("; ")}${found}`;
}

const unchosen = (facts: ArgumentFacts | undefined): string =>
  isRequired(facts)
    ? "Choose one"
    : facts?.otherwise === "may be left out"
      ? "Left out"
      : `Left out: ${plain(facts?.otherwise ?? "")}`;

const placeholder = (
  term: Args[string],
  facts: ArgumentFacts | undefined,
): string =>
  isRequired(facts)
    ? takesSeveral(term)
      ? "Cells such as B2:B9"
      : `Such as ${plain(facts?.example ?? "")}`
    : facts?.otherwise === "may be left out"
      ? "May be left out"
      : `Left out: ${plain(facts?.otherwise ?? "")}`;
