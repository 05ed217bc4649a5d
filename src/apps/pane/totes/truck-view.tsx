import { useMemo, useState, type ReactNode } from "react";
import type { Book } from "../../../book/book";
import { listed } from "../../../book/finding";
import {
  TRUCK_CAUTION,
  truckPlan,
  type TruckPlan,
} from "../../../book/truck-plan";
import { truckQuestion, type TypedTruck } from "../../../book/truck-question";
import { CannotAnswer } from "../../../measures/cannot-answer";
import { poundsText } from "../../../measures/pounds-text";
import { as, type Kilograms } from "../../../measures/quantity";
import { TextField } from "../new-product/form-parts";
import { Pair } from "../pair";
import { Section } from "../section";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";

const nothing: TypedTruck = {
  limit: "",
  axle: "",
  spots: "",
  tickets: "",
  gross: "",
};

/** What the fields are called, in a sentence about one of them too. */
const names: Readonly<Record<keyof TypedTruck, string>> = {
  limit: "the truck's limit",
  axle: "the axle limit",
  spots: "places on the floor",
  tickets: "tickets",
  gross: "gross weights",
};

/** "Load a truck": how many totes fit, and whether the chosen ones ride. */
export function TruckView(props: { readonly book: Book }): ReactNode {
  const { book } = props;
  const pane = usePaneStyles();
  const [typed, setTyped] = useState<TypedTruck>(nothing);
  const found = useMemo(
    () => (typed.limit.trim() === "" ? undefined : planOf(book, typed)),
    [book, typed],
  );
  const set =
    (field: keyof TypedTruck) =>
    (value: string): void =>
      setTyped({ ...typed, [field]: value });
  return (
    <>
      <Pair>
        <TextField
          label="The truck's limit"
          unit="lb"
          hint="Most cargo; ask the carrier"
          value={typed.limit}
          change={set("limit")}
        />
        <TextField
          label="Places on the floor"
          hint="For totes; blank: not counted"
          value={typed.spots}
          change={set("spots")}
        />
      </Pair>
      <TextField
        label="Axle limit"
        unit="lb"
        hint="Most cargo before an axle group is full, if the carrier gives one"
        value={typed.axle}
        change={set("axle")}
      />
      <TextField
        label="Tickets that are to ride"
        hint="In the order they are loaded: T-043, T-044"
        value={typed.tickets}
        change={set("tickets")}
      />
      <TextField
        label="Gross weights of filled totes without a ticket"
        unit="lb"
        hint="Parted by semicolons: 3049; 3055"
        value={typed.gross}
        change={set("gross")}
      />
      {found && "trouble" in found && <p role="alert">{found.trouble}</p>}
      {found && "plan" in found && <Planned plan={found.plan} />}
      <p className={pane.quiet}>{TRUCK_CAUTION}</p>
    </>
  );
}

function Planned(props: { readonly plan: TruckPlan }): ReactNode {
  const { fit, gross, grossOf, load } = props.plan;
  const pane = usePaneStyles();
  return (
    <Section title="What fits">
      <p className={pane.plain} role="status">
        <strong>
          {fit.totes} {fit.totes === 1 ? "tote" : "totes"}
        </strong>{" "}
        of {lb(gross)} gross ({grossOf}). {sentence(fit.binds.join(" and "))}{" "}
        {fit.binds.length === 1 ? "It stops" : "They stop"} the next one.
      </p>
      <p className={pane.quiet}>
        By weight {fit.byWeight}
        {fit.byAxles === undefined ? "" : `, by axles ${fit.byAxles}`}
        {fit.byFloor === undefined ? "" : `, by floor ${fit.byFloor}`}.
      </p>
      {load && (
        <>
          <p className={pane.plain}>
            The {load.totes} chosen weigh <strong>{lb(load.gross)}</strong>{" "}
            gross:{" "}
            {load.left < 0
              ? `${lb(as<Kilograms>(-load.left))} too much`
              : `${lb(load.left)} left`}
            {load.spotsLeft === undefined
              ? ""
              : load.spotsLeft < 0
                ? `, ${-load.spotsLeft} without a place`
                : `, ${load.spotsLeft} places free`}
            .
          </p>
          {load.over.length > 0 && (
            <p role="alert">
              Over {load.over.join(" and ")}. In this order{" "}
              {load.riding.length === 0
                ? "none rides"
                : `${listed(load.riding, 30)} ${load.riding.length === 1 ? "rides" : "ride"}`}
              .
            </p>
          )}
          {load.plateUnknown.length > 0 && (
            <p className={pane.plain}>
              Their plate limit is not entered, so look at the plate:{" "}
              {listed(load.plateUnknown, 30)}.
            </p>
          )}
        </>
      )}
    </Section>
  );
}

const lb = (weight: Kilograms): string => `${poundsText(weight)} lb`;

function planOf(
  book: Book,
  typed: TypedTruck,
): { readonly plan: TruckPlan } | { readonly trouble: string } {
  try {
    return { plan: truckPlan(book, truckQuestion(typed, names)) };
  } catch (problem) {
    if (!(problem instanceof CannotAnswer)) throw problem;
    return { trouble: sentence(problem.message) };
  }
}
