import type { Secrets } from "../../../sheets/handover/secrets";
import type { Workbook } from "../../../sheets/workbook";
import { unpack, type Parts } from "../package-parts";
import { writeXlsx } from "../write-xlsx";
import { forbiddenIn, type Objection } from "./forbidden-parts";
import { NameFinder } from "./name-finder";
import { piecesOf } from "./part-texts";
import { figureKeys, figuresIn } from "./spellings";
import { unplannedIn } from "./unplanned-cells";

export type Leak = Objection;

/** A finished file, opened, beside what was planned and what was removed. */
interface Finished {
  readonly bytes: Uint8Array;
  readonly parts: Parts;
  readonly planned: Workbook;
  readonly secrets: Secrets;
  /** The file of the same copy without the book: what its parts hold is layout. */
  readonly bare: Parts;
}

type Search = (finished: Finished) => readonly Leak[];

/** Each looks for what the others cannot see. */
export const searches = {
  "behind the package": ({ bytes }) => remarksOfZip(bytes),
  "what no copy has": ({ parts }) => forbiddenIn(parts),
  "what nobody planned": ({ parts, planned }) => unplannedIn(parts, planned),
  "what was removed": (finished) => spelledIn(finished),
} as const satisfies Readonly<Record<string, Search>>;

/**
 * What the finished bytes of a copy hold that they should not: parts and ways out no copy has, cells nobody planned, and
 * every removed figure and name in any of its spellings. Empty for a copy that may go.
 */
export async function leaksIn(
  bytes: Uint8Array,
  planned: Workbook,
  secrets: Secrets,
  by: readonly Search[] = Object.values(searches),
): Promise<readonly Leak[]> {
  const finished: Finished = {
    bytes,
    parts: unpack(bytes),
    planned,
    secrets,
    bare: unpack(await writeXlsx(secrets.bare)),
  };
  return by.flatMap((search) => search(finished));
}

function spelledIn({
  parts,
  bare,
  planned,
  secrets,
}: Finished): readonly Leak[] {
  const known = knownIn(bare, planned);
  const figures = new Map<string, string>();
  for (const [value, where] of secrets.figures)
    for (const key of figureKeys(value))
      if (!known.figures.has(key) && !figures.has(key)) figures.set(key, where);
  const names = new NameFinder(secrets.names);
  return Object.keys(parts).flatMap((part) => {
    const said = new Map<string, Leak>();
    const tell = (what: string, where: string): void => {
      const says = `holds ${what} (${where})`;
      said.set(says, { part, says });
    };
    for (const { text, joined } of piecesOf(parts, part)) {
      if (known.texts.has(text)) continue;
      if (!joined)
        for (const key of figuresIn(text)) {
          const where = figures.get(key);
          if (where !== undefined) tell(`the figure ${shown(key)}`, where);
        }
      for (const { name, where } of names.in(text)) tell(`"${name}"`, where);
    }
    return [...said.values()];
  });
}

interface Known {
  /** Whole texts of the layout. */
  readonly texts: ReadonlySet<string>;
  readonly figures: ReadonlySet<string>;
}

/** What the layout holds without the book, and the figures that are meant to be seen. */
function knownIn(bare: Parts, planned: Workbook): Known {
  const texts = new Set<string>();
  const figures = new Set<string>();
  for (const part of Object.keys(bare))
    for (const { text, joined } of piecesOf(bare, part)) {
      if (joined) continue;
      texts.add(text);
      for (const key of figuresIn(text)) figures.add(key);
    }
  for (const { cells } of planned.sheets)
    for (const { value } of cells) {
      // As it is stored: 6.048 may also be read as six thousand and more.
      if (typeof value === "number")
        for (const key of figuresIn(String(value))) figures.add(key);
      // A word that is shown may hold a short figure, as "12.7 fl oz"; a long one in it is looked at.
      if (typeof value === "string")
        for (const key of figuresIn(value))
          if (key.split("e")[0]?.length === 3) figures.add(key);
    }
  return { texts, figures };
}

/** "236e0" is 2.36. */
function shown(key: string): string {
  const [digits = "", exponent = "0"] = key.split("e");
  return String(Number(`${digits[0] ?? "0"}.${digits.slice(1)}e${exponent}`));
}

/** A remark may stand after the last part of a package, where no worksheet program looks. */
function remarksOfZip(bytes: Uint8Array): readonly Leak[] {
  for (
    let at = bytes.length - 22;
    at >= Math.max(0, bytes.length - 65_557);
    at -= 1
  )
    if (
      bytes[at] === 0x50 &&
      bytes[at + 1] === 0x4b &&
      bytes[at + 2] === 0x05 &&
      bytes[at + 3] === 0x06
    )
      return at + 22 === bytes.length
        ? []
        : [{ part: "the end of the package", says: "carries a remark" }];
  return [{ part: "the end of the package", says: "is missing" }];
}
