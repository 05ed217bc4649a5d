import type { Binder } from "../../book/binder-contents";
import { findingText } from "../../book/finding";
import { type BookTrace, tracedPounds } from "../../book/totes-trace";
import { day, type PageTable, type PrintedPage, weight } from "./printed-page";

/** The trace test: a lot followed to where its syrup went, a run followed back to its lots. */
export const tracePage = ({ season, traces }: Binder): PrintedPage => ({
  name: "Binder trace test",
  title: `Trace test, season ${season}`,
  asides: [
    "By the book. Check it against runs and bills of lading, and write down when the exercise began and ended.",
  ],
  tables: [
    {
      title: "Tests",
      columns: [
        { label: "Followed" },
        { label: "Which way" },
        { label: "Syrup lb", format: weight },
        { label: "Accounted for lb", format: weight },
        { label: "Share", format: "0.0%" },
        { label: "Not accounted for lb", format: weight },
        { label: "Begun", role: "input", format: "yyyy-mm-dd hh:mm" },
        { label: "Ended", role: "input", format: "yyyy-mm-dd hh:mm" },
      ],
      rows: traces.map((found) => [
        found.name,
        words[found.direction],
        tracedPounds(found.total),
        tracedPounds(found.total) -
          Math.max(0, tracedPounds(found.unexplained)),
        { formula: '=IF({2}=0,"",{3}/{2})' },
        tracedPounds(found.unexplained),
        "",
        "",
      ]),
      none: "Nothing of this season can be followed.",
    },
    ...traces.flatMap(tables),
  ],
  widths: [22, 30, 13, 13, 11, 15, 17, 17],
  landscape: true,
  foot: `Trace test, season ${season}`,
});

const words = {
  forward: "to where it went",
  back: "to where it came from",
} as const;

const tables = (found: BookTrace): readonly PageTable[] => [
  {
    title: `${found.name}: ${found.direction === "forward" ? "where its syrup lies" : "what it was made of"}`,
    columns: [
      { label: "What" },
      { label: "Which" },
      { label: "lb", format: weight },
      { label: "Bottles", format: weight },
      { label: "Cases", format: weight },
    ],
    rows: [
      ...(found.direction === "forward" ? found.buyers : []).map(
        ({ buyer, weight: own, totes }) => [
          "buyer",
          `${buyer}: ${totes.join(", ")}`,
          tracedPounds(own),
        ],
      ),
      ...found.containers
        .filter(
          ({ kind, rests }) =>
            kind !== "buyer" && (found.direction === "back" || rests > 0),
        )
        .map(({ name, kind, weight: own, rests, run, cases }) => [
          kind,
          run ? `${name}, ${run.product}` : name,
          tracedPounds(found.direction === "forward" ? rests : own),
          run?.goodBottles,
          cases,
        ]),
    ],
  },
  {
    title: `${found.name}: every movement`,
    columns: [
      { label: "From" },
      { label: "To" },
      { label: "Date", format: day },
      { label: "lb", format: weight },
      { label: "Share", format: "0.0%" },
    ],
    rows: found.steps.map(({ from, to, day: on, weight: moved, share }) => [
      from,
      to,
      on,
      tracedPounds(moved),
      share,
    ]),
  },
];

/** What the season's records lack, with room to say what was done about it. */
export const gapsPage = ({ season, gaps }: Binder): PrintedPage => ({
  name: "Binder gaps",
  title: `Gaps in the records of season ${season}`,
  asides: [],
  tables: [
    {
      title: "Gaps",
      columns: [
        { label: "No" },
        { label: "What", role: "note" },
        { label: "Done", role: "input" },
        { label: "On", role: "input", format: day },
      ],
      rows: gaps.map((gap, i) => [i + 1, findingText(gap), "", ""]),
      none: "None found.",
    },
  ],
  widths: [7, 100, 24, 13],
  landscape: true,
  foot: `Gaps, season ${season}`,
});
