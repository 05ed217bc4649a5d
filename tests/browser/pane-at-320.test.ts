import type { Browser, Page } from "playwright-core";
import { gridFunctions } from "../../src/apps/grid-functions";
import { functions } from "../../src/functions";
import { calculate } from "../../src/hosts/grid/calculate";
import { axeFindings, picture, startBrowser } from "../support/browser-page";
import { demoWorkbook } from "../support/demo-workbook";
import {
  openExcelPage,
  serveExcelPage,
  type ExcelPage,
} from "../support/excel-page/excel-page";
import type { Served } from "../support/serve";

let served: Served;
let browser: Browser;

beforeAll(async () => {
  const { workbook } = await calculate(
    demoWorkbook(["P250-LOFT"], 1200),
    gridFunctions,
  );
  served = await serveExcelPage(workbook);
  browser = await startBrowser();
}, 240_000);
afterAll(async () => {
  await browser?.close();
  served?.stop();
});

const opened = async (
  ...how: Parameters<typeof openExcelPage> extends [
    unknown,
    unknown,
    ...infer R,
  ]
    ? R
    : never
): Promise<ExcelPage> => openExcelPage(browser, served.address, ...how);

const paneReady = (page: Page): Promise<void> =>
  page.getByRole("combobox", { name: "Product" }).waitFor();

describe("start-up", () => {
  test("every function is handed over before the pane's code is asked for, and nothing comes from elsewhere but the library", async () => {
    const { page, requests, complaints } = await opened();
    await paneReady(page);
    const handedOver =
      await page.evaluate<readonly { id: string }[]>("handedOver");
    expect(handedOver.map(({ id }) => id)).toEqual(
      functions.map(({ name }) => name),
    );
    const at = (part: string): number =>
      requests.findIndex((url) => url.includes(part));
    expect(at("functions.js")).toBeGreaterThan(-1);
    expect(at("/pane/")).toBeGreaterThan(at("functions.js"));
    expect(requests.filter((url) => !url.startsWith(served.address))).toEqual([
      "https://appsforoffice.microsoft.com/lib/1/hosted/office.js",
    ]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("a library that hangs is waited for ten seconds, then the workbench is offered; when it comes late, the pane opens", async () => {
    const { page, deliver } = await opened(
      { script: "hanging" },
      { hasClock: true },
    );
    await page.getByText("Waiting for Excel").waitFor();
    await page.clock.fastForward(9_000);
    expect(await page.getByText("has not answered").count()).toBe(0);
    await page.clock.fastForward(1_500);
    await page.getByText("Excel has not answered yet").waitFor();
    await offersWorkbench(page);
    await picture(page, "excel-320-silence");
    deliver();
    await paneReady(page);
    await page.context().close();
  });

  test("a library that loads and never says it is ready is treated the same", async () => {
    const { page } = await opened({ isReady: false }, { hasClock: true });
    await page.getByText("Waiting for Excel").waitFor();
    await page.clock.fastForward(10_500);
    await page.getByText("Excel has not answered yet").waitFor();
    expect(await axeFindings(page, "body")).toEqual([]);
    await page.context().close();
  });

  test.each([
    [{ script: "blocked" }, "Excel's library did not arrive"],
    [{ host: null }, "This page belongs inside Excel"],
    [{ host: "Word" }, "This page belongs inside Excel"],
  ] as const)("with %o the page says so at once", async (library, title) => {
    const { page } = await opened(library);
    await page.getByRole("heading", { name: title }).waitFor();
    await offersWorkbench(page);
    expect(await axeFindings(page, "body")).toEqual([]);
    await page.context().close();
  });

  test("a workbook that cannot be opened is said with its reason and with where the page runs", async () => {
    const { page } = await opened({}, { query: "?protected" });
    await page.getByText("The pane could not be opened").waitFor();
    await page.getByText("The workbook is protected").waitFor();
    await page.getByText("Where: Excel on the web.").waitFor();
    expect(await page.evaluate("handedOver.length")).toBe(functions.length);
    await page.context().close();
  });

  test("the pane is dark where Excel is dark, whatever the machine prefers", async () => {
    const { page } = await opened(
      { background: "#0A0A0A" },
      { colorScheme: "light" },
    );
    await paneReady(page);
    expect(
      await page.evaluate(
        () => getComputedStyle(document.documentElement).colorScheme,
      ),
    ).toBe("dark");
    await page.context().close();
  });
});

const offersWorkbench = async (page: Page): Promise<void> => {
  const link = page.getByRole("link", { name: "workbench" });
  expect(await link.getAttribute("href")).toBe("workbench/index.html");
};

test("cells stuck at #NAME? are entered again from the foot of the pane, and what this Excel lacks is said", async () => {
  const { page } = await opened();
  await paneReady(page);
  await page.getByText("This Excel", { exact: true }).click();
  await page
    .getByRole("button", { name: "Enter SYRUP formulas again" })
    .click();
  await page
    .getByText(
      "12 formulas were entered again. Left alone because they are protected: Locked.",
    )
    .waitFor();
  await page.getByText("This Excel cannot be given notes").waitFor();
  await looksRight(page, "excel-320-this-excel");
  await page.context().close();
});

test("a write that was cut off before is told until somebody has looked", async () => {
  const { page } = await opened({}, { query: "?unfinished" });
  await paneReady(page);
  await page.getByText("may be half written from before").waitFor();
  await looksRight(page, "excel-320-unfinished");
  await page.getByRole("button", { name: "I have looked at it" }).click();
  expect(await page.getByText("half written").count()).toBe(0);
  await page.context().close();
});

describe.each([
  ["light", "#FFFFFF"],
  ["dark", "#1F1F1F"],
] as const)("in a %s Excel, 320 pixels wide", (look, background) => {
  test("every view fits, has no finding by axe, and keeps its picture", async () => {
    const { page, complaints } = await opened({ background });
    await paneReady(page);
    const tabs = page.getByRole("tab");
    const count = await tabs.count();
    expect(count).toBeGreaterThanOrEqual(3);
    for (let i = 0; i < count; i += 1) {
      const tab = tabs.nth(i);
      await tab.click();
      await page.getByRole("tabpanel").waitFor();
      await page.getByRole("progressbar").waitFor({ state: "detached" });
      const name = (await tab.innerText()).replace(/[^a-z]+/gi, " ").trim();
      await looksRight(page, `excel-320-${look}-${name}`);
    }
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("a costing and the form for a new product fit too", async () => {
    const { page } = await opened({ background });
    await paneReady(page);
    await page.getByRole("combobox", { name: "Product" }).click();
    await page.getByRole("option", { name: /P250-LOFT/ }).click();
    await page.getByText("a bottle at today's price").first().waitFor();
    await looksRight(page, `excel-320-${look}-costing`);
    await page.getByRole("button", { name: "Set up a new product" }).click();
    await page.getByLabel("Bottle or jug").waitFor();
    await looksRight(page, `excel-320-${look}-new-product`);
    await page.context().close();
  });
});

async function looksRight(page: Page, name: string): Promise<void> {
  await picture(page, name.replaceAll(" ", "-").toLowerCase());
  const tooWide = await page.evaluate(() => {
    const panel = document.querySelector("[role=tabpanel]");
    return [
      document.documentElement.scrollWidth - window.innerWidth,
      (panel?.scrollWidth ?? 0) - (panel?.clientWidth ?? 0),
    ];
  });
  expect([name, tooWide]).toEqual([name, [0, 0]]);
  expect([name, await axeFindings(page, "body")]).toEqual([name, []]);
}

test("by keyboard alone: to every view, to a product, and from a finding to its cell", async () => {
  const { page } = await opened();
  await paneReady(page);
  await page.locator("body").press("Tab");
  const tabs = page.getByRole("tab");
  expect(await focusedRole(page)).toBe("tab");
  const names = await tabs.allInnerTexts();
  const reached = new Set<string>();
  for (let i = 0; i < names.length; i += 1) {
    await page.keyboard.press("Enter");
    reached.add(
      await page.getByRole("tab", { selected: true }).first().innerText(),
    );
    await page.keyboard.press("ArrowRight");
  }
  expect([...reached].sort()).toEqual([...names].sort());
  await tabs.filter({ hasText: "Price a product" }).focus();
  await page.keyboard.press("Enter");
  await tabTo(page, '[role="combobox"]');
  await page.keyboard.press("Enter");
  await page.getByRole("option").first().waitFor();
  await page.keyboard.type("P250-L");
  await page.keyboard.press("Enter");
  await page.getByText("a bottle at today's price").first().waitFor();
  await tabs.filter({ hasText: "Findings" }).focus();
  await page.keyboard.press("Enter");
  await page.getByText(/^\d+ findings$/).waitFor();
  await tabTo(page, "li button");
  await page.keyboard.press("Enter");
  const selected = await page.evaluate(
    () =>
      new Promise<{ sheet: string; row: number }>((resolve) => {
        const { hostInUse } = globalThis as unknown as {
          hostInUse: {
            watchSelection: (
              listener: (facts: { sheet: string; row: number }) => void,
            ) => void;
          };
        };
        hostInUse.watchSelection(resolve);
      }),
  );
  expect(selected.row).toBeGreaterThan(0);
  await page.context().close();
});

const focusedRole = (page: Page): Promise<string | null> =>
  page.evaluate(() => document.activeElement?.getAttribute("role") ?? null);

/** Tab until the keyboard stands on such a thing; a person gives up after a while, and so does this. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let i = 0; i < 40; i += 1) {
    await page.keyboard.press("Tab");
    const isThere = await page.evaluate(
      (wanted) => document.activeElement?.matches(wanted) ?? false,
      selector,
    );
    if (isThere) return;
  }
  throw new Error(`Tab does not lead to ${selector}`);
}
