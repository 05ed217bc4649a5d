import {
  cpSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { BulkAnswer } from "../../../src/apps/cli/bulk";
import type { TotesAnswer } from "../../../src/apps/cli/totes-answer";
import type { TraceAnswer } from "../../../src/apps/cli/trace-answer";
import type { TruckAnswer } from "../../../src/apps/cli/truck-answer";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");

async function jsonOf<T>(args: readonly string[]): Promise<T> {
  const { code, said, complained } = await run([...args, "--json"]);
  expect([code, said.length, complained]).toEqual([0, 1, []]);
  return JSON.parse(said.join("")) as T;
}

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "totes-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

describe("how much went out, at what price, and who still owes?", () => {
  let answer: TotesAnswer;
  beforeAll(async () => {
    answer = await jsonOf(["totes", demo]);
  });

  test("tote T-001 is 2,912 lb and 8,503.04; its deposit stands apart", () => {
    // Source: worked scenario 1 of the demo farm, arithmetic.
    expect(answer.tickets[0]).toMatchObject({
      ticket: "T-001",
      netLb: 2912,
      gallons: 263.29,
      amount: 8503.04,
      currency: "USD",
    });
  });

  test("a price by the kilogram is rounded half up, in its own money", () => {
    // Source: 1,320.9 kg × 8.95 = 11,822.055; tote_invoices.csv has 11,822.06.
    expect(answer.tickets.at(-1)).toMatchObject({
      ticket: "T-044",
      basis: "per kg",
      amount: 11_822.06,
      currency: "CAD",
    });
  });

  test("contract C-2601 has 2,817 lb left, one tote, with 189 of 289 days gone", () => {
    // Source: worked scenario 21 of the demo farm, arithmetic.
    const contract = answer.contracts.find((c) => c.contract === "C-2601");
    expect(contract).toMatchObject({
      leftLb: 2817,
      totesLeft: 1,
      endsOn: "2027-02-28",
    });
    expect(contract?.shareShipped).toBeCloseTo(0.912, 3);
    expect(contract?.shareOfTime).toBeCloseTo(189 / 289, 12);
    expect(contract?.overIfFullLb).toBeCloseTo(101, 0);
  });

  test("an over-payment is a credit, and Canadian dollars stand by themselves", () => {
    // Source: tote_payments.csv, "overpaid 85" and "short by 210"; days counted on a calendar.
    const of = (buyer: string) =>
      answer.receivables.find((account) => account.buyer === buyer);
    expect(of("Pinwhistle Creamery")).toEqual({
      buyer: "Pinwhistle Creamery",
      currency: "USD",
      balance: 18_030.38,
      notDue: 0,
      late: [{ invoice: "BOL-018", amount: 18_030.38, days: 64 }],
      credits: 85,
      unapplied: 0,
    });
    expect(of("Nettlecombe Sauces")?.late).toEqual([
      { invoice: "BOL-010", amount: 210, days: 306 },
      { invoice: "BOL-020", amount: 2852.7, days: 33 },
    ]);
    expect(
      answer.totals.map(({ currency, balance }) => [currency, balance]),
    ).toEqual([
      ["USD", 45_882.02],
      ["CAD", 11_822.06],
    ]);
  });

  test("deposits are those of totes that are still out", () => {
    // Source: tote_shipments.csv has 17 rows without a return, at 120 each.
    expect(answer.deposits).toMatchObject({ totesOut: 17, amount: 2040 });
  });
});

test("what the buyer weighs, freight and plates are asked, never assumed", async () => {
  const answer = await jsonOf<TotesAnswer>(["totes", demo]);
  expect(answer.disputes).toEqual([]);
  expect(answer.weights).toEqual({ tolerance: 0.005, reported: 0 });
  expect(answer.contracts[0]?.freight).toEqual({
    pricePerLb: 2.92,
    holds: null,
    freightPerLb: null,
    dockPerLb: null,
    deliveredPerLb: null,
    needs: ["freight not entered", "dock or delivered not entered"],
  });
});

test("a weight in dispute is listed with pounds, share and money, and settled by a wider tolerance", async () => {
  const farm = path.join(folder, "farm");
  cpSync(demo, farm, { recursive: true });
  const file = path.join(farm, "tote_shipments.csv");
  const [headings = "", ...rows] = readFileSync(file, "utf8")
    .trimEnd()
    .split("\n");
  writeFileSync(
    file,
    [
      `${headings},buyer_net_lb`,
      ...rows.map((row) => `${row},${row.startsWith("T-044") ? "2880" : ""}`),
    ].join("\n"),
  );
  const { disputes } = await jsonOf<TotesAnswer>(["totes", farm]);
  // Hand arithmetic: 2,880 lb is 1,306.3 kg as printed, × 8.95 = 11,691.39, less 11,822.06.
  expect(disputes).toEqual([
    {
      ticket: "T-044",
      contract: "C-2603",
      buyer: "Larkspindle Foods (Canada)",
      ourNetLb: 2912,
      buyerNetLb: 2880,
      differenceLb: -32,
      differenceShare: expect.closeTo(-32 / 2912, 12) as number,
      money: -130.67,
      currency: "CAD",
    },
  ]);
  const wider = await jsonOf<TotesAnswer>([
    "totes",
    farm,
    "--tolerance",
    "2 %",
  ]);
  expect(wider.disputes).toEqual([]);
  const refused = await run(["totes", farm, "--tolerance", "0.5"]);
  expect(refused.complained).toEqual([
    '--tolerance: "0.5" reads as 50 %; type a percentage from 0 to 10, as "0.5 %".',
  ]);
});

test("a truck's limit, floor and chosen tickets, as one object", async () => {
  const answer = await jsonOf<TruckAnswer>([
    "truck",
    demo,
    "--limit",
    "44000",
    "--spots",
    "20",
    "--tickets",
    "T-043,T-044",
  ]);
  // Source: tote_shipments.csv, 3,009 and 3,047 lb gross; 44,000 ÷ 3,047 = 14.4.
  expect(answer).toMatchObject({
    fits: { totes: 14, byFloor: 20, binds: ["the truck's limit"] },
    load: {
      grossLb: 6056,
      leftLb: 37_944,
      spotsLeft: 18,
      plateLimitUnknown: ["T-043", "T-044"],
    },
  });
  expect(answer.caution).toMatch(/the carrier's and the state's to say/);
  const { code, complained } = await run(["truck", demo]);
  expect([code, complained[0]]).toEqual([
    2,
    expect.stringMatching(/^Needs --limit/),
  ]);
});

test("free syrup in bulk or in bottles, as one object", async () => {
  const answer = await jsonOf<BulkAnswer>([
    "bulk",
    demo,
    ..."--product G250-DK --pounds 5000 --bottles 2400 --hours 20".split(" "),
  ]);
  const wholesale = answer.ways.find(
    ({ channel }) => channel === "Wholesale to shops",
  );
  // Hand arithmetic: 20 h of people ÷ (4 × 4.25 h ÷ 2,400 bottles) = 2,823.5 bottles.
  expect(wholesale).toMatchObject({
    bottles: 2823,
    limitedBy: "the labour",
  });
  expect(answer.bulk.contract).toBe("C-2601");
  expect(answer.best).toBe("Farm counter");
  const { code, complained } = await run([
    "bulk",
    demo,
    "--product",
    "G250-DK",
  ]);
  expect([code, complained[0]]).toEqual([
    2,
    expect.stringMatching(/^Needs --pounds/),
  ]);
});

test("on another day only what had happened by then counts", async () => {
  const answer = await jsonOf<TotesAnswer>([
    "totes",
    demo,
    "--as-of",
    "2025-07-20",
  ]);
  expect(answer.asOf).toBe("2025-07-20");
  expect(answer.tickets.map(({ ticket }) => ticket)).toEqual([
    "T-001",
    "T-002",
    "T-003",
    "T-004",
    "T-005",
  ]);
  // No payment had come: PAY-001 is of 2025-07-22.
  expect(answer.totals).toMatchObject([
    { currency: "USD", received: 0, balance: 40_753.14 },
  ]);
});

test("a lot that is overdrawn is named with the first draw it does not cover", async () => {
  const farm = path.join(folder, "farm");
  cpSync(demo, farm, { recursive: true });
  const file = path.join(farm, "lot_use.csv");
  const text = readFileSync(file, "utf8").trimEnd();
  writeFileSync(
    file,
    `${text}\n2026-11-19,26-08,bottled,RUN-34,5000\n2026-11-20,26-08,lost or adjusted,,200\n`,
  );
  const { findings } = await jsonOf<TotesAnswer>(["totes", farm]);
  expect(
    findings.filter(({ found }) => found.includes("first draw")),
  ).toMatchObject([
    {
      // 5,128 lb less 5,000 leaves 128; the next 200 are 72 too many.
      found:
        "200 lb for lost or adjusted on 2026-11-20 is the first draw that lot 26-08 does not cover, by 72 lb",
    },
  ]);
});

describe("where did this lot go, and where did this run come from?", () => {
  test("lot 26-04 reaches runs, totes and their buyers, pound for pound", async () => {
    const answer = await jsonOf<TraceAnswer>(["trace", demo, "26-04"]);
    // Source: lot_use.csv; 12,767 lb bought, none left.
    expect(answer.totalLb).toBeCloseTo(12_767, 6);
    expect(answer.unexplainedLb).toBe(0);
    expect(answer.buyers.map(({ buyer }) => buyer).sort()).toEqual([
      "Larkspindle Foods (Canada)",
      "Oatloft Bakery",
      "Pinwhistle Creamery",
    ]);
    const rests = answer.containers.reduce((sum, c) => sum + c.restsLb, 0);
    expect(rests).toBeCloseTo(answer.totalLb, 6);
  });

  test("what the count did not find is said", async () => {
    // Source: stock_count.csv, lot 26-05: 43 lb fewer than the book has.
    const answer = await jsonOf<TraceAnswer>(["trace", demo, "26-05"]);
    expect(answer.unexplainedLb).toBe(43);
  });

  test("a run goes back through its barrels to its lot", async () => {
    const answer = await jsonOf<TraceAnswer>([
      "trace",
      demo,
      "RUN-25",
      "--back",
    ]);
    expect(answer.steps[0]).toEqual({
      step: 1,
      date: "2026-07-14",
      from: "OAK-03",
      to: "RUN-25",
      lb: 77,
      share: expect.closeTo(77 / 856, 12),
    });
    expect(
      answer.containers.filter(({ kind }) => kind === "lot"),
    ).toMatchObject([{ name: "25-04", lb: 856 }]);
  });

  test("an unknown lot is refused with the nearest name", async () => {
    const { code, complained } = await run(["trace", demo, "26-044"]);
    expect([code, complained]).toEqual([
      2,
      [
        expect.stringMatching(
          /"26-044" is in none of the movements; the nearest name is "26-04"/,
        ),
      ],
    ]);
  });
});

test("a recall list adds up to all that left the lot, and waits for calls and pounds found", async () => {
  const out = path.join(folder, "recall.xlsx");
  const { code } = await run(["trace", demo, "26-04", "--out", out]);
  expect(code).toBe(0);
  const { workbook } = await readXlsx(readFileSync(out), "recall.xlsx");
  const [sheet] = workbook.sheets;
  const right = (label: string): unknown => {
    const at = sheet?.cells.find(({ value }) => value === label);
    return sheet?.cells.find(
      ({ row, column }) => row === at?.row && column === 1,
    )?.value;
  };
  expect(sheet?.name).toBe("Recall 26-04");
  // Source: lot_use.csv, 12,767 lb drawn of lot 26-04.
  expect(right("Syrup that left it")).toBeCloseTo(12_767, 6);
  expect(right("Of it on this list or lost")).toBeCloseTo(12_767, 6);
  expect(right("Begun")).toEqual(expect.any(Number));
  expect(right("Minutes it took") ?? "").toBe("");
}, 60_000);
