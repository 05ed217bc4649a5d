import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  chromium,
  type Browser,
  type BrowserContextOptions,
  type Page,
} from "playwright-core";

const output = join(__dirname, "../output/screens");

export const startBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: process.env["CHROMIUM"] ?? "/usr/bin/chromium",
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });

export interface OpenedPage {
  readonly page: Page;
  /** Requests that went anywhere but to the server of the page. */
  readonly strays: readonly string[];
  /** What the page complained of: errors thrown and errors logged. */
  readonly complaints: readonly string[];
}

/** The workbench with the demo book open and the pane ready. */
export async function openWorkbench(
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {},
): Promise<OpenedPage> {
  const context = await browser.newContext({
    viewport: { width: 1360, height: 900 },
    colorScheme: "light",
    ...options,
  });
  const page = await context.newPage();
  const strays: string[] = [];
  const complaints: string[] = [];
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(`${address}/`) && !/^(data|blob):/.test(url))
      strays.push(url);
  });
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  await page.goto(`${address}/`);
  // On a narrow screen the pane is ready behind the sheet.
  await page.locator("#pane [role=tab]").first().waitFor({ state: "attached" });
  await page.locator("#pane [role=combobox]").waitFor({ state: "attached" });
  return { page, strays, complaints };
}

/** Keeps a picture of the page for people to look at. */
export async function picture(page: Page, name: string): Promise<void> {
  mkdirSync(output, { recursive: true });
  await page.screenshot({ path: join(output, `${name}.png`) });
}

const axeSource = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** What axe finds against WCAG 2 A and AA in a part of the page, one line a finding. */
export async function axeFindings(
  page: Page,
  part: string,
): Promise<readonly string[]> {
  // Run by the browser itself, past the page's own rule against foreign scripts.
  await page.evaluate(axeSource);
  return page.evaluate(async (selector) => {
    interface Violation {
      readonly id: string;
      readonly nodes: readonly { readonly html: string }[];
    }
    const { axe } = globalThis as unknown as {
      readonly axe: {
        run: (
          where: Element | null,
          how: object,
        ) => Promise<{ readonly violations: readonly Violation[] }>;
      };
    };
    const { violations } = await axe.run(document.querySelector(selector), {
      runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"],
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`),
    );
  }, part);
}
