import { cell, type DemoRow, demoRows } from "./demo-rows";

const shipments = demoRows("tote_shipments.csv");
const contracts = demoRows("tote_contracts.csv");

const contractOf = (row: DemoRow): DemoRow =>
  contracts.find(({ contract }) => contract === row["contract"]) ?? {};

const shippedOn = (contract: string): readonly (readonly unknown[])[] =>
  shipments
    .filter((row) => row["contract"] === contract)
    .map((row) => [Number(row["net_lb"])]);

describe("what went out in tote T-001, and what is it worth?", () => {
  test("3,044 less 132 is 2,912 lb", () => {
    expect(cell("TOTE_NET", 3044, 132)).toBe(2912);
  });

  test("at 66.6 °Bx that is 263.29 gal", () => {
    // The scenario divides by 11.06 lb/gal, rounded to a hundredth: 2,912 ÷ 11.06 = 263.29; half a hundredth of 11.06 is 0.12 gal.
    const gallons = Number(cell("VOLUME_OF", 2912, 66.6));
    expect(Math.abs(gallons - 263.29)).toBeLessThan(0.12);
  });

  test("at 2.92 a pound it is 8,503.04; the deposit of 120 stands apart", () => {
    expect(cell("SALE_AMOUNT", 2912, 2.92, "per lb")).toBe(8503.04);
  });
});

test("every ticket of the demo farm is gross less its own tare", () => {
  expect(shipments).toHaveLength(44);
  for (const row of shipments)
    expect(
      cell("TOTE_NET", Number(row["gross_lb"]), Number(row["tare_lb"])),
    ).toBe(Number(row["net_lb"]));
});

describe("what every one of the 44 totes was sold for, on four price bases", () => {
  const bases: Readonly<Record<string, string>> = {
    "USD per lb": "per lb",
    "USD per gallon": "per gal",
    "USD per lb of syrup at 66.0 Brix": "per lb at 66",
    "CAD per kg": "per kg",
  };

  test.each(
    shipments.map((row) => ({
      row,
      ticket: row["tote_ticket"] ?? "",
      basis: contractOf(row)["price_basis"] ?? "",
    })),
  )("$ticket, $basis", ({ row, basis }) => {
    const pounds = Number(row["net_lb"]);
    // The tickets in kilograms show them to a tenth: 2,912 lb is 1,320.86 kg, sold as 1,320.9.
    const net =
      basis === "CAD per kg"
        ? `${(pounds * 0.45359237).toFixed(1)} kg`
        : pounds;
    const amount = Number(
      cell(
        "SALE_AMOUNT",
        net,
        Number(contractOf(row)["price"]),
        bases[basis],
        Number(row["brix_at_68F"]),
      ),
    );
    // Per gallon the farm's amounts were made with lb/gal rounded to 0.001 and the density of its own table: 0.01 %.
    const tolerance = basis === "USD per gallon" ? amount * 1e-4 : 1e-9;
    expect(Math.abs(amount - Number(row["amount"]))).toBeLessThanOrEqual(
      tolerance,
    );
  });

  test("1,320.9 kg at 8.95 is a half cent, which goes up: 11,822.06", () => {
    expect(cell("SALE_AMOUNT", "1,320.9 kg", 8.95, "per kg")).toBe(11_822.06);
  });
});

describe("what is left on contract C-2601 on 2026-11-20?", () => {
  const shipped = shippedOn("C-2601");

  test("32,000 less 29,183 is 2,817 lb, 91.2 % shipped", () => {
    const left = Number(cell("CONTRACT_LEFT", 32_000, shipped));
    expect(left).toBe(2817);
    expect(1 - left / 32_000).toBeCloseTo(0.912, 3);
  });

  test("one more tote of 2,918 lb is 101 lb over", () => {
    expect(cell("CONTRACT_LEFT", 32_000, [...shipped, [2918]])).toBe(-101);
  });

  test("189 of its 289 days are gone, 65.4 %", () => {
    const gone = Number(cell("DAYS_LATE", "2026-05-15", "2026-11-20"));
    const whole = Number(cell("DAYS_LATE", "2026-05-15", "2027-02-28"));
    expect([gone, whole]).toEqual([189, 289]);
    expect(gone / whole).toBeCloseTo(0.654, 3);
  });

  test("C-2501 closed 724 lb short", () => {
    expect(cell("CONTRACT_LEFT", 30_000, shippedOn("C-2501"))).toBe(724);
  });
});

describe("who owes money on 2026-11-20, and how late is it?", () => {
  const today = "2026-11-20";
  const paid = new Map<string, number>();
  for (const row of demoRows("tote_payments.csv")) {
    const bill = row["bill_of_lading"] ?? "";
    paid.set(bill, (paid.get(bill) ?? 0) + Number(row["amount"]));
  }
  const open = demoRows("tote_invoices.csv")
    .map((row) => ({
      bill: row["bill_of_lading"] ?? "",
      due: row["due_date"] ?? "",
      balance:
        Number(row["amount"]) - (paid.get(row["bill_of_lading"] ?? "") ?? 0),
    }))
    .filter(({ balance }) => balance > 0.005);

  test("days late and band agree for every open invoice, counted on a calendar", () => {
    expect(open.length).toBeGreaterThan(3);
    for (const { due, balance } of open) {
      const days = Math.round((Date.parse(today) - Date.parse(due)) / 864e5);
      expect(cell("DAYS_LATE", due, today, balance)).toBe(Math.max(0, days));
      const band = String(cell("AGE_BAND", due, today));
      expect(band === "not due").toBe(days <= 0);
      const [least = 0, most = Infinity] = (band.match(/\d+/g) ?? []).map(
        Number,
      );
      if (days > 0) {
        expect(days).toBeGreaterThanOrEqual(
          band.startsWith("over") ? 91 : least,
        );
        expect(days).toBeLessThanOrEqual(band.startsWith("over") ? 9999 : most);
      }
    }
  });
});
