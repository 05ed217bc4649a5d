import type { BrowserContextOptions, Page } from "playwright-core";
import { axeFindings, picture, type OpenedPage } from "../support/browser-page";
import { workbenchPages } from "../support/workbench-page";

const openPage = workbenchPages();
let opened: OpenedPage;
let page: Page;

afterEach(async () => {
  expect(opened.strays).toEqual([]);
  expect(opened.complaints).toEqual([]);
  await page.context().close();
});

const open = async (options: BrowserContextOptions = {}): Promise<void> => {
  opened = await openPage(options);
  ({ page } = opened);
  await page.locator("#tab-year").click();
  const product = page.locator("#pane [role=combobox]");
  await product.click();
  await product.fill("N050");
  await page.getByRole("option").first().click();
};

const build = async (): Promise<void> => {
  await page.getByRole("button", { name: "Build the sheet" }).click();
  await page.getByRole("button", { name: /Go to the sheet/ }).waitFor();
};

const paneText = (): Promise<string> => page.locator("#pane").innerText();

test("channels, overheads and seasons are built and read in the pane, and axe finds nothing", async () => {
  await open({ viewport: { width: 1360, height: 1200 } });
  await build();
  await page.getByText("Own web shop", { exact: true }).waitFor();
  expect(await paneText()).toMatch(/An order of 4 leaves/);
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await picture(page, "channels");
  await page.locator("#tab-overheads").click();
  await build();
  // 10,600 ÷ 31 ÷ 660 bottles of the newest run.
  await page.getByText("51.8 ¢").waitFor();
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await picture(page, "overheads");
  await page.locator("#tab-years").click();
  await build();
  await page.getByText("What the change is made of").waitFor();
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await picture(page, "years");
}, 180_000);

test("a mailer typed by keyboard comes off every order that is sent, and off no other", async () => {
  await open({ viewport: { width: 1360, height: 1200 } });
  await build();
  const left = async (): Promise<number> =>
    Number(/1: −\$([\d.]+) · 2:/.exec(await paneText())?.[1] ?? NaN);
  await page
    .getByText(/1: −\$/)
    .first()
    .waitFor();
  const before = await left();
  const mailer = page.getByLabel("Mailer, a parcel");
  await mailer.focus();
  await page.keyboard.type("2");
  await page.keyboard.press("Enter");
  await page.waitForFunction(
    (was) =>
      !document
        .querySelector("#pane")
        ?.textContent?.includes(`1: −$${was.toFixed(2)} `),
    before,
  );
  expect((await left()) - before).toBeCloseTo(2, 2);
  // Nobody mails a bottle over the counter.
  expect(await paneText()).toMatch(/1: \$[\d.]+ · 2: /);
}, 180_000);
