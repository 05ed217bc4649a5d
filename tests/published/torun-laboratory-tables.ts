import type { Printed } from "../support/published";

const source =
  "Nicolaus Copernicus University (Toruń), II Physics Laboratory tables, density of aqueous sucrose (older Plato-type values)";
const readAt = "http://wwwold.fizyka.umk.pl/wfaiis/?q=node%2F18305";

export const densities: Printed = {
  source,
  readAt,
  quantity: "density",
  unit: "kg/m³",
  columns: ["°Bx", "°C"],
  decimals: 2,
  rows: [
    [0, 15, 999.13],
    [0, 20, 998.23],
    [2, 15, 1006.93],
    [2, 20, 1005.99],
    [4, 15, 1014.84],
    [5, 15, 1018.84],
    [8, 15, 1031],
    [8, 20, 1029.93],
    [12, 15, 1047.62],
    [15, 15, 1060.41],
    [15, 20, 1059.16],
    [18, 15, 1073.47],
    [18, 20, 1072.13],
    [20, 15, 1082.33],
    [20, 20, 1080.94],
    [22, 15, 1091.34],
    [25, 15, 1105.07],
    [25, 20, 1103.54],
    [32, 15, 1138.31],
    [32, 20, 1136.59],
    [35, 15, 1153.06],
    [35, 20, 1151.27],
  ],
};
