import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { handoverCopy, workedOut } from "../../src/apps/cli/handover-copy";
import { leaksIn } from "../../src/hosts/file/leaks/leak-check";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { noTicks } from "../../src/sheets/handover/audiences";
import { readAsked } from "../../src/sheets/handover/read-asked";
import { demoTables } from "../book/csv-folder";
import { axeFindings, picture, type OpenedPage } from "../support/browser-page";
import { costingToHandOver, downloaded, paneSays } from "../support/copy-page";
import { workbenchPages } from "../support/workbench-page";

const openPage = workbenchPages();
let opened: OpenedPage;
let page: Page;

beforeEach(async () => {
  opened = await openPage();
  ({ page } = opened);
});
afterEach(async () => {
  expect(opened.strays).toEqual([]);
  expect(opened.complaints).toEqual([]);
  await page.context().close();
});

const expectText = (text: string | RegExp): Promise<void> =>
  paneSays(page, text);

test("without a sheet to hand over, the pane says what to build", async () => {
  await page.getByRole("tab", { name: "Copies and seasons" }).click();
  await expectText("There is no costing sheet, price list, quote or statement");
});

test("a partner's copy is looked at, narrowed by a tick, written and holds nothing removed", async () => {
  await costingToHandOver(page, "P250-LOFT");
  await page.getByText(/^Removed, /).click();
  await expectText("lots and where they came from");
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await picture(page, "handover-partner");

  await page.getByText("Hide more").click();
  await page.getByRole("checkbox", { name: "overheads" }).uncheck();
  await page.getByText(/^Fixed to its value, /).click();
  await expectText(/follows it through .*overheads/);
  await page.getByRole("checkbox", { name: "overheads" }).check();
  await expectText(/May be tried: Bottles in this run/);

  const download = await downloaded(page, "Write the copy");
  expect(download.suggestedFilename()).toBe(
    "Costing of P250-LOFT for partner.xlsx",
  );
  await expectText("nothing removed is in it");
  const bytes = new Uint8Array(readFileSync(await download.path()));
  const { workbook } = await readXlsx(bytes, "copy.xlsx");
  expect(workbook.sheets.map(({ name }) => name)).toEqual([
    "Cost P250-LOFT",
    "Figures",
  ]);
  expect(workbook.names).toEqual([]);
  // Searched once more here, with what a copy of the same run removes when it is made without the page.
  const label = workbook.sheets[0]?.cells.find(
    ({ value }) => value === "Bottles in this run",
  );
  const bottles = workbook.sheets[0]?.cells.find(
    ({ row, column }) => row === label?.row && column === 1,
  )?.value;
  const worked = await workedOut(demoTables(), {
    asked: readAsked("costing:P250-LOFT"),
    bottles: [Number(bottles)],
  });
  const same = handoverCopy(worked, "partner", noTicks);
  expect(await leaksIn(bytes, same.workbook, same.secrets)).toEqual([]);
}, 120_000);

test("another audience sees less, and a tick that names it shows more", async () => {
  await page.getByRole("tab", { name: "Price list" }).click();
  await page.getByRole("button", { name: "Build price list" }).click();
  await expectText("Added the price list");
  await page.getByRole("tab", { name: "Copies and seasons" }).click();
  await page.getByRole("checkbox", { name: "Price list" }).check();
  await page.getByRole("radio", { name: "a broker" }).check();
  await expectText(/Kept: .*Every product/);
  await page.getByText(/^Removed, /).click();
  await page
    .locator("#pane p")
    .getByText("what a bottle costs in all")
    .waitFor();
  await page.getByText("Show more").click();
  await page
    .getByRole("checkbox", { name: "what a bottle costs in all" })
    .check();
  await page
    .locator("#pane p")
    .getByText("what a bottle costs in all")
    .waitFor({ state: "detached" });
  await picture(page, "handover-broker");
}, 120_000);
