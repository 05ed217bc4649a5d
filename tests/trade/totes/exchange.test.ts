import { as, type DaySerial, type Money } from "../../../src/measures/quantity";
import type { Invoice, Receipt } from "../../../src/trade/totes/account";
import { exchanged } from "../../../src/trade/totes/exchange";

const day = (n: number): DaySerial => as<DaySerial>(46000 + n);
const invoice = (bill: string, on: number, amount: number): Invoice => ({
  bill,
  buyer: "Larkspindle",
  currency: "CAD",
  day: day(on),
  due: day(on + 30),
  amount: as<Money>(amount),
});
const receipt = (
  bill: string | undefined,
  on: number,
  amount: number,
  changes: Partial<Receipt> = {},
): Receipt => ({
  receipt: `R-${on}`,
  buyer: "Larkspindle",
  currency: "CAD",
  day: day(on),
  amount: as<Money>(amount),
  bill,
  ...changes,
});

/** Canadian dollars per US dollar by day; days that are not here have none. */
const rates: Readonly<Record<number, number>> = { 0: 1.37, 10: 1.4, 20: 1.25 };
const worth = (currency: string, on: DaySerial): number | undefined => {
  if (currency === "USD") return 1;
  const rate = rates[on - 46000];
  return rate === undefined ? undefined : 1 / rate;
};

test("an invoice goes by its own day's rate, its receipts by theirs, and the difference stands apart", () => {
  const { invoices, booked, gain, leftOut } = exchanged(
    [invoice("B1", 0, 13_700)],
    [receipt("B1", 10, 7000), receipt("B1", 20, 6700)],
    "USD",
    worth,
  );
  // By hand: 13,700 / 1.37 = 10,000. 7,000 / 1.40 = 5,000 and 6,700 / 1.25 = 5,360, together 10,360: 360 gained.
  expect(invoices[0]).toMatchObject({
    booked: 10_000,
    received: 13_700,
    settled: 10_360,
    gain: 360,
    without: [],
  });
  expect([booked, gain, leftOut]).toEqual([10_000, 360, []]);
});

test("an invoice that is not paid has neither gain nor loss", () => {
  const { invoices } = exchanged([invoice("B1", 10, 140)], [], "USD", worth);
  expect(invoices[0]).toMatchObject({ booked: 100, received: 0, gain: 0 });
});

test("without a rate nothing is converted, and the bill is left out of the sums and named", () => {
  const { invoices, booked, gain, leftOut } = exchanged(
    [invoice("B1", 0, 1370), invoice("B2", 5, 500), invoice("B3", 0, 137)],
    [receipt("B3", 7, 137), receipt("B1", 10, 1370)],
    "USD",
    worth,
  );
  expect(invoices.map(({ booked: one }) => one)).toEqual([
    1000,
    undefined,
    100,
  ]);
  expect(invoices.map(({ gain: one }) => one)).toEqual([
    // 1,370 / 1.40 = 978.571…, a loss of 21.43.
    -21.43,
    undefined,
    undefined,
  ]);
  expect(invoices.map(({ without }) => without)).toEqual([
    [],
    [day(5)],
    [day(7)],
  ]);
  expect([booked, gain, leftOut]).toEqual([1000, -21.43, ["B2", "B3"]]);
});

test("invoices in the books' own money, and receipts that fit no invoice, are not looked at", () => {
  const { invoices } = exchanged(
    [{ ...invoice("B1", 0, 100), currency: "USD" }, invoice("B2", 0, 137)],
    [
      receipt("B2", 10, 50, { buyer: "another" }),
      receipt("B2", 10, 50, { currency: "USD" }),
      receipt(undefined, 10, 50),
    ],
    "USD",
    worth,
  );
  expect(invoices).toHaveLength(1);
  expect(invoices[0]).toMatchObject({ booked: 100, received: 0, settled: 0 });
});
