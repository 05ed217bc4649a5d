import { readCell } from "../../../functions/read-cell";
import { money, number } from "../../../terms/term";

const bottlesTerm = number({
  label: "Bottles in this run",
  about: "good bottles the run is to make",
  unit: "bottles",
  min: 1,
  max: 10_000_000,
  whole: true,
  example: "1,200",
});

const bulkPriceTerm = money({
  label: "Bulk price",
  about: "price of bulk syrup a pound, delivered",
  unit: "per lb",
  above: 0,
  max: 100,
  example: "2.60",
});

/** Reads a run size a person typed; refuses anything but a whole number of bottles. */
export const readBottles = (typed: string): number =>
  readCell(bottlesTerm, needed(typed), "bottles") as number;

/** Reads a price a pound; refuses zero and what no one pays. */
export const readBulkPrice = (typed: string): number =>
  readCell(bulkPriceTerm, needed(typed), "bulk price") as number;

function needed(typed: string): string {
  if (typed.trim() === "") throw new Error("Type a number here.");
  return typed;
}
