import type { Printed } from "../support/published";

const source =
  "Vermont maple syrup density rule, as quoted: 36-37 °Bé (modulus 145) is 66.9-68.9 °Bx";
const readAt = "quoted in trade articles; the rule itself not read";

export const baume: Printed = {
  source,
  readAt,
  quantity: "degrees Baumé",
  unit: "°Bé",
  columns: ["°Bx"],
  decimals: 1,
  rows: [
    [66.9, 36],
    [68.9, 37],
  ],
};
