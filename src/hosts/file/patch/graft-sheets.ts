import {
  partBytes,
  partText,
  partXml,
  relationsOf,
  type Parts,
} from "../package-parts";
import { allNamed } from "../xml";
import { freshNames, relationsName, renamedTargets } from "./part-names";

/** Parts of one package made ready to stand in another: new names, ids of their own, styles counted from where the other's end. */
export interface GraftedSheets {
  readonly parts: Parts;
  /** The new name of every part by its old one. */
  readonly names: ReadonlyMap<string, string>;
}

export function graftSheets(
  user: Parts,
  ours: Parts,
  worksheets: readonly string[],
  styleOffset: number,
): GraftedSheets {
  const reached = [...new Set(worksheets.flatMap((w) => reachedFrom(ours, w)))];
  const names = freshNames(user, reached);
  const texts = sharedTexts(ours);
  const ids = nextTableId(user);
  const blocks = shapeBlocks(user);
  const parts: Record<string, Uint8Array> = {};
  let tableId = ids;
  for (const [from, to] of names) {
    let content = ours[from] as Uint8Array;
    if (worksheets.includes(from))
      content = partBytes(ownSheet(partText(ours, from), texts, styleOffset));
    else if (/\/tables\/[^/]+\.xml$/.test(from)) {
      content = partBytes(
        partText(ours, from).replace(
          /(<table\b[^>]*?\bid=")\d+/,
          `$1${tableId}`,
        ),
      );
      tableId += 1;
    } else if (from.endsWith(".vml"))
      content = partBytes(shiftedShapes(partText(ours, from), blocks));
    parts[to] = content;
    const rels = relationsName(from);
    if (ours[rels])
      parts[relationsName(to)] = partBytes(
        renamedTargets(partText(ours, rels), names),
      );
  }
  return { parts, names };
}

function reachedFrom(parts: Parts, start: string): readonly string[] {
  const reached = [start];
  for (const part of reached)
    for (const { target, external } of relationsOf(parts, part))
      if (!external && parts[target] && !reached.includes(target))
        reached.push(target);
  return reached;
}

/** The XML of every shared text, so that a cell can carry it itself and the user's list of texts stays as it was. */
function sharedTexts(parts: Parts): readonly string[] {
  if (!parts["xl/sharedStrings.xml"]) return [];
  return [
    ...partText(parts, "xl/sharedStrings.xml").matchAll(
      /<si>([\s\S]*?)<\/si>|<si\/>/g,
    ),
  ].map(([, inside = ""]) => inside);
}

function ownSheet(
  xml: string,
  texts: readonly string[],
  styleOffset: number,
): string {
  return (
    xml
      .replace(
        /<c r="([A-Z]+\d+)"([^>]*?) t="s"([^>]*)><v>(\d+)<\/v><\/c>/g,
        (_, at: string, before: string, after: string, index: string) =>
          `<c r="${at}"${before} t="inlineStr"${after}><is>${texts[Number(index)] ?? ""}</is></c>`,
      )
      .replace(
        /(<(?:c|row)\b[^>]*? s="|<col\b[^>]*? style=")(\d+)(")/g,
        (_, start: string, style: string, end: string) =>
          `${start}${Number(style) + styleOffset}${end}`,
      )
      // The record that would make an array formula a dynamic one stands in a part the user's workbook may lack.
      .replace(/(<c\b[^>]*?) cm="\d+"/g, "$1")
      .replace(/ tabSelected="(?:1|true)"/g, "")
  );
}

const nextTableId = (parts: Parts): number =>
  Math.max(
    0,
    ...Object.keys(parts)
      .filter((part) => /\/tables\/[^/]+\.xml$/.test(part))
      .flatMap((part) =>
        [partXml(parts, part), ...allNamed(partXml(parts, part), "table")].map(
          ({ attributes }) => Number(attributes["id"] ?? 0),
        ),
      ),
  ) + 1;

/** How many blocks of 1024 shape ids the user's notes and controls have taken. */
const shapeBlocks = (parts: Parts): number =>
  Math.max(
    0,
    ...Object.keys(parts)
      .filter((part) => part.endsWith(".vml"))
      .flatMap((part) =>
        [...partText(parts, part).matchAll(/_x0000_s(\d+)/g)].map(([, id]) =>
          Math.floor(Number(id) / 1024),
        ),
      ),
  );

const shiftedShapes = (vml: string, blocks: number): string =>
  vml
    .replace(
      /_x0000_s(\d+)/g,
      (_, id: string) => `_x0000_s${Number(id) + blocks * 1024}`,
    )
    .replace(
      /(<o:idmap [^>]*data=")([\d,]+)(")/,
      (_, start: string, data: string, end: string) =>
        `${start}${data
          .split(",")
          .map((block) => Number(block) + blocks)
          .join(",")}${end}`,
    );
