import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "language-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function textsOf(file: string): Promise<ReadonlySet<string>> {
  const { workbook } = await readXlsx(readFileSync(file), path.basename(file));
  return new Set(
    workbook.sheets.flatMap(({ name, cells, print }) => [
      name,
      print?.language ?? "",
      ...cells.flatMap(({ value }) =>
        typeof value === "string" ? [value] : [],
      ),
    ]),
  );
}

test("a statement is handed over in French; the list of what it holds stays in English", async () => {
  const out = path.join(folder, "statement.xlsx");
  const { code, said, complained } = await run([
    "handover",
    demo,
    "--for",
    "customer",
    "--sheets",
    "totes:Oatloft Bakery",
    "--language",
    "fr",
    "--out",
    out,
  ]);
  expect([code, complained]).toEqual([0, []]);
  expect(said.join("\n")).toMatch(/Kept[\s\S]*Removed[\s\S]*none is in it/);
  const texts = await textsOf(out);
  for (const text of [
    "État de compte",
    "fr",
    "De Fernkettle Hollow Packing, pour un client à marque privée. Chiffres en date du 2026-11-20.",
    "Oatloft Bakery",
    "Facture",
    "Solde du compte",
  ])
    expect(texts).toContain(text);
  expect(texts).not.toContain("Invoice");
}, 240_000);

test("a quote's page for the customer is in French, as figures; our own file stays in English", async () => {
  const page = path.join(folder, "page.xlsx");
  const out = path.join(folder, "ours.xlsx");
  const { code, complained } = await run([
    "quote",
    demo,
    "--product",
    "P250-LOFT",
    "--bottles",
    "300,600",
    "--page",
    page,
    "--out",
    out,
    "--language",
    "FR",
  ]);
  expect([code, complained]).toEqual([0, []]);
  const texts = await textsOf(page);
  for (const text of [
    "Soumission P250-LOFT",
    "Soumission\u00a0: Private label Oatloft 250 mL",
    "Quantité 2",
    "Prix valables jusqu'au",
    "dans les 30 jours",
    "Quantités et prix vont ensemble\u00a0: une autre quantité a un autre prix.",
  ])
    expect(texts).toContain(text);
  const ours = await textsOf(out);
  expect(ours).toContain("Quote P250-LOFT");
  const numbers = async (file: string): Promise<readonly unknown[]> =>
    (await readXlsx(readFileSync(file), "a.xlsx")).workbook.sheets[0]?.cells
      .map(({ value }) => value)
      .filter((value) => typeof value === "number") ?? [];
  expect(await numbers(page)).toEqual(await numbers(out));
}, 240_000);

test("papers come in French, under French names", async () => {
  const papers = path.join(folder, "papers");
  const { code } = await run([
    "papers",
    demo,
    "--ticket",
    "T-044",
    "--out",
    papers,
    "--language",
    "fr",
  ]);
  expect(code).toBe(0);
  expect(readdirSync(papers).sort()).toEqual([
    "bon-de-pesee-T-044.html",
    "connaissement-BOL-026.html",
    "etiquette-de-citerne-T-044.html",
  ]);
});

test.each([
  [
    ["handover", demo, "--for", "broker", "--sheets", "prices"],
    ["--language", "de"],
    /^--language: "de" is neither en nor fr\./,
  ],
  [
    ["papers", demo, "--ticket", "T-044", "--out", "never"],
    ["--language", "french"],
    /^--language: "french" is neither en nor fr\./,
  ],
  [
    ["quote", demo, "--product", "P250-LOFT", "--bottles", "300"],
    ["--language", "fr"],
    /^--language is for --page/,
  ],
])("%j with %j is refused in one sentence", async (args, more, says) => {
  const { code, complained } = await run([...args, ...more]);
  expect(code).toBe(2);
  expect(complained).toHaveLength(1);
  expect(complained.join("")).toMatch(says);
  expect(existsSync("never")).toBe(false);
});
