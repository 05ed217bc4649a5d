import type { Printed } from "../support/published";

const source =
  "M. Asadi, Beet-Sugar Handbook (Wiley, 2007), Appendix Table A.1, 20 °C";
const readAt = "https://www.scribd.com/document/493870288/Tabel-Data-Gula";

export const gravities: Printed = {
  source,
  readAt,
  quantity: "specific gravity 20/20",
  unit: "",
  columns: ["°Bx"],
  decimals: 5,
  rows: [
    [3, 1.01172],
    [4, 1.01567],
    [6, 1.02366],
    [10, 1.03998],
    [11, 1.04413],
    [12, 1.04831],
    [14, 1.05677],
    [16, 1.06534],
    [18, 1.07404],
    [20, 1.08287],
    [21, 1.08733],
  ],
};

export const poundsPerGallon: Printed = {
  source,
  readAt,
  quantity: "pounds per US gallon in air",
  unit: "lb/gal",
  columns: ["°Bx"],
  decimals: 2,
  rows: [
    [1, 8.35],
    [3, 8.42],
    [6, 8.52],
    [10, 8.66],
    [11, 8.69],
    [14, 8.79],
    [15, 8.83],
    [16, 8.87],
    [20, 9.01],
    [21, 9.05],
  ],
};

export const baume: Printed = {
  source,
  readAt,
  quantity: "degrees Baumé",
  unit: "°Bé",
  columns: ["°Bx"],
  decimals: 1,
  rows: [
    [2, 1.1],
    [3, 1.7],
    [4, 2.2],
    [6, 3.4],
    [10, 5.6],
    [11, 6.1],
    [14, 7.8],
    [15, 8.3],
    [16, 8.9],
    [18, 10],
    [20, 11.1],
    [21, 11.7],
  ],
};
