import { bookTablesFromCsv } from "../../src/book/from-csv";
import { findingText } from "../../src/book/finding";
import { readBook } from "../../src/book/read";
import { bulkPrice } from "../../src/book/bulk-price";
import { serialOf } from "../../src/measures/read-date";
import { CannotAnswer } from "../../src/measures/cannot-answer";
import { KG_PER_LB } from "../../src/measures/units";
import { csvFile, demoFolder, replacing } from "./csv-folder";

const bookOf = (changes: Parameters<typeof demoFolder>[0]) =>
  readBook(bookTablesFromCsv(demoFolder(changes)).tables).book;
const withoutPlaces = (book: unknown): unknown =>
  JSON.parse(
    JSON.stringify(book, (key, value: unknown) =>
      key === "place" ? undefined : value,
    ),
  );

const swapColumns =
  (from: string, to: string) =>
  (text: string): string => {
    const { headings, rows } = csvFile(text);
    const [a, b] = [headings.indexOf(from), headings.indexOf(to)];
    const line = (cells: readonly string[]): string =>
      cells
        .map((_, i) => cells[i === a ? b : i === b ? a : i] ?? "")
        .map((cell) => `"${cell.replace(/"/g, '""')}"`)
        .join(",");
    return [headings, ...rows.map((row) => row.cells)].map(line).join("\n");
  };

describe("a CSV folder that cannot be used is refused in one sentence", () => {
  const refusals: readonly (readonly [
    why: string,
    file: string,
    from: string,
    to: string,
    sentence: string | RegExp,
  ])[] = [
    [
      "text where a weight belongs",
      "bulk_lots.csv",
      "10251,66.1",
      "heavy,66.1",
      'bulk_lots.csv line 2, net_lb: "heavy" is not a number in lb',
    ],
    [
      "a decimal comma",
      "bulk_lots.csv",
      "10251,66.1",
      '10251,"66,1"',
      'bulk_lots.csv line 2, brix_at_68F: "66,1" looks like 66.1 written with a comma; type 66.1',
    ],
    [
      "a Brix reading with its point slipped",
      "bulk_lots.csv",
      "10251,66.1",
      "10251,661",
      "bulk_lots.csv line 2, brix_at_68F: 661 °Bx is above 75 °Bx",
    ],
    [
      "a day that does not exist",
      "lot_use.csv",
      "2025-05-20",
      "2025-13-01",
      "lot_use.csv line 3, date: there is no day 2025-13-01",
    ],
    [
      "a day that can be read two ways",
      "lot_use.csv",
      "2025-05-20",
      "03/04/2026",
      /lot_use\.csv line 3, date: "03\/04\/2026" could be .* or /,
    ],
    [
      "a weight that is missing",
      "bulk_lots.csv",
      "10251,66.1",
      ",66.1",
      /^bulk_lots\.csv line 2, net_lb: blank, but it is needed/,
    ],
    [
      "a negative weight",
      "tote_shipments.csv",
      ",3044,132,",
      ",-3044,132,",
      "tote_shipments.csv line 2, gross_lb: -3044 lb must be more than 0 lb",
    ],
    [
      "a grade nobody sells",
      "bulk_lots.csv",
      "G01,Amber",
      "G01,Ambre",
      /^bulk_lots\.csv line 2, grade: "Ambre" is not one of/,
    ],
    [
      "spoilage of everything",
      "packaging_parts.csv",
      "12,504,14,1.5",
      "12,504,14,100",
      /^packaging_parts\.csv line 2, spoilage_pct: 100 % must be less than 100 %/,
    ],
    [
      "a column that is missing",
      "skus.csv",
      "declared_ml",
      "contents",
      /^skus\.csv has no column declared_ml/,
    ],
  ];
  test.each(refusals)("%s", (_why, file, from, to, sentence) => {
    const folder = demoFolder({ [file]: replacing(from, to) });
    expect(() => bookTablesFromCsv(folder)).toThrow(CannotAnswer);
    expect(() => bookTablesFromCsv(folder)).toThrow(sentence);
  });

  test("a file that is missing", () => {
    expect(() =>
      bookTablesFromCsv(demoFolder({ "wages.csv": undefined })),
    ).toThrow("the folder has no wages.csv");
  });

  test("no bulk price anywhere", () => {
    const none = demoFolder({
      "farm_settings.csv": (text) => text.replace(/"Replacement.*\n/g, ""),
    });
    expect(() => bookTablesFromCsv(none)).toThrow(
      "the folder has neither bulk_prices.csv nor a setting",
    );
  });
});

describe("a CSV folder kept in another way reads the same", () => {
  const plain = withoutPlaces(bookOf({}));

  test("columns in another order", () => {
    const swapped = bookOf({
      "bulk_lots.csv": swapColumns("lot", "net_lb"),
      "skus.csv": swapColumns("sku", "usual_line"),
      "farm_settings.csv": swapColumns("setting", "value"),
    });
    expect(withoutPlaces(swapped)).toEqual(plain);
  });

  test("columns headed as on the sheet, in any case", () => {
    const renamed = bookOf({
      "bulk_lots.csv": replacing("net_lb,brix_at_68F", "NET LB,Brix"),
    });
    expect(withoutPlaces(renamed)).toEqual(plain);
  });

  test("a column of the farm's own is named and left", () => {
    const folder = demoFolder({
      "wages.csv": (text) =>
        text
          .trimEnd()
          .split("\n")
          .map((line, i) => `${line},${i === 0 ? "since" : "2024"}`)
          .join("\n"),
    });
    const { tables, findings } = bookTablesFromCsv(folder);
    expect(withoutPlaces(readBook(tables).book)).toEqual(plain);
    expect(findings.map(findingText)).toEqual([
      expect.stringContaining("wages.csv: a column of your own: since"),
    ]);
  });

  test("files for totes, barrels and counts that are not there leave empty tables", () => {
    const book = bookOf({
      "oak_barrels.csv": undefined,
      "stock_count.csv": undefined,
    });
    expect(book.oakBarrels).toEqual([]);
    expect(book.lots).toHaveLength(26);
  });

  test("weights with thousands and units are converted, and that is said", () => {
    const folder = demoFolder({
      "tote_shipments.csv": replacing(
        ",3044,132,2912,",
        ',"3,044 lb",59.874193 kg,"2,912",',
      ),
    });
    const { tables, findings } = bookTablesFromCsv(folder);
    const tote = readBook(tables).book.toteShipments[0];
    expect((tote?.gross ?? 0) / KG_PER_LB).toBeCloseTo(3044, 9);
    expect((tote?.tare ?? 0) / KG_PER_LB).toBeCloseTo(132, 5);
    const said = findings.map(findingText);
    expect(said[0]).toContain(
      'tote_shipments.csv line 2, gross_lb: "3,044 lb". It was understood as 3044 lb',
    );
    expect(said[1]).toContain("understood as 132.0");
    expect(said).toHaveLength(3);
  });

  test("blank lines are skipped", () => {
    const book = bookOf({
      "wages.csv": replacing("\nOffice", "\n,,,\nOffice"),
    });
    expect(withoutPlaces(book)).toEqual(plain);
    expect(book.wages.at(-1)?.place).toBe("wages.csv line 7");
  });
});

describe("what the files leave out is inferred as the farm would", () => {
  const book = bookOf({});
  const kinds = Object.fromEntries(
    book.parts.map((part) => [part.part, `${part.kind}, ${part.bought}`]),
  );

  test("the sort of each part, from its description, and how it is bought", () => {
    expect(kinds).toMatchObject({
      "BTL-250": "container, for each run",
      "JUG-08": "container, for each run",
      "CAP-28": "closure, from stock",
      "CAP-CORK": "closure, from stock",
      "BAND-28": "band, from stock",
      "LBL-OWN-F": "label, from stock",
      "LBL-NIP": "label, from stock",
      "LBL-PL-F": "label, for each run",
      "LBL-JUG": "label, from stock",
      "CTN-12G": "case, from stock",
      "CTN-JUG": "case, from stock",
      "LBL-CASE": "case label, from stock",
      "INK-CODE": "ink, for each run",
      "PAL-4840": "pallet, from stock",
      WRAP: "pallet, for each run",
      "TOTE-REC": "tote, from stock",
      "SPICE-VAN": "ingredient, from stock",
      "WOOD-SMK": "ingredient, from stock",
    });
  });

  test("what the file says of a part wins", () => {
    const said = bookOf({
      "packaging_parts.csv": (text) =>
        text
          .trimEnd()
          .split("\n")
          .map((line, i) =>
            i === 0
              ? `${line},kind,bought`
              : line.startsWith("BTL-250")
                ? `${line},other,From Stock`
                : `${line},,`,
          )
          .join("\n"),
    }).parts;
    expect(said[0]).toMatchObject({ kind: "other", bought: "from stock" });
    expect(said[1]).toMatchObject({
      kind: "container",
      bought: "for each run",
    });
  });

  test("bulk prices come from the settings, valid from the count date", () => {
    expect(book.bulkPrices).toMatchObject([
      {
        syrupKind: "Amber",
        pricePerPound: 2.6,
        validFrom: serialOf(2026, 11, 20),
      },
      {
        syrupKind: "Dark",
        pricePerPound: 2.52,
        validFrom: serialOf(2026, 11, 20),
      },
    ]);
    expect(book.settings.some(({ setting }) => /price/i.test(setting))).toBe(
      false,
    );
  });

  test("without a count date they hold from the last day in the book", () => {
    const prices = bookOf({
      "farm_settings.csv": (text) => text.replace(/Count date.*/, ""),
    }).bulkPrices;
    // tote_shipments.csv and lot_use.csv end on 2026-11-19.
    expect(prices[0]?.validFrom).toBe(serialOf(2026, 11, 19));
  });

  test("a file of bulk prices wins over the settings, which is said", () => {
    const folder = demoFolder({
      "bulk_prices.csv": () =>
        "syrup_kind,valid_from,price_per_lb\nAmber,2026-01-01,2.40\nAmber,2026-11-01,2.65\nDark,2026-11-01,2.55\n",
    });
    const { tables, findings } = bookTablesFromCsv(folder);
    const { book: dated } = readBook(tables);
    expect(bulkPrice(dated, "amber")?.pricePerPound).toBe(2.65);
    expect(bulkPrice(dated, "Amber", serialOf(2026, 6, 1))?.pricePerPound).toBe(
      2.4,
    );
    expect(bulkPrice(dated, "Oak")).toBeUndefined();
    expect(findings.map(({ where }) => where)).toEqual([
      "farm_settings.csv line 5",
    ]);
  });

  test("percents become shares and barcodes stay text", () => {
    expect(book.channels[0]).toMatchObject({
      goalMargin: 0.58,
      feeShare: 0.027,
      promotionAndReturns: 0.005,
    });
    expect(book.products[0]?.bottleBarcode).toBe("400001001004");
    expect(book.products[0]?.organic).toBe(false);
  });
});
