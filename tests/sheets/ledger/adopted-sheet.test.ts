import { gridFunctions } from "../../../src/apps/grid-functions";
import { proposeLedger } from "../../../src/book/ledger/propose";
import { readLedger } from "../../../src/book/ledger/read-ledger";
import { calculate } from "../../../src/hosts/grid/calculate";
import { KG_PER_LB } from "../../../src/measures/units";
import { adoptedSheet } from "../../../src/sheets/ledger/adopted-sheet";
import type { Stored, Workbook } from "../../../src/sheets/workbook";
import { saleAmount } from "../../../src/trade/totes/sale-amount";
import { inventedLedgers } from "../../book/ledgers/ledgers";

const blank = {
  tables: [],
  validations: [],
  merges: [],
  widths: {},
  heights: {},
  frozen: { rows: 0, columns: 0 },
};

/** The ledger's workbook with our sheet added and calculated: our cells by heading, a row each. */
async function adopted(index: number) {
  const ledger = inventedLedgers[index];
  if (!ledger) throw new Error("no ledger");
  const { rows } = proposeLedger(ledger.cells);
  const { understood } = proposeLedger(ledger.cells);
  const how = {
    columns: ledger.truth,
    weight: ledger.weight,
    basis: understood.basis?.is,
    currency: understood.currency?.is,
    dates: understood.dates,
  };
  const range = {
    sheet: "Led'ger",
    row: 4,
    column: 1,
    rows: ledger.cells.length,
    columns: 13,
  };
  const workbook: Workbook = {
    title: "",
    names: [],
    sheets: [
      {
        ...blank,
        name: range.sheet,
        cells: ledger.cells.flatMap((row, r) =>
          row.flatMap((value, c) =>
            value === null
              ? []
              : [{ row: range.row + r, column: range.column + c, value }],
          ),
        ),
      },
      adoptedSheet(
        { range, cells: ledger.cells, rows, how },
        "Ours",
        "AdoptedTotes",
      ),
    ],
  };
  const { workbook: done } = await calculate(workbook, gridFunctions);
  const sheet = done.sheets[1];
  const values = new Map(
    sheet?.cells.map((cell) => [
      `${cell.row},${cell.column}`,
      cell.value ?? null,
    ]),
  );
  const headings =
    sheet?.tables[0]?.columns.map(({ heading }) => heading) ?? [];
  return {
    tickets: readLedger(ledger.cells, rows, how),
    cell: (row: number, heading: string): Stored =>
      values.get(`${row + 3},${headings.indexOf(heading)}`) ?? null,
  };
}

test.each([0, 1, 2, 4, 5])(
  "our columns beside invented ledger %i say what the trade says, row by row",
  async (index) => {
    const { tickets, cell } = await adopted(index);
    for (const [r, ticket] of tickets.entries()) {
      const net =
        ticket.gross !== undefined && ticket.tare !== undefined
          ? ticket.gross - ticket.tare
          : NaN;
      expect(cell(r, "Net lb")).toBeCloseTo(net / KG_PER_LB, 6);
      expect(cell(r, "Ticket")).toBe(ticket.ticket);
      expect(cell(r, "Shipped")).toBe(ticket.date);
      if (ticket.price === undefined || ticket.basis === undefined) continue;
      expect(cell(r, "Amount")).toBeCloseTo(
        saleAmount(net as never, ticket.price, ticket.basis, ticket.brix),
        2,
      );
    }
  },
);

test("a ledger without prices withholds the amount and says what it needs", async () => {
  const { cell } = await adopted(6);
  expect(cell(0, "Amount")).toBe("needs weight, price and basis");
  expect(cell(0, "Gallons at 68 °F")).toBeGreaterThan(250);
});

test("an amount of the ledger that is not weight times price is shown apart", async () => {
  const { cell } = await adopted(2);
  // The invented ledger reckons every gallon at 11.04 lb, whatever the Brix; at 66 °Bx it is 11.030, so its amounts are too small.
  expect(cell(0, "Differs by")).toBeLessThan(-1);
});
