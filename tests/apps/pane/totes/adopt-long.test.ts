import {
  atRightChange,
  readingOf,
} from "../../../../src/apps/pane/totes/adopt";
import { gridFunctions } from "../../../../src/apps/grid-functions";
import { proposeLedger } from "../../../../src/book/ledger/propose";
import { openExcelHost } from "../../../../src/hosts/excel/excel-host";
import { FileHost } from "../../../../src/hosts/file/file-host";
import { openHeadless } from "../../../../src/hosts/grid/open-headless";
import type { Host } from "../../../../src/hosts/host";
import { remembered } from "../../../../src/sheets/ledger/remembered";
import type { Workbook } from "../../../../src/sheets/workbook";
import { inventedLedgers } from "../../../book/ledgers/ledgers";
import { openWire } from "../../../support/excel-wire/open-wire";
import { stateOf } from "../../../support/excel-wire/workbook-states";

const long = inventedLedgers.find(({ tickets }) => tickets === 5000);
if (!long) throw new Error("no long ledger");
const SHEET = "Since 2020";
const book: Workbook = {
  title: "",
  names: [],
  sheets: [
    {
      name: SHEET,
      cells: long.cells.flatMap((row, r) =>
        row.flatMap((value, c) =>
          value === null ? [] : [{ row: r, column: c, value }],
        ),
      ),
      tables: [],
      validations: [],
      merges: [],
      widths: {},
      heights: {},
      frozen: { rows: 0, columns: 0 },
    },
  ],
};

/** As the pane does it: read, propose, write beside the ledger. */
async function putBeside(host: Host): Promise<void> {
  const range = { sheet: SHEET, row: 0, column: 0, rows: 5001, columns: 10 };
  const cells = await host.readArea(SHEET, 0, 0, range.rows, range.columns);
  const proposal = proposeLedger(cells);
  const how = readingOf(proposal);
  await host.apply(
    atRightChange(
      { range, cells, rows: proposal.rows, how },
      {
        tables: await host.readTables(),
        names: await host.readNames(),
        sheets: await host.sheetNames(),
        reading: 1,
      },
    ),
  );
  expect(remembered(await host.readTables(), `'${SHEET}'!A1:J5001`)).toEqual(
    how,
  );
}

const corner = (host: Host): Promise<readonly (readonly unknown[])[]> =>
  host.readArea(SHEET, 5000, 9, 1, 4);

test("in the grid the last of 5,000 tickets is worked out, and all of it can be taken back", async () => {
  const host = await openHeadless(book, gridFunctions);
  try {
    await putBeside(host);
    const [row = []] = await corner(host);
    // Hand arithmetic: ticket 4,999 is 3,063 lb gross (3,030 + 34,993 mod 40) less 131 lb tare (128 + 24,995 mod 16).
    expect(row.slice(0, 2)).toEqual(["B2499", 2932]);
    expect(row[3]).toEqual(expect.any(Number));
    await host.undo();
    expect((await corner(host))[0]?.slice(1)).toEqual([null, null, null]);
    expect(await host.sheetNames()).toEqual([SHEET]);
  } finally {
    host.dispose();
  }
}, 240_000);

test("in Excel it goes in with few requests, each below what Excel takes at once", async () => {
  const wire = openWire(stateOf(book));
  const host = await openExcelHost();
  wire.wire.forget();
  await putBeside(host);
  expect(wire.wire.holes).toEqual([]);
  expect(wire.wire.requests.length).toBeLessThan(10);
  for (const { bytes } of wire.wire.sent) expect(bytes).toBeLessThan(4_000_000);
  expect(
    (await host.readCell({ sheet: SHEET, row: 5000, column: 10 })).formula,
  ).toBe("=SYRUP.TOTE_NET(D5001,E5001)");
  await host.undo();
  expect((await corner(host))[0]?.slice(1)).toEqual([null, null, null]);
}, 120_000);

test("in a file every ticket has its formulas", async () => {
  const host = new FileHost(book);
  await putBeside(host);
  const [sheet] = host.currentWorkbook().sheets;
  expect(
    sheet?.cells.filter(({ formula }) => formula !== undefined),
  ).toHaveLength(15_000);
  await host.undo();
  expect(host.currentWorkbook()).toEqual(book);
});
