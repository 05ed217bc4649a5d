import type { Printed } from "../support/published";

const source =
  "Vermont-calibrated maple hydrometer chart (60 °F), syrup of 36 °Bé (modulus 145) or 66.9 °Bx at 60 °F; trade copy of the state chart, the regulation itself not read";
const readAt = "a trade copy of the chart";

export const baume: Printed = {
  source,
  readAt,
  quantity: "hydrometer reading",
  unit: "°Bé",
  columns: ["°F"],
  decimals: 2,
  rows: [
    [209, 32.0],
    [202, 32.25],
    [193, 32.5],
    [185, 32.75],
    [176, 33.0],
    [167, 33.25],
    [158, 33.5],
    [149, 33.75],
    [140, 34.0],
    [130, 34.25],
    [120, 34.5],
    [110, 34.75],
    [100, 35.0],
    [90, 35.25],
    [80, 35.5],
    [70, 35.75],
    [60, 36.0],
    [50, 36.25],
  ],
};

export const brix: Printed = {
  source,
  readAt,
  quantity: "hydrometer reading",
  unit: "°Bx",
  columns: ["°F"],
  decimals: 1,
  rows: [
    [209, 59.0],
    [202, 59.6],
    [193, 60.0],
    [185, 60.4],
    [176, 60.9],
    [167, 61.4],
    [158, 61.8],
    [149, 62.3],
    [140, 62.8],
    [130, 63.3],
    [120, 63.8],
    [110, 64.3],
    [100, 64.8],
    [90, 65.4],
    [80, 65.9],
    [70, 66.4],
    [60, 66.9],
    [50, 67.4],
  ],
};

/** The mark for the hot test on the float itself. It reads more at 211 °F than the chart does at 209 °F. */
export const hotMark: Printed = {
  source: "hot-test line of a Vermont-calibrated maple hydrometer (60 °F)",
  readAt: "a trade copy of the chart",
  quantity: "hydrometer reading",
  unit: "°Bé",
  columns: ["°F"],
  decimals: 1,
  rows: [[211, 32.1]],
};

/** The same mark on the Brix scale. */
export const hotMarkBrix: Printed = {
  ...hotMark,
  unit: "°Bx",
  rows: [[211, 59.1]],
};
