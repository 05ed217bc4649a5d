import { strFromU8 } from "fflate";
import type { Parts } from "../package-parts";
import { textFromFile } from "../worksheet-text";
import { parseXml, type XmlElement } from "../xml";

/** Something readable in a part: a text, an attribute, or texts that only together say something. */
export interface Piece {
  readonly text: string;
  /** Texts of many elements run together: names are looked for in it, numbers are not. */
  readonly joined?: true;
}

const XML = /\.(xml|rels|vml)$/i;

/** Everything readable in a part, in every way it may be hidden. */
export function piecesOf(parts: Parts, part: string): readonly Piece[] {
  const bytes = parts[part] ?? new Uint8Array();
  const raw = XML.test(part) ? fromXml(strFromU8(bytes)) : fromBytes(bytes);
  return distinct([{ text: part }, ...raw]).flatMap(unwrapped);
}

/** A sheet says most things many times over. */
function distinct(pieces: readonly Piece[]): readonly Piece[] {
  const met = new Set<string>();
  return pieces.filter(({ text, joined }) => {
    if (joined) return true;
    const isNew = !met.has(text);
    met.add(text);
    return isNew;
  });
}

function fromXml(xml: string): readonly Piece[] {
  try {
    const pieces: Piece[] = [];
    collect(parseXml(xml), pieces);
    for (const [, remark = ""] of xml.matchAll(
      /<!--([\s\S]*?)-->|<\?[\s\S]*?\?>/g,
    ))
      if (remark !== "") pieces.push({ text: remark });
    pieces.push({
      text: pieces.map(({ text }) => text).join(""),
      joined: true,
    });
    return pieces;
  } catch {
    return [{ text: xml }];
  }
}

/** Elements whose texts are one text, cut into runs for its looks. */
const runs = new Set(["si", "is", "p", "text", "rich", "comment", "body"]);

/** What only counts or points: the numbers of shared texts, and how many there are. */
const isCounter = ({ name, attributes }: XmlElement, key: string): boolean =>
  (name === "sst" && /count/i.test(key)) ||
  (name === "dimension" && key === "ref") ||
  (name === "c" &&
    (key === "r" || key === "s") &&
    attributes["r"] !== undefined);

function collect(element: XmlElement, into: Piece[]): void {
  const { name, attributes, children, text } = element;
  for (const [key, value] of Object.entries(attributes))
    if (!isCounter(element, key)) into.push({ text: value });
  if (text.trim() !== "") into.push({ text });
  if (runs.has(name) && children.length > 0)
    into.push({ text: allText(element) });
  for (const child of children)
    if (!(child.name === "v" && name === "c" && attributes["t"] === "s"))
      collect(child, into);
}

const allText = ({ text, children }: XmlElement): string =>
  text + children.map(allText).join("");

function fromBytes(bytes: Uint8Array): readonly Piece[] {
  const wide = new TextDecoder("utf-16le").decode(
    bytes.subarray(0, bytes.length - (bytes.length % 2)),
  );
  const odd = new TextDecoder("utf-16le").decode(
    bytes.subarray(1, bytes.length - ((bytes.length - 1) % 2)),
  );
  return [strFromU8(bytes), wide, odd].map((text) => ({ text }));
}

/** The text as it stands and as it reads once codes for signs, addresses and looks are taken off. */
function unwrapped(piece: Piece): readonly Piece[] {
  const { text } = piece;
  const forms = new Set([text, textFromFile(text)]);
  if (text.includes("%")) forms.add(percentDecoded(text));
  if (/&\w+;|&#/.test(text)) forms.add(entitiesDecoded(text));
  if (/\\u[0-9a-f]{4}/i.test(text))
    forms.add(
      text.replace(/\\u([0-9a-f]{4})/gi, (_, hex: string) =>
        String.fromCharCode(parseInt(hex, 16)),
      ),
    );
  if (/&[LCRBIUSK"\d]/.test(text))
    forms.add(text.replace(/&(?:"[^"]*"|K[0-9A-Fa-f]{6}|[A-Za-z])/g, ""));
  for (const [code] of text.matchAll(/[A-Za-z0-9+/]{12,}={0,2}/g))
    if (code.length % 4 === 0) forms.add(base64Decoded(code));
  return [...forms].map((form) => ({ ...piece, text: form }));
}

const percentDecoded = (text: string): string =>
  text.replace(/(?:%[0-9A-Fa-f]{2})+/g, (code) => {
    try {
      return decodeURIComponent(code);
    } catch {
      return code;
    }
  });

const entitiesDecoded = (text: string): string =>
  text
    .replace(/&#x([0-9a-f]+);/gi, (_, hex: string) =>
      String.fromCodePoint(parseInt(hex, 16)),
    )
    .replace(/&#(\d+);/g, (_, digits: string) =>
      String.fromCodePoint(Number(digits)),
    )
    .replace(/&nbsp;/g, " ")
    .replace(/&quot;/g, '"')
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&amp;/g, "&");

function base64Decoded(code: string): string {
  try {
    return strFromU8(Uint8Array.from(atob(code), (c) => c.charCodeAt(0)));
  } catch {
    return "";
  }
}
