/** A workbook with our formulas loads this page without showing it; the pane's code should then not be in the way. */
const UNSEEN_MS = 5000;

/**
 * Resolves when somebody looks at the page, and after a few seconds in any case: not every Excel says when the page
 * comes into sight.
 */
export const untilSeen = (): Promise<void> =>
  new Promise((resolve) => {
    const look = (): void => {
      if (document.visibilityState === "visible") done();
    };
    const timer = setTimeout(done, UNSEEN_MS);
    function done(): void {
      clearTimeout(timer);
      document.removeEventListener("visibilitychange", look);
      resolve();
    }
    document.addEventListener("visibilitychange", look);
    look();
  });
