import { readFileSync } from "node:fs";
import type { BrowserContextOptions, Page } from "playwright-core";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { quoteNames } from "../../src/sheets/quote/names";
import { axeFindings, picture, type OpenedPage } from "../support/browser-page";
import { figureOf } from "../support/quote-workbook";
import { workbenchPages } from "../support/workbench-page";

const openPage = workbenchPages();

async function withPage(
  work: (page: Page) => Promise<void>,
  options: BrowserContextOptions = {},
): Promise<void> {
  const opened: OpenedPage = await openPage(options);
  await work(opened.page);
  expect(opened.strays).toEqual([]);
  expect(opened.complaints).toEqual([]);
  await opened.page.context().close();
}

/** Prices in the pane, in the order of the quantities. */
const prices = async (page: Page): Promise<readonly string[]> =>
  page
    .getByRole("row", { name: /^A bottle/ })
    .getByRole("cell")
    .allInnerTexts();

const says = (page: Page, text: string): Promise<void> =>
  page.locator("#pane").getByText(text, { exact: false }).first().waitFor();

test(
  "by mouse: quote three quantities, keep the leftovers, compare with bulk, save and read back",
  () =>
    withPage(async (page) => {
      await page.getByRole("tab", { name: "Quote", exact: true }).click();
      await page.getByRole("combobox", { name: "Product" }).click();
      await page.getByRole("option", { name: /P250-LOFT/ }).click();
      await says(page, "This will add the sheet “Quote P250-LOFT”");
      await page.getByRole("button", { name: "Build quote" }).click();
      await says(page, "Added the quote: the sheet “Quote P250-LOFT”.");
      await page.getByRole("row", { name: /^A bottle/ }).waitFor();
      expect(await prices(page)).toEqual(["$15.40", "$10.82", "$9.02"]);
      await says(page, "BTL-250: 305 needed, the least order is 504");
      await picture(page, "quote-wide");
      await page
        .getByLabel("Leftover labels and containers")
        .selectOption("Kept as our stock");
      await says(page, "Leftovers are our stock. Prices are now");
      await page.getByLabel("Goal held against").selectOption("Direct cost");
      // 7.42: see custom-quote among the scenarios.
      await page.getByRole("row", { name: /^A bottle .*\$7\.42/ }).waitFor();
      await page.getByRole("button", { name: "Undo" }).click();
      await says(page, "Taken back");
      await page.getByRole("button", { name: "Compare with bulk" }).click();
      await says(page, "what a pound of Amber brings in bulk");
      await page.getByLabel("Bulk brings, per lb").fill("3.00");
      await page.getByLabel("Bulk brings, per lb").press("Enter");
      await says(page, "Earns most:");
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: "Save", exact: true }).click(),
      ]);
      const { workbook } = await readXlsx(
        readFileSync(await download.path()),
        "saved.xlsx",
      );
      const places = quoteNames(workbook.names, "P250-LOFT");
      expect(
        figureOf(workbook, places.tiers, "For the goal on direct cost", 2),
      ).toBe(7.42);
    }),
  180_000,
);

test(
  "by keyboard at 320 px, in the dark: quote, change a quantity, and nothing is cut off",
  () =>
    withPage(
      async (page) => {
        const pane = page.getByRole("tab", { name: "Quote", exact: true });
        if (!(await pane.isVisible()))
          await page
            .getByRole("button", { name: /pane|prices/i })
            .first()
            .click();
        await pane.focus();
        await page.keyboard.press("Enter");
        await page.getByRole("combobox", { name: "Product" }).focus();
        await page.keyboard.type("oatloft");
        await page.keyboard.press("ArrowDown");
        await page.keyboard.press("Enter");
        await page.getByRole("button", { name: "Build quote" }).focus();
        await page.keyboard.press("Enter");
        await page.getByRole("row", { name: /^A bottle/ }).waitFor();
        await page.getByLabel("Quantity 1").focus();
        await page.keyboard.press("Control+A");
        await page.keyboard.type("1500");
        await page.keyboard.press("Enter");
        await says(page, "Quantity 1 is 1,500.");
        expect(
          await page
            .locator("#pane")
            .evaluate((part) => part.scrollWidth <= part.clientWidth),
        ).toBe(true);
        expect(await axeFindings(page, "#pane")).toEqual([]);
        await picture(page, "quote-narrow-dark");
      },
      { viewport: { width: 320, height: 900 }, colorScheme: "dark" },
    ),
  180_000,
);
