import type { Printed } from "../support/published";

const source =
  "Ontario maple article: draw off 67 °Bx at 104.2 °C (219.5 °F), so 4.2 °C above water at standard pressure";
const readAt =
  "https://onmaplesyrup.ca/2013/12/05/maple-syrup-density-to-please-customers/";

export const elevations: Printed = {
  source,
  readAt,
  quantity: "rise of the boiling point",
  unit: "°C",
  columns: ["°Bx"],
  decimals: 1,
  rows: [[67, 4.2]],
};
