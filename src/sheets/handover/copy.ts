import type { Contents } from "../../book/contents";
import { unusable } from "../../measures/cannot-answer";
import type { Workbook } from "../workbook";
import { type Audience, audiences, type Ticks } from "./audiences";
import { type CopiedSheet, copiedSheet } from "./copy-sheet";
import { figuresSheet, tableAllowed } from "./cut-tables";
import { type FigureFate, fatesOf } from "./fates";
import { type Preview, previewOf } from "./preview";
import { type Secrets, secretsOf } from "./secrets";
import type { SheetToCopy } from "./sheet-to-copy";
import { topicOf } from "./topics";

export interface CopyQuestion {
  readonly contents: readonly Contents[];
  readonly sheets: readonly SheetToCopy[];
  readonly audience: Audience;
  readonly ticks: Ticks;
  /** Whose figures they are, and the day they are of as it is written. */
  readonly farm: string;
  readonly day: string;
  /** Figures of sheets of the book that are in no table, worked out on the way. */
  readonly otherFigures: readonly number[];
}

/** A copy ready to be written: the workbook, what a person should see first, and what must not be found in the file. */
export interface Copy {
  readonly workbook: Workbook;
  readonly preview: Preview;
  readonly secrets: Secrets;
  readonly sheets: readonly (CopiedSheet & { readonly from: SheetToCopy })[];
}

/** Refuses (#VALUE!) a sheet of which the audience sees nothing. */
export function copyFor(question: CopyQuestion): Copy {
  const { audience, ticks, contents, farm, day } = question;
  const allowed = tableAllowed(audience, ticks);
  const decided = question.sheets.map((sheet) => {
    const fates = fatesOf(sheet, audience, ticks, allowed);
    refuseEmpty(sheet, fates, audience);
    return { sheet, fates };
  });
  const copied = decided.map(({ sheet, fates }) => ({
    from: sheet,
    fates,
    ...copiedSheet(
      sheet,
      fates,
      notes(question, fates),
      `${sheet.placed.description.print?.foot ?? sheet.placed.description.name} · figures as of ${day}`,
    ),
  }));
  const figures = figuresSheet(contents, decided);
  const workbook: Workbook = {
    title: `${farm}: a copy for ${audiences[audience].words}`,
    sheets: [
      ...copied.map(({ sheet }) => sheet),
      ...(figures ? [figures] : []),
    ],
    names: [],
  };
  return {
    workbook,
    sheets: copied,
    preview: previewOf(copied, figures, ticks),
    secrets: secretsOf({ ...question, copied, workbook }),
  };
}

function refuseEmpty(
  sheet: SheetToCopy,
  fates: readonly FigureFate[],
  audience: Audience,
): void {
  const says = fates.some(
    ({ figure, fate }) =>
      figure.name !== "title" &&
      fate !== "removed" &&
      fate !== "blank" &&
      topicOf(sheet.kind, figure.name) !== "product" &&
      topicOf(sheet.kind, figure.name) !== "day",
  );
  if (!says)
    throw unusable(
      `${sheet.asked}: ${audiences[audience].words} sees nothing of it beyond the product and the day; leave it out or tick what they may see`,
    );
}

function notes(
  { farm, day, audience }: CopyQuestion,
  fates: readonly FigureFate[],
): readonly string[] {
  const has = (fate: FigureFate["fate"]): boolean =>
    fates.some((one) => one.fate === fate);
  return [
    `From ${farm}, for ${audiences[audience].words}. Figures as of ${day}.`,
    ...(has("input")
      ? [
          "Yellow cells are yours to try; what follows from them moves with them.",
        ]
      : []),
    ...(has("fixed")
      ? ["Grey figures are fixed as they stood on that day."]
      : []),
  ];
}
