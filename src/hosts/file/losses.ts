import { baseFont, type StyleContext } from "./cell-style";
import { relationsOf, type Parts } from "./package-parts";
import { partKinds } from "./part-kinds";
import type { SheetEntry } from "./sheet-entries";
import { PRINT_SETTINGS, sheetLosses } from "./sheet-losses";
import { childNamed, childrenNamed, flagOf, type XmlElement } from "./xml";

export interface LossSource {
  readonly parts: Parts;
  readonly workbookName: string;
  readonly book: XmlElement;
  readonly entries: readonly SheetEntry[];
  readonly font: StyleContext["font"];
  /** What reading the cells of each sheet found, without the sheet's name. */
  readonly inSheets: readonly {
    readonly sheet: string;
    readonly lost: readonly string[];
    /** Parts whose whole content the sheet holds. */
    readonly carriedParts: readonly string[];
    readonly printCarried: boolean;
  }[];
}

/** What is in a file and not in the model, in plain words, sheet by sheet and then for the whole workbook. */
export function lossesOf(source: LossSource): readonly string[] {
  const { parts, workbookName, entries, inSheets } = source;
  const placed = new Set([workbookName]);
  const bySheet = entries.flatMap(({ name, kind, part }) => {
    const reached = reachedFrom(parts, part);
    reached.forEach((found) => placed.add(found));
    if (kind !== "worksheet")
      return [
        kind === "chartsheet"
          ? `the chart sheet ${name}`
          : `the ${kind} ${name}`,
      ];
    const read = inSheets.find(({ sheet }) => sheet === name);
    const lost = new Set([
      ...(read?.lost ?? []),
      ...sheetLosses(parts, part).filter(
        (thing) => !(read?.printCarried && thing === PRINT_SETTINGS),
      ),
      ...kindsOf(reached.filter((p) => !read?.carriedParts.includes(p))),
    ]);
    return [...lost].map((thing) => `${thing} on sheet ${name}`);
  });
  const rest = Object.keys(parts).filter((part) => !placed.has(part));
  return [
    ...new Set([...bySheet, ...workbookLosses(source), ...kindsOf(rest)]),
  ];
}

/** The part and all it leads to. */
function reachedFrom(parts: Parts, start: string): readonly string[] {
  const reached = new Set<string>();
  const waiting = [start];
  for (let part = waiting.pop(); part !== undefined; part = waiting.pop()) {
    if (reached.has(part) || !parts[part]) continue;
    reached.add(part);
    for (const { target, external } of relationsOf(parts, part))
      if (!external) waiting.push(target);
  }
  return [...reached];
}

function kindsOf(parts: readonly string[]): readonly string[] {
  const met = new Map<string, number>();
  for (const part of parts) {
    const kind = partKinds.findIndex(({ pattern }) => pattern.test(part));
    const key = kind < 0 ? part : String(kind);
    met.set(key, (met.get(key) ?? 0) + 1);
  }
  return [...met].flatMap(([key, count]) => {
    const kind = /^\d+$/.test(key) ? partKinds[Number(key)] : undefined;
    if (!kind) return [`a part that is not understood (${key})`];
    const { one, many } = kind;
    if (one === undefined) return [];
    return [count > 1 && many ? `${count} ${many}` : one];
  });
}

function workbookLosses({
  book,
  font,
  entries,
  inSheets,
}: LossSource): readonly string[] {
  const calculation = childNamed(book, "calcPr");
  return [
    ...namesLost(
      book,
      entries,
      new Set(
        inSheets
          .filter(({ printCarried }) => printCarried)
          .map(({ sheet }) => sheet),
      ),
    ),
    ...(childNamed(book, "workbookProtection")
      ? ["the protection of the workbook"]
      : []),
    ...(childNamed(book, "fileSharing")
      ? ["the wish to be opened read-only"]
      : []),
    ...(flagOf(childNamed(book, "workbookPr"), "date1904")
      ? [
          "days counted from 1904 (dates are carried over to days counted from 1900)",
        ]
      : []),
    ...(calculation?.attributes["calcMode"] === "manual"
      ? ["calculation by hand only"]
      : []),
    ...(flagOf(calculation, "iterate")
      ? ["repeated calculation of circular references"]
      : []),
    ...(flagOf(calculation, "fullPrecision", true)
      ? []
      : ["precision as displayed"]),
    ...(font.name === baseFont.name && font.size === baseFont.size
      ? []
      : [
          `the workbook's own base font (${font.name ?? "unnamed"}, ${font.size ?? "no"} points)`,
        ]),
  ];
}

/** Print areas are told with the sheet's print settings, and filters with the sheet's filter. */
function namesLost(
  book: XmlElement,
  entries: readonly SheetEntry[],
  printCarried: ReadonlySet<string>,
): readonly string[] {
  return childrenNamed(childNamed(book, "definedNames"), "definedName").flatMap(
    ({ attributes }) => {
      const { name = "", localSheetId } = attributes;
      if (localSheetId === undefined || name === "_xlnm._FilterDatabase")
        return [];
      const sheet = entries[Number(localSheetId)]?.name ?? "";
      if (/^_xlnm\.Print_(Titles|Area)$/.test(name) && printCarried.has(sheet))
        return [];
      return name.startsWith("_xlnm.Print_")
        ? [`${PRINT_SETTINGS} on sheet ${sheet}`]
        : [`the name ${name}, which counts only on sheet ${sheet}`];
    },
  );
}
