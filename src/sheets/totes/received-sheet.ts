import { bookTables } from "../../book/book";
import { type Contents, contentsOf } from "../../book/contents";
import { unusable } from "../../measures/cannot-answer";
import { bookColumn } from "../book-cells";
import { sheetNameOf } from "../named-figures";
import type { Line, SheetDescription } from "../model";
import { day, money, weight } from "./columns";

const input = (
  name: string,
  label: string,
  content: Line["content"],
  more: Partial<Line> = {},
): Line => ({ name, label, role: "input", content, ...more });

const out = (
  name: string,
  label: string,
  formula: string,
  more: Partial<Line> = {},
): Line => ({
  name,
  label,
  role: "calculated",
  content: { formula: `=${formula}` },
  ...more,
});

const perLb = { unit: "per lb", format: "0.0000" } as const;
const lb = { unit: "lb", format: weight } as const;

/**
 * The receiving of one lot: net, Brix at 68 °F, gallons, what the grower is paid, landed and usable price. Its yellow cells
 * start from the row in Lots. Refuses (#VALUE!) a lot that is not in the book.
 */
export function describeReceived(
  contents: readonly Contents[],
  lot: string,
): SheetDescription {
  const lots = contentsOf(contents, bookTables.lots);
  const known = bookColumn(contents, "lots", "lot").map(String);
  if (!lots || !known.some((name) => name.toLowerCase() === lot.toLowerCase()))
    throw unusable(
      `There is no lot "${lot}" in Lots; enter it there first, then receive it`,
    );
  const cell = (heading: string): string =>
    `INDEX(Lots[${heading}],MATCH("${lot}",Lots[Lot],0))`;
  // A blank in Lots is not entered; INDEX alone would make it 0.
  const own = (heading: string): { readonly formula: string } => ({
    formula: `=IF(ISNUMBER(${cell(heading)}),${cell(heading)},"")`,
  });
  return {
    name: sheetNameOf("Received", lot),
    tabColor: "#5b3a21",
    widths: [36, 16, 10, 60],
    frozenRows: 1,
    print: {
      paper: "letter",
      landscape: false,
      fit: "one page",
      foot: `Received ${lot}`,
    },
    blocks: [
      { kind: "title", content: `Lot ${lot} received` },
      {
        kind: "lines",
        title: "From the scale and the instrument",
        lines: [
          input("received", "Received", own("Received"), { format: day }),
          input("grower", "Grower", { formula: `=${cell("Grower")}&""` }),
          input("drums", "Drums", own("Drums"), { format: "0" }),
          input("gross", "Gross, all drums", own("Gross lb"), lb),
          input("tare", "Tare of a drum", own("Tare lb each"), {
            ...lb,
            hint: "of these drums; one tare for drums of two sizes is a mistake",
          }),
          input("size", "Size of a drum", own("Drum size gal"), {
            unit: "gal",
            format: "0",
          }),
          input("reading", "Brix as read", own("Brix at 68 °F"), {
            unit: "°Bx",
            format: "0.0",
          }),
          input("temperature", "Syrup was at", 68, {
            unit: "°F",
            format: "0",
            hint: "68 where the instrument corrects by itself",
          }),
          input("instrument", "Read with", "refractometer", {
            rule: { kind: "list", choices: ["refractometer", "hydrometer"] },
            ruleSays: "A refractometer or a hydrometer.",
          }),
        ],
      },
      {
        kind: "lines",
        title: "Agreed with the grower",
        lines: [
          input("price", "Price of the grade", own("Price per lb"), perLb),
          input("premium", "Premium", 0, {
            ...perLb,
            hint: "organic, for example; on net pounds",
          }),
          input("deductions", "Deductions", 0, {
            ...perLb,
            hint: "density, off-flavour, unfiltered",
          }),
          input("freight", "Inbound freight", own("Inbound freight"), {
            format: money,
          }),
          input("tests", "Tests", 0, { format: money }),
          input("deposit", "Deposit on a drum", own("Drum deposit each"), {
            format: money,
            hint: "comes back, so it is no cost",
          }),
          input("filter_loss", "Lost in the filter", 0.015, {
            format: "0.0%",
            hint: "1 to 2 % is common practice, no source",
          }),
          input("heel", "Stays in a drum", 0.6, {
            unit: "lb",
            format: "0.0",
            hint: "common practice, no source: weigh an emptied drum",
          }),
        ],
      },
      {
        kind: "lines",
        title: "What follows",
        lines: [
          out(
            "net",
            "Net",
            `IF(AND(ISNUMBER({gross}),ISNUMBER({tare}),ISNUMBER({drums})),IF({drums}*{tare}<{gross},{gross}-{drums}*{tare},NA()),NA())`,
            { ...lb, hint: "gross less the tare of every drum" },
          ),
          out(
            "brix",
            "Brix at 68 °F",
            `IF({temperature}=68,{reading},SYRUP.BRIX_CORRECTED({reading},{temperature},{instrument}))`,
            { unit: "°Bx", format: "0.0" },
          ),
          out(
            "gallons",
            "Gallons at 68 °F",
            "{net}/SYRUP.POUNDS_PER_GALLON({brix})",
            { unit: "gal", format: "#,##0.00" },
          ),
          out(
            "paid",
            "The grower gets",
            "{price}+{premium}-{deductions}",
            perLb,
          ),
          out("pay", "To pay", "ROUND(ROUND({net}*{paid},9),2)", {
            role: "result",
            format: money,
          }),
          out(
            "landed",
            "Landed",
            "SYRUP.LANDED_PRICE({net},{pay},N({freight}),N({tests}))",
            perLb,
          ),
          out(
            "landed_gallon",
            "Landed, a gallon",
            "({pay}+N({freight})+N({tests}))/{gallons}",
            { unit: "per gal", format: money },
          ),
          out(
            "usable",
            "Usable, after filter and heel",
            "SYRUP.USABLE_PRICE({landed},{net},{filter_loss},{heel}*{drums})",
            { ...perLb, role: "result" },
          ),
          out(
            "deposits",
            "Deposits, not in the cost",
            "N({deposit})*N({drums})",
            { format: money },
          ),
        ],
      },
      {
        kind: "lines",
        title: "Worth a look",
        lines: [
          out(
            "check_net",
            "Net in Lots",
            `IF(ABS({net}-${cell("Net lb")})<0.1,"the same","Lots has "&TEXT(${cell("Net lb")},"#,##0")&" lb")`,
            { role: "check" },
          ),
          out(
            "check_drum",
            "Fits in the drums",
            `IF(ISNUMBER({size}),IF({net}/{drums}>{size}*SYRUP.POUNDS_PER_GALLON({brix}),"more than a drum holds: a weight or a drum size is wrong","yes"),"no drum size entered")`,
            { role: "check" },
          ),
          out(
            "check_freight",
            "Freight",
            `IF(ISNUMBER({freight}),IF({freight}>0,"in the landed price","entered as 0"),"not entered: prices are before freight")`,
            { role: "check" },
          ),
          out(
            "check_move",
            "Premium and deductions",
            `IF(ABS({paid}/{price}-1)>0.03,"move the price by "&TEXT({paid}/{price}-1,"0.0%"),"within 3 %")`,
            { role: "check" },
          ),
        ],
      },
    ],
  };
}
