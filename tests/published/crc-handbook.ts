import type { Printed } from "../support/published";

const source =
  "CRC Handbook of Chemistry and Physics, 102nd ed. (2021), Concentrative Properties of Aqueous Solutions, sucrose, 20 °C";
const readAt = "a public data file of the table";

export const densities: Printed = {
  source,
  readAt,
  quantity: "density",
  unit: "kg/m³",
  columns: ["°Bx", "°C"],
  decimals: 1,
  rows: [
    [1, 20, 1002.1],
    [5, 20, 1017.8],
    [10, 20, 1038.1],
    [15, 20, 1059.2],
    [20, 20, 1081],
    [30, 20, 1127],
    [36, 20, 1156.2],
    [42, 20, 1186.8],
    [44, 20, 1197.2],
    [48, 20, 1218.6],
    [70, 20, 1347.2],
  ],
};

export const indices: Printed = {
  source,
  readAt,
  quantity: "refractive index",
  unit: "nD",
  columns: ["°Bx"],
  decimals: 4,
  rows: [
    [1, 1.3344],
    [20, 1.3639],
    [30, 1.3812],
    [34, 1.3885],
    [36, 1.3922],
    [40, 1.3999],
    [44, 1.4078],
    [46, 1.4118],
    [48, 1.4159],
    [50, 1.4201],
    [60, 1.4419],
    [70, 1.4654],
    [80, 1.4906],
  ],
};

export const viscosities: Printed = {
  source,
  readAt,
  quantity: "viscosity",
  unit: "mPa·s",
  columns: ["°Bx", "°C"],
  decimals: 3,
  rows: [
    [1, 20, 1.028],
    [5, 20, 1.146],
    [10, 20, 1.336],
    [20, 20, 1.945],
    [26, 20, 2.573],
    [30, 20, 3.187],
    [34, 20, 4.052],
    [40, 20, 6.162],
    [42, 20, 7.234],
    [50, 20, 15.431],
    [70, 20, 481.561],
    [32, 20, 3.762],
  ],
};
