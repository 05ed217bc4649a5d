import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { costingNames } from "../../src/sheets/costing/names";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { picture, type OpenedPage } from "../support/browser-page";
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

const headline = async (): Promise<number> => {
  const text = await page.locator("#pane").innerText();
  const match = /\$(\d+\.\d{4})\s+a bottle at today's price/.exec(text);
  if (!match) throw new Error(`no cost in the pane:\n${text}`);
  return Number(match[1]);
};

/** The saved file's own cell for a figure of a costing sheet. */
function cellOf(
  workbook: Workbook,
  product: string,
  key: Parameters<typeof place>[2],
): Stored | undefined {
  const at = place(workbook, product, key);
  return workbook.sheets
    .find((sheet) => sheet.name === at?.sheet)
    ?.cells.find((c) => c.row === at?.row && c.column === at.column)?.value;
}
const place = (
  workbook: Workbook,
  product: string,
  key: keyof ReturnType<typeof costingNames>,
): ReturnType<typeof costingNames>[typeof key] =>
  costingNames(workbook.names, product)[key];

async function saved(): Promise<{
  readonly path: string;
  readonly workbook: Workbook;
}> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save", exact: true }).click(),
  ]);
  const path = await download.path();
  const { workbook } = await readXlsx(readFileSync(path), "saved.xlsx");
  return { path, workbook };
}

test("by mouse: price a product, move the bulk price, add a product, save and open again", async () => {
  await page.getByRole("combobox", { name: "Product" }).click();
  await page.getByRole("option", { name: /P250-LOFT/ }).click();
  await expectText("will add one new sheet, “Cost P250-LOFT”");
  await page.getByRole("button", { name: "Build costing sheet" }).click();
  await expectText("Added the sheet “Cost P250-LOFT”");
  await expectText("a bottle at today's price");
  const before = await headline();
  await picture(page, "costing");

  const bulk = page.getByRole("textbox", { name: "Bulk Amber, per lb" });
  await bulk.fill("2.85");
  await bulk.press("Enter");
  await expectText("Bulk Amber is now $2.85 a pound");
  // 25 ¢ a pound on 0.735 lb of syrup and 11 lb of purge over 1,200 bottles is 18.6 ¢.
  await eventually(async () => (await headline()) - before).toBeCloseTo(
    0.1862,
    3,
  );
  await expectText("under its goal");
  await picture(page, "costing-dearer");

  await page.getByRole("button", { name: "Set up a new product" }).click();
  await page.getByLabel("Bottle or jug").selectOption("BTL-250");
  await page.getByLabel("Packed like").selectOption("P250-LOFT");
  await page.getByRole("textbox", { name: "Product" }).fill("P250-NEW");
  await page.getByLabel("Description").fill("Private label Newcomb 250 mL");
  await page.getByRole("textbox", { name: "Private label" }).fill("9.40");
  await expectText("1 row to “Products” (row 21)");
  await picture(page, "new-product");
  await page.getByRole("button", { name: "Write it to the book" }).click();
  await expectText("Added P250-NEW to the book and its sheet");
  await expectText("a bottle at today's price");
  const cost = await headline();

  const { path, workbook } = await saved();
  expect(cellOf(workbook, "P250-LOFT", "full_replacement")).toBeCloseTo(
    before + 0.1862,
    3,
  );
  expect(cellOf(workbook, "P250-NEW", "full_replacement")).toBeCloseTo(cost, 4);

  await page.getByLabel("Workbook to open").setInputFiles(path);
  // The pane starts afresh with the book that was opened.
  await expectValue("combobox", "");
  await page.getByRole("combobox", { name: "Product" }).click();
  await page.getByRole("option", { name: /P250-NEW/ }).click();
  await expectText("a bottle at today's price");
  expect(await headline()).toBeCloseTo(cost, 4);
});

test("one write, the new product included, is taken back as a whole", async () => {
  await page.getByRole("button", { name: "Set up a new product" }).click();
  await page.getByLabel("Bottle or jug").selectOption("BTL-375");
  await page.getByRole("textbox", { name: "Product" }).fill("X375");
  await page.getByRole("button", { name: "Write it to the book" }).click();
  await expectText("Added X375");
  await page.getByRole("button", { name: "Undo" }).click();
  await expectText("Taken back: the product X375 and the sheet");
  const { workbook } = await saved();
  expect(workbook.sheets.map((s) => s.name)).not.toContain("Cost X375");
  expect(JSON.stringify(workbook)).not.toContain("X375");
});

test("a form with something wrong writes nothing and says what", async () => {
  await page.getByRole("button", { name: "Set up a new product" }).click();
  await page.getByLabel("Bottle or jug").selectOption("BTL-250");
  await page.getByRole("textbox", { name: "Product" }).fill("G250-AM");
  await page.getByRole("textbox", { name: "Fill", exact: true }).fill("66,4");
  await expectText("There is already a product G250-AM.");
  await page.getByRole("button", { name: "Write it to the book" }).click();
  await expectText("Nothing was written.");
  await picture(page, "new-product-refused");
});

test("by keyboard alone: find a product, build its sheet, change the bulk price", async () => {
  const key = (name: string): Promise<void> => page.keyboard.press(name);
  await key("F6");
  expect(await focused()).toMatch(/Price a product/);
  await tabTo(/^Product$/);
  await page.keyboard.type("oatloft");
  await page.getByRole("option", { name: /P250-LOFT/ }).waitFor();
  await key("ArrowDown");
  await key("Enter");
  // What builds a sheet is fetched when it is wanted.
  await page.getByRole("button", { name: "Build costing sheet" }).waitFor();
  await tabTo(/^Build costing sheet$/);
  await key("Enter");
  await expectText("a bottle at today's price");
  const before = await headline();
  await tabTo(/^Bulk Amber/);
  await key("Control+A");
  await page.keyboard.type("2.85");
  await key("Enter");
  await expectText("Bulk Amber is now $2.85");
  await eventually(async () => (await headline()) - before).toBeCloseTo(
    0.1862,
    3,
  );
  await key("F6");
  expect(
    await page.evaluate(
      () =>
        document.getElementById("sheet")?.contains(document.activeElement) ??
        false,
    ),
  ).toBe(true);
});

test("typing over a figure in the sheet moves the pane", async () => {
  await page.getByRole("combobox", { name: "Product" }).click();
  await page.getByRole("option", { name: /P250-LOFT/ }).click();
  await page.getByRole("button", { name: "Build costing sheet" }).click();
  await expectText("a bottle at today's price");
  const before = await headline();
  await page.getByLabel("Bottles in this run").waitFor();
  // The run size stands in B7 of the sheet that is now in front; its address is typed where the grid shows it.
  await goToCell("B7");
  await page.keyboard.type("600");
  await page.keyboard.press("Enter");
  await eventually(async () =>
    page.getByLabel("Bottles in this run").inputValue(),
  ).toBe("600");
  expect(await headline()).toBeGreaterThan(before + 0.3);
});

test("a total with a missing part is withheld, and the part is named", async () => {
  await page.getByRole("combobox", { name: "Product" }).click();
  await page.getByRole("option", { name: /B250-OAK/ }).click();
  await page.getByRole("button", { name: "Build costing sheet" }).click();
  await expectText("a bottle at today's price");
  // "Prices as of" a day before the first bulk price.
  await goToCell("B9");
  await page.keyboard.type("2026-11-01");
  await page.keyboard.press("Enter");
  await expectText("The total is withheld");
  await expectText("The book needs a bulk price for Dark.");
  await expectText("Shares are drawn once nothing is missing");
  expect(await page.locator("#pane").innerText()).not.toContain(
    "a bottle at today's price",
  );
  await picture(page, "withheld");
});

test("why a cell shows what it shows", async () => {
  await page.getByRole("combobox", { name: "Product" }).click();
  await page.getByRole("option", { name: /P250-LOFT/ }).click();
  await page.getByRole("button", { name: "Build costing sheet" }).click();
  await expectText("a bottle at today's price");
  await page.getByRole("tab", { name: "Why this cell" }).click();
  await goToCell("B17");
  await expectText("Syrup in the bottle: At today's bulk price");
  await expectText("252 mL at 68 °F ×");
  await picture(page, "why");
  await page.keyboard.press("ArrowDown");
  await expectText("Start and purge syrup: At today's bulk price");
});

test("findings lead to their cells", async () => {
  await page.getByRole("tab", { name: /Findings/ }).click();
  const first = page
    .locator("#pane li button")
    .filter({ hasText: /row \d+/ })
    .first();
  const where = await first.innerText();
  await first.click();
  await page.getByRole("tab", { name: "Why this cell" }).click();
  const sheet = where.split(" row ")[0] ?? "";
  await expectText(`${sheet}, `);
});

async function goToCell(address: string): Promise<void> {
  const box = page.locator("#sheet input").first();
  await box.click();
  await box.fill(address);
  await box.press("Enter");
}

const expectValue = (role: "combobox", value: string): Promise<void> =>
  eventually(() => page.getByRole(role, { name: "Product" }).inputValue()).toBe(
    value,
  );

async function expectText(text: string): Promise<void> {
  await page.locator("#pane").getByText(text).first().waitFor();
}

const focused = (): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement as HTMLInputElement | null;
    const label = at?.labels?.[0]?.innerText ?? at?.getAttribute("aria-label");
    return label ?? at?.innerText ?? "";
  });

async function tabTo(name: RegExp): Promise<void> {
  for (let i = 0; i < 40; i += 1) {
    await page.keyboard.press("Tab");
    if (name.test(await focused())) return;
  }
  throw new Error(`Tab does not reach ${String(name)}`);
}

/** Asks again until it holds: the pane follows the sheet a moment later. */
function eventually<T>(ask: () => Promise<T>): {
  toBeCloseTo: (value: number, digits: number) => Promise<void>;
  toBe: (value: T) => Promise<void>;
} {
  const until = async (holds: (given: T) => void): Promise<void> => {
    const end = Date.now() + 10_000;
    for (;;) {
      try {
        return holds(await ask());
      } catch (problem) {
        if (Date.now() > end) throw problem;
        await page.waitForTimeout(100);
      }
    }
  };
  return {
    toBeCloseTo: (value, digits) =>
      until((given) => expect(given).toBeCloseTo(value, digits)),
    toBe: (value) => until((given) => expect(given).toBe(value)),
  };
}
