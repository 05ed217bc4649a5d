import ExcelJS from "exceljs";
import type { Page } from "playwright-core";
import { picture } from "../support/browser-page";
import { workbenchPages } from "../support/workbench-page";

const openPage = workbenchPages();
let page: Page;

beforeEach(async () => {
  ({ page } = await openPage());
});
afterEach(() => page.context().close());

const button = (name: string): ReturnType<Page["getByRole"]> =>
  page.getByRole("button", { name, exact: true });

async function choose(name: string, buffer: Buffer): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    button("Open …").click(),
  ]);
  await chooser.setFiles({
    name,
    mimeType: "application/octet-stream",
    buffer,
  });
}

/** A small workbook as another program would write it; with a rule the workbench cannot keep, if asked. */
async function foreignFile(hasRule: boolean): Promise<Buffer> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Notes");
  sheet.addRow(["Barrels", 4]);
  if (hasRule)
    sheet.addConditionalFormatting({
      ref: "B1:B9",
      rules: [
        {
          type: "cellIs",
          operator: "greaterThan",
          formulae: [3],
          priority: 1,
          style: { font: { bold: true } },
        },
      ],
    });
  return Buffer.from(await workbook.xlsx.writeBuffer());
}

async function change(): Promise<void> {
  await page.getByRole("combobox", { name: "Product" }).click();
  await page.getByRole("option", { name: /N050-AM/ }).click();
  await button("Build costing sheet").click();
  await page.getByText("Added the sheet").waitFor();
  await page.getByText("not saved").waitFor();
}

test("a workbook of any kind opens; without farm tables the pane says what is missing", async () => {
  await choose("notes.xlsx", await foreignFile(false));
  await page.getByText("no table Products with a product in it").waitFor();
  await page.waitForFunction(() => document.title.startsWith("notes"));
});

test("a file that is no workbook is refused in a sentence, and the open book stays", async () => {
  await choose("holiday.xlsx", Buffer.from("not a workbook"));
  await page.getByText(/^holiday\.xlsx .*\.$/).waitFor();
  await picture(page, "refused-file");
  expect(await page.title()).toMatch(/^Fernkettle Hollow Packing/);
  await page.getByRole("combobox", { name: "Product" }).click();
  await page.getByRole("option", { name: /P250-LOFT/ }).waitFor();
});

test("a file with more than we can keep is saved only after asking, and under another name", async () => {
  await choose("barrels.xlsx", await foreignFile(true));
  await page.getByText(/cannot show or keep/).waitFor();
  await button("Save").click();
  const dialog = page.getByRole("alertdialog");
  await dialog.getByText(/conditional/i).waitFor();
  await picture(page, "losses");
  await dialog.getByRole("button", { name: "Cancel" }).click();
  await button("Save").click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    button("Save under a new name").click(),
  ]);
  expect(download.suggestedFilename()).toBe(
    "barrels (from the workbench).xlsx",
  );
});

test("changes are not dropped without asking", async () => {
  await change();
  await button("Demo book anew").click();
  const dialog = page.getByRole("alertdialog");
  await dialog.getByText("changes that are not saved").waitFor();
  await picture(page, "unsaved");
  await dialog.getByRole("button", { name: "Cancel" }).click();
  await page.getByText("Added the sheet").waitFor();

  let asked = false;
  page.on("dialog", (leaving) => {
    asked = leaving.type() === "beforeunload";
    void leaving.accept();
  });
  await page.reload();
  expect(asked).toBe(true);
});

test("after saving nothing stands in the way", async () => {
  await change();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    button("Save").click(),
  ]);
  expect(download.suggestedFilename()).toMatch(
    /^Fernkettle Hollow Packing.*\.xlsx$/,
  );
  await page.getByText(/^Saved as/).waitFor();
  expect(await page.getByText("not saved").count()).toBe(0);
  await button("Demo book anew").click();
  await page.getByText("Pick a product to see").waitFor();
});
