import type { Printed } from "../support/published";

const source =
  "C. S. Chen, Brix and Pounds Solids Tables, 4th printing 1992 (from NBS Circular C440, 1942), weight per US gallon in air, 20 °C";
const readAt = "http://www.foodpartners.net/brix.asp";

export const poundsPerGallon: Printed = {
  source,
  readAt,
  quantity: "pounds per US gallon in air",
  unit: "lb/gal",
  columns: ["°Bx"],
  decimals: 3,
  rows: [
    [1, 8.354],
    [1.5, 8.37],
    [2.5, 8.403],
    [3, 8.419],
    [3.5, 8.436],
    [4, 8.452],
    [4.5, 8.469],
    [5, 8.486],
  ],
};
