import type { Block, Column } from "../model";
import { column, money, numberAt, weight } from "./columns";
import type { ToteFacts } from "./facts";

/** What a tote may weigh, and what its buyer says it weighed. */
export const weightColumns = ({
  columnIfAny,
}: ToteFacts): readonly Column[] => [
  column(
    "plate",
    "Plate limit lb",
    `IF({row.counts}="yes",IF(ISNUMBER({row.own_plate}),{row.own_plate},IF(ISNUMBER({plate_limit}),{plate_limit},"")),"")`,
    weight,
  ),
  column(
    "over_plate",
    "Gross over it, lb",
    'IF(AND(ISNUMBER({row.gross}),ISNUMBER({row.plate})),IF({row.gross}>{row.plate},ROUND({row.gross}-{row.plate},10),""),"")',
    weight,
  ),
  column(
    "buyer_net",
    "Buyer net lb",
    `IF({row.counts}="yes",${numberAt(columnIfAny("toteShipments", "buyerNet"))},"")`,
    weight,
  ),
  column(
    "apart",
    "Buyer less us, lb",
    'IF(AND(ISNUMBER({row.buyer_net}),ISNUMBER({row.amount})),ROUND({row.buyer_net}-{row.net},10),"")',
    "#,##0.0",
  ),
  column(
    "apart_share",
    "Of our weight",
    'IF(ISNUMBER({row.apart}),{row.apart}/{row.net},"")',
    "0.00%",
  ),
  column(
    "apart_money",
    "In money",
    'IF(ISNUMBER({row.buyer_quantity}),ROUND(ROUND(ROUND({row.buyer_quantity}*{row.price},9),2)-{row.amount},2),"")',
    money,
  ),
  column(
    "beyond",
    "Beyond tolerance",
    'IF(ISNUMBER({row.apart}),IF(ROUND(ABS({row.apart})-{tolerance}*{row.net},6)>0,"yes","no"),"")',
  ),
  column(
    "dispute_no",
    "Disputes so far",
    '{row_above.dispute_no}+IF({row.beyond}="yes",1,0)',
    "0",
  ),
  column(
    "own_plate",
    "Its own plate says, lb",
    numberAt(columnIfAny("toteShipments", "plateLimit")),
    weight,
  ),
  column(
    "buyer_quantity",
    "Quantity at the buyer's weight",
    buyerQuantity,
    "#,##0.00",
  ),
];

const BUYER_GALLONS =
  "ROUND({row.buyer_net}/ROUND({row.density},{density_digits}),{gallon_digits})";

/** What the price would count at the buyer's weight. Gallons go with those billed, whichever gallon that was. */
const buyerQuantity = `IF(ISNUMBER({row.apart}),IF({row.basis}="USD per lb",{row.buyer_net},IF({row.basis}="USD per gallon",IF(AND(ISNUMBER({row.density}),ISNUMBER({row.gallons})),${BUYER_GALLONS}*({row.quantity}/{row.gallons}),""),IF({row.basis}="USD per lb of syrup at 66.0 Brix",{row.buyer_net}*{row.brix}/66,IF({row.basis}="CAD per kg",ROUND({row.buyer_net}*0.45359237,{kilogram_digits}),"")))),"")`;

/** Disputes shown at a glance; the tickets below have them all. */
const SHOWN = 6;

/** Weights the buyer reports farther from ours than the tolerance. */
export const disputesBlock: Block = {
  kind: "table",
  name: "disputes",
  title: `Weights in dispute, the first ${SHOWN}`,
  rows: SHOWN,
  columns: (
    [
      ["ticket", "Ticket"],
      ["shipped", "Shipped", "yyyy-mm-dd"],
      ["contract", "Contract"],
      ["buyer", "Buyer"],
      ["bill", "Bill of lading"],
      ["net", "Our net lb", weight],
      ["buyer_net", "Buyer net lb", weight],
      ["apart", "Buyer less us, lb", "#,##0.0"],
      ["apart_share", "Of our weight", "0.00%"],
      ["apart_money", "In money", money],
      ["currency", "Money"],
    ] as const
  ).map(([name, label, format]) =>
    column(
      name,
      label,
      `IFERROR(INDEX({tickets.${name}},MATCH({n},{tickets.dispute_no},0)),"")`,
      format,
    ),
  ),
};
