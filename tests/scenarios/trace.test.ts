import { cell, demoRows } from "./demo-rows";

const movements = demoRows("lot_use.csv").map((row) => [
  row["date"],
  row["from_lot_or_barrel"],
  row["to"],
  Number(row["pounds"]),
]);

type Row = readonly [
  step: number,
  from: string,
  to: string,
  lb: number,
  share: number,
];
const traced = (lot: string, direction: string): readonly Row[] =>
  cell("TRACE", lot, movements, direction) as readonly Row[];
const pounds = (rows: readonly Row[]): number =>
  rows.reduce((sum, [, , , lb]) => sum + lb, 0);

describe("an audit asks where lot 25-04 went", () => {
  const rows = traced("25-04", "forward");

  test("runs, six oak barrels, and the runs those were bottled in", () => {
    const first = rows.filter(([step]) => step === 1).map(([, , to]) => to);
    expect(first).toEqual([
      "RUN-03",
      "OAK-01",
      "OAK-02",
      "OAK-03",
      "OAK-04",
      "OAK-05",
      "OAK-06",
      "RUN-05",
      "RUN-07",
    ]);
    const second = rows.filter(([step]) => step === 2);
    expect(second.map(([, from, to]) => `${from} ${to}`)).toEqual([
      "OAK-01 RUN-17",
      "OAK-02 RUN-17",
      "OAK-02 RUN-18",
      "OAK-03 RUN-18",
      "OAK-03 RUN-25",
      "OAK-04 RUN-25",
      "OAK-05 RUN-25",
    ]);
  });

  test("every pound that left it is named, by the farm's own list of draws", () => {
    const drawn = movements
      .filter(([, from]) => from === "25-04")
      .reduce((sum, row) => sum + Number(row[3]), 0);
    expect(pounds(rows.filter(([step]) => step === 1))).toBeCloseTo(drawn, 6);
    // The barrels were filled from this lot alone, so what came out of them is all of it.
    for (const [, , , , share] of rows) expect(share).toBeCloseTo(1, 9);
  });
});

describe("a jar of the oak-aged RUN-25 comes back", () => {
  test("it goes back through three barrels to lot 25-04 alone", () => {
    const rows = traced("RUN-25", "back");
    // 77 + 524 + 255 = 856 lb drawn for the run.
    expect(pounds(rows.filter(([step]) => step === 1))).toBeCloseTo(856, 6);
    const lots = rows.filter(([step]) => step === 2);
    expect(lots.map(([, from, to]) => `${from} ${to}`)).toEqual([
      "25-04 OAK-03",
      "25-04 OAK-04",
      "25-04 OAK-05",
    ]);
    expect(pounds(lots)).toBeCloseTo(856, 6);
  });
});

test("a tote filled from three lots names all three, and their shares make a whole", () => {
  expect(traced("T-040", "back")).toEqual([
    [1, "26-12", "T-040", 876, expect.closeTo(876 / 2918, 12)],
    [1, "25-11", "T-040", 509, expect.closeTo(509 / 2918, 12)],
    [1, "26-04", "T-040", 1533, expect.closeTo(1533 / 2918, 12)],
  ]);
});

test("every run and tote goes back to lots, pound for pound", () => {
  const goals = new Set(
    movements.map(([, , to]) => String(to)).filter((to) => /^[RT]/.test(to)),
  );
  expect(goals.size).toBeGreaterThan(70);
  for (const goal of goals) {
    const rows = traced(goal, "back");
    const lots = rows.filter(([, from]) => !from.startsWith("OAK"));
    const cameIn = movements
      .filter(([, , to]) => to === goal)
      .reduce((sum, row) => sum + Number(row[3]), 0);
    expect(pounds(lots)).toBeCloseTo(cameIn, 6);
  }
});

test("a lot that is not in the list is not found, and the nearest is named", () => {
  expect(() => traced("25-014", "forward")).toThrow(
    /"25-014" is in none of the movements; the nearest name is "25-0[14]"/,
  );
});

test("the pounds of lot 25-01 are all accounted for", () => {
  // Bought 10,251 lb; 6,272 + 3,416 + 563 were bottled.
  const out = movements
    .filter(([, from]) => from === "25-01")
    .map((row) => [row[3]]);
  expect(cell("MASS_BALANCE", 10_251, out)).toBe(0);
});
