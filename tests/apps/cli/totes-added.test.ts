import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, extname, join } from "node:path";
import { checkPackage } from "../../../src/hosts/file/check-package";
import { unpack } from "../../../src/hosts/file/package-parts";
import { appendRows } from "../../../src/hosts/file/patch/append-rows";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { serialOf } from "../../../src/measures/read-date";
import { convertWithLibreOffice } from "../../support/libre-office";
import { crowdedWorkbook } from "../../hosts/file/crowded-workbook";
import { type Stranger, strangers } from "../../hosts/file/strangers";
import { run } from "./array-terminal";

/** The parts that adding sheets has to write to; all others keep their bytes. */
const touched =
  /^(\[Content_Types\]\.xml|xl\/workbook\.xml|xl\/_rels\/workbook\.xml\.rels|xl\/styles\.xml)$/;

const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-added-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Added extends Stranger {
  /** As the command wrote it. */
  readonly out: string;
  /** With a contract, a ticket, its draw and its invoice in the added tables. */
  readonly posted: string;
}
let all: readonly Added[];

/** Price and weights by hand: 3,044 − 132 = 2,912 lb; 2,912 × 2.92 = 8,503.04. */
const rows = {
  Lots: [
    {
      Lot: "26-01",
      Received: serialOf(2026, 4, 1),
      Grade: "Amber",
      Drums: 8,
      "Gross lb": 5500,
      "Tare lb each": 55,
      "Net lb": 5060,
      "Brix at 68 °F": 66.6,
      "Price per lb": 2.2,
    },
  ],
  ToteContracts: [
    {
      Contract: "C-1",
      Customer: "Oatloft Bakery",
      "Contract lb": 10_000,
      "Price basis": "USD per lb",
      Price: 2.92,
      Start: serialOf(2026, 4, 1),
      End: serialOf(2026, 12, 31),
      "Payment days": 30,
    },
  ],
  ToteShipments: [
    {
      "Tote ticket": "T-1",
      Shipped: serialOf(2026, 5, 4),
      Contract: "C-1",
      Customer: "Oatloft Bakery",
      "Bill of lading": "B-1",
      "Gross lb": 3044,
      "Tare lb": 132,
      "Net lb": 2912,
      "Brix at 68 °F": 66.6,
      "Source lots": "26-01:2912",
    },
  ],
  LotUse: [
    {
      Date: serialOf(2026, 5, 4),
      From: "26-01",
      What: "tote sale",
      To: "T-1",
      Pounds: 2912,
    },
  ],
  Invoices: [
    {
      "Bill of lading": "B-1",
      "Invoice date": serialOf(2026, 5, 4),
      Contract: "C-1",
      Customer: "Oatloft Bakery",
      Amount: 8503.04,
      Currency: "USD",
      "Due date": serialOf(2026, 6, 3),
    },
  ],
};

beforeAll(async () => {
  const known: readonly Stranger[] = [
    // Those of LibreOffice: an image, conditional formats, notes and protection; charts and validation; a pivot table.
    ...(await strangers()).slice(0, 3),
    {
      title: "one with macros, slicers, a calculation chain and custom XML",
      fileName: "crowded.xlsm",
      bytes: await crowdedWorkbook(),
    },
  ];
  const made: Added[] = [];
  for (const [i, stranger] of known.entries()) {
    const extension = extname(stranger.fileName);
    const file = join(folder, `theirs-${i}${extension}`);
    const out = join(folder, `added-${i}${extension}`);
    const posted = join(folder, `posted-${i}${extension}`);
    writeFileSync(file, stranger.bytes);
    const { code, complained } = await run([
      "totes",
      file,
      "--add",
      "--out",
      out,
    ]);
    expect([code, complained]).toEqual([0, []]);
    let bytes: Uint8Array = new Uint8Array(readFileSync(out));
    for (const [table, more] of Object.entries(rows))
      bytes = appendRows(bytes, "added.xlsx", table, more);
    writeFileSync(posted, bytes);
    made.push({ ...stranger, out, posted });
  }
  all = made;
}, 300_000);

test("every part that was not to be written to keeps its bytes, and no program finds anything new to object to", () => {
  for (const { title, bytes, out, posted } of all) {
    const before = unpack(bytes);
    const complaints = new Set(checkPackage(bytes));
    for (const file of [out, posted]) {
      const now = new Uint8Array(readFileSync(file));
      const after = unpack(now);
      const changed = Object.keys(before).filter(
        (part) =>
          !after[part] || !Buffer.from(before[part] ?? []).equals(after[part]),
      );
      expect({
        title,
        changed: changed.filter((part) => !touched.test(part)),
        complaints: checkPackage(now).filter((one) => !complaints.has(one)),
      }).toEqual({ title, changed: [], complaints: [] });
    }
  }
});

test("the command answers from the added tables", async () => {
  for (const { posted } of all) {
    const { code, said } = await run(["totes", posted, "--json"]);
    expect(code).toBe(0);
    expect(JSON.parse(said[0] ?? "")).toMatchObject({
      tickets: [{ ticket: "T-1", netLb: 2912, amount: 8503.04 }],
      contracts: [{ contract: "C-1", leftLb: 7088 }],
      receivables: [
        { buyer: "Oatloft Bakery", currency: "USD", balance: 8503.04 },
      ],
    });
  }
});

test("in LibreOffice the tables work out, and the old pages print as before", async () => {
  const recalculated = convertWithLibreOffice(
    all.map(({ posted }) => posted),
    { to: "xlsx", recalculate: true },
  );
  for (const [i, file] of recalculated.entries()) {
    const { workbook } = await readXlsx(
      new Uint8Array(readFileSync(file)),
      file,
    );
    const valuesOn = (name: string): readonly unknown[] =>
      workbook.sheets
        .find((sheet) => sheet.name === name)
        ?.cells.map(({ value }) => value) ?? [];
    const title = all[i]?.title;
    expect({ title, register: valuesOn("Tote register") }).toEqual({
      title,
      register: expect.arrayContaining(["T-1", 2912, 8503.04]),
    });
    expect(valuesOn("Contracts left")).toEqual(expect.arrayContaining([7088]));
    expect(valuesOn("Who owes")).toEqual(
      expect.arrayContaining(["Oatloft Bakery", 8503.04]),
    );
    const errors = [
      "Tote register",
      "Contracts left",
      "Who owes",
      "Lot balance",
    ]
      .flatMap(valuesOn)
      .filter((value) => typeof value === "object" && value !== null);
    expect({ title, errors }).toEqual({ title, errors: [] });
  }
  rmSync(dirname(recalculated[0] ?? folder), { recursive: true, force: true });
  const pdfs = convertWithLibreOffice(
    all.flatMap(({ out, fileName }, i) => [
      join(folder, `theirs-${i}${extname(fileName)}`),
      out,
    ]),
    { to: "pdf" },
  );
  for (let i = 0; i < pdfs.length; i += 2) {
    const [before, after] = [
      pagesOf(pdfs[i] ?? ""),
      pagesOf(pdfs[i + 1] ?? ""),
    ];
    expect(before.length).toBeGreaterThan(0);
    expect(after.slice(0, before.length).map(withoutCounts)).toEqual(
      before.map(withoutCounts),
    );
    expect(after.slice(before.length).join()).toContain("Tote register");
    expect(after.slice(before.length).join()).toContain("0 totes, 0 lb");
  }
  rmSync(dirname(pdfs[0] ?? folder), { recursive: true, force: true });
}, 240_000);

const pagesOf = (pdf: string): readonly string[] =>
  execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8" })
    .split("\f")
    .filter((page) => page.trim() !== "");

/** Pages count themselves, and there are more of them now. */
const withoutCounts = (page: string): string =>
  page.replace(/Page \d+( of \d+)?/g, "Page").trim();
