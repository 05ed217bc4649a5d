import type { Block } from "../model";
import { energy, namedShare } from "./book-references";

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
      content: { formula: `=${energy('{fuel}&" price"')}` },
    },
    {
      name: "fuel_heat",
      label: "Heat in the fuel",
      unit: "BTU",
      role: "calculated",
      format: "#,##0",
      content: { formula: `=${energy('"Heat in "&{fuel}')}` },
    },
    {
      name: "efficiency",
      label: "Kettle efficiency",
      role: "calculated",
      format: "0%",
      content: {
        formula: `=${namedShare("Energy", "Item", "Kettle efficiency")}`,
      },
    },
    {
      name: "warming",
      label: "To warm the syrup",
      unit: "BTU, ±3 %",
      role: "calculated",
      format: "#,##0",
      content: {
        formula: `=SYRUP.HEAT_ENERGY({need},{brix},${energy('"Start temperature"')},{pack_temperature})`,
      },
      hint: "hot syrup scalds at once; local food-safety and process rules decide how hot and how long",
    },
    {
      name: "holding",
      label: "To keep the loop hot",
      unit: "BTU",
      role: "calculated",
      format: "#,##0",
      content: { formula: `=${energy('"Hold loss"')}*{hours}` },
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
