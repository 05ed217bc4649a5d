import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { ExchangeAnswer } from "../../../src/apps/cli/exchange";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "exchange-"));
  cpSync(demo, folder, { recursive: true });
  writeFileSync(
    path.join(folder, "exchange_rates.csv"),
    "from,cad_per_usd\n2026-07-01,1.36\n2026-08-10,1.39\n2026-09-10,1.40\n2026-10-20,1.41\n2026-11-15,\n",
  );
});
afterAll(() => rmSync(folder, { recursive: true }));

test("Canadian invoices go by the rates of their days, what the rate did is apart, and a blank rate leaves one out", async () => {
  const { code, said } = await run(["exchange", folder, "--json"]);
  expect(code).toBe(0);
  const answer = JSON.parse(said.join("")) as ExchangeAnswer;
  // By hand from the demo's invoices and receipts: BOL-015 23,639.64 on 2 July, paid on 14 August; BOL-021 23,561.77 on
  // 10 September, paid on 23 October; BOL-026 on 19 November, when no rate was known.
  expect(
    answer.invoices.map(({ bill, booked, settled, gain }) => [
      bill,
      booked,
      settled,
      gain,
    ]),
  ).toEqual([
    ["BOL-015", 17_382.09, 17_006.94, -375.15],
    ["BOL-021", 16_829.84, 16_710.48, -119.36],
    ["BOL-026", null, 0, null],
  ]);
  expect(answer).toMatchObject({
    money: "USD",
    booked: 34_211.93,
    gain: -494.51,
    leftOut: ["BOL-026"],
  });
});

test("in words, and without dated rates", async () => {
  const dated = await run(["exchange", folder]);
  expect(dated.said.at(-1)).toBe(
    "Left out of both for want of a rate: BOL-026.",
  );
  const { said } = await run(["exchange", demo]);
  expect(said[0]).toContain("no dated rates");
  expect(said.at(-1)).toContain("Exchange: no gain or loss.");
});
