import type { Download, Page } from "playwright-core";

/** Waits for words in the pane that can be seen. */
export const paneSays = (page: Page, text: string | RegExp): Promise<void> =>
  page
    .locator("#pane")
    .getByText(text)
    .filter({ visible: true })
    .first()
    .waitFor();

/** Builds a product's costing sheet and ticks it under "Hand over a copy", for a partner. */
export async function costingToHandOver(
  page: Page,
  product: string,
): Promise<void> {
  await page.getByRole("combobox", { name: "Product" }).click();
  await page.getByRole("option", { name: new RegExp(product) }).click();
  await page.getByRole("button", { name: "Build costing sheet" }).click();
  await paneSays(page, "a bottle at today's price");
  await page.getByRole("tab", { name: "Copies and seasons" }).click();
  await page.getByRole("checkbox", { name: `Costing of ${product}` }).check();
  await paneSays(page, /May be tried: Bottles in this run/);
}

/** Presses a button that gives a file. */
export async function downloaded(
  page: Page,
  button: string,
): Promise<Download> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button, exact: true }).click(),
  ]);
  return download;
}
