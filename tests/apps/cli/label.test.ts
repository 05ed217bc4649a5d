import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "label-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

interface Answer {
  readonly product: string;
  readonly caution: string;
  readonly facts: readonly {
    readonly what: string;
    readonly english: string | null;
    readonly french: string | null;
    readonly missing: string | null;
    readonly sources: readonly {
      readonly title: string;
      readonly kind: string;
    }[];
  }[];
}

const label = (...more: readonly string[]) => run(["label", demo, ...more]);

test("a product's label facts name their sources, what is from memory and what is missing", async () => {
  const page = path.join(folder, "facts.html");
  const { code, said, complained } = await label(
    ...["--product", "j128-am", "--surface", "300", "--packed", "2026-11-20"],
    ...["--product-of-canada", "yes", "--json", "--out", page],
  );
  expect([code, complained]).toEqual([0, []]);
  const { product, caution, facts } = JSON.parse(said.join("")) as Answer;
  const of = (what: string) => facts.find((fact) => fact.what === what);
  expect(product).toBe("J128-AM");
  expect(caution).toContain("your authority decides");
  expect(of("Net quantity")).toMatchObject({
    english: "3.78 L",
    french: "3,78\u00a0L",
  });
  expect(of("Colour class")?.french).toBe("Ambré, goût riche");
  expect(of("Origin")?.french).toBe("Produit du Canada");
  // Day 324 of 2026 by the farm's own pattern, YYDDD-L-HHMM, for the big line.
  expect(of("Lot code")?.english).toBe("26324-BL");
  expect(of("Least height of the numerals")?.sources).toEqual([
    expect.objectContaining({ kind: "memory" }),
  ]);
  expect(of("Standard container sizes")?.missing).toContain("not read");
  const written = readFileSync(page, "utf8");
  for (const { what, english, missing } of facts)
    for (const text of [what, english ?? `Missing: ${missing ?? ""}`])
      expect(written).toContain(text);
});

test.each([
  [
    ["--product", "NOPE"],
    /There is no product "NOPE" in Products, which has G250-AM/,
  ],
  [[], /Needs --product CODE/],
  [
    ["--product", "J128-AM", "--surface", "0"],
    /--surface: 0 is not above 0; type the principal display surface in cm²/,
  ],
  [["--product", "J128-AM", "--surface", "big"], /--surface/],
  [
    ["--product", "J128-AM", "--product-of-canada", "perhaps"],
    /"perhaps" is neither yes nor no/,
  ],
  [["--product", "J128-AM", "--packed", "2026-02-30"], /--packed/],
  [["--product", "J128-AM", "--out", "label.pdf"], /must end with \.html/],
])("%j is refused in one sentence and writes nothing", async (args, says) => {
  const { code, said, complained } = await label(...args);
  expect([code, said]).toEqual([2, []]);
  expect(complained).toHaveLength(1);
  expect(complained[0]).toMatch(says);
  expect(existsSync("label.pdf")).toBe(false);
});

test("a syrup of no colour class is given neither grade nor class", async () => {
  const { said } = await run([
    "label",
    demo,
    "--product",
    "B375-OAK",
    "--json",
  ]);
  const { facts } = JSON.parse(said.join("")) as Answer;
  expect(
    facts.find(({ what }) => what === "Grade and colour class")?.missing,
  ).toContain("colour class");
});
