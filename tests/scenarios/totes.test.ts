import { readBook } from "../../src/book/read";
import { totesOf } from "../../src/book/totes";
import { totesFindings } from "../../src/book/totes-findings";
import { truckPlan } from "../../src/book/truck-plan";
import { truckQuestion } from "../../src/book/truck-question";
import { KG_PER_LB } from "../../src/measures/units";
import { demoTables } from "../book/csv-folder";
import { troubledTotes } from "../support/troubled-totes";
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

describe("what does the buyer weigh, and what hangs on it?", () => {
  const { book } = readBook(troubledTotes());
  const totes = totesOf(book);
  const { disputes } = totes;

  test("six weights are reported, three lie beyond half a per cent, the most money first", () => {
    // Hand arithmetic, tickets' own prices: T-044 11,822.06 less 1,306.3 kg × 8.95; T-040 9,004.79 less 2,890 ÷ 11.050 × 34.10;
    // T-003 8,547.81 less 2,910 ÷ 11.060 × 32.20. T-001 agrees; T-004 is 14.74 lb light, half a per cent of 2,948.
    expect(disputes.reported).toBe(6);
    expect(
      disputes.beyond.map(({ ticket, difference }) => [
        ticket.row.ticket,
        Math.round((difference.weight / KG_PER_LB) * 100) / 100,
      ]),
    ).toEqual([
      ["T-044", -32],
      ["T-040", -28],
      ["T-003", -26],
    ]);
    expect(disputes.beyond[0]?.difference.money).toBeCloseTo(
      11_691.39 - 11_822.06,
      9,
    );
  });

  test("a wider agreed tolerance settles them", () => {
    const wider = totesOf(book, { tolerance: 0.011 as never });
    expect(wider.disputes.beyond).toEqual([]);
  });

  test("each is a finding that names both weights and the money", () => {
    expect(
      totesFindings(totes).find(({ where }) => where.includes("Buyer net"))
        ?.found,
    ).toBe(
      "T-044: Larkspindle Foods (Canada) reports 2,880 lb, 32 lb less than our 2,912 lb",
    );
  });
});

describe("how many totes does a truck of 44,000 lb take?", () => {
  const { book } = readBook(demoTables());
  const names = {
    limit: "--limit",
    axle: "--axle",
    spots: "--spots",
    tickets: "--tickets",
    gross: "--gross",
  };
  const asked = (typed: Partial<typeof names>) =>
    truckPlan(
      book,
      truckQuestion(
        { limit: "", axle: "", spots: "", tickets: "", gross: "", ...typed },
        names,
      ),
    );

  test("14 by weight though the floor has room for 20", () => {
    // Source: tote_shipments.csv, heaviest gross 3,090 lb (T-009); 44,000 ÷ 3,090 = 14.2.
    const { fit, grossOf } = asked({ limit: "44,000 lb", spots: "20" });
    expect(grossOf).toBe("T-009, the heaviest of the 44 in the book");
    expect(fit).toMatchObject({
      totes: 14,
      byFloor: 20,
      binds: ["the truck's limit"],
    });
  });

  test("T-042 to T-044 weigh 9,112 lb, and totes without a ticket ride too", () => {
    const { load } = asked({
      limit: "44000",
      tickets: "T-042, t-043, T-044",
      gross: "3049; 3,055",
    });
    // Hand arithmetic: 3,056 + 3,009 + 3,047 + 3,049 + 3,055 = 15,216.
    expect((load?.gross ?? 0) / KG_PER_LB).toBeCloseTo(15_216, 6);
    expect((load?.left ?? 0) / KG_PER_LB).toBeCloseTo(28_784, 6);
  });

  test.each([
    [{}, /Needs --limit, the most cargo the truck takes: ask the carrier/],
    [{ limit: "-1" }, /--limit: -1 is not a weight above 0/],
    [{ limit: "heavy" }, /--limit: "heavy" is not a number/],
    [{ limit: "44000", spots: "2.5" }, /--spots: 2.5 is not a whole number/],
    [{ limit: "44000", tickets: "T-999" }, /no tote T-999 is in the book/],
    [{ limit: "44000", tickets: "T-044,T-044" }, /T-044 is named twice/],
    [{ limit: "44000", gross: "0" }, /--gross: 0 is not a weight above 0/],
  ])("%j is refused with a sentence", (typed, says) => {
    expect(() => asked(typed)).toThrow(says);
  });

  test("a tote above its own plate stops the plan", () => {
    const { book: troubled } = readBook(troubledTotes());
    expect(() =>
      truckPlan(
        troubled,
        truckQuestion(
          {
            limit: "44000",
            axle: "",
            spots: "",
            tickets: "T-001",
            gross: "",
          },
          names,
        ),
      ),
    ).toThrow("T-001: 3,044 lb is above the 3,000 lb on the tote's plate");
  });
});

describe("what is a contract worth at our dock and delivered?", () => {
  const contracts = totesOf(readBook(troubledTotes()).book).contracts;
  const of = (name: string) =>
    contracts.find(({ row }) => row.contract === name)?.freight;

  test("1,850 for 40,800 lb is 4.53 ¢ of a delivered price", () => {
    const freight = of("C-2601");
    // Hand arithmetic: 1,850 ÷ 40,800 = 0.045343.
    expect(freight?.perPoundFreight).toBeCloseTo(0.045343, 6);
    expect(
      (freight?.bothWays?.delivered ?? 0) - (freight?.bothWays?.dock ?? 0),
    ).toBeCloseTo(0.045343, 6);
    expect(freight?.needs).toEqual([]);
  });

  test("a freight of 0 was entered; a blank one was not, and is never 0", () => {
    expect(of("C-2602")?.perPoundFreight).toBe(0);
    expect(of("C-2603")).toMatchObject({
      perPoundFreight: undefined,
      bothWays: undefined,
      needs: ["freight not entered"],
    });
    expect(of("C-2604")?.needs).toEqual(["pounds of a load not entered"]);
    expect(of("C-2503")?.needs).toEqual([
      "freight not entered",
      "dock or delivered not entered",
    ]);
  });
});
