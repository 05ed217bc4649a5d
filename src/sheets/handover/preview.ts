import type { Sheet } from "../workbook";
import type { Ticks } from "./audiences";
import type { FigureFate } from "./fates";
import type { SheetToCopy } from "./sheet-to-copy";
import { topics } from "./topics";

/** What a person reads before anything is written. */
export interface Preview {
  readonly sheets: readonly SheetPreview[];
  /** Tables of the book of which rows go along, with how many. */
  readonly tables: readonly { readonly name: string; readonly rows: number }[];
  /** Items shown only because somebody ticked them. */
  readonly ticked: readonly string[];
  /** Figures that stay in customary units in a metric copy. */
  readonly leftInUnit?: readonly LeftInUnit[];
}

/** A figure that stays in its unit, and why. */
export interface LeftInUnit {
  readonly sheet: string;
  readonly what: string;
  readonly why: string;
}

export interface SheetPreview {
  readonly sheet: string;
  readonly kept: readonly {
    readonly block: string;
    readonly figures: number;
  }[];
  readonly removed: readonly Told[];
  readonly inputs: readonly string[];
  readonly fixed: readonly Told[];
}

/** Something with its reason. */
export interface Told {
  readonly block: string;
  readonly what: string;
  readonly why: string;
  readonly figures: number;
}

export function previewOf(
  copied: readonly {
    readonly from: SheetToCopy;
    readonly fates: readonly FigureFate[];
  }[],
  figures: Sheet | undefined,
  ticks: Ticks,
): Preview {
  return {
    sheets: copied.map(({ from, fates }) => sheetPreview(from, fates)),
    tables: (figures?.tables ?? []).map(({ name, area }) => ({
      name,
      rows: area.rows - 1,
    })),
    ticked: [...ticks.show.map((topic) => topics[topic]), ...ticks.mayStand],
  };
}

function sheetPreview(
  { placed }: SheetToCopy,
  fates: readonly FigureFate[],
): SheetPreview {
  const blockName = (block: number): string => {
    const found = placed.description.blocks[block];
    if (!found || found.kind === "notes") return "";
    return found.kind === "title"
      ? "Title"
      : found.title || "Heading of the page";
  };
  const kept = new Map<string, number>();
  for (const { figure, fate } of fates)
    if (fate !== "removed" && fate !== "blank") {
      const block = blockName(figure.block);
      kept.set(block, (kept.get(block) ?? 0) + 1);
    }
  return {
    sheet: placed.description.name,
    kept: [...kept].map(([block, count]) => ({ block, figures: count })),
    removed: told(
      fates.filter(({ fate }) => fate === "removed"),
      blockName,
    ),
    inputs: [
      ...new Set(
        fates
          .filter(({ fate }) => fate === "input")
          .map(({ figure }) => figure.label),
      ),
    ],
    fixed: told(
      fates.filter(({ fate }) => fate === "fixed"),
      blockName,
    ),
  };
}

function told(
  fates: readonly FigureFate[],
  blockName: (block: number) => string,
): readonly Told[] {
  const counted = new Map<string, Told>();
  for (const { figure, why = "" } of fates) {
    const block = blockName(figure.block);
    const key = `${block}|${figure.label}|${why}`;
    const figures = (counted.get(key)?.figures ?? 0) + 1;
    counted.set(key, { block, what: figure.label, why, figures });
  }
  return [...counted.values()];
}

/** The same told shortly: a block of which nothing is kept on one line, and of others everything with one reason. */
export function shortly(
  all: readonly Told[],
  kept: SheetPreview["kept"],
): readonly Told[] {
  const lines = new Map<
    string,
    { readonly words: string[]; figures: number; why: string } & Pick<
      Told,
      "block"
    >
  >();
  for (const { block, what, why, figures } of all) {
    const isWhole = !kept.some((one) => one.block === block);
    const key = isWhole ? block : `${block}|${why}`;
    const line = lines.get(key) ?? { block, why, words: [], figures: 0 };
    const word = isWhole ? "all of it" : what;
    if (!line.words.includes(word)) line.words.push(word);
    if (isWhole && !line.why.includes(why)) line.why += `; ${why}`;
    line.figures += figures;
    lines.set(key, line);
  }
  return [...lines.values()].map(({ block, why, words, figures }) => {
    const told = wholeColumns(words);
    return {
      block,
      why,
      figures,
      what:
        told.length > MOST_WORDS
          ? `${told.slice(0, MOST_WORDS).join(", ")} and ${told.length - MOST_WORDS} more`
          : told.join(", "),
    };
  });
}

/** "Crew: Oldest lots first", "Heat: Oldest lots first" and more of the kind are one column. */
function wholeColumns(words: readonly string[]): readonly string[] {
  const columnOf = (word: string): string => word.split(": ").at(-1) ?? "";
  const among = (column: string): number =>
    words.filter((word) => word.includes(": ") && columnOf(word) === column)
      .length;
  return [
    ...new Set(
      words.map((word) =>
        among(columnOf(word)) > MOST_WORDS ? columnOf(word) : word,
      ),
    ),
  ];
}

const MOST_WORDS = 4;
