import { proposeLedger } from "../../../src/book/ledger/propose";
import { readLedger } from "../../../src/book/ledger/read-ledger";
import { ledgerRoles } from "../../../src/book/ledger/roles";
import { isoDate } from "../../../src/measures/read-date";
import { KG_PER_LB } from "../../../src/measures/units";
import { inventedLedgers, type InventedLedger } from "./ledgers";

const corrections = ({
  cells,
  truth,
  weight,
  basis,
  currency,
}: InventedLedger): readonly string[] => {
  const { columns, understood } = proposeLedger(cells);
  return [
    ...ledgerRoles
      .filter((role) => columns[role] !== truth[role])
      .map((role) => `${role}: ${columns[role]} is ${truth[role]}`),
    ...(understood.weight.is === weight
      ? []
      : [`weights ${understood.weight.is} are ${weight}`]),
    ...(basis === undefined || understood.basis?.is === basis
      ? []
      : [`basis ${understood.basis?.is} is ${basis}`]),
    ...(understood.currency?.is === currency
      ? []
      : [`money ${understood.currency?.is} is ${currency}`]),
  ];
};

describe.each(inventedLedgers.map((ledger) => [ledger.what, ledger] as const))(
  "%s",
  (_what, ledger) => {
    test("is adopted with at most two corrections", () => {
      const needed = corrections(ledger);
      expect(needed.length > 2 ? needed : []).toEqual([]);
    });

    test("its tickets are read as they are, and nothing else is taken for one", () => {
      const { rows, understood } = proposeLedger(ledger.cells);
      const tickets = readLedger(ledger.cells, rows, {
        columns: ledger.truth,
        weight: ledger.weight,
        basis: undefined,
        currency: undefined,
        dates: understood.dates,
      });
      expect(tickets).toHaveLength(ledger.tickets);
      expect(tickets.flatMap(({ unread }) => unread)).toEqual([]);
      const [first] = tickets;
      expect(isoDate(first?.date ?? (0 as never))).toBe(ledger.first.date);
      const net = ((first?.gross ?? 0) - (first?.tare ?? 0)) / KG_PER_LB;
      expect(net).toBeCloseTo(ledger.first.netLb, 3);
    });
  },
);

test("all eight together need few corrections", () => {
  const all = inventedLedgers.flatMap((ledger) =>
    corrections(ledger).map((one) => `${ledger.what}: ${one}`),
  );
  expect(all.length > 8 ? all : []).toEqual([]);
});

test("a kilogram row among pounds is read in its own unit", () => {
  const ledger = inventedLedgers[4];
  if (!ledger) throw new Error("no mixed ledger");
  const { rows } = proposeLedger(ledger.cells);
  const tickets = readLedger(ledger.cells, rows, {
    columns: ledger.truth,
    weight: "lb",
    basis: undefined,
    currency: undefined,
    dates: undefined,
  });
  // Hand arithmetic: 1,381 kg − 60 kg.
  expect((tickets[3]?.gross ?? 0) - (tickets[3]?.tare ?? 0)).toBeCloseTo(
    1321,
    9,
  );
  expect(tickets[3]).toMatchObject({ basis: "per kg", currency: "CAD" });
  expect(tickets[2]).toMatchObject({ basis: "per lb", currency: "USD" });
});

test("columns without headings are known by their values and by gross less tare", () => {
  const cells = (inventedLedgers[0]?.cells ?? [])
    .slice(4)
    .map((row) => row.slice(0, 7));
  const { headings, columns, because } = proposeLedger(cells);
  expect(headings.rows).toBe(0);
  expect(columns).toMatchObject({
    date: 1,
    gross: 3,
    tare: 4,
    net: 5,
    brix: 6,
  });
  expect(because.net).toBe("gross less tare");
});

test("cells that hold no ledger propose nothing", () => {
  expect(proposeLedger([["Dear all,"], ["see you on Monday"]]).columns).toEqual(
    {},
  );
  expect(proposeLedger([]).columns).toEqual({});
});
