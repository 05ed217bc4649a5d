import { readFileSync } from "node:fs";
import { join } from "node:path";
import { findingText } from "../../src/book/finding";
import { readBook } from "../../src/book/read";
import { csvFile } from "./csv-folder";
import { changing, worksheetTables } from "./worksheet-tables";

const messy = csvFile(
  readFileSync(
    join(
      __dirname,
      "../../sample-workbooks/fernkettle-hollow/messy_paste_test.csv",
    ),
    "utf8",
  ),
);

/** A pasted cell becomes a number where a worksheet would make it one. */
const pasted = (text: string): number | string | null =>
  text === "" ? null : /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text;

const { book, findings } = readBook(
  worksheetTables(
    changing("ToteShipments", (table) => ({
      ...table,
      rows: [
        ...table.rows,
        ...messy.rows.map(({ cells }) => {
          const [, ticket, shipped, gross, tare, brix] = cells.map(pasted);
          const net =
            typeof gross === "number" && typeof tare === "number"
              ? gross - tare
              : 2912;
          const row: Readonly<Record<string, unknown>> = {
            "Tote ticket": ticket,
            Shipped: shipped,
            Contract: "C-2601",
            "Gross lb": gross,
            "Tare lb": tare,
            "Net lb": net,
            "Brix at 68 °F": brix,
          };
          return table.headings.map(
            (heading) => (row[heading] ?? null) as number | string | null,
          );
        }),
      ],
    })),
  ),
);

const firstRow = 46;
const about = (row: number): string =>
  findings
    .map(findingText)
    .filter(
      (text) =>
        text.startsWith(`Tote shipments row ${firstRow + row - 1},`) ||
        text.includes(`T-${900 + row - (row > 5 ? 1 : 0)}`),
    )
    .join("\n");
const posted = (ticket: string): number =>
  book.toteShipments.filter((tote) => tote.ticket === ticket).length;

// messy_paste_test.csv says beside each row what is wrong with it. A price is no column of this table, so row 11
// (a price per gallon) is left to the contract; its weights are good.
test.each([
  [1, "T-901", 0, "03/04/2026"],
  [2, "T-902", 0, "must be more than"],
  [3, "T-903", 0, "Tare lb: blank"],
  [4, "T-904", 0, "perhaps 66.6 with its decimal point slipped"],
  [5, "T-905", 1, "looks like 66.4 written with a comma"],
  [6, "T-905", 1, '"T-905" for the second time'],
  [7, "T-906", 0, "There is no day 2027-13-01"],
  [8, "T-907", 1, "is text; it was understood as 3051"],
  [9, "T-908", 1, "more than a 275 gal tote holds"],
  [10, "T-909", 1, "lighter than the contract allows"],
  [12, "T-911", 0, "Gross lb: -3046"],
])(
  "pasted row %i, ticket %s, does not go in silently",
  (row, ticket, times, says) => {
    expect(posted(ticket)).toBe(times);
    expect(about(row)).toContain(says);
  },
);

test("a ticket used twice by two good rows counts once", () => {
  const twice = readBook(
    worksheetTables(
      changing("ToteShipments", (table) => ({
        ...table,
        rows: table.rows.with(1, (table.rows[0] ?? []).with(1, 45_833)),
      })),
    ),
  );
  expect(
    twice.book.toteShipments.filter(({ ticket }) => ticket === "T-001"),
  ).toHaveLength(1);
  expect(twice.findings.map(findingText)[0]).toContain(
    '"T-001" for the second time',
  );
});
