import { findingText } from "../../src/book/finding";
import { readBook } from "../../src/book/read";
import { serialOf } from "../../src/measures/read-date";
import { tableList } from "../../src/book/book";
import { demoTables } from "./csv-folder";
import {
  type Change,
  changing,
  newFindings,
  typing,
  without,
  withoutPlaces,
  worksheetTables,
} from "./worksheet-tables";

const said = (...changes: readonly Change[]): readonly string[] =>
  newFindings(...changes).map(findingText);

test("a worksheet gives the same book as the files it was made of", () => {
  expect(withoutPlaces(readBook(worksheetTables()).book)).toEqual(
    withoutPlaces(readBook(demoTables()).book),
  );
});

test("findings of a worksheet name the row as it is numbered there", () => {
  const { findings } = readBook(worksheetTables());
  expect(findings.map(({ where }) => where)).toEqual([
    "Overheads row 11, Share to bulk",
    "Lots row 19, Brix at 68 °F",
    "Stock count row 3, Counted lb",
    "Lot use row 11, From",
    "Runs row 33, Brix",
    "Fill checks row 38, Full g",
    "Tote shipments row 18, Brix at 68 °F",
    "Invoices row 11, Due date",
    "Invoices row 15, Amount",
  ]);
});

test("tables are found whatever the case of their names, columns in any order, with strangers between", () => {
  const plain = readBook(worksheetTables()).book;
  const moved = worksheetTables((tables) =>
    tables.map((table) => ({
      ...table,
      name: table.name.toUpperCase(),
      sheet: `My ${table.sheet}`,
      row: 3,
      column: 2,
      headings: ["Mine", ...table.headings].toReversed(),
      rows: table.rows.map((cells) => ["anything", ...cells].toReversed()),
    })),
  );
  const { book } = readBook(moved);
  expect(withoutPlaces(book)).toEqual(withoutPlaces(plain));
  expect(book.lots[0]?.place).toBe("My Lots row 5");
});

test("rows wholly blank are skipped, even where formulas show something", () => {
  const { book, findings } = readBook(
    worksheetTables(
      changing("Lots", (table) => ({
        ...table,
        rows: [
          table.headings.map((heading) => (heading === "Used lb" ? 0 : null)),
          ...table.rows,
        ],
      })),
    ),
  );
  expect(book.lots).toHaveLength(26);
  expect(book.lots[0]?.place).toBe("Lots row 3");
  expect(findings).toHaveLength(9);
});

describe("a cell that cannot be used is a finding, never a guess", () => {
  test("text where a number is needed leaves the whole row out", () => {
    const { book } = readBook(
      worksheetTables(typing("Wages", "Hourly", 6, "ask Joan")),
    );
    expect(book.wages.map(({ role }) => role)).not.toContain("Office");
    expect(said(typing("Wages", "Hourly", 6, "ask Joan"))).toEqual([
      'Wages row 6, Hourly: "ask Joan". "ask Joan" is not a number; the whole row is left out until it is put right. Type hourly wage (per h), for example 18.50.',
    ]);
  });

  test("a blank that is needed is never zero", () => {
    const change = typing("Products", "Fill mL at 68 °F", 2, null);
    const { book } = readBook(worksheetTables(change));
    expect(book.products[0]?.product).toBe("G250-DK");
    expect(said(change)[0]).toBe(
      "Products row 2, Fill mL at 68 °F: blank. Volume we mean to fill, as it is at 68 °F, is missing; the whole row is left out until it is put right. Type fill in mL, for example 252.",
    );
  });

  test("a cell that may be blank is taken as not entered, and the row is kept", () => {
    const change = typing("Lots", "Inbound freight", 2, "see bill");
    const { book } = readBook(worksheetTables(change));
    expect(book.lots[0]?.lot).toBe("25-01");
    expect(book.lots[0]?.inboundFreight).toBeUndefined();
    expect(said(change)).toEqual([
      'Lots row 2, Inbound freight: "see bill". "see bill" is not a number; the cell counts as not entered until it is put right. Type inbound freight, for example 330.',
      "Lots row 2, Inbound freight: blank for 25-01. The landed price of the lot is before freight. Type the freight, or 0 if there was none.",
    ]);
  });

  test("a Brix of 666 is named with the reading it may have had", () => {
    expect(said(typing("ToteShipments", "Brix at 68 °F", 2, 666))[0]).toContain(
      "666 °Bx is above 75 °Bx, perhaps 66.6 with its decimal point slipped",
    );
  });

  test("an error in a cell is named", () => {
    expect(
      said(typing("Lots", "Price per lb", 2, { error: "#REF!" }))[0],
    ).toContain("Lots row 2, Price per lb: #REF!. The cell holds the error");
  });

  test("every bad cell of a row is named at once", () => {
    expect(
      said(
        typing("Channels", "Goal margin", 2, 58),
        typing("Channels", "Fee share", 2, "some"),
      ).filter((text) => text.startsWith("Channels row 2")),
    ).toEqual([
      expect.stringContaining("58 reads as 5800 %; type 58 % or 0.58"),
      expect.stringContaining('"some" is not a number'),
    ]);
  });

  test("a setting is read by what its name asks for, in the unit beside it", () => {
    const change = typing("Settings", "Value", 10, "a lot");
    const [text] = said(change);
    expect(text).toContain(
      'Settings row 10, Value: "a lot". "a lot" is not a number in gal; the cell counts as not entered until it is put right. Type kettle working fill in gal, for example 120.',
    );
  });
});

describe("a cell that can be read but should be looked at is questioned once a column", () => {
  test("weights typed as text", () => {
    expect(
      said(
        typing("ToteShipments", "Gross lb", 2, "3,044 lb"),
        typing("ToteShipments", "Gross lb", 3, "3,046 lb"),
      ),
    ).toEqual([
      'Tote shipments row 2, Gross lb: "3,044 lb" (and 1 more such in this column). This is text; it was understood as 3044 lb, but the worksheet\'s own sums pass over it. Type 3044 and nothing else.',
    ]);
  });

  test("a price per gallon in the column per pound", () => {
    expect(said(typing("Lots", "Price per lb", 2, 34.1))).toEqual([
      "Lots row 2, Price per lb: 34.1. It is used as it stands, but price is usually between 0.5 per lb and 10 per lb. Check the figure and its unit.",
    ]);
  });

  test("a lot whose organic status is blank counts as no, and that is said", () => {
    const change = typing("Lots", "Organic", 2, null);
    expect(readBook(worksheetTables(change)).book.lots[0]?.organic).toBe(false);
    expect(said(change)).toEqual([
      "Lots row 2, Organic: blank. A blank counts as no. Type organic: yes or no.",
    ]);
  });

  test("a lot whose name the worksheet has made a day of", () => {
    expect(said(typing("LotUse", "From", 2, serialOf(2026, 3, 1)))[0]).toBe(
      "Lot use row 2, From: 46082. This may be the day 2026-03-01, made by the worksheet of a name such as 26-03. Format the cell as text and type the name again.",
    );
  });

  test("a barcode kept as a number", () => {
    expect(
      said(typing("Products", "Bottle barcode", 2, 400001001004))[0],
    ).toContain("zeros at its front may have been lost");
  });
});

describe("names must be single and known", () => {
  test("the same lot twice: the earlier row counts", () => {
    const change = typing("Lots", "Lot", 3, "25-01 ");
    expect(readBook(worksheetTables(change)).book.lots).toHaveLength(25);
    expect(said(change)[0]).toBe(
      'Lots row 3, Lot: "25-01" for the second time. Lots row 2 has it already; this row is left out and the earlier one counts. Keep the right one of the two rows, or correct its name.',
    );
  });

  test("the same break of a part twice", () => {
    expect(said(typing("PartPrices", "From quantity", 3, 504))[0]).toContain(
      'Part prices row 3, Part: "BTL-250, 504" for the second time',
    );
  });

  test("a part that is in no list", () => {
    expect(said(typing("ProductMaterials", "Part", 2, "BTL-251"))).toEqual([
      'Product materials row 2, Part: "BTL-251". There is no such part in Parts. Correct the name, or add a row for it to Parts.',
    ]);
  });

  test("one unknown name is said once, whatever the number of rows", () => {
    const renamed = changing("Lines", (table) => ({
      ...table,
      rows: table.rows.map((cells) =>
        cells[0] === "Big line" ? cells.with(0, "Large line") : cells,
      ),
    }));
    const about = said(renamed).filter((text) => text.includes('"Big line"'));
    expect(about).toEqual([
      expect.stringContaining(
        'Products row 2, Usual line: "Big line" (and in 9 more rows)',
      ),
      expect.stringContaining(
        'Crew row 7, Line: "Big line" (and in 3 more rows)',
      ),
      expect.stringContaining(
        'Runs row 2, Line: "Big line" (and in 12 more rows)',
      ),
    ]);
  });

  test("a name in another case is the same name and takes its table's spelling", () => {
    const change = typing("Runs", "Line", 2, " big LINE");
    expect(said(change)).toEqual([]);
    expect(readBook(worksheetTables(change)).book.runs[0]?.line).toBe(
      "Big line",
    );
  });
});

describe("what is missing is named", () => {
  test("a table a cost needs, and one it does not", () => {
    expect(said(without("Wages"))).toEqual([
      expect.stringContaining(
        "table Wages: no such table. A cost cannot be worked out without it",
      ),
    ]);
    expect(said(without("Payments"))[0]).toContain(
      "table Payments: no such table. Nothing about it is looked at",
    );
  });

  test("a column a table needs", () => {
    const renamed = changing("Wages", (table) => ({
      ...table,
      headings: table.headings.map((h) => (h === "Hourly" ? "Rate" : h)),
    }));
    expect(said(renamed)[0]).toBe(
      'Wages: no column "Hourly". Nothing in the table Wages can be used without it: wage of one hour, before add-ons. Add a column headed Hourly, or give the right column that heading.',
    );
  });

  test("a column it can do without", () => {
    const narrow = changing("Parts", (table) => {
      const keep = table.headings.map((h) => h !== "Kind" && h !== "Bought");
      return {
        ...table,
        headings: table.headings.filter((_, i) => keep[i]),
        rows: table.rows.map((cells) => cells.filter((_, i) => keep[i])),
      };
    });
    expect(said(narrow)).toEqual([]);
    expect(readBook(worksheetTables(narrow)).book.parts[0]?.kind).toBe(
      "container",
    );
  });

  test("without a table of bulk prices the settings' replacement prices are used", () => {
    const tables = worksheetTables(
      without("BulkPrices"),
      typing("Settings", "Setting", 4, "Replacement price, Amber"),
      typing("Settings", "Value", 4, 2.75),
    );
    expect(readBook(tables).book.bulkPrices).toMatchObject([
      { syrupKind: "Amber", pricePerPound: 2.75, place: "Settings row 4" },
    ]);
  });

  test("an empty workbook gives an empty book and one finding a table", () => {
    const { book, findings } = readBook([]);
    expect(Object.values(book).every((rows) => rows.length === 0)).toBe(true);
    expect(findings).toHaveLength(
      tableList.filter(
        ([, table]) => !table.comesFromRoll && !table.onlyWhereKept,
      ).length,
    );
  });
});
