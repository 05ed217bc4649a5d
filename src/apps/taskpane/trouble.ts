import type { Notice } from "./notice";

/** The pane could not be opened: what was said, and where it runs, for whoever is asked for help. */
export async function troubleNotice(problem: unknown): Promise<Notice> {
  return {
    title: "The pane could not be opened",
    says: [
      "The SYRUP functions do not need it and go on working. Your workbook is untouched.",
      `What it said: ${saidBy(problem)}`,
      ...(await whereIfKnown()),
    ],
    canTryAgain: true,
  };
}

const saidBy = (problem: unknown): string =>
  problem instanceof Error && problem.message !== ""
    ? problem.message
    : "nothing that could be shown.";

// Fetched only now: a pane that opens has no need of it.
async function whereIfKnown(): Promise<readonly string[]> {
  try {
    const { whereItRuns } = await import("../../hosts/excel/runtime-helpers");
    return [`Where: ${whereItRuns()}.`];
  } catch {
    return [];
  }
}
