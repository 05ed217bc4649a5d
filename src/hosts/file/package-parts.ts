import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { childrenNamed, parseXml, type XmlElement } from "./xml";

/** A package opened: the bytes of every part by its name, without a leading slash. */
export type Parts = Readonly<Record<string, Uint8Array>>;

export interface Relation {
  readonly id: string;
  /** The last word of the relationship's type, for example "worksheet". */
  readonly kind: string;
  /** The part it points to, or an address outside the package. */
  readonly target: string;
  readonly external: boolean;
}

export const unpack = (bytes: Uint8Array): Parts => {
  const parts = unzipSync(bytes);
  return Object.fromEntries(
    Object.entries(parts).filter(([name]) => !name.endsWith("/")),
  );
};

/** The same parts always give the same bytes: a zip's dates are fixed at the first day it can name. */
export const pack = (parts: Parts): Uint8Array =>
  zipSync(parts, { level: 6, mtime: new Date(1980, 0, 1) });

export const partText = (parts: Parts, name: string): string => {
  const bytes = parts[name];
  if (!bytes) throw new Error(`the part ${name} is missing`);
  return strFromU8(bytes);
};

export const partBytes = (text: string): Uint8Array => strToU8(text);

export const partXml = (parts: Parts, name: string): XmlElement =>
  parseXml(partText(parts, name));

/** What a part points to; the package itself is the part "". */
export function relationsOf(parts: Parts, part: string): readonly Relation[] {
  const name = relationsPart(part);
  if (!parts[name]) return [];
  return childrenNamed(partXml(parts, name), "Relationship").map(
    ({ attributes }) => {
      const target = attributes["Target"] ?? "";
      const external = attributes["TargetMode"] === "External";
      return {
        id: attributes["Id"] ?? "",
        kind: (attributes["Type"] ?? "").split("/").pop() ?? "",
        target: external ? target : resolve(part, target),
        external,
      };
    },
  );
}

/** Where the relationships of a part are kept. */
const relationsPart = (part: string): string =>
  part.replace(/([^/]*)$/, "_rels/$1.rels");

/** The part that holds the workbook, or undefined when this is no workbook package. */
export const workbookPart = (parts: Parts): string | undefined =>
  relationsOf(parts, "").find(
    ({ kind, target }) => kind === "officeDocument" && parts[target],
  )?.target;

function resolve(from: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const folders = from.split("/").slice(0, -1);
  for (const step of target.split("/"))
    if (step === "..") folders.pop();
    else if (step !== "." && step !== "") folders.push(step);
  return folders.join("/");
}
