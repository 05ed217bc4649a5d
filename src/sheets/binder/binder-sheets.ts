import type { Binder } from "../../book/binder-contents";
import { isoDate } from "../../measures/read-date";
import type { Sheet } from "../workbook";
import { fillPage } from "./fill-page";
import { lotsPage } from "./lots-page";
import { type PrintedPage, printedSheet } from "./printed-page";
import { densityPage, runsPage } from "./runs-page";
import { gapsPage, tracePage } from "./trace-page";

/** The season's binder as sheets, a cover in front; each prints by itself, its pages numbered. */
export function binderSheets(binder: Binder): readonly Sheet[] {
  const pages = [
    runsPage(binder),
    fillPage(binder),
    densityPage(binder),
    lotsPage(binder),
    tracePage(binder),
    gapsPage(binder),
  ];
  return [cover(binder, pages), ...pages].map(printedSheet);
}

function cover(binder: Binder, pages: readonly PrintedPage[]): PrintedPage {
  const { season, farm, asOf, runs, fills, lots, traces, gaps } = binder;
  const failing = fills.filter(
    ({ tests }) => tests.average.verdict === "fails",
  ).length;
  return {
    name: "Binder",
    title: `${farm}: records of season ${season}`,
    asides: [
      `As the book stood on ${isoDate(asOf)}. A record: its figures do not change when the book does.`,
      "It holds what the book holds. What an audit asks for is for your certifier, inspector or food-safety authority to say.",
    ],
    tables: [
      {
        title: "In short",
        columns: [
          { label: "What" },
          { label: "How many", format: "#,##0" },
          { label: "Note" },
        ],
        rows: [
          ["Runs", runs.length, ""],
          [
            "Good bottles",
            runs.reduce((sum, { row }) => sum + row.goodBottles, 0),
            "",
          ],
          ["Runs with a fill check", fills.length, `of ${runs.length}`],
          ["Runs that fail the average test", failing, "of those weighed"],
          ["Lots and barrels in use", lots.length, ""],
          [
            "Trace tests",
            traces.length,
            traces.map(({ name }) => name).join(", "),
          ],
          ["Gaps", gaps.length, gaps.length === 0 ? "" : "see the last sheet"],
        ],
      },
      {
        title: "Sheets",
        columns: [
          { label: "Sheet" },
          { label: "" },
          { label: "What it holds" },
        ],
        rows: pages.map(({ name, title }) => [name, "", title]),
      },
      {
        title: "Looked through",
        columns: [
          { label: "By" },
          { label: "On", role: "input", format: "yyyy-mm-dd" },
          { label: "Signed", role: "input" },
        ],
        rows: [
          ["Quality", "", ""],
          ["Manager", "", ""],
        ],
      },
    ],
    widths: [34, 14, 60],
    landscape: false,
    foot: `${farm}, season ${season}`,
  };
}
