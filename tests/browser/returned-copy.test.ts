import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import type { Cell, Workbook } from "../../src/sheets/workbook";
import { axeFindings, picture, type OpenedPage } from "../support/browser-page";
import { costingToHandOver, downloaded, paneSays } from "../support/copy-page";
import { workbenchPages } from "../support/workbench-page";

const COSTING = "Cost P250-LOFT";

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

const pressed = async (name: string): Promise<string> =>
  (await downloaded(page, name)).path();

const workbookAt = async (path: string): Promise<Workbook> =>
  (await readXlsx(new Uint8Array(readFileSync(path)), "file.xlsx")).workbook;

const cellsOf = (workbook: Workbook, sheet: string): readonly Cell[] =>
  workbook.sheets.find(({ name }) => name === sheet)?.cells ?? [];

async function openFile(path: string, title: string): Promise<void> {
  await page.getByLabel("Workbook to open").setInputFiles(path);
  await page.waitForFunction((t) => document.title.includes(t), title);
  await page.getByText(/^Opening /).waitFor({ state: "detached" });
}

/** Types into a cell of the grid, which is gone to by the box that shows its address. */
async function typeInto(address: string, typed: string): Promise<void> {
  const box = page.locator("#sheet input").first();
  await box.fill(address);
  await box.press("Enter");
  await page.keyboard.type(typed);
  await page.keyboard.press("Enter");
  await page.getByText("not saved").waitFor();
}

const chosen = (label: string, path: string): Promise<void> =>
  page.locator(`input[aria-label="${label}"]`).setInputFiles(path);

/** The price of P250-LOFT in the table Prices of a saved book. */
function priceIn(workbook: Workbook): unknown {
  const cells = cellsOf(workbook, "Prices");
  const column = cells.find(
    ({ row, value }) => row === 0 && value === "Price",
  )?.column;
  const row = cells.find(({ value }) => value === "P250-LOFT")?.row;
  return cells.find((one) => one.row === row && one.column === column)?.value;
}

test("a price changed in a copy comes back, is told with what it was, and goes into the book only when it is taken over", async () => {
  await costingToHandOver(page, "P250-LOFT");
  const sent = await pressed("Write the copy");
  await paneSays(page, "nothing removed is in it");
  const book = await pressed("Save");
  // Source: current_prices.csv, the row of P250-LOFT.
  expect(priceIn(await workbookAt(book))).toBe(7.2);

  // The partner's own work: another price, and a cost that is not theirs to type.
  const cells = cellsOf(await workbookAt(sent), COSTING);
  const rowOf = (label: string): number =>
    (cells.find(({ column, value }) => column === 0 && value === label)?.row ??
      -1) + 1;
  await openFile(sent, "a copy for a partner");
  await typeInto(`B${rowOf("Private label")}`, "7.55");
  await typeInto(`B${rowOf("Full cost of a bottle")}`, "5");
  const back = await pressed("Save");

  await openFile(book, "farm book");
  await page.getByRole("tab", { name: "Copies and seasons" }).click();
  await page.getByRole("tab", { name: "A copy came back" }).click();
  await chosen("The copy as you sent it", sent);
  await chosen("The copy that came back", back);
  await paneSays(page, /^2 changes: 1 can be taken over/);
  await paneSays(page, "Private label · Price now");
  await paneSays(page, /is worked out from other figures/);
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await picture(page, "returned-copy");
  expect(priceIn(await workbookAt(await pressed("Save")))).toBe(7.2);

  await page.getByRole("button", { name: /^Take over 7.55/ }).click();
  await paneSays(page, /Prices, C\d+: Price is now 7\.55; it was 7\.20\./);
  await paneSays(page, /^2 changes: 0 can be taken over, 1 is in the book/);
  expect(priceIn(await workbookAt(await pressed("Save")))).toBe(7.55);
  await picture(page, "returned-copy-taken");

  await page.getByRole("button", { name: "Undo" }).click();
  await paneSays(page, /is 7\.20 again/);
  await paneSays(page, /^2 changes: 1 can be taken over/);
}, 120_000);

test("no workbook is refused in a sentence; the next season opens as this one closes, and the binder names its gaps", async () => {
  await page.getByRole("tab", { name: "Copies and seasons" }).click();
  await page.getByRole("tab", { name: "A copy came back" }).click();
  await page
    .locator('input[aria-label="The copy as you sent it"]')
    .setInputFiles({
      name: "holiday.xlsx",
      mimeType: "application/octet-stream",
      buffer: Buffer.from("not a workbook"),
    });
  await page
    .getByRole("alert")
    .filter({ hasText: /^holiday\.xlsx .*\.$/ })
    .waitFor();
  await page.getByRole("tab", { name: "New season" }).click();
  await paneSays(page, /balances open season 2027 as they close on 2026-12-31/);
  expect(await axeFindings(page, "#pane")).toEqual([]);
  const next = await workbookAt(await pressed("Make the book of 2027"));
  await paneSays(page, "This book is as it was");
  const opening = cellsOf(next, "Opening 2027").filter(
    ({ formula }) => formula !== undefined,
  );
  expect(opening.length).toBeGreaterThan(40);
  for (const { value } of opening) expect(value).toBe(0);

  await page.getByRole("tab", { name: "Audit binder" }).click();
  await paneSays(page, "Gaps by run");
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await picture(page, "binder");
  const binder = await workbookAt(await pressed("Make the binder as a file"));
  const together = cellsOf(binder, "Binder runs").filter(
    ({ formula }) => formula !== undefined,
  );
  expect(together.every(({ value }) => typeof value === "number")).toBe(true);

  await page.getByRole("button", { name: "Add its sheets" }).click();
  await paneSays(page, /^Added 7 sheets/);
  await page.getByRole("button", { name: "Undo" }).click();
  await paneSays(page, /^Taken back/);
  expect(await page.title()).toMatch(/^Fernkettle Hollow Packing/);
}, 120_000);
