import type { Printed } from "../support/published";

const source =
  "USDA AMS Sucrose Conversion Table, file code 135-A-50 (partial reading)";
const readAt = "https://chegg.net/page/brix-conversion-chart-3b244a";

export const apparentGravities: Printed = {
  source,
  readAt,
  quantity: "apparent specific gravity 20/20",
  unit: "",
  columns: ["°Bx"],
  decimals: 5,
  rows: [
    [0.1, 1.00039],
    [0.2, 1.00078],
    [0.3, 1.00117],
    [3.8, 1.0149],
    [3.9, 1.01529],
    [4, 1.01569],
    [4.1, 1.01609],
    [7.6, 1.03017],
    [7.7, 1.03058],
    [7.8, 1.03098],
  ],
};
