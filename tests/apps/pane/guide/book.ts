import type { Stored, Workbook } from "../../../../src/sheets/workbook";
import { fakeHost, type FakeHost } from "../../../support/fake-host";
import type { Cells } from "../../../../src/apps/pane/guide/reference";

const plain = {
  validations: [],
  merges: [],
  widths: {},
  heights: {},
  frozen: { rows: 0, columns: 0 },
};

const cells = (rows: readonly (readonly Stored[])[]) =>
  rows.flatMap((row, r) =>
    row.flatMap((value, column) =>
      value === null ? [] : [{ row: r, column, value }],
    ),
  );

/** An invented book: price breaks in a table, and a sheet of figures with room below and to the right. */
export const book: Workbook = {
  title: "Invented",
  names: [{ name: "house_brix", refersTo: "Work!$B$1" }],
  sheets: [
    {
      ...plain,
      name: "Price breaks",
      cells: cells([
        ["From", "Price"],
        [504, 1.42],
        [2016, 1.21],
        [8064, 1.04],
      ]),
      tables: [
        {
          name: "Breaks",
          area: { row: 0, column: 0, rows: 4, columns: 2 },
          columns: [{ heading: "From" }, { heading: "Price" }],
        },
      ],
    },
    {
      ...plain,
      name: "Work",
      cells: cells([
        ["Brix", 66.9],
        ["Fill", "185 °F"],
        ["Line", "2"],
        ["Blank", null],
      ]),
      tables: [],
    },
  ],
};

export async function opened(
  start: Workbook = book,
): Promise<{ readonly host: FakeHost; readonly cells: Cells }> {
  const host = fakeHost(start);
  const [tables, names, sheets] = await Promise.all([
    host.readTables(),
    host.readNames(),
    host.sheetNames(),
  ]);
  return { host, cells: { host, tables, names, sheets, home: "Work" } };
}
