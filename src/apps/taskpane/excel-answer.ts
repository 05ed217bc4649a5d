/** What came of waiting for Excel. */
export type ExcelAnswer =
  /** Excel is there and ready. */
  | "excel"
  /** The library is there and says that this is no Excel: a page opened in a browser. */
  | "no excel"
  /** The library is not there: blocked, or no network. */
  | "no library"
  /** The library is there, or still coming, and has not answered in time. */
  | "silence";

export interface Waiting {
  /** What Excel says, or "silence" when it has said nothing in time. */
  readonly inTime: Promise<ExcelAnswer>;
  /** What Excel says, however late; for ever pending when it never does. */
  readonly atLast: Promise<ExcelAnswer>;
}

/**
 * Waits for Excel to answer. Its library gives no sign when one of its files is blocked (its promise stays open), so
 * the wait is raced with a clock.
 */
export function waitForExcel(milliseconds: number): Waiting {
  const atLast = answer();
  const silence = new Promise<ExcelAnswer>((resolve) =>
    setTimeout(() => resolve("silence"), milliseconds),
  );
  return { atLast, inTime: Promise.race([atLast, silence]) };
}

async function answer(): Promise<ExcelAnswer> {
  await scriptsRun();
  if (typeof Office === "undefined") return "no library";
  const { host } = await Office.onReady();
  // Compared as text: the library's own list is not there when only its first file is.
  return String(host) === "Excel" ? "excel" : "no excel";
}

/** The library's script stands behind the page and has run, or failed, before the page is said to be loaded. */
const scriptsRun = (): Promise<void> =>
  new Promise((resolve) => {
    if (
      document.readyState === "complete" ||
      // A page that lost its library is not "complete" while a picture is missing; the library is what matters.
      typeof Office !== "undefined"
    )
      return resolve();
    document.addEventListener("DOMContentLoaded", () => resolve(), {
      once: true,
    });
    addEventListener("load", () => resolve(), { once: true });
  });
