import { strFromU8, unzipSync } from "fflate";
import { writeCopy } from "../../../src/hosts/file/leaks/write-copy";
import type { Contents } from "../../../src/book/contents";
import { demoTables } from "../../book/csv-folder";
import {
  demoCopy,
  type DemoCopy,
  pairsOf,
  valueAt,
} from "../../support/handed-over";

const said: Readonly<Record<string, string>> = {
  "Private label Oatloft 250 mL": "=2+3",
  Oatloft: "@SUM(A1:A3)",
  "8.45 fl oz (250 mL)": "+8.45*2",
  "Glass bottle 250 mL": "-2+3",
};

/** The demo's words changed into such that begin as a formula does. */
const contents = (): readonly Contents[] =>
  demoTables().map((table) => ({
    ...table,
    rows: table.rows.map((row) =>
      row.map((cell) =>
        typeof cell === "string" ? (said[cell] ?? cell) : cell,
      ),
    ),
  }));

let copy: DemoCopy;

beforeAll(async () => {
  copy = await demoCopy(
    "partner",
    "costing:P250-LOFT,quote:P250-LOFT",
    {},
    contents(),
  );
}, 240_000);

test.each([
  ["description", "=2+3"],
  ["owner", "@SUM(A1:A3)"],
  ["declared", "+8.45*2"],
  ["for", "@SUM(A1:A3)"],
])("the %s of a product stays the text %s in the copy", (name, text) => {
  const pair = pairsOf(copy).find((one) => one.name === name);
  expect(pair && valueAt(copy.workbook, pair.sheet, pair.inCopy)).toBe(text);
});

test("no formula of the file begins as such a text, and each stands there as a text", async () => {
  const parts = unzipSync(await writeCopy(copy));
  const shared = strFromU8(parts["xl/sharedStrings.xml"] ?? new Uint8Array());
  for (const text of Object.values(said)) expect(shared).toContain(text);
  const formulas = Object.entries(parts)
    .filter(([name]) => name.startsWith("xl/worksheets/"))
    .flatMap(([, bytes]) => [
      ...strFromU8(bytes).matchAll(/<f[^>]*>([^<]*)<\/f>/g),
    ])
    .map(([, formula = ""]) => formula.replace(/"[^"]*"|&quot;.*?&quot;/g, ""));
  expect(formulas.length).toBeGreaterThan(150);
  expect(
    formulas.filter((formula) => /^[=+@]|2\+3|8\.45\*2/.test(formula)),
  ).toEqual([]);
});
