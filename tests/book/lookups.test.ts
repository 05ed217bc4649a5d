import { bookSeason, overheadsOf } from "../../src/book/book-days";
import { bulkPrice } from "../../src/book/bulk-price";
import { newestDay } from "../../src/book/newest-day";
import { readBook } from "../../src/book/read";
import { energyFigure, setting } from "../../src/book/setting";
import { drawnFor, drawnFrom } from "../../src/book/stock";
import { serialOf } from "../../src/measures/read-date";
import { KG_PER_LB, LITRES_PER_GALLON } from "../../src/measures/units";
import { demoTables } from "./csv-folder";
import { typing, withoutRows, worksheetTables } from "./worksheet-tables";

const { book } = readBook(demoTables());

test("a setting is read in the unit beside it", () => {
  expect(setting(book, "Farm")).toBe("Fernkettle Hollow Packing");
  expect(setting(book, "Kettle working fill")).toBeCloseTo(
    120 * LITRES_PER_GALLON,
    9,
  );
  expect(setting(book, "Shrink from pack temperature to 68 F")).toBeCloseTo(
    0.027,
    12,
  );
  // 187 °F = (187 − 32) × 5 ÷ 9 °C.
  expect(setting(book, "Pack temperature")).toBeCloseTo(86.1111, 4);
  expect(energyFigure(book, "Kettle efficiency")).toBe(0.68);
  expect(energyFigure(book, "Kettle fuel")).toBe("propane");
});

test("a setting kept in litres is read as litres", () => {
  const metric = readBook(
    worksheetTables(
      typing("Settings", "Value", 10, 450),
      typing("Settings", "Unit", 10, "L"),
    ),
  ).book;
  expect(setting(metric, "Kettle working fill")).toBeCloseTo(450, 9);
});

test("a setting that is blank or not there is undefined, never zero", () => {
  const blank = readBook(
    worksheetTables(
      typing("Settings", "Value", 10, null),
      withoutRows("Settings", (cells) => cells[0] === "Stock method"),
    ),
  ).book;
  expect(setting(blank, "Kettle working fill")).toBeUndefined();
  expect(setting(blank, "Stock method")).toBeUndefined();
});

test("the book's season is the year of its newest day", () => {
  expect(newestDay(book)).toBe(serialOf(2026, 11, 20));
  expect(bookSeason(book)).toBe(2026);
  expect(bookSeason(readBook([]).book)).toBeUndefined();
});

// yearly_overheads.csv: the ten bills of 2026 come to 76,100.
test("overheads are those of the book's season", () => {
  const sum = (rows: ReturnType<typeof overheadsOf>): number =>
    rows.reduce((total, row) => total + row.perYear, 0);
  expect(sum(overheadsOf(book))).toBe(76_100);
  expect(sum(overheadsOf(book, 2025))).toBe(23_100);
});

test("a bulk price is found whatever the case of its kind, and only from its day on", () => {
  expect(bulkPrice(book, "DARK")?.pricePerPound).toBe(2.52);
  expect(bulkPrice(book, "Dark", serialOf(2026, 11, 19))).toBeUndefined();
});

// lot_use.csv: RUN-04 took 563 lb of 25-01 and 337 lb of 25-02, 900 lb in all.
test("draws are added by where they come from and where they go", () => {
  expect(drawnFor(book, "run-04") / KG_PER_LB).toBeCloseTo(900, 9);
  expect(drawnFrom(book, "OAK-02") / KG_PER_LB).toBeCloseTo(525, 9);
});
