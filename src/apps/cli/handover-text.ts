import {
  type Preview,
  type SheetPreview,
  shortly,
  type Told,
} from "../../sheets/handover/preview";

/** What a copy holds and what it does not, as a person reads it before it goes out. */
export const handoverText = ({
  sheets,
  tables,
  ticked,
  leftInUnit = [],
}: Preview): readonly string[] => [
  ...sheets.flatMap(sheetText),
  ...(tables.length === 0
    ? []
    : [
        "Rows of the book that go along, for the formulas to read",
        ...tables.map(
          ({ name, rows }) =>
            `- ${name}: ${rows} ${rows === 1 ? "row" : "rows"}`,
        ),
      ]),
  ...(ticked.length === 0
    ? []
    : ["Shown because you ticked it", ...ticked.map((one) => `- ${one}`)]),
  ...(leftInUnit.length === 0
    ? []
    : [
        "Not in metric",
        ...leftInUnit.map(
          ({ sheet, what, why }) => `- ${sheet}, ${what}: ${why}`,
        ),
      ]),
];

const sheetText = ({
  sheet,
  kept,
  removed,
  inputs,
  fixed,
}: SheetPreview): readonly string[] => [
  sheet,
  "  Kept",
  ...kept.map(({ block, figures }) => `  - ${block} (${count(figures)})`),
  ...(inputs.length === 0
    ? []
    : ["  May be tried", ...inputs.map((one) => `  - ${one}`)]),
  "  Removed",
  ...shortly(removed, kept).map(line),
  "  Fixed to its value",
  ...(fixed.length === 0 ? ["  - nothing"] : shortly(fixed, kept).map(line)),
  "",
];

const line = ({ block, what, why, figures }: Told): string =>
  `  - ${block}: ${what} (${count(figures)}): ${why}`;

const count = (figures: number): string =>
  `${figures} ${figures === 1 ? "figure" : "figures"}`;
