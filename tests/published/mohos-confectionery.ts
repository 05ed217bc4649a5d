import type { Printed } from "../support/published";

const source =
  "F. A. Mohos, Confectionery and Chocolate Engineering (2010), Table A2.1, 20 °C";
const readAt = "https://ja.scribd.com/document/324549505/";

export const baume: Printed = {
  source,
  readAt,
  quantity: "degrees Baumé",
  unit: "°Bé",
  columns: ["°Bx"],
  decimals: 2,
  rows: [
    [5, 2.8],
    [10, 5.57],
    [15, 8.34],
    [20, 11.1],
    [30, 16.6],
    [35, 19.3],
    [45, 24.6],
    [60, 32.49],
    [65, 35.04],
    [70, 37.6],
    [80, 42.47],
    [85, 44.86],
  ],
};
