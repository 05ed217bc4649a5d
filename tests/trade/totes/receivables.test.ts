import fc from "fast-check";
import { as, type DaySerial, type Money } from "../../../src/measures/quantity";
import type { Invoice, Receipt } from "../../../src/trade/totes/account";
import { matchings } from "../../../src/trade/totes/matching";
import { receivables } from "../../../src/trade/totes/receivables";
import { statement } from "../../../src/trade/totes/statement";

const today = as<DaySerial>(46_346);

const invoice = (
  bill: string,
  amount: number,
  due: number,
  of: Partial<Invoice> = {},
): Invoice => ({
  bill,
  buyer: "Bakery",
  currency: "USD",
  day: as<DaySerial>(46_200),
  due: as<DaySerial>(due),
  amount: as<Money>(amount),
  ...of,
});
const receipt = (
  number: string,
  amount: number,
  bill: string | undefined,
  of: Partial<Receipt> = {},
): Receipt => ({
  receipt: number,
  buyer: "Bakery",
  currency: "USD",
  day: as<DaySerial>(46_300),
  amount: as<Money>(amount),
  bill,
  ...of,
});

describe("a receipt that names no invoice", () => {
  const invoices = [invoice("B-2", 100, 46_310), invoice("B-1", 50, 46_290)];

  test("waits while receipts are matched by hand", () => {
    const found = receivables(invoices, [receipt("P", 70, undefined)], today);
    expect(found.accounts[0]).toMatchObject({ balance: 150, unapplied: 70 });
    expect(found.unapplied[0]?.reason).toBe("names no invoice");
  });

  test("pays what has been due longest first", () => {
    const found = receivables(
      invoices,
      [receipt("P", 70, undefined)],
      today,
      "oldest first",
    );
    expect(found.invoices.map(({ bill, balance }) => [bill, balance])).toEqual([
      ["B-2", 80],
      ["B-1", 0],
    ]);
    expect(found.accounts[0]).toMatchObject({ balance: 80, unapplied: 0 });
  });

  test("is left over where it is more than what is owed", () => {
    const found = receivables(
      invoices,
      [receipt("P", 170.01, undefined)],
      today,
      "oldest first",
    );
    expect(found.accounts[0]).toMatchObject({ balance: 0, unapplied: 20.01 });
  });
});

test("what one buyer paid too much settles neither another invoice nor another buyer's", () => {
  const found = receivables(
    [
      invoice("B-1", 100, 46_300),
      invoice("B-2", 40, 46_300),
      invoice("C-1", 30, 46_300, { buyer: "Creamery" }),
    ],
    [receipt("P", 185, "B-1")],
    today,
  );
  expect(
    found.accounts.map(({ buyer, balance, credits }) => [
      buyer,
      balance,
      credits,
    ]),
  ).toEqual([
    ["Bakery", 40, 85],
    ["Creamery", 30, 0],
  ]);
});

test("money in another currency, or for another buyer's invoice, is unapplied with its reason", () => {
  const found = receivables(
    [invoice("B-1", 100, 46_300)],
    [
      receipt("P-1", 10, "B-1", { currency: "CAD" }),
      receipt("P-2", 20, "B-1", { buyer: "Creamery" }),
      receipt("P-3", 30, "B-9"),
    ],
    today,
  );
  expect(found.unapplied.map(({ reason }) => reason)).toEqual([
    "invoice B-1 is in USD",
    "invoice B-1 is Bakery's",
    "there is no invoice B-9 yet",
  ]);
  expect(found.invoices[0]?.balance).toBe(100);
});

/** Any ledger: cents, two buyers, two moneys, receipts that name an invoice, none, or one of somebody else. */
const anyLedger = fc.record({
  invoices: fc
    .array(
      fc.record({
        buyer: fc.constantFrom("Bakery", "Creamery"),
        currency: fc.constantFrom("USD", "CAD"),
        cents: fc.integer({ min: 1, max: 500_000 }),
        due: fc.integer({ min: 46_200, max: 46_400 }),
      }),
      { maxLength: 12 },
    )
    .map((all) =>
      all.map(({ cents, due, ...of }, i) =>
        invoice(`B-${i}`, cents / 100, due, of),
      ),
    ),
  receipts: fc
    .array(
      fc.record({
        buyer: fc.constantFrom("Bakery", "Creamery"),
        currency: fc.constantFrom("USD", "CAD"),
        cents: fc.integer({ min: 1, max: 500_000 }),
        bill: fc.option(fc.integer({ min: 0, max: 13 }), { nil: undefined }),
      }),
      { maxLength: 12 },
    )
    .map((all) =>
      all.map(({ cents, bill, ...of }, i) =>
        receipt(
          `P-${i}`,
          cents / 100,
          bill === undefined ? undefined : `B-${bill}`,
          of,
        ),
      ),
    ),
  matching: fc.constantFrom(...matchings),
});

test("balances equal movements: invoiced less received is owed less credits less unapplied, in each money", () => {
  fc.assert(
    fc.property(anyLedger, ({ invoices, receipts, matching }) => {
      const found = receivables(invoices, receipts, today, matching);
      for (const currency of ["USD", "CAD"]) {
        const cents = (amounts: readonly number[]): number =>
          amounts.reduce((sum, amount) => sum + Math.round(amount * 100), 0);
        const own = found.accounts.filter((a) => a.currency === currency);
        const moved =
          cents(
            invoices
              .filter((i) => i.currency === currency)
              .map((i) => i.amount),
          ) -
          cents(
            receipts
              .filter((r) => r.currency === currency)
              .map((r) => r.amount),
          );
        expect(
          cents(own.map((a) => a.balance)) -
            cents(own.map((a) => a.credits)) -
            cents(own.map((a) => a.unapplied)),
        ).toBe(moved);
      }
    }),
  );
});

test("a statement ends at what is owed less credits and unapplied money", () => {
  fc.assert(
    fc.property(anyLedger, ({ invoices, receipts, matching }) => {
      const { accounts } = receivables(invoices, receipts, today, matching);
      for (const account of accounts) {
        const lines = statement(account, invoices, receipts, today);
        expect(lines.at(-1)?.balance).toBeCloseTo(
          account.balance - account.credits - account.unapplied,
          6,
        );
      }
    }),
  );
});
