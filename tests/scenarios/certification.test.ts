import { cell, demoRows } from "./demo-rows";

/** The year's bill in the worked scenario. */
const BILL = 10_600;

const runs = demoRows("bottling_runs.csv")
  .filter((row) => row["date"]?.startsWith("2026"))
  .map((row) => ({
    name: row["run"] ?? "",
    bottles: Number(row["good_bottles"]),
    gallons:
      (Number(row["good_bottles"]) * Number(row["average_fill_ml_at_68F"])) /
      3785.411784,
  }));
const lots = demoRows("bulk_lots.csv").filter((row) =>
  Object.values(row)[0]?.startsWith("26-"),
);
const place = runs.findIndex(({ name }) => name === "RUN-32");
const bottles = runs[place]?.bottles ?? Number.NaN;

const shares = (drivers: readonly number[]): readonly number[] =>
  (
    cell(
      "ALLOCATE",
      BILL,
      drivers.map((driver) => [driver]),
    ) as readonly (readonly number[])[]
  ).flat();

describe("who carries the certification bill of 10,600?", () => {
  test("by lots and runs, 13 + 18, each carries 341.94, and nothing is lost", () => {
    expect([lots.length, runs.length]).toEqual([13, 18]);
    const parts = shares([...lots, ...runs].map(() => 1));
    // 10,600 ÷ 31 = 341.935: some parts are a cent lower, so that they add up.
    for (const part of parts) expect([341.93, 341.94]).toContain(part);
    expect(parts.reduce((sum, part) => sum + Math.round(part * 100), 0)).toBe(
      BILL * 100,
    );
    expect((parts[place] ?? 0) / bottles).toBeCloseTo(0.518, 3);
  });

  test("by gallons bottled RUN-32 carries 15.3 ¢ a bottle: 3.4 times less", () => {
    const gallons = runs.map((run) => run.gallons);
    const each = (shares(gallons)[place] ?? 0) / bottles;
    expect(each).toBeCloseTo(0.153, 3);
    expect(0.518 / each).toBeCloseTo(3.4, 1);
  });
});
