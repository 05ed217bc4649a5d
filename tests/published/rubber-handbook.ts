import type { Printed } from "../support/published";

const source =
  "Rubber and CRC Handbook tables of sucrose as a public source file holds them (M. T. Flanagan, class Sucrose): viscosity of 20, 40 and 60 % (Bingham & Jackson 1918 lineage) and density at 50 °C";
const readAt =
  "https://github.com/pcingola/SnpEff (src/main/java/flanagan/physprop/Sucrose.java)";

export const viscosities: Printed = {
  source,
  readAt,
  quantity: "viscosity",
  unit: "mPa·s",
  columns: ["°Bx", "°C"],
  decimals: 3,
  rows: [
    [20, 0, 3.804],
    [20, 10, 2.652],
    [20, 20, 1.96],
    [20, 40, 1.193],
    [20, 50, 0.97],
    [20, 60, 0.808],
    [20, 70, 0.685],
    [20, 80, 0.59],
    [40, 0, 14.77],
    [40, 10, 9.794],
    [40, 20, 6.2],
    [40, 30, 4.382],
    [40, 40, 3.249],
    [40, 50, 2.497],
    [40, 60, 1.982],
    [40, 70, 1.608],
    [40, 80, 1.334],
    [40, 90, 1.123],
    [60, 0, 238],
    [60, 10, 109.8],
    [60, 20, 56.5],
    [60, 25, 43.86],
    [60, 30, 33.78],
    [60, 60, 9.83],
    [60, 70, 7.15],
    [60, 85, 4.73],
    [60, 90, 4.15],
    [60, 95, 3.72],
    [60, 100, 3.34],
  ],
};

export const densitiesBySolids: Printed = {
  source,
  readAt,
  quantity: "density",
  unit: "kg/m³",
  columns: ["g sucrose per L", "°C"],
  decimals: 1,
  rows: [
    [800, 50, 1284.5],
    [1000, 50, 1355.2],
  ],
};
