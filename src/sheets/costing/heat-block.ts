import type { Block } from "../model";
import { energy, namedShare } from "./book-references";

/** A figure of Energy that is blank or missing is #N/A, not 0. */
const known = (item: string, formula = energy(item)): string =>
  `IF(ISNUMBER(${energy(item)}),${formula},NA())`;

/** Heat for the whole run: warming the syrup, keeping the loop hot, and the pumps. */
export const heatBlock: Block = {
  kind: "lines",
  title: "Heat and power",
  lines: [
    {
      name: "fuel",
      label: "Kettle fuel",
      role: "calculated",
      content: { formula: `=${energy('"Kettle fuel"')}` },
    },
    {
      name: "fuel_price",
      label: "Fuel price",
      unit: "as it is sold",
      role: "calculated",
      format: "0.00",
      content: { formula: `=${known('{fuel}&" price"')}` },
    },
    {
      name: "fuel_heat",
      label: "Heat in the fuel",
      unit: "BTU",
      role: "calculated",
      format: "#,##0",
      content: { formula: `=${known('"Heat in "&{fuel}')}` },
    },
    {
      name: "efficiency",
      label: "Kettle efficiency",
      role: "calculated",
      format: "0%",
      content: {
        formula: `=${known('"Kettle efficiency"', namedShare("Energy", "Item", "Kettle efficiency"))}`,
      },
    },
    {
      name: "warming",
      label: "To warm the syrup",
      unit: "BTU, ±3 %",
      role: "calculated",
      format: "#,##0",
      content: {
        formula: `=SYRUP.HEAT_ENERGY({need},{brix},${known('"Start temperature"')},{pack_temperature})`,
      },
      hint: "scalds at once; follow your local process rules",
    },
    {
      name: "holding",
      label: "To keep the loop hot",
      unit: "BTU",
      role: "calculated",
      format: "#,##0",
      content: { formula: `=${known('"Hold loss"')}*{hours}` },
    },
    {
      name: "fuel_cost",
      label: "Fuel for the run",
      role: "calculated",
      format: "#,##0.00",
      content: {
        formula: "=({warming}+{holding})/{efficiency}/{fuel_heat}*{fuel_price}",
      },
    },
    {
      name: "power_cost",
      label: "Electricity for the run",
      unit: "while running",
      role: "calculated",
      format: "#,##0.00",
      content: {
        formula: `=IFERROR(${energy('"Pumps, coder, shrink tunnel"')}*{bottles}/{rate}*${energy('"Electricity"')},0)`,
      },
      hint: "pumps, coder and shrink tunnel",
    },
    {
      name: "heat",
      label: "Heat and power, a bottle",
      role: "result",
      format: "0.0000",
      content: { formula: "=({fuel_cost}+{power_cost})/{bottles}" },
    },
  ],
};
