import { execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { copyFileSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { root } from "../../architecture/project-files";
import type { Served } from "../serve";
import type { Workbook } from "../../../src/sheets/workbook";

const folder = path.join(root, "tests/output/excel-page");

/** Builds Excel's page around a workbook in memory and serves it below a sub-path, as a static host would. */
export async function serveExcelPage(workbook: Workbook): Promise<Served> {
  const inside = path.join(folder, "farm/syrup");
  rmSync(folder, { recursive: true, force: true });
  const node = (...args: readonly string[]): void =>
    void execFileSync(process.execPath, args, { cwd: root });
  node("tests/build.cjs", "functions");
  node(path.join(__dirname, "build.cjs"), inside);
  mkdirSync(inside, { recursive: true });
  copyFileSync(
    path.join(root, "dist/addin/functions.js"),
    path.join(inside, "functions.js"),
  );
  writeFileSync(path.join(inside, "workbook.json"), JSON.stringify(workbook));
  const server = spawn(
    process.execPath,
    [path.join(__dirname, "serve.cjs"), folder],
    { stdio: ["ignore", "pipe", "inherit"] },
  );
  const [said] = (await once(server.stdout, "data")) as [Buffer];
  return {
    address: `${said.toString().trim()}/farm/syrup`,
    stop: () => void server.kill(),
  };
}

/** How Excel's library answers a page: what its documentation promises, as far as this page uses it. */
export interface Library {
  /** The library's script itself: delivered, refused, or never answered. */
  readonly script?: "delivered" | "blocked" | "hanging";
  readonly host?: "Excel" | "Word" | null;
  /** False: one of its later files is blocked and it never says that it is ready. */
  readonly isReady?: boolean;
  readonly background?: string;
}

export interface ExcelPage {
  readonly page: Page;
  /** Addresses asked for, in order. */
  readonly requests: readonly string[];
  /** What the page complained of: errors thrown and logged, its own rules broken. */
  readonly complaints: readonly string[];
  /** Delivers a library that was hanging. */
  readonly deliver: () => void;
}

const LIBRARY = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

/** Opens the page with a stand-in for the library; nothing is loaded from the network. */
export async function openExcelPage(
  browser: Browser,
  address: string,
  library: Library = {},
  options: BrowserContextOptions & {
    readonly query?: string;
    readonly hasClock?: boolean;
  } = {},
): Promise<ExcelPage> {
  const { query = "", hasClock = false, ...contextOptions } = options;
  const context = await browser.newContext({
    viewport: { width: 320, height: 720 },
    ...contextOptions,
  });
  const page = await context.newPage();
  if (hasClock) await page.clock.install();
  const requests: string[] = [];
  const complaints: string[] = [];
  let deliver = (): void => undefined;
  const delivered = new Promise<void>((resolve) => (deliver = resolve));
  page.on("request", (request) => requests.push(request.url()));
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  await context.route(/^https?:\/\/(?!127\.0\.0\.1)/, async (route) => {
    if (route.request().url() !== LIBRARY || library.script === "blocked")
      return route.abort();
    if (library.script === "hanging") await delivered;
    return route.fulfill({
      contentType: "text/javascript",
      body: libraryScript(library),
    });
  });
  await page.goto(`${address}/taskpane.html${query}`, { waitUntil: "commit" });
  return { page, requests, complaints, deliver };
}

const libraryScript = ({
  host = "Excel",
  isReady = true,
  background = "#FFFFFF",
}: Library): string => `
  globalThis.handedOver = [];
  globalThis.CustomFunctions = {
    associate: (id) => handedOver.push({ id, at: document.readyState }),
    Error,
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
  };
  globalThis.Office = {
    onReady: () => ${isReady ? `Promise.resolve({ host: ${JSON.stringify(host)}, platform: "OfficeOnline" })` : "new Promise(() => {})"},
    context: {
      host: ${JSON.stringify(host)},
      platform: "OfficeOnline",
      officeTheme: { bodyBackgroundColor: ${JSON.stringify(background)} },
    },
  };
`;
