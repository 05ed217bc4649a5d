import { readFileSync } from "node:fs";
import type { BrowserContextOptions, Page } from "playwright-core";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { runPlanNames } from "../../src/sheets/run-plan/names";
import { axeFindings, picture, type OpenedPage } from "../support/browser-page";
import { workbenchPages } from "../support/workbench-page";

const openPage = workbenchPages();
let opened: OpenedPage | undefined;

afterEach(async () => {
  expect(opened?.strays).toEqual([]);
  expect(opened?.complaints).toEqual([]);
  await opened?.page.context().close();
  opened = undefined;
});

const open = async (options: BrowserContextOptions = {}): Promise<Page> => {
  opened = await openPage(options);
  return opened.page;
};

const says = (page: Page, text: string | RegExp): Promise<void> =>
  page.locator("#pane").getByText(text).first().waitFor();

async function pick(page: Page, code: RegExp): Promise<void> {
  await page.getByRole("tab", { name: "Run planner" }).click();
  await page.getByRole("combobox", { name: "Product" }).click();
  await page.getByRole("option", { name: code }).click();
}

test("by mouse: a run size gives its line at once, another one changes it, and the sheet built holds the same", async () => {
  const page = await open();
  await pick(page, /P250-LOFT/);
  const bottles = page.getByLabel("Bottles in this run");
  await bottles.fill("1,200");
  await says(page, "Saves $426.14 against Big line.");
  await bottles.fill("9,000");
  await says(page, "Saves $161.90 against Small pair.");
  await says(page, "h after the start");
  await page.getByLabel("Set-up begins").fill("2026-11-26T07:00");
  // 225 min and 9,000 ÷ 2,160 an hour are 7 h 55 min; three breaks are 45 min more.
  await says(page, "2026-11-26 15:40");
  await says(page, "Syrup at filling temperature scalds at once.");
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await picture(page, "run-planner");

  await says(page, "This will add the sheet “Run plan P250-LOFT”");
  await page.getByRole("button", { name: "Build the sheet" }).click();
  await says(page, "Added the sheet “Run plan P250-LOFT”");
  await says(page, "It goes by its own yellow cells");
  await picture(page, "run-plan-sheet");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save", exact: true }).click(),
  ]);
  const { workbook } = await readXlsx(
    readFileSync(await download.path()),
    "saved.xlsx",
  );
  const places = runPlanNames(workbook.names, "P250-LOFT");
  const value = (key: "saved" | "chosen_line" | "finish") =>
    workbook.sheets
      .find(({ name }) => name === places[key]?.sheet)
      ?.cells.find(
        ({ row, column }) =>
          row === places[key]?.row && column === places[key].column,
      )?.value;
  expect(value("chosen_line")).toBe("Big line");
  expect(value("saved")).toBeCloseTo(161.9, 2);
  expect(value("finish")).toBeCloseTo(46352 + (15 * 60 + 40) / 1440, 6);

  await page.getByRole("button", { name: "Undo" }).click();
  await says(page, "Taken back: the sheets “Run plan P250-LOFT”");
});

test("what cannot be used is said at its field; the last plan stays until it can", async () => {
  const page = await open();
  await pick(page, /P250-LOFT/);
  const bottles = page.getByLabel("Bottles in this run");
  await bottles.fill("1,200");
  await says(page, "Saves $426.14 against Big line.");
  await bottles.fill("12.5");
  await says(page, /12\.5/);
  await says(page, "for 1,200 bottles");
  expect(
    await page.getByRole("button", { name: "Build the sheet" }).isDisabled(),
  ).toBe(true);
});

test("what is typed stays while another view is looked at", async () => {
  const page = await open();
  await pick(page, /G250-AM/);
  await page.getByLabel("Bottles in this run").fill("2,345");
  await page.getByRole("tab", { name: "Why this cell" }).click();
  await page.getByRole("tab", { name: "Run planner" }).click();
  expect(await page.getByLabel("Bottles in this run").inputValue()).toBe(
    "2,345",
  );
});

test.each(["light", "dark"] as const)(
  "by keyboard on 320 px in %s: nothing runs over the edge, and axe finds nothing",
  async (colorScheme) => {
    const page = await open({
      viewport: { width: 320, height: 800 },
      colorScheme,
    });
    await page.getByRole("button", { name: "Pane", exact: true }).click();
    await page.getByRole("tab", { name: "Price a product" }).focus();
    await page.keyboard.press("Home");
    for (let i = 0; i < 8; i += 1) {
      const at = await page.evaluate(
        () => (document.activeElement as HTMLElement | null)?.innerText ?? "",
      );
      if (at.startsWith("Run planner")) break;
      await page.keyboard.press("ArrowRight");
    }
    await page.getByRole("combobox", { name: "Product" }).focus();
    await page.keyboard.type("oatloft");
    await page.getByRole("option", { name: /P250-LOFT/ }).waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.getByLabel("Bottles in this run").focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("600");
    await says(page, "Saves $471.37 against Big line.");
    await says(page, /The next price break saves \$17\.50/);
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth),
    ).toBeLessThanOrEqual(320);
    expect(await axeFindings(page, "#pane")).toEqual([]);
    await picture(page, `320-${colorScheme}-run-planner`);
  },
);
