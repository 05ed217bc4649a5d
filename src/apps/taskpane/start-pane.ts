import { waitForExcel, type ExcelAnswer } from "./excel-answer";
import { showNotice, type Notice } from "./notice";
import { untilSeen } from "./seen";
import { troubleNotice } from "./trouble";

/** Longer than a slow line needs for Excel's library, short enough not to look dead. */
const PATIENCE_MS = 10_000;

/**
 * Brings the pane onto the page once Excel has answered and somebody looks; where it does not answer, says so and
 * offers the workbench. An answer that comes late still brings the pane.
 */
export async function startPane(place: HTMLElement): Promise<void> {
  const waiting = waitForExcel(PATIENCE_MS);
  let answer = await waiting.inTime;
  if (answer === "silence") {
    showNotice(place, NOTICES.silence);
    answer = await waiting.atLast;
  }
  if (answer !== "excel") return showNotice(place, NOTICES[answer]);
  await untilSeen();
  try {
    const { openPane } = await import("./excel-pane");
    await openPane(place);
  } catch (problem) {
    showNotice(place, await troubleNotice(problem));
  }
}

const NOTICES: Readonly<Record<Exclude<ExcelAnswer, "excel">, Notice>> = {
  silence: {
    title: "Excel has not answered yet",
    says: [
      "This page is loaded, but Excel's connecting library (from appsforoffice.microsoft.com) has said nothing for ten seconds. The line may be slow: when it answers, the pane opens by itself.",
      "If nothing comes, a firewall or a content blocker may hold it back. Your workbook is untouched.",
    ],
    canTryAgain: true,
  },
  "no library": {
    title: "Excel's library did not arrive",
    says: [
      "The connecting library could not be loaded from appsforoffice.microsoft.com: there is no network, or it is blocked. Neither the pane nor the SYRUP functions can run without it. Values already in your cells stay as they are.",
    ],
    canTryAgain: true,
  },
  "no excel": {
    title: "This page belongs inside Excel",
    says: [
      "It is open in a browser, or in another program than Excel. Install the add-in with its manifest.xml, then open the pane from the Home tab of Excel.",
    ],
    canTryAgain: false,
  },
};
