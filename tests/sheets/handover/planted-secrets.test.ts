import { strFromU8, unzipSync } from "fflate";
import { handoverCopy, workedOut } from "../../../src/apps/cli/handover-copy";
import type { Contents } from "../../../src/book/contents";
import { writeCopy } from "../../../src/hosts/file/leaks/write-copy";
import {
  type Audience,
  audienceNames,
  noTicks,
} from "../../../src/sheets/handover/audiences";
import { readAsked } from "../../../src/sheets/handover/read-asked";
import type { WorkedOut } from "../../../src/apps/cli/handover-copy";
import { demoTables } from "../../book/csv-folder";

/** Where secrets are planted: words and figures of the book that no audience is shown. */
const places: Readonly<Record<string, readonly string[]>> = {
  Settings: ["Note"],
  Energy: ["Note"],
  Lots: ["Grower", "Inbound freight", "Light transmission %"],
  Lines: ["Note"],
  Wages: ["Hourly"],
  Overheads: ["Note"],
  Channels: ["Note"],
  ProductMaterials: ["Note"],
  Runs: ["Source lots", "Fill temperature °F"],
  OakBarrels: ["Barrel cost"],
  ToteShipments: ["Source lots", "Tote deposit"],
  ToteContracts: ["Grades allowed"],
  Payments: ["Note"],
  StockCount: ["Counted lb"],
  FillChecks: ["Full g"],
};

const numeric = new Set([
  "Inbound freight",
  "Light transmission %",
  "Hourly",
  "Fill temperature °F",
  "Barrel cost",
  "Tote deposit",
  "Counted lb",
  "Full g",
]);

const secrets: string[] = [];

/** The demo's tables with a secret of its own in the cells named above, four a column at most of each kind of place. */
function planted(tables: readonly Contents[]): readonly Contents[] {
  return tables.map((table) => ({
    ...table,
    rows: table.rows.map((row, r) =>
      row.map((cell, c) => {
        const heading = table.headings[c] ?? "";
        if (!places[table.name]?.includes(heading) || r >= 15) return cell;
        const no = secrets.length;
        if (numeric.has(heading)) {
          // Near what stands there, so that nothing else in the book turns odd.
          const value = Number(
            (
              (typeof cell === "number" ? cell : 20) +
              0.001 * no +
              0.00017
            ).toFixed(5),
          );
          secrets.push(String(value));
          return value;
        }
        const word = `Zephyrine Quill ${no}`;
        secrets.push(word);
        return word;
      }),
    ),
  }));
}

const sheets = [
  "costing:P250-LOFT",
  "prices",
  "quote:P250-LOFT",
  "totes:Oatloft Bakery",
];
let worked: WorkedOut;

beforeAll(async () => {
  worked = await workedOut(planted(demoTables()), {
    asked: readAsked(sheets.join(",")),
  });
}, 240_000);

/** What nobody of an audience may see of a sheet is refused as a whole. */
const refused: Readonly<Record<Audience, readonly string[]>> = {
  partner: ["totes:Oatloft Bakery"],
  customer: [],
  lender: [],
  broker: ["totes:Oatloft Bakery"],
};

test("at least 200 secrets are planted", () => {
  expect(secrets.length).toBeGreaterThanOrEqual(200);
  expect(new Set(secrets).size).toBe(secrets.length);
});

describe.each(audienceNames)("for a %s", (audience) => {
  test.each(sheets)("no planted secret is in a copy of %s", async (asked) => {
    const one = {
      ...worked,
      sheets: worked.sheets.filter((sheet) => sheet.asked === asked),
    };
    if (refused[audience].includes(asked)) {
      expect(() => handoverCopy(one, audience, noTicks)).toThrow(
        /sees nothing of it/,
      );
      return;
    }
    const parts = unzipSync(
      await writeCopy(handoverCopy(one, audience, noTicks)),
    );
    // Looked for in the plain text of every part, without the leak check.
    const all = Object.entries(parts)
      .map(([name, bytes]) => `${name} ${strFromU8(bytes)}`)
      .join("\n");
    expect(secrets.filter((secret) => all.includes(secret))).toEqual([]);
    expect(all).not.toContain("Zephyrine");
  });
});
