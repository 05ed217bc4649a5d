import type { Book } from "../../src/book/book";
import type { Finding } from "../../src/book/finding";
import { byStake, managerFindings } from "../../src/book/manager-findings";
import { as, type Money } from "../../src/measures/quantity";
import { demoBook } from "../support/demo-workbook";

const { book, findings: read } = demoBook();
const told = (of: Book = book): readonly Finding[] => managerFindings(of, read);
const about = (words: RegExp, of: Book = book): Finding | undefined =>
  told(of).find(({ found }) => words.test(found));

test("a manager reads the demo farm's list to its end: fifteen at most, each with its place and what to do", () => {
  const list = told();
  expect(list.length).toBeLessThanOrEqual(15);
  for (const { where, todo } of list) {
    expect(where).toMatch(/ (row|line) \d+, |^table /);
    expect(todo.length).toBeGreaterThan(10);
  }
});

test("what has no figure comes first, then the most money at stake", () => {
  const stakes = told().map(({ atStake }) => atStake ?? Infinity);
  expect(stakes).toEqual([...stakes].sort((a, b) => b - a));
  expect(stakes.at(-1)).toBeLessThan(10);
});

// Planted in the demo farm; the job lists them.
test.each([
  /^light lots in stock: 26-05/,
  /^thin runs: RUN-26/,
  /^organic syrup in goods not sold as organic/,
  /^private labels under their goal: P250-LOFT/,
  /^an order is cheaper one break up: /,
  /^single bottles lose money in Own web shop: N050-AM/,
  /^sold below cost in Distributor: /,
  /^bills that stay with the lots bought: Certification/,
])("the demo farm is told: %s", (words) => {
  expect(about(words)).toBeDefined();
});

test("the private labels' stake is what their usual runs fall short of the goal", () => {
  // P375-NETT at 11.99 or more and the others as they are: one label fewer, and less at stake.
  const dearer: Book = {
    ...book,
    prices: book.prices.map((row) =>
      row.product === "P375-NETT" ? { ...row, price: as<Money>(11.99) } : row,
    ),
  };
  const before = about(/^private labels/);
  const after = about(/^private labels/, dearer);
  expect(before?.found).toContain("P375-NETT");
  expect(after?.found).not.toContain("P375-NETT");
  expect(after?.atStake).toBeLessThan(before?.atStake ?? 0);
});

test("the break-up advice names the larger order and what it saves", () => {
  // 50 mL bottles: 3,600 ÷ (1 − spoilage) in cartons is 3,720; from 3,840 they are cheaper in all by 410.40.
  expect(about(/one break up/)?.found).toContain(
    "BTL-050 for 3,600 N050-AM (3,840 instead of 3,720 saves 410.40)",
  );
});

test("a web shop that charges 12.00 for shipping loses on no single bottle", () => {
  const charged: Book = {
    ...book,
    channels: book.channels.map((row) =>
      row.channel === "Own web shop"
        ? { ...row, shippingCharged: as<Money>(12) }
        : row,
    ),
  };
  expect(about(/^single bottles/, charged)).toBeUndefined();
});

test("the same finding is told once", () => {
  const one: Finding = { where: "a", found: "b", meaning: "c", todo: "d" };
  expect(
    byStake([one, { ...one }, { ...one, atStake: 3, found: "e" }]),
  ).toEqual([one, { ...one, atStake: 3, found: "e" }]);
});
