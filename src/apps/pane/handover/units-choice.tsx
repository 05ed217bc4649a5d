import type { ReactNode } from "react";
import { Radio, RadioGroup } from "@fluentui/react-components";
import {
  type UnitSystem,
  unitSystems,
} from "../../../sheets/metric/unit-system";
import { Section } from "../section";

const words: Readonly<Record<UnitSystem, string>> = {
  US: "lb, gal, °F",
  metric: "kg, L, °C",
};

/** The units of what leaves the house; the book itself stays as it is. */
export const UnitsChoice = (props: {
  readonly value: UnitSystem;
  readonly change: (units: UnitSystem) => void;
}): ReactNode => (
  <Section title="Units">
    <RadioGroup
      layout="horizontal"
      aria-label="Units of the copy"
      value={props.value}
      onChange={(_, { value }) => {
        const found = unitSystems.find((one) => one === value);
        if (found) props.change(found);
      }}
    >
      {unitSystems.map((one) => (
        <Radio key={one} value={one} label={words[one]} />
      ))}
    </RadioGroup>
  </Section>
);
