import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { gridFunctions } from "../../../src/apps/grid-functions";
import { proposeLedger } from "../../../src/book/ledger/propose";
import {
  readLedger,
  type LedgerTicket,
} from "../../../src/book/ledger/read-ledger";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { calculate } from "../../../src/hosts/grid/calculate";
import { roundHalfUp } from "../../../src/measures/money";
import { KG_PER_LB } from "../../../src/measures/units";
import {
  adoptedSheet,
  columnsAtRight,
  type Adoption,
} from "../../../src/sheets/ledger/adopted-sheet";
import { portable } from "../../../src/sheets/portable";
import type { Stored, Workbook } from "../../../src/sheets/workbook";
import { poundsPerGallon } from "../../../src/trade/syrup/density";
import { saleAmount } from "../../../src/trade/totes/sale-amount";
import { inventedLedgers } from "../../book/ledgers/ledgers";
import { convertWithLibreOffice } from "../../support/libre-office";

const blank = {
  tables: [],
  validations: [],
  merges: [],
  widths: {},
  heights: {},
  frozen: { rows: 0, columns: 0 },
};

const LEDGER = "Led'ger";

/** A ledger's workbook with our sheet in it and our columns right of the ledger, and what the trade reads of the same rows. */
function adopted(index: number): {
  readonly workbook: Workbook;
  readonly adoption: Adoption;
  readonly tickets: readonly LedgerTicket[];
} {
  const ledger = inventedLedgers[index];
  if (!ledger) throw new Error("no ledger");
  const { rows, understood } = proposeLedger(ledger.cells);
  const how = {
    columns: ledger.truth,
    weight: ledger.weight,
    basis: understood.basis?.is,
    currency: understood.currency?.is,
    dates: understood.dates,
  };
  const range = {
    sheet: LEDGER,
    row: 4,
    column: 1,
    rows: ledger.cells.length,
    columns: 13,
  };
  const adoption = { range, cells: ledger.cells, rows, how };
  return {
    adoption,
    tickets: readLedger(ledger.cells, rows, how),
    workbook: {
      title: "",
      names: [],
      sheets: [
        {
          ...blank,
          name: range.sheet,
          cells: [
            ...ledger.cells.flatMap((row, r) =>
              row.flatMap((value, c) =>
                value === null
                  ? []
                  : [{ row: range.row + r, column: range.column + c, value }],
              ),
            ),
            ...columnsAtRight(adoption, { gap: 0 }),
          ],
        },
        adoptedSheet(adoption, "Ours", "AdoptedTotes"),
      ],
    },
  };
}

type Calculated = ReadonlyMap<string, Stored>;

const valuesOf = (workbook: Workbook, name: string): Calculated =>
  new Map(
    workbook.sheets
      .find((sheet) => sheet.name === name)
      ?.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value ?? null]),
  );

interface Expected {
  readonly net: number | undefined;
  readonly gallons: number | undefined;
  readonly amount: number | undefined;
  readonly owed: number | undefined;
}

/** What the trade says of a ticket, in pounds. */
function expected(ticket: LedgerTicket): Expected {
  const { gross, tare, brix, price, basis, paid } = ticket;
  const net =
    gross !== undefined && tare !== undefined ? gross - tare : ticket.net;
  const amount =
    net === undefined || price === undefined || basis === undefined
      ? undefined
      : roundHalfUp(saleAmount(net as never, price, basis, brix), 2);
  const isPaid = paid !== undefined && !/^no$/i.test(paid);
  return {
    net: net === undefined ? undefined : net / KG_PER_LB,
    gallons:
      net === undefined || brix === undefined
        ? undefined
        : net / KG_PER_LB / poundsPerGallon(brix),
    amount,
    owed: isPaid ? 0 : (ticket.amount ?? amount),
  };
}

const near = (a: Stored | undefined, b: number | undefined): boolean =>
  b === undefined
    ? typeof a !== "number"
    : typeof a === "number" &&
      Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));

const sumOf = (values: readonly (number | undefined)[]): number =>
  values.reduce<number>((sum, value) => sum + (value ?? 0), 0);

/** Every cell of ours that does not say what the trade says. */
function differences(index: number, done: Workbook): readonly string[] {
  const { workbook, adoption, tickets } = adopted(index);
  const [, ours] = workbook.sheets;
  const [rows, ...sums] = ours?.tables ?? [];
  const values = valuesOf(done, "Ours");
  const atRight = valuesOf(done, LEDGER);
  const wrong: string[] = [];
  const look = (
    what: string,
    is: Stored | undefined,
    be: number | undefined,
  ) => {
    if (!near(is, be)) wrong.push(`${what}: ${JSON.stringify(is)}, not ${be}`);
  };
  for (const [r, ticket] of tickets.entries()) {
    const { net, gallons, amount, owed } = expected(ticket);
    const cell = (heading: string): Stored | undefined =>
      values.get(
        `${r + 3},${rows?.columns.findIndex((one) => one.heading === heading) ?? -1}`,
      );
    look(`row ${r} net`, cell("Net lb"), net);
    look(`row ${r} gallons`, cell("Gallons at 68 °F"), gallons);
    look(`row ${r} amount`, cell("Amount"), amount);
    if (adoption.how.columns.paid !== undefined)
      look(`row ${r} owed`, cell("Owed"), owed);
    if (String(cell("Ticket") ?? "") !== (ticket.ticket ?? ""))
      wrong.push(`row ${r} ticket: ${String(cell("Ticket"))}`);
    look(`row ${r} day`, cell("Shipped"), ticket.date);
    const right = (c: number): Stored | undefined =>
      atRight.get(`${4 + ticket.row},${14 + c}`);
    look(`row ${r} net at right`, right(0), net);
    look(`row ${r} gallons at right`, right(1), gallons);
    look(`row ${r} amount at right`, right(2), amount);
  }
  for (const { area, columns } of sums)
    for (let r = area.row + 1; r < area.row + area.rows; r += 1) {
      const at = (heading: string): Stored | undefined =>
        values.get(
          `${r},${area.column + columns.findIndex((one) => one.heading === heading)}`,
        );
      const has = (heading: string): boolean =>
        columns.some((one) => one.heading === heading);
      const own = tickets.filter(({ buyer, currency, contract }) =>
        has("Buyer")
          ? (buyer ?? "") === (at("Buyer") ?? "") &&
            (currency ?? "") === (at("Currency") ?? "")
          : (contract ?? "") === (at("Contract") ?? ""),
      );
      const what = `sums of ${String(at("Buyer") ?? at("Contract"))}`;
      if (own.length === 0) wrong.push(`${what}: nobody's`);
      look(`${what} totes`, at("Totes"), own.length);
      look(`${what} net`, at("Net lb"), sumOf(own.map((t) => expected(t).net)));
      if (has("Amount"))
        look(
          `${what} amount`,
          at("Amount"),
          sumOf(own.map((t) => expected(t).amount)),
        );
      if (has("Owed"))
        look(
          `${what} owed`,
          at("Owed"),
          sumOf(own.map((t) => expected(t).owed)),
        );
    }
  return wrong;
}

describe("in LibreOffice, every formula worked out anew", () => {
  let recalculated: readonly Workbook[];
  beforeAll(async () => {
    const folder = mkdtempSync(join(tmpdir(), "adopted-"));
    const files = await Promise.all(
      inventedLedgers.map(async (_, i) => {
        const file = join(folder, `ledger-${i}.xlsx`);
        writeFileSync(file, await writeXlsx(portable(adopted(i).workbook)));
        return file;
      }),
    );
    const converted = convertWithLibreOffice(files, {
      to: "xlsx",
      recalculate: true,
    });
    recalculated = await Promise.all(
      converted.map(
        async (file) =>
          (await readXlsx(new Uint8Array(readFileSync(file)), file)).workbook,
      ),
    );
    rmSync(folder, { recursive: true });
    rmSync(dirname(converted[0] ?? folder), { recursive: true, force: true });
  }, 240_000);

  test.each(inventedLedgers.map(({ what }, i) => [what, i] as const))(
    "ours beside a ledger with %s is what the trade makes of its rows",
    (_what, i) => {
      const done = recalculated[i];
      if (!done) throw new Error("not converted");
      expect(differences(i, done)).toEqual([]);
    },
  );

  test("what buyers owe adds up to what is not paid", () => {
    const done = recalculated[0];
    if (!done) throw new Error("not converted");
    const owed = adopted(0).tickets.filter(({ paid }) => paid === undefined);
    const values = valuesOf(done, "Ours");
    const [, byBuyer] = adopted(0).workbook.sheets[1]?.tables ?? [];
    const column = (byBuyer?.area.column ?? 0) + 5;
    // Hand arithmetic: net pounds of the six unpaid totes × 2.92.
    expect([3, 4, 5].map((row) => values.get(`${row},${column}`))).toEqual(
      ["Oatloft Bakery", "Pinwhistle Creamery", "Nettlecombe Sauces"].map(
        (name) =>
          expect.closeTo(
            sumOf(
              owed
                .filter(({ buyer }) => buyer === name)
                .map(({ gross = 0, tare = 0 }) =>
                  roundHalfUp(((gross - tare) / KG_PER_LB) * 2.92, 2),
                ),
            ),
            6,
          ),
      ),
    );
  });
});

describe("in the grid", () => {
  async function calculated(index: number) {
    const { workbook } = adopted(index);
    return (await calculate(workbook, gridFunctions)).workbook;
  }

  test.each([0, 1, 2, 3, 4, 5, 6])(
    "ours beside invented ledger %i is what the trade makes of its rows",
    async (index) => {
      expect(differences(index, await calculated(index))).toEqual([]);
    },
  );

  test("a ledger without prices withholds the amount and says what it needs", async () => {
    const done = await calculated(6);
    const headings = adopted(6).workbook.sheets[1]?.tables[0]?.columns ?? [];
    const at = headings.findIndex(({ heading }) => heading === "Amount");
    expect(valuesOf(done, "Ours").get(`3,${at}`)).toBe(
      "needs weight, price and basis",
    );
  });

  test("an amount of the ledger that is not weight times price is shown apart", async () => {
    const done = await calculated(2);
    const headings = adopted(2).workbook.sheets[1]?.tables[0]?.columns ?? [];
    const at = headings.findIndex(({ heading }) => heading === "Differs by");
    // The invented ledger reckons every gallon at 11.04 lb, whatever the Brix; at 66 °Bx it is 11.030, so its amounts are too small.
    expect(valuesOf(done, "Ours").get(`3,${at}`)).toBeLessThan(-1);
  });
});
