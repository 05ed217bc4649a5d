import type { BrowserContextOptions, Page } from "playwright-core";
import { axeFindings, picture, type OpenedPage } from "../support/browser-page";
import { workbenchPages } from "../support/workbench-page";

const openPage = workbenchPages();

const WAIT = { timeout: 120_000 };

async function built(options: BrowserContextOptions = {}): Promise<OpenedPage> {
  const opened = await openPage(options);
  const { page } = opened;
  const pane = page.getByRole("button", { name: "Pane", exact: true });
  if (await pane.isVisible()) await pane.click();
  await page.getByRole("tab", { name: "Price list" }).click();
  await page.getByRole("button", { name: "Build price list" }).click();
  await page
    .getByRole("heading", { name: /^Cost of a bottle/ })
    .waitFor({ state: "attached", ...WAIT });
  // On a narrow screen building brings the sheet to the front.
  if (await pane.isVisible()) await pane.click();
  return opened;
}

const costOf = async (page: Page, product: string): Promise<number> => {
  const row = page
    .getByRole("list", { name: "Products" })
    .getByRole("listitem")
    .filter({ has: page.getByRole("button", { name: product, exact: true }) });
  return Number((await row.locator("strong").innerText()).replace("$", ""));
};

/** The pane reads the sheet again a moment after the edit. */
async function untilCost(
  page: Page,
  product: string,
  wanted: number,
): Promise<void> {
  const until = Date.now() + WAIT.timeout;
  while (
    Math.abs((await costOf(page, product)) - wanted) > 0.0005 &&
    Date.now() < until
  )
    await page.waitForTimeout(200);
  expect(await costOf(page, product)).toBeCloseTo(wanted, 3);
}

test("by mouse: one bulk price moves every Amber product, tells who crosses, and is taken back", async () => {
  const { page, complaints, strays } = await built();
  const before = await costOf(page, "G250-AM");
  const dark = await costOf(page, "G250-DK");
  const amber = page.getByRole("textbox", { name: "Bulk Amber, per lb" });
  await amber.fill("2.85");
  await amber.press("Enter");
  await page.getByText("Bulk Amber is now $2.85 a pound.").waitFor(WAIT);
  // 252 mL of the stock, 0.735789 lb, and 60 lb of purge over 12,000: 0.740789 × 0.25.
  await untilCost(page, "G250-AM", before + 0.1852);
  expect(await costOf(page, "G250-DK")).toBe(dark);
  await picture(page, "price-list-dearer");
  await page.getByRole("button", { name: "Undo" }).click();
  await untilCost(page, "G250-AM", before);
  await page.getByRole("button", { name: "G250-AM", exact: true }).click();
  await page.getByText("There is no costing sheet for G250-AM").waitFor(WAIT);
  expect([complaints, strays]).toEqual([[], []]);
  await page.context().close();
}, 300_000);

test("by keyboard: what if bulk falls by 10 ¢", async () => {
  const { page } = await built();
  await page.getByRole("tab", { name: "All products" }).focus();
  await page.keyboard.press("ArrowRight");
  const bulk = page.getByRole("textbox", { name: "Bulk moves by, per lb" });
  await bulk.waitFor(WAIT);
  await bulk.focus();
  await page.keyboard.press("Control+a");
  await page.keyboard.type("-0.10");
  await page.keyboard.press("Enter");
  await page.getByText("Bulk moves by −0.10 a pound.").waitFor(WAIT);
  await page.getByText("7.4 ¢ less").waitFor(WAIT);
  expect(
    await page
      .getByRole("img", { name: /Left of the price of G250-AM/ })
      .count(),
  ).toBe(1);
  await page.getByRole("button", { name: "J128-AM", exact: true }).click();
  await page
    .getByRole("heading", { name: "J128-AM when bulk moves" })
    .waitFor(WAIT);
  await page.getByLabel("Channel").selectOption("Distributor");
  await page.getByText("below cost now").first().waitFor(WAIT);
  await bulk.fill("a lot");
  await bulk.press("Enter");
  await page
    .getByRole("alert")
    .filter({ hasText: "the move of bulk" })
    .waitFor(WAIT);
  await picture(page, "what-if");
  await page.context().close();
}, 300_000);

test.each([
  ["wide", "light", { width: 1360, height: 900 }],
  ["narrow", "dark", { width: 320, height: 760 }],
] as const)(
  "%s and %s, axe has nothing to say and nothing runs out of the pane",
  async (size, colorScheme, viewport) => {
    const { page } = await built({ viewport, colorScheme });
    for (const tab of ["All products", "What if"]) {
      await page.locator("#pane").getByRole("tab", { name: tab }).click();
      await page
        .getByRole("button", { name: /^Go to the sheet/ })
        .waitFor({ state: "attached", ...WAIT });
      expect(await axeFindings(page, "#pane")).toEqual([]);
      expect(
        await page
          .locator("#pane-view")
          .evaluate((view) => view.scrollWidth <= view.clientWidth),
      ).toBe(true);
      await picture(
        page,
        `price-list-${size}-${tab === "What if" ? "what-if" : "products"}`,
      );
    }
    await page.context().close();
  },
  300_000,
);
