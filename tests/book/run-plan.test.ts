import fc from "fast-check";
import { bookTablesFromCsv } from "../../src/book/from-csv";
import { readBook } from "../../src/book/read";
import { runPlan } from "../../src/book/run-plan";
import { lineLetters } from "../../src/book/run-plan-code";
import { runPlanFindings } from "../../src/book/run-plan-findings";
import { readStart, startText } from "../../src/book/run-plan-start";
import { KG_PER_LB } from "../../src/measures/units";
import { demoBook } from "../support/demo-workbook";
import { barePlanSettings, demoFolder, replacing } from "./csv-folder";

const { book } = demoBook();
const start = readStart("2026-11-26T07:00", "start");
const bookWith = (changes: Parameters<typeof demoFolder>[0]) =>
  readBook(bookTablesFromCsv(demoFolder(changes)).tables).book;
const settings = (lines: string) => (text: string) =>
  `${text.trimEnd()}\n${lines}\n`;
/** The demo farm without the settings that only a run plan asks for. */
const bare = bookWith({ "farm_settings.csv": barePlanSettings() });

test("the chosen line is never dearer than another usual one, whatever the product and the run", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...book.products.map(({ product }) => product)),
      fc.integer({ min: 1, max: 40_000 }),
      (product, bottles) => {
        const { choice, other } = runPlan(book, { product, bottles });
        const cost = choice.chosen?.cost ?? Number.NaN;
        for (const option of choice.options.filter(({ line }) => line.usual))
          expect(cost).toBeLessThanOrEqual(option.cost);
        expect(other?.saved).toBeGreaterThanOrEqual(0);
      },
    ),
    { numRuns: 60 },
  );
});

test("the lots drawn and the shortage are the run's syrup, of its own kind and status, and no lot gives more than is left", () => {
  fc.assert(
    fc.property(
      fc.constantFrom("G250-AM", "G250-DK", "J128-AM", "P250-LOFT"),
      fc.integer({ min: 1, max: 60_000 }),
      (product, bottles) => {
        const plan = runPlan(book, { product, bottles });
        const drawn = plan.lots?.draws ?? [];
        const sum = drawn.reduce((total, { weight }) => total + weight, 0);
        expect(sum + (plan.lots?.short ?? 0)).toBeCloseTo(plan.syrup ?? 0, 6);
        for (const { lot, after } of drawn) {
          const row = book.lots.find((l) => l.lot === lot);
          expect(row?.grade).toBe(plan.product.syrupKind);
          expect(row?.organic ?? false).toBe(false);
          expect(after).toBeGreaterThanOrEqual(0);
        }
      },
    ),
    { numRuns: 60 },
  );
});

test("a run beyond the stock is short by so many pounds, and what the stock covers is said", () => {
  const plan = runPlan(book, { product: "G250-AM", bottles: 25_000 });
  const short = (plan.lots?.short ?? 0) / KG_PER_LB;
  const left = (plan.syrup ?? 0) / KG_PER_LB - short;
  const found = runPlanFindings(plan).find(({ found: f }) =>
    f.includes("lb of Amber"),
  );
  expect(found?.found).toBe(
    `short by ${Math.ceil(short).toLocaleString("en-US")} lb of Amber`,
  );
  // (pounds in stock − 60 lb purge) ÷ pounds a bottle.
  const each = ((plan.syrup ?? 0) / KG_PER_LB - 60) / 25_000;
  const bottles = Math.floor((left - 60) / each);
  expect(found?.todo).toContain(
    `or run ${bottles.toLocaleString("en-US")} bottles`,
  );
  const covered = runPlan(book, { product: "G250-AM", bottles });
  expect(covered.lots?.short).toBe(0);
});

test("aged syrup is drawn from emptied barrels", () => {
  const plan = runPlan(book, { product: "B250-OAK", bottles: 600 });
  expect(plan.lots?.draws.map(({ lot }) => lot)).toEqual(["OAK-05", "OAK-06"]);
});

test("seven in the morning of 26 November 2026 on the small pair: 26330-SP-0700, over at 9:35", () => {
  // 304 days to the end of October, and 26.
  const plan = runPlan(bare, { product: "P250-LOFT", bottles: 1200, start });
  expect(plan.lotCode).toBe("26330-SP-0700");
  expect(startText(plan.clock?.finish ?? 0)).toBe("2026-11-26T09:35");
  expect(lineLetters("Small A")).toBe("SA");
  expect(lineLetters("one")).toBe("O");
});

test("the demo farm takes its quarter of an hour after two and a half hours: over at 9:50, best by 24 months on", () => {
  const plan = runPlan(book, { product: "P250-LOFT", bottles: 1200, start });
  // 55 min and 1,200 ÷ 720 h are 2 h 35 min of work, in a day of 8 h.
  expect([plan.clock?.breaks, plan.clock?.overtime]).toEqual([1, 0]);
  expect(startText(plan.clock?.finish ?? 0)).toBe("2026-11-26T09:50");
  expect(startText(plan.bestBy ?? 0)).toBe("2028-11-26T00:00");
  expect(plan.needs).toEqual([]);
});

test("what is not entered is named, and nothing is made up for it", () => {
  const plan = runPlan(bare, { product: "P250-LOFT", bottles: 1200, start });
  expect([plan.weights, plan.bestBy, plan.clock?.overtime]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  expect(plan.needs.map(({ needs }) => needs)).toEqual([
    "“Empty case” and “Empty pallet” in Settings",
    "“Best-by months” in Settings",
  ]);
  const lacking = bookWith({
    "packaging_parts.csv": replacing(",0,28", ",,28"),
  });
  const open = runPlan(lacking, { product: "P250-LOFT", bottles: 1200, start });
  expect(open.needs.map(({ needs }) => needs)).toContain("On hand of LBL-PL-F");
  expect(open.materials.find(({ part }) => part === "LBL-PL-F")).toMatchObject({
    short: undefined,
    order: undefined,
  });
});

test("a farm's own settings give overtime, breaks, the small last fill, weights and best-by", () => {
  const farm = bookWith({
    "farm_settings.csv": barePlanSettings(
      "Day length,7,h,\nBreak after,120,min,\nBreak length,15,min,\nLeast kettle fill,40,gal,\nEmpty case,450,g,\nEmpty pallet,45,lb,\nBest-by months,24,months,",
    ),
  });
  const plan = runPlan(farm, { product: "G250-AM", bottles: 9000, start });
  // 225 min and 9,000 ÷ 2,160 = 4 h 10 min are 7 h 55 min: three breaks, 55 min of overtime for five people.
  expect(plan.clock?.breaks).toBe(3);
  expect(plan.clock?.overtime).toBeCloseTo((5 * 55) / 60, 9);
  expect(startText(plan.clock?.finish ?? 0)).toBe("2026-11-26T15:40");
  expect(plan.weights).toBeDefined();
  expect(startText(plan.bestBy ?? 0)).toBe("2028-11-26T00:00");
  const found = runPlanFindings(plan).map(({ found: f }) => f);
  expect(found).toContainEqual(
    expect.stringMatching(/^the last kettle fill is only 3\d\.\d gal hot$/),
  );
  expect(found).toContain("4.6 crew-hours are overtime");
});

test("bottles that break are drawn for", () => {
  const farm = bookWith({
    "farm_settings.csv": settings("Breakage,4,percent,"),
  });
  const of = (from: typeof book): number =>
    (runPlan(from, { product: "P250-LOFT", bottles: 1200 }).syrup ?? 0) /
    KG_PER_LB;
  // 1,200 ÷ 0.96 = 1,250: fifty bottles more of 0.735789 lb.
  expect(of(farm) - of(book)).toBeCloseTo(50 * 0.735789, 2);
});

test("a dearer line that was asked for is planned, and what it costs more is said", () => {
  const plan = runPlan(book, {
    product: "P250-LOFT",
    bottles: 1200,
    line: "big line",
  });
  expect(plan.choice.chosen?.line.name).toBe("Big line");
  expect(plan.other?.saved).toBeCloseTo(-426.14, 2);
  expect(runPlanFindings(plan).map(({ found }) => found)).toContain(
    "Big line costs $426.14 more than Small pair",
  );
});

test("an order that comes too late says so; ink by the mark is not an order of its own", () => {
  const plan = runPlan(book, { product: "P250-LOFT", bottles: 1200, start });
  const findings = runPlanFindings(plan);
  // Lead 9 days: 17 November, three days before the newest day of the book.
  expect(
    findings.find(({ found }) => found.endsWith("of LBL-PL-F"))?.todo,
  ).toBe("order 1,250 for $362.50 at once: 2026-11-17 was the last day for it");
  expect(findings.filter(({ found }) => found.includes("INK-CODE"))).toEqual([
    expect.objectContaining({
      found: "none on hand, or too few, of INK-CODE (1,200) and WRAP (2)",
    }),
  ]);
});

test("a day without a time is no start", () => {
  expect(readStart("2026-11-26 7:05", "start")).toBeCloseTo(
    46352 + (7 * 60 + 5) / 1440,
    9,
  );
  for (const typed of [
    "2026-11-26",
    "07:00",
    "2026-13-01T07:00",
    "26/11/2026 07:00",
    "2026-11-26T24:00",
  ])
    expect(() => readStart(typed, "--start")).toThrow(/^--start: /);
});
