import { channelsBlock } from "../costing/result-blocks";
import type { Block, Column } from "../model";
import { formulaOf } from "./rebind";

const ML_PER_FL_OZ = "29.5735295625";

const product = (heading: string): string => `INDEX(Products[${heading}],{n})`;

const column = (
  name: string,
  label: string,
  formula: string,
  format?: string,
): Column => ({
  name,
  label,
  ...(format === undefined ? {} : { format }),
  content: { formula: `=${formula}` },
});

const inTable = (text: string, otherwise = '""'): string =>
  `IF({n}>ROWS(Products[Product]),${otherwise},${text})`;

/**
 * The price of every product in every channel, a fluid ounce, and the ounce of the next smaller size that has a price
 * there. `channels` are the rows of Channels that sell by the bottle.
 */
export const ladderRowsBlock = (
  rows: number,
  channels: readonly number[],
): Block => {
  const each = (
    name: string,
    label: string,
    formula: (c: number) => string,
    format: string,
  ): readonly Column[] =>
    channels.map((c) =>
      column(
        `${name}_${c}`,
        `Channel ${c}: ${label}`,
        `IF({row.product}="","",${formula(c)})`,
        format,
      ),
    );
  return {
    kind: "table",
    name: "ladder",
    title: "Prices, and how they fall with size",
    rows,
    columns: [
      column("product", "Product", inTable(product("Product"))),
      column(
        "key",
        "Sizes of one thing",
        inTable(
          `${product("Family")}&"|"&${product("Syrup kind")}&"|"&IF(${product("Organic")}="yes","yes","no")&"|"&${product("Label owner")}`,
        ),
      ),
      column(
        "size",
        "Declared mL",
        inTable(`N(${product("Declared mL")})`, "0"),
        "#,##0.0",
      ),
      ...each(
        "price",
        "price",
        (c) =>
          formulaOf(channelsBlock(1), "price", {
            product: "{row.product}",
            "row.channel": `INDEX({channels.channel},${c})`,
          }),
        "#,##0.00",
      ),
      ...each(
        "oz",
        "a fl oz",
        (c) =>
          `IF(AND(ISNUMBER({row.price_${c}}),{row.size}>0),{row.price_${c}}/{row.size}*${ML_PER_FL_OZ},"")`,
        "0.0000",
      ),
      ...each(
        "basis",
        "a fl oz of the next smaller size",
        (c) =>
          `IF(ISNUMBER({row.oz_${c}}),IFERROR(AVERAGEIFS({ladder.oz_${c}},{ladder.key},{row.key},{ladder.size},SUMPRODUCT(MAX(({ladder.key}={row.key})*({ladder.size}<{row.size})*ISNUMBER({ladder.oz_${c}})*{ladder.size}))),""),"")`,
        "0.0000",
      ),
      column(
        "kinks",
        "Dearer an ounce than a smaller size in",
        channels
          .map(
            (c) =>
              // A thousandth of a cent is rounding, not a kink.
              `IF(AND(ISNUMBER({row.basis_${c}}),ISNUMBER({row.oz_${c}})),IF({row.oz_${c}}>{row.basis_${c}}+0.00001,INDEX({channels.channel},${c})&"; ",""),"")`,
          )
          .join("&"),
      ),
    ],
  };
};
