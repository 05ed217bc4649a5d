import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { axeFindings, picture } from "../support/browser-page";
import { costingToHandOver, downloaded, paneSays } from "../support/copy-page";
import { workbenchPages } from "../support/workbench-page";

const openPage = workbenchPages();

test("a copy is had in metric, and what stays in its unit is told before it is written", async () => {
  const { page, strays, complaints } = await openPage();
  const inMetric = (on: Page) => on.getByRole("radio", { name: "kg, L, °C" });
  await costingToHandOver(page, "P250-LOFT");
  await inMetric(page).check();
  await paneSays(page, "Not in metric");
  await paneSays(page, "goes with the fuel as it is sold");
  expect(await axeFindings(page, "#pane")).toEqual([]);
  await inMetric(page).scrollIntoViewIfNeeded();
  await picture(page, "handover-metric");

  const download = await downloaded(page, "Write the copy");
  const bytes = new Uint8Array(readFileSync(await download.path()));
  const { workbook } = await readXlsx(bytes, "copy.xlsx");
  const cells = workbook.sheets[0]?.cells ?? [];
  const beside = (label: string): unknown => {
    const at = cells.find(({ value }) => value === label);
    return cells.find(
      ({ row, column }) => row === at?.row && column === at.column + 1,
    )?.value;
  };
  // 2.60 a pound today, over 0.45359237 kg.
  expect(beside("Price per kg at replacement")).toBeCloseTo(
    2.6 / 0.45359237,
    9,
  );
  expect([strays, complaints]).toEqual([[], []]);
  await page.context().close();
}, 120_000);
