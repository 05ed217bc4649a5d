import type { Page } from "playwright-core";
import { axeFindings, picture, type OpenedPage } from "../support/browser-page";
import { workbenchPages } from "../support/workbench-page";

const openPage = workbenchPages();
let opened: OpenedPage;
let page: Page;

beforeEach(async () => {
  opened = await openPage();
  ({ page } = opened);
  await page.getByRole("tab", { name: "Totes" }).click();
  await says("44 totes went out, 128,329 lb net.");
});
afterEach(async () => {
  expect(opened.strays).toEqual([]);
  expect(opened.complaints).toEqual([]);
  await page.context().close();
});

const says = async (text: string | RegExp): Promise<void> =>
  page.locator("#pane").getByText(text).first().waitFor();
const part = async (name: string): Promise<void> => {
  await page.getByLabel("What to do").selectOption({ label: name });
};
const field = (label: string) =>
  page.getByRole("textbox", { name: label, exact: true });

test("post one: the swap is offered, the lot's draw goes with it, and it can be taken back", async () => {
  await part("Post one ticket");
  await field("Ticket").fill("T-045");
  await field("Shipped").fill("2026-11-20");
  await field("Gross").fill("132");
  await field("Tare").fill("3044");
  await field("°Brix at 68 °F").fill("66.6");
  await field("Lots it was filled from").fill("26-06");
  await says("the two look swapped");
  expect(
    await page.getByRole("button", { name: "Post the ticket" }).isDisabled(),
  ).toBe(true);
  await page.getByRole("button", { name: "Swap gross and tare" }).click();
  await says("2,912 lb net");
  await says("No plate limit is typed");
  expect(
    await page.getByRole("button", { name: "Post the ticket" }).isDisabled(),
  ).toBe(true);
  await page.getByLabel("I looked: every tote").check();
  await picture(page, "totes-post-one");
  await page.getByRole("button", { name: "Post the ticket" }).click();
  await says("Posted ticket T-045.");
  await part("See where totes stand");
  await says("45 totes went out, 131,241 lb net.");
  await page.getByRole("button", { name: "Undo" }).click();
  await says("44 totes went out, 128,329 lb net.");
});

test("paste many, put two right, post: what is refused stays in the box with its reason", async () => {
  await part("Paste many tickets");
  const box = page.getByLabel("Tickets, one a line");
  await box.fill(
    [
      "ticket,date,gross,tare,brix",
      "T-045,2026-11-20,3044,132,66.6",
      "T-046,2026-11-20,132,3046,66.5",
      "T-047,2026-11-20,3045,131,666",
      "T-048,2026-11-20,3050,,66.2",
      "T-001,2026-11-20,3050,132,66.2",
    ].join("\n"),
  );
  await says("1 fine, 4 refused.");
  await page
    .getByRole("button", { name: "T-046: Swap gross and tare" })
    .click();
  await page.getByRole("button", { name: "T-047: Use 66.6" }).click();
  await says("3 fine, 2 refused.");
  await page.getByText(/^Tote size and plate/).click();
  await field("Most gross on its plate").fill("3044");
  await says("1 fine, 4 refused.");
  await field("Most gross on its plate").fill("3300");
  await says("3 fine, 2 refused.");
  await picture(page, "totes-paste");
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await page.getByRole("button", { name: "Post 3 of 5" }).click();
  await says("Posted 3 tickets. 2 stay in the box.");
  expect((await box.inputValue()).split("\n")).toEqual([
    "ticket,date,gross,tare,brix",
    "T-048,2026-11-20,3050,,66.2",
    "T-001,2026-11-20,3050,132,66.2",
  ]);
  await says("Tare is blank. A blank is never zero");
  await says(/Ticket T-001 is posted already/);
});

test("load a truck: how many fit, and whether the chosen ride", async () => {
  await part("Load a truck");
  await field("The truck's limit").fill("44,000");
  await field("Places on the floor").fill("20");
  await field("Tickets that are to ride").fill("T-043, T-044");
  await says("14 totes");
  await says(/37,944 lb left, 18 places free/);
  await says("look at the plate: T-043 and T-044");
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await picture(page, "totes-truck");
  await field("The truck's limit").fill("4000");
  await says("In this order T-043 rides.");
});

test("take a payment", async () => {
  await part("Take a payment");
  await page
    .getByLabel("Who paid")
    .selectOption("Larkspindle Foods (Canada) · CAD");
  await page.getByLabel("For invoice").selectOption("BOL-026");
  expect(await field("Amount").inputValue()).toBe("11822.06");
  await picture(page, "totes-payment");
  await page.getByRole("button", { name: "Write the receipt" }).click();
  await says("Wrote receipt PAY-024.");
  await part("See where totes stand");
  await says("still owed CAD 0.00");
});

test("trace a lot, and a statement", async () => {
  await part("Trace a lot");
  await field("Lot, barrel, run or tote").fill("26-04");
  await page.getByRole("button", { name: "Trace", exact: true }).click();
  await says("Where 26-04 went");
  await says("Buyers to call");
  await picture(page, "totes-trace");
  await field("Lot, barrel, run or tote").fill("26-99");
  await page.getByRole("button", { name: "Trace", exact: true }).click();
  await says(/is in none of the movements; the nearest name is/);
  await part("See a statement");
  await says(/On 2026-11-20 .* owes/);
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await picture(page, "totes-statement");
});

test("the tote sheets are built from the pane; a statement and a recall list are ready to print", async () => {
  await says("The register can stand in this workbook, live");
  await page.getByRole("button", { name: "Build the tote sheets" }).click();
  await says("Added the tote register and its sheets.");
  await picture(page, "totes-sheets");
  await part("See a statement");
  await page
    .getByLabel("Buyer and money")
    .selectOption("Pinwhistle Creamery · USD");
  await page
    .getByRole("button", { name: "Show it on the sheet, ready to print" })
    .click();
  await says("shows Pinwhistle Creamery, ready to print.");
  await picture(page, "totes-statement-sheet");
  await part("Trace a lot");
  await field("Lot, barrel, run or tote").fill("26-04");
  await page.getByRole("button", { name: "Trace", exact: true }).click();
  await page
    .getByRole("button", { name: "Make a recall list to print" })
    .click();
  await says(/Added the sheet “Recall/);
  await picture(page, "totes-recall");
});

test("adopt a ledger: what each column is taken to be is shown, ours go onto a sheet of their own", async () => {
  await part("Adopt a ledger you keep");
  await field("Cells of the ledger").fill("'Tote shipments'!A1:Q45");
  await page.getByRole("button", { name: "Look at it" }).click();
  await says("44 tickets.");
  expect(await page.getByLabel("Gross weight").inputValue()).toBe("5");
  await picture(page, "totes-adopt");
  await page
    .getByRole("button", { name: "Keep ours on a sheet of their own" })
    .click();
  await says("Added the sheet “Totes of Tote shipments”.");
});
