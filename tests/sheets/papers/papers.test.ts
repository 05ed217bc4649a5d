import { Resvg, initWasm } from "@resvg/resvg-wasm";
import {
  BarcodeFormat,
  BinaryBitmap,
  Code128Reader,
  DecodeHintType,
  HybridBinarizer,
  RGBLuminanceSource,
} from "@zxing/library";
import { readFileSync } from "node:fs";
import { toteBars } from "../../../src/apps/tote-bars";
import { paperAsked } from "../../../src/apps/pane/papers/asked";
import type { Book } from "../../../src/book/book";
import { readBook } from "../../../src/book/read";
import { as, type Kilograms } from "../../../src/measures/quantity";
import { billOfLading } from "../../../src/sheets/papers/bill-of-lading";
import { paperFacts } from "../../../src/sheets/papers/facts";
import { toteCodes } from "../../../src/sheets/papers/tote-codes";
import { toteLabel } from "../../../src/sheets/papers/tote-label";
import { weightTicket } from "../../../src/sheets/papers/weight-ticket";
import { withCheckDigit } from "../../../src/trade/codes/check-digit";
import {
  elementString,
  FUNCTION_1,
  lotElement,
  poundsElement,
  soldItem,
} from "../../../src/trade/codes/gs1-elements";
import { demoTables } from "../../book/csv-folder";

const { book } = readBook(demoTables());
const item = withCheckDigit("9040000100001");
const choices = { prefix: "0400001", item };

/** A page as a person reads it: no tags, no styles. */
const words = (page: string): string =>
  page
    .replace(/<style>.*?<\/style>/s, "")
    .replace(/<[^>]+>/g, " ")
    .replace(/&#(\d+);/g, (_, code: string) =>
      String.fromCharCode(Number(code)),
    )
    .replace(/\s+/g, " ");

const changed = (
  ticket: string,
  change: Partial<Book["toteShipments"][number]>,
): Book => ({
  ...book,
  toteShipments: book.toteShipments.map((row) =>
    row.ticket === ticket ? { ...row, ...change } : row,
  ),
});

test("the weight ticket of T-044 says its weights, Brix, gallons and lots, and no price", () => {
  // Source: tote_shipments.csv, row T-044; kilograms: 2,912 × 0.45359237 = 1,320.86.
  const says = words(weightTicket(paperFacts(book, "T-044")).page);
  for (const one of [
    "3,047 lb",
    "135 lb",
    "2,912 lb",
    "1,320.9 kg",
    "65.9 °Bx",
    "264.13 gal",
    "26-04 1,913 lb, 26-05 999 lb",
    "Larkspindle Foods (Canada)",
    "2026-11-19",
  ])
    expect(says).toContain(one);
  expect(says).not.toMatch(/11,822|8\.95|CAD|USD/);
});

test("a bill of lading holds every tote of its load and their sums", () => {
  // Source: tote_shipments.csv, BOL-025: T-042 and T-043, 3,056 + 3,009, 133 + 133, 2,923 + 2,876.
  const says = words(billOfLading(paperFacts(book, "T-043")).page);
  for (const one of [
    "T-042",
    "T-043",
    "6,065 lb",
    "266 lb",
    "5,799 lb",
    "2 totes",
  ])
    expect(says).toContain(one);
  expect(says).not.toContain("T-044");
});

describe("nothing wrong leaves on paper", () => {
  test.each([
    [
      "an unknown tote",
      book,
      "T-999",
      /no tote T-999 has left.*newest is T-044/,
    ],
    [
      "gross and tare swapped",
      changed("T-044", { gross: as<Kilograms>(60), tare: as<Kilograms>(1400) }),
      "T-044",
      /leaves no net/,
    ],
    [
      "a net that disagrees",
      changed("T-044", { net: as<Kilograms>(1300) }),
      "T-044",
      /gross less tare/,
    ],
    [
      "a wrong tote of the same load",
      changed("T-042", { net: as<Kilograms>(1300) }),
      "T-043",
      /gross less tare of T-042/,
    ],
  ])("%s", (_, of, ticket, says) => {
    expect(() => paperFacts(of, ticket)).toThrow(says);
  });

  test("a load for two buyers, and a ticket without a bill", () => {
    const two = changed("T-042", { customer: "Nettlecombe Sauces" });
    expect(() => billOfLading(paperFacts(two, "T-043"))).toThrow(/one buyer/);
    const { billOfLading: _, ...without } = book.toteShipments.at(-1)!;
    const none = { ...book, toteShipments: [without] } as unknown as Book;
    expect(() => billOfLading(paperFacts(none, "T-044"))).toThrow(/has none/);
  });

  test("in the pane the reason is a sentence", () => {
    expect(
      paperAsked(
        book,
        { ticket: "T-044", kind: "tote label", prefix: "04", item: "" },
        toteBars,
      ),
    ).toEqual({
      trouble: expect.stringMatching(/^Prefix: .* 4 to 12.*\.$/) as string,
    });
  });
});

test("names typed by anybody stay words on the page", () => {
  const name = `</title><script>alert("1")</script>&'`;
  const page = weightTicket(
    paperFacts(changed("T-044", { customer: name }), "T-044"),
  ).page;
  expect(page).not.toMatch(/<script|alert\("1"\)/);
  expect(words(page)).toContain(`<script>alert("1")</script>&'`);
});

describe("the bar codes of a tote label", () => {
  beforeAll(() =>
    initWasm(readFileSync(require.resolve("@resvg/resvg-wasm/index_bg.wasm"))),
  );

  /** Draws the bars to dots and has an independent reader (ZXing) read them. */
  function read(svg: string): string {
    const { pixels, width, height } = new Resvg(
      svg.replace(/ width="[^"]*"| preserveAspectRatio="[^"]*"/g, ""),
      { fitTo: { mode: "zoom", value: 3 }, background: "#fff" },
    ).render();
    const gray = new Uint8ClampedArray(width * height);
    for (let i = 0; i < gray.length; i++) gray[i] = pixels[4 * i] ?? 0;
    const image = new BinaryBitmap(
      new HybridBinarizer(new RGBLuminanceSource(gray, width, height)),
    );
    return new Code128Reader()
      .decode(
        image,
        new Map<DecodeHintType, unknown>([
          [DecodeHintType.ASSUME_GS1, true],
          [DecodeHintType.POSSIBLE_FORMATS, [BarcodeFormat.CODE_128]],
        ]),
      )
      .getText();
  }

  test.each(["T-001", "T-037", "T-044"])(
    "%s reads back what it says",
    (ticket) => {
      const { codes } = toteCodes(paperFacts(book, ticket), choices);
      expect(codes).toHaveLength(2);
      for (const code of codes)
        // The reader marks the kind of code before the data.
        expect(read(toteBars(code)).replace(/^\]C1/, "")).toBe(code.data);
    },
  );

  test("what parts an open length from the next is between the bars", () => {
    const code = elementString([
      soldItem(item),
      lotElement("26-04"),
      poundsElement("net", paperFacts(book, "T-044").ticket.net),
    ]);
    expect(code.data).toContain(`26-04${FUNCTION_1}3200`);
    expect(read(toteBars(code)).replace(/^\]C1/, "")).toBe(code.data);
  });

  test("T-044 is a lot of its own, because two lots are in it; T-001 has its lot's number", () => {
    const of = (ticket: string) =>
      toteCodes(paperFacts(book, ticket), choices).codes.map(
        ({ text }) => text,
      );
    const sscc = withCheckDigit("00400001000000044");
    expect(of("T-044")).toEqual([
      `(00)${sscc}(3400)003047`,
      `(01)${item}(3200)002912(10)T-044`,
    ]);
    expect(of("T-001")[1]).toBe(`(01)${item}(3200)002912(10)25-07`);
  });

  test("a number the farm does not have leaves its bars off and says so", () => {
    const facts = paperFacts(book, "T-044");
    const codes = toteCodes(facts);
    expect(codes.codes).toEqual([]);
    const says = words(toteLabel(facts, codes, toteBars).page);
    expect(says).toContain("Bar code left off: needs a company prefix");
    expect(says).toContain("Bar code left off: needs an item number");
  });

  test("an item that is not sold by measured weight is refused", () => {
    expect(() =>
      toteCodes(paperFacts(book, "T-044"), { item: "10614141000033" }),
    ).toThrow(/begins with 9/);
  });
});
