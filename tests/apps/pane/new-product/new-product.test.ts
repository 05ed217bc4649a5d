import {
  newestDay,
  partChoices,
} from "../../../../src/apps/pane/new-product/choices";
import {
  emptyDraft,
  packedLike,
  productsIn,
  type Draft,
} from "../../../../src/apps/pane/new-product/draft";
import { plannedProduct } from "../../../../src/apps/pane/new-product/plan";
import { readDraft } from "../../../../src/apps/pane/new-product/read-draft";
import { readBook } from "../../../../src/book/read";
import { farmBook } from "../../../../src/sheets/farm-book";
import { demoTables } from "../../../book/csv-folder";
import { fakeHost } from "../../../support/fake-host";

const tables = demoTables();

const draft = (): Draft => {
  const packed = packedLike(emptyDraft(newestDay(tables)), tables, "P250-LOFT");
  return {
    ...packed,
    fields: {
      ...packed.fields,
      product: "P250-NEW",
      description: "Private label Newcomb 250 mL",
      labelOwner: "Newcomb",
    },
    prices: { "Private label": "9.40", "Farm counter": "" },
  };
};

const withField = (name: keyof Draft["fields"], value: string): Draft => ({
  ...draft(),
  fields: { ...draft().fields, [name]: value },
});

describe("packed like a product of the book", () => {
  test("every material lands in a place of its own, and all of them are kept", () => {
    const { rows } = readDraft(draft(), tables);
    expect(rows?.materials).toEqual(
      expect.arrayContaining([
        { Product: "P250-NEW", Part: "BTL-250", Quantity: 1, Per: "bottle" },
        { Product: "P250-NEW", Part: "LBL-PL-F", Quantity: 1, Per: "bottle" },
        { Product: "P250-NEW", Part: "LBL-PL-B", Quantity: 1, Per: "bottle" },
        { Product: "P250-NEW", Part: "LBL-CASE", Quantity: 2, Per: "case" },
        { Product: "P250-NEW", Part: "WRAP", Quantity: 1, Per: "pallet" },
      ]),
    );
    expect(rows?.materials).toHaveLength(10);
  });

  test.each([
    "G250-AM",
    "J128-AM",
    "N050-AM",
    "B250-OAK",
    "I250-VAN",
    "I250-SMK",
  ])("%s: nothing it is packed with is lost on the way", (product) => {
    const own = tables
      .find((t) => t.name === "ProductMaterials")
      ?.rows.filter(([code]) => code === product);
    const packed = packedLike(emptyDraft("2026-11-20"), tables, product);
    const filled = Object.values(packed.parts).filter((p) => p.part !== "");
    expect(filled.map((p) => p.part).sort()).toEqual(
      own?.map(([, part]) => part).sort(),
    );
  });

  test("the products in the same container come first to mind", () => {
    expect(productsIn(tables, "BTL-375")).toEqual([
      "G375-DK",
      "B375-OAK",
      "P375-NETT",
    ]);
  });

  test("only parts of the right kind are offered", () => {
    expect(partChoices(tables, ["closure"]).map((c) => c.value)).toEqual([
      "CAP-28",
      "CAP-CORK",
    ]);
  });
});

describe("reading the form", () => {
  test.each([
    ["product", "", /Needed/],
    ["product", "g250-am", /already a product/],
    ["fill", "abc", /not a number/],
    ["bottlesPerCase", "12.5", /whole number/],
    ["declared", "66,4", /comma/],
    ["fillTime", "0", /more than 0/],
  ] as const)(
    "%s typed as %j is questioned at its own field",
    (field, typed, says) => {
      const { rows, troubles } = readDraft(withField(field, typed), tables);
      expect(rows).toBeUndefined();
      expect(Object.keys(troubles)).toEqual([field]);
      expect(troubles[field]).toMatch(says);
    },
  );

  test("a volume may be typed with another unit and is written in the column's own", () => {
    const { rows } = readDraft(withField("declared", "12 fl oz"), tables);
    // 12 US fluid ounces are 354.88 mL: 128 to a gallon of 3785.411784 mL.
    expect(rows?.products[0]?.["Declared mL"]).toBeCloseTo(
      (12 / 128) * 3785.411784,
      6,
    );
  });

  test("a container and a case are needed; a channel left blank is no price", () => {
    const bare = draft();
    const { troubles } = readDraft(
      { ...bare, parts: { ...bare.parts, case: { part: "", quantity: "1" } } },
      tables,
    );
    expect(troubles).toEqual({ "parts.case": "Choose a case." });
    expect(readDraft(bare, tables).rows?.prices).toEqual([
      {
        Product: "P250-NEW",
        Channel: "Private label",
        Price: 9.4,
        "Valid from": 46346,
      },
    ]);
  });

  test("the same label twice is one row of two", () => {
    const bare = draft();
    const { rows } = readDraft(
      { ...bare, parts: { ...bare.parts, back: bare.parts.front } },
      tables,
    );
    expect(rows?.materials.filter((r) => r["Part"] === "LBL-PL-F")).toEqual([
      { Product: "P250-NEW", Part: "LBL-PL-F", Quantity: 2, Per: "bottle" },
    ]);
  });
});

describe("writing a new product", () => {
  const rows = readDraft(draft(), tables).rows;
  if (!rows) throw new Error("the draft of these tests must be complete");
  const { change, writes, sheet } = plannedProduct(rows, tables, ["Products"]);

  test("the list says each table, its rows and the sheet before anything is written", () => {
    expect(writes.map(({ what }) => what)).toEqual([
      "1 row to “Products” (row 21)",
      "10 rows to “Product materials” (rows 179 to 188)",
      "1 row to “Prices” (row 69)",
      expect.stringMatching(/^One new sheet, “Cost P250-NEW”/),
    ]);
    expect(writes[1]?.rows).toContain("LBL-CASE: 2 per case");
  });

  test("it is one change, and the book then reads without a word about the new rows", async () => {
    const host = fakeHost(farmBook(tables));
    await host.apply(change);
    const { book, findings } = readBook(await host.readTables());
    expect(book.products.map((p) => p.product)).toContain("P250-NEW");
    expect(
      findings.filter((f) => JSON.stringify(f).includes("P250-NEW")),
    ).toEqual([]);
    expect(await host.sheetNames()).toContain(sheet);
    await host.undo();
    expect(
      (await host.readTables()).find((t) => t.name === "Products")?.rows,
    ).toHaveLength(19);
  });
});
