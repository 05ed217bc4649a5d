import type { ReactNode } from "react";
import { bookTables } from "../../../book/book";
import type { Column } from "../../../book/table";
import { answer } from "../../../functions/answer";
import { scalds } from "../../../functions/caution";
import { functionNamed } from "../../../functions";
import { CannotAnswer } from "../../../measures/cannot-answer";
import { Section } from "../section";
import { Pair } from "../pair";
import { usePaneStyles } from "../styles";
import { textChoices } from "./choices";
import type { Draft } from "./draft";
import { ChoiceField, TextField, type Choice } from "./form-parts";
import type { FormPart } from "./packing-fields";
import type { ProductField } from "./slots";

/** Code, words and syrup. */
export function NameFields(props: FormPart): ReactNode {
  const { tables } = props;
  return (
    <Section title="What it is">
      <Pair>
        <ProductText {...props} field="product" />
        <ProductText {...props} field="labelOwner" />
      </Pair>
      <ProductText {...props} field="description" />
      <Pair>
        <ProductChoice
          {...props}
          field="syrupKind"
          none="Choose one"
          choices={textChoices(
            tables,
            ["BulkPrices", "Syrup kind"],
            ["Products", "Syrup kind"],
            ["Lots", "Grade"],
          )}
        />
        <ProductChoice {...props} field="organic" choices={yesOrNo} />
      </Pair>
      <ProductText {...props} field="family" />
    </Section>
  );
}

const yesOrNo: readonly Choice[] = [
  { value: "no", text: "No" },
  { value: "yes", text: "Yes" },
];

/** What the label promises and what is filled. */
export function FillFields(props: FormPart): ReactNode {
  const pane = usePaneStyles();
  const { draft, change } = props;
  return (
    <Section title="Contents and filling">
      <ProductText
        {...props}
        field="declaredText"
        leave={() => change(withDeclaredVolume(draft))}
      />
      <Pair>
        <ProductText {...props} field="declared" />
        <ProductText {...props} field="fill" />
      </Pair>
      <Pair>
        <ProductText {...props} field="fillTime" />
        <ProductText {...props} field="emptyBottle" />
      </Pair>
      {isUnderDeclared(draft) && (
        <p className={pane.plain}>
          The fill is below what the label promises. You can go on, but the
          bottles would be short.
        </p>
      )}
      <p className={pane.quiet}>
        The fill is the volume once the bottle is back at 68 °F. {scalds}
      </p>
    </Section>
  );
}

/** The case, the pallet and the line. */
export function CaseFields(props: FormPart): ReactNode {
  return (
    <Section title="Case, pallet and line">
      <Pair>
        <ProductText {...props} field="bottlesPerCase" />
        <ProductText {...props} field="casesPerLayer" />
        <ProductText {...props} field="layersPerPallet" />
      </Pair>
      <ProductChoice
        {...props}
        field="usualLine"
        none="None"
        choices={textChoices(props.tables, ["Lines", "Line"])}
      />
      <Pair>
        <ProductText {...props} field="bottleBarcode" />
        <ProductText {...props} field="caseBarcode" />
      </Pair>
    </Section>
  );
}

function ProductText(
  props: FormPart & {
    readonly field: ProductField;
    readonly leave?: () => void;
  },
): ReactNode {
  const { field, draft, change, troubles, leave } = props;
  const column: Column = bookTables.products.columns[field];
  const unit =
    column.term.kind === "quantity" ? { unit: column.term.unit } : {};
  return (
    <TextField
      label={column.term.label}
      {...unit}
      needed={!column.mayBeBlank && column.blankIs === undefined}
      hint={`Like ${column.term.example}`}
      value={draft.fields[field]}
      trouble={troubles[field]}
      change={(value) => change(withField(draft, field, value))}
      {...(leave ? { leave } : {})}
    />
  );
}

function ProductChoice(
  props: FormPart & {
    readonly field: ProductField;
    readonly choices: readonly Choice[];
    readonly none?: string;
  },
): ReactNode {
  const { field, draft, change, troubles, choices, none } = props;
  const column: Column = bookTables.products.columns[field];
  return (
    <ChoiceField
      label={column.term.label}
      needed={!column.mayBeBlank && column.blankIs === undefined}
      choices={choices}
      {...(none === undefined ? {} : { none })}
      value={draft.fields[field]}
      trouble={troubles[field]}
      change={(value) => change(withField(draft, field, value))}
    />
  );
}

const withField = (
  draft: Draft,
  field: ProductField,
  value: string,
): Draft => ({
  ...draft,
  fields: { ...draft.fields, [field]: value },
});

/** The label's own text gives the volume, where it can be read; a volume already typed is kept. */
function withDeclaredVolume(draft: Draft): Draft {
  const reader = functionNamed("DECLARED_VOLUME");
  const { declaredText, declared } = draft.fields;
  if (!reader || declaredText.trim() === "" || declared !== "") return draft;
  try {
    const volume = answer(reader, [declaredText]);
    return typeof volume === "number"
      ? withField(draft, "declared", String(Number(volume.toFixed(2))))
      : draft;
  } catch (refusal) {
    if (refusal instanceof CannotAnswer) return draft;
    throw refusal;
  }
}

const isUnderDeclared = ({ fields }: Draft): boolean =>
  Number(fields.fill) < Number(fields.declared);
