import type { Printed } from "../support/published";

const source =
  "UVM Extension figures for the weight of a gallon of maple syrup";
const readAt = "an extension service page";

export const poundsPerGallon: Printed = {
  source,
  readAt,
  quantity: "pounds per US gallon",
  unit: "lb/gal",
  columns: ["°Bx"],
  decimals: 3,
  rows: [
    [66.0, 11.027],
    [66.5, 11.053],
    [66.9, 11.073],
  ],
};
