import type { ReactNode } from "react";
import type { TableContents } from "../../../hosts/host";
import { Section } from "../section";
import { Pair } from "../pair";
import { usePaneStyles } from "../styles";
import { partChoices } from "./choices";
import { packedLike, productsIn, type Draft } from "./draft";
import { ChoiceField, TextField } from "./form-parts";
import type { Troubles } from "./read-draft";
import { slots, type Slot, type SlotKey } from "./slots";

export interface FormPart {
  readonly tables: readonly TableContents[];
  readonly draft: Draft;
  readonly change: (draft: Draft) => void;
  readonly troubles: Troubles;
}

/** The container comes first: the book's own product in it says how the new one will likely be packed. */
export function ContainerFields(props: FormPart): ReactNode {
  const { tables, draft, change, troubles } = props;
  const pane = usePaneStyles();
  const container = draft.parts.container.part;
  const alike = productsIn(tables, container);
  return (
    <Section title="Container">
      <ChoiceField
        label="Bottle or jug"
        needed
        none="Choose one"
        choices={partChoices(tables, ["container"])}
        value={container}
        trouble={troubles["parts.container"]}
        change={(part) => {
          const [first] = productsIn(tables, part);
          const taken = first ? packedLike(draft, tables, first) : draft;
          change(withPart(taken, "container", { part, quantity: "1" }));
        }}
      />
      {alike.length > 0 && (
        <ChoiceField
          label="Packed like"
          choices={alike.map((code) => ({ value: code, text: code }))}
          value={likeOf(draft, alike)}
          hint="Its parts, case, pallet and filling are taken over below. Change what differs."
          change={(product) =>
            change(packedLike({ ...draft, like: product }, tables, product))
          }
        />
      )}
      {container !== "" && alike.length === 0 && (
        <p className={pane.quiet}>
          No product of the book is in this container yet, so nothing is filled
          in for you.
        </p>
      )}
    </Section>
  );
}

const likeOf = (draft: Draft, alike: readonly string[]): string =>
  draft.like !== undefined && alike.includes(draft.like)
    ? draft.like
    : (alike[0] ?? "");

/** Everything else that goes on or round the bottle. */
export function PartFields(props: FormPart): ReactNode {
  const { tables, draft, change, troubles } = props;
  return (
    <Section title="What goes on it">
      {(slots as readonly (Slot & { readonly key: SlotKey })[])
        .filter(({ key }) => key !== "container" && isOffered(key, draft))
        .map((slot) => {
          const held = draft.parts[slot.key];
          const choice = (
            <ChoiceField
              key={slot.key}
              label={slot.label}
              needed={slot.needed ?? false}
              none="None"
              choices={partChoices(tables, slot.kinds)}
              value={held.part}
              trouble={troubles[`parts.${slot.key}`]}
              change={(part) =>
                change(withPart(draft, slot.key, { ...held, part }))
              }
            />
          );
          return slot.asksQuantity && held.part !== "" ? (
            <Pair key={slot.key}>
              {choice}
              <TextField
                label={`How many a ${slot.per === "case" ? "case" : "gallon"}`}
                value={held.quantity}
                change={(quantity) =>
                  change(withPart(draft, slot.key, { ...held, quantity }))
                }
              />
            </Pair>
          ) : (
            choice
          );
        })}
    </Section>
  );
}

/** A second label is asked for only once there is a first. */
function isOffered(key: SlotKey, { parts }: Draft): boolean {
  if (key === "back") return parts.front.part !== "" || parts.back.part !== "";
  if (key === "third") return parts.back.part !== "" || parts.third.part !== "";
  return true;
}

const withPart = (
  draft: Draft,
  key: SlotKey,
  held: Draft["parts"][SlotKey],
): Draft => ({ ...draft, parts: { ...draft.parts, [key]: held } });
