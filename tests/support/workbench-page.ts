import type { Browser, BrowserContextOptions } from "playwright-core";
import { type OpenedPage, openWorkbench, startBrowser } from "./browser-page";
import { type Served, serveWorkbench } from "./serve";

/** Serves the built workbench to a browser for as long as a file's tests run; gives what opens a page of it. */
export function workbenchPages(): (
  options?: BrowserContextOptions,
) => Promise<OpenedPage> {
  let served: Served | undefined;
  let browser: Browser | undefined;
  beforeAll(async () => {
    served = await serveWorkbench();
    browser = await startBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    served?.stop();
  });
  return async (options) => {
    if (!browser || !served)
      throw new Error("a page is opened before the tests of the file begin");
    return openWorkbench(browser, served.address, options);
  };
}
