import { customersEarned, productsEarned } from "../../src/book/profitability";
import { demoRows } from "../scenarios/demo-rows";
import { demoBook } from "../support/demo-workbook";

const { book } = demoBook();

/** The farm's own files, read by themselves. */
const shipped = demoRows("tote_shipments.csv").filter((row) =>
  row["shipped"]?.startsWith("2026"),
);
const landed = new Map(
  demoRows("bulk_lots.csv").map((row) => [
    row["lot"],
    (Number(row["syrup_cost_usd"]) + Number(row["inbound_freight_usd"])) /
      Number(row["net_lb"]),
  ]),
);

test.each([...new Set(shipped.map((row) => row["customer"] ?? ""))])(
  "what %s bought in 2026 less what its syrup had cost landed",
  (customer) => {
    const totes = shipped.filter((row) => row["customer"] === customer);
    const cost = totes
      .flatMap((row) => (row["source_lots_lb"] ?? "").split(";"))
      .reduce((sum, part) => {
        const [lot = "", pounds] = part.trim().split(":");
        return sum + (landed.get(lot) ?? NaN) * Number(pounds);
      }, 0);
    const sold = totes.reduce((sum, row) => sum + Number(row["amount"]), 0);
    const earned = customersEarned(book, 2026).find(
      (one) => one.customer === customer,
    );
    expect(earned?.totes).toBe(totes.length);
    expect(earned?.sold).toBeCloseTo(sold, 6);
    expect(earned?.syrup).toBeCloseTo(cost, 2);
    // 1.37 Canadian dollars to the US dollar, from the farm's settings.
    const rate = totes[0]?.["currency"] === "CAD" ? 1.37 : 1;
    expect(earned?.left).toBeCloseTo(sold / rate - cost, 2);
  },
);

test("a tote whose draw is not written down has no cost, and its customer stands last", () => {
  const ticket = shipped[0]?.["tote_ticket"] ?? "";
  const lost = {
    ...book,
    lotUse: book.lotUse.filter(({ to }) => to !== ticket),
  };
  const last = customersEarned(lost, 2026).at(-1);
  expect([last?.missing, last?.left]).toEqual([[ticket], undefined]);
});

test("products are ranked by what their bottles leave, not by what they sell for", () => {
  const ranked = productsEarned(book, 2026);
  expect(ranked).toHaveLength(17);
  const left = ranked.map((one) => one.left ?? NaN);
  expect(left).toEqual([...left].sort((a, b) => b - a));
  const sales = ranked.map((one) => one.bottles * (one.price ?? NaN));
  expect(sales).not.toEqual([...sales].sort((a, b) => b - a));
});
