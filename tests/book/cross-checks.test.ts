import { findingText } from "../../src/book/finding";
import { serialOf } from "../../src/measures/read-date";
import {
  type Change,
  changing,
  newFindings,
  typing,
  withoutRows,
} from "./worksheet-tables";

const said = (...changes: readonly Change[]): readonly string[] =>
  newFindings(...changes).map(findingText);

const cases: readonly (readonly [
  trouble: string,
  changes: readonly Change[],
  says: readonly string[],
])[] = [
  [
    "a part without any price",
    [withoutRows("PartPrices", (cells) => cells[0] === "CAP-28")],
    [
      "Parts row 12, Part: no price for CAP-28. The cost of every product packed with it is withheld. Add its price breaks to Part prices.",
    ],
  ],
  [
    "a product without materials",
    [withoutRows("ProductMaterials", (cells) => cells[0] === "G250-DK")],
    [
      "Products row 3, Product: no materials for G250-DK. Its cost would lack bottle, cap, label and case. Add its parts to Product materials.",
    ],
  ],
  [
    "a bottle meant to hold less than its label says",
    [typing("Products", "Fill mL at 68 °F", 2, 248)],
    [
      "Products row 2, Fill mL at 68 °F: filled below the label: G250-AM (248 of 250 mL). The bottle would hold less than its label promises. Correct the fill, or the declared volume.",
    ],
  ],
  [
    "a kind of syrup with no bulk price",
    [typing("Products", "Syrup kind", 2, "Golden")],
    [
      "Products row 2, Syrup kind: no bulk price for Golden on the book's day. G250-AM cannot be costed at today's price. Add a row for Golden to Bulk prices.",
    ],
  ],
  [
    "a kind of syrup without a bulk price",
    [withoutRows("BulkPrices", (cells) => cells[0] === "Dark")],
    [
      expect.stringContaining(
        "no bulk price for Dark on the book's day",
      ) as string,
    ],
  ],
  [
    "a line without a crew",
    [withoutRows("Crew", (cells) => cells[0] === "Small A")],
    [
      "Lines row 2, Line: no crew for Small A. Labour on the line cannot be costed. Add the line's roles to Crew.",
    ],
  ],
  [
    "a season without overheads",
    [
      typing("Settings", "Value", 13, serialOf(2026, 11, 20) + 42),
      withoutRows("Invoices", () => true),
      withoutRows("Payments", () => true),
    ],
    [
      "Overheads row 2, Season: no overheads for 2027. The book speaks of 2027, so its full cost would carry no overheads at all. Add the bills of 2027 to Overheads.",
    ],
  ],
  [
    "figures a cost needs that nobody wrote down",
    [
      withoutRows("Settings", (cells) => cells[0] === "Kettle working fill"),
      withoutRows("Energy", (cells) => cells[0] === "Propane price"),
    ],
    [
      expect.stringContaining(
        "table Settings: no row for Kettle working fill",
      ) as string,
      expect.stringContaining(
        "table Energy: no row for Propane price",
      ) as string,
    ],
  ],
  [
    "a net weight that is not gross less the tares",
    [typing("Lots", "Tare lb each", 2, 46)],
    [
      "Lots row 2, Net lb: 10,251 lb, but gross less 24 tares is 10,203 lb. The net weight is used as typed; 48 lb of lot 25-01 are in doubt. Check gross, tare and drums against the scale ticket.",
    ],
  ],
  [
    // 24 drums of 30 gal at 11.035 lb hold 7,945 lb at most.
    "more syrup than the drums hold",
    [typing("Lots", "Drum size gal", 2, 30)],
    [
      "Lots row 2, Net lb: more than the drums hold: 25-01. The net weight, the number of drums or their size is wrong. Check the three against the scale ticket.",
    ],
  ],
  [
    "freight nobody entered",
    [
      typing("Lots", "Inbound freight", 3, null),
      typing("Lots", "Inbound freight", 5, null),
    ],
    [
      "Lots row 3, Inbound freight: blank for 25-02 and 25-04. The landed price of the lot is before freight. Type the freight, or 0 if there was none.",
    ],
  ],
  [
    // Lot 25-04 holds 11,990 lb and had all of it drawn; 600 lb more at RUN-03 leave too little for its last draw.
    "a lot drawn below zero, at the draw where it runs out",
    [
      typing("LotUse", "Pounds", 4, 4706),
      typing("Runs", "Syrup drawn lb", 4, 4706),
    ],
    [
      expect.stringMatching(
        /^Lot use row \d+, Pounds: 1,830 lb drawn from 25-04, which had 1,230 lb left\. 25-04 is overdrawn by 600 lb/,
      ) as string,
    ],
  ],
  [
    "more out of a barrel than went in",
    [typing("OakBarrels", "Pounds out", 2, 555)],
    [
      expect.stringContaining(
        "Oak barrels row 2, Pounds out: more out than in: OAK-01",
      ) as string,
    ],
  ],
  [
    "a count against a book weight of another day",
    [typing("StockCount", "Book lb", 4, 12_770)],
    [
      "Stock count row 4, Book lb: not what Lots has left: 26-06. The book weight was taken before or after other draws. Take the book weight from Lots, Left lb, on the day of the count.",
    ],
  ],
  [
    "a run whose draws do not add up",
    [typing("Runs", "Syrup drawn lb", 2, 6300)],
    [
      "Runs row 2, Syrup drawn lb: not what Lot use says: RUN-01 (6,300 lb against 6,272 lb). Some syrup of the run has no lot, or is written down twice. Make the draws in Lot use add up to the syrup drawn.",
    ],
  ],
  [
    "a bottle whose weights are swapped",
    [
      typing("FillChecks", "Empty g", 2, 580.3),
      typing("FillChecks", "Full g", 2, 245.2),
    ],
    [
      "Fill checks row 2, Full g: full weighs no more than empty: RUN-22 bottle 1. The two weights are probably swapped. Swap them, or weigh the bottle again.",
    ],
  ],
  [
    "a tote whose gross and tare are swapped",
    [
      typing("ToteShipments", "Gross lb", 2, 132),
      typing("ToteShipments", "Tare lb", 2, 3044),
    ],
    [
      "Tote shipments row 2, Tare lb: tare 3,044 lb is not below gross 132 lb. Gross and tare of tote T-001 look swapped. Swap the two weights, or weigh again.",
    ],
  ],
  [
    "a tote whose net is not gross less tare",
    [typing("ToteShipments", "Net lb", 2, 2900)],
    [
      "Tote shipments row 2, Net lb: 2,900 lb, but gross less tare is 2,912 lb. The net weight of tote T-001 is used as typed. Check the three weights against the scale ticket.",
    ],
  ],
  [
    // 3,665 lb at 11.06 lb/gal are 331 gal.
    "more syrup than a tote holds",
    [
      typing("ToteShipments", "Gross lb", 2, 3797),
      typing("ToteShipments", "Net lb", 2, 3665),
    ],
    [
      "Tote shipments row 2, Net lb: more than a 275 gal tote holds: T-001 (3,665 lb). At least one would not even fit a 330 gal tote, so a weight is wrong. Check the weights, and the size of the tote.",
    ],
  ],
  [
    "an invoice that is not the sum of its totes",
    [typing("ToteShipments", "Amount", 2, 8500)],
    [
      "Invoices row 2, Amount: not the sum of its totes: BOL-001. The invoice and the tote tickets disagree. Correct the one that is wrong.",
    ],
  ],
  [
    "a payment that names no invoice",
    [typing("Payments", "Bill of lading", 2, null)],
    [
      expect.stringContaining(
        "unpaid after the due date: BOL-001 Oatloft Bakery 17,011.92 USD",
      ) as string,
      expect.stringContaining(
        "Payments row 2, Bill of lading: payments of another customer, in another money or for no invoice: PAY-001",
      ) as string,
    ],
  ],
];

test.each(cases)("%s is pointed out", (_trouble, changes, says) => {
  expect(said(...changes)).toEqual(says);
});

test("organic syrup in a product sold as organic is as it should be", () => {
  const organic = changing("Products", (table) => ({
    ...table,
    rows: table.rows.map((cells) =>
      cells.with(table.headings.indexOf("Organic"), "yes"),
    ),
  }));
  // The tote sales remain: T-040 took 509 lb of 25-11 and T-044 took 999 lb of 26-05.
  expect(said(organic)).toEqual([
    expect.stringContaining("25-11 (509 lb) and 26-05 (999 lb)"),
  ]);
});

test("an overhead with its share to bulk typed in is settled, even at nothing", () => {
  const settled = newFindings(typing("Overheads", "Share to bulk", 11, 0));
  expect(settled).toEqual([]);
});
