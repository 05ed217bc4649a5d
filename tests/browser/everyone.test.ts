import type { Page } from "playwright-core";
import { axeFindings, picture } from "../support/browser-page";
import { workbenchPages } from "../support/workbench-page";

const openPage = workbenchPages();

/** One after the other on one page. */
const views: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  [
    "why a cell",
    async (page) => {
      await page.getByRole("tab", { name: "Why this cell" }).click();
      await page.getByText("Settings, A1").waitFor();
    },
  ],
  [
    "the findings",
    async (page) => {
      await page.getByRole("tab", { name: /Findings/ }).click();
      await page.getByText(/^\d+ findings$/).waitFor();
    },
  ],
  [
    "the form for a new product",
    async (page) => {
      await page.getByRole("tab", { name: "Price a product" }).click();
      await page.getByRole("button", { name: "Set up a new product" }).click();
      await page.getByLabel("Bottle or jug").selectOption("BTL-250");
      await page.getByRole("button", { name: "Write it to the book" }).click();
      await page.getByText("Nothing was written.").waitFor();
    },
  ],
  [
    "a costing",
    async (page) => {
      await page.getByRole("button", { name: "Back to prices" }).click();
      await page.getByRole("combobox", { name: "Product" }).click();
      await page.getByRole("option", { name: /P250-LOFT/ }).click();
      await page.getByRole("button", { name: "Build costing sheet" }).click();
      await page.getByText("a bottle at today's price").first().waitFor();
    },
  ],
];

describe.each(["light", "dark"] as const)("in %s", (colorScheme) => {
  let page: Page;
  beforeAll(async () => {
    ({ page } = await openPage({ colorScheme }));
  });
  afterAll(() => page.context().close());

  test.each(views)(
    "axe has nothing to say about %s, the header and the frame",
    async (name, go) => {
      await go(page);
      expect(await axeFindings(page, "#pane")).toEqual([]);
      expect(await axeFindings(page, "header")).toEqual([]);
      await picture(page, `${colorScheme}-${name.replaceAll(" ", "-")}`);
    },
  );
});

describe.each([
  [320, 640],
  [360, 760],
])("on a screen %i wide", (width, height) => {
  let page: Page;
  beforeAll(async () => {
    const viewport = { width, height };
    ({ page } = await openPage({ viewport, hasTouch: true }));
    await picture(page, `${width}-sheet`);
    await page.getByRole("button", { name: "Pane", exact: true }).click();
  });
  afterAll(() => page.context().close());

  test.each(views)("%s needs no scrolling sideways", async (name, go) => {
    await go(page);
    await picture(page, `${width}-${name.replaceAll(" ", "-")}`);
    const wide = await page.evaluate(() => {
      const panel = document.querySelector("#pane [role=tabpanel]");
      return [
        document.documentElement.scrollWidth - window.innerWidth,
        (panel?.scrollWidth ?? 0) - (panel?.clientWidth ?? 0),
      ];
    });
    expect(wide).toEqual([0, 0]);
  });
});

test("on a narrow screen a finding brings the sheet to the front", async () => {
  const { page } = await openPage({
    viewport: { width: 360, height: 760 },
    hasTouch: true,
  });
  await page.getByRole("button", { name: "Pane", exact: true }).click();
  await page.getByRole("tab", { name: /Findings/ }).click();
  await page
    .locator("#pane li button")
    .filter({ hasText: /row \d+/ })
    .first()
    .click();
  await page.locator("#pane").waitFor({ state: "hidden" });
  expect(await page.locator("#sheet").isVisible()).toBe(true);
  await page.context().close();
});

test("the look follows the machine until the person chooses, and the choice lasts", async () => {
  const { page } = await openPage({
    colorScheme: "dark",
  });
  const dark = page.getByRole("switch", { name: "Dark" });
  expect(await dark.isChecked()).toBe(true);
  await dark.click();
  expect(await dark.isChecked()).toBe(false);
  await page.reload();
  await page.getByRole("combobox", { name: "Product" }).waitFor();
  expect(await page.getByRole("switch", { name: "Dark" }).isChecked()).toBe(
    false,
  );
  await page.context().close();
});

test("the pane takes a width by arrow keys and can be put away", async () => {
  const { page } = await openPage();
  const bar = page.getByRole("separator", { name: "Width of the pane" });
  await bar.focus();
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("ArrowLeft");
  expect(await bar.getAttribute("aria-valuenow")).toBe("420");
  await page.getByRole("button", { name: "Hide pane" }).click();
  expect(await page.locator("#pane").isVisible()).toBe(false);
  await page.getByRole("button", { name: "Show pane" }).click();
  expect(await page.locator("#pane").isVisible()).toBe(true);
  await page.context().close();
});
