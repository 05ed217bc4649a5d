import { unusable } from "../../measures/cannot-answer";
import {
  keptVersion,
  nothingKept,
  readKept,
  type Kept,
} from "../../sheets/kept";

const namespace = "urn:tare-and-tally:kept-with-the-workbook";

/** The part as found: what it holds, and whether there is one to change. */
export interface KeptPart {
  readonly kept: Kept;
  readonly isThere: boolean;
  /** Written by a newer Tare & Tally, or there more than once: then it is left alone. */
  readonly isNotOurs: boolean;
}

/** Asks for the part; its content is there after the next request. */
export function loadKept(context: Excel.RequestContext): () => KeptPart {
  const parts = partsOf(context);
  const count = parts.getCount();
  const part = parts.getOnlyItemOrNullObject();
  part.load("id");
  const xml = part.getXml();
  return () => {
    if (part.isNullObject)
      return {
        kept: nothingKept,
        isThere: false,
        isNotOurs: count.value > 1,
      };
    const { version, json } = readXml(xml.value);
    return {
      kept: readKept(json) ?? nothingKept,
      isThere: true,
      isNotOurs: version > keptVersion,
    };
  };
}

/** Writes the part with the next request, or takes it away; `isThere` is what the last reading found. */
export function keep(
  context: Excel.RequestContext,
  kept: Kept | undefined,
  { isThere, isNotOurs }: Pick<KeptPart, "isThere" | "isNotOurs">,
): void {
  if (isNotOurs) return;
  if (kept === undefined) {
    if (isThere) only(context).delete();
    return;
  }
  const xml = xmlOf(kept);
  if (isThere) only(context).setXml(xml);
  else context.workbook.customXmlParts.add(xml);
}

export function refuseNotOurs({ isNotOurs }: KeptPart): void {
  if (isNotOurs)
    throw unusable(
      "A newer Tare & Tally has kept its settings in this workbook, or they are there twice; they stay as they are",
    );
}

const partsOf = ({
  workbook,
}: Excel.RequestContext): Excel.CustomXmlPartScopedCollection =>
  workbook.customXmlParts.getByNamespace(namespace);

const only = (context: Excel.RequestContext): Excel.CustomXmlPart =>
  partsOf(context).getOnlyItemOrNullObject();

const xmlOf = (kept: Kept): string =>
  `<kept xmlns="${namespace}" version="${keptVersion}">${escaped(JSON.stringify(kept))}</kept>`;

/** The part is one element with text in it; Excel may have put a declaration before it or written it anew. */
function readXml(xml: string): {
  readonly version: number;
  readonly json: string;
} {
  const found = /<(?:\w+:)?kept\b([^>]*)>([\s\S]*)<\/(?:\w+:)?kept>/.exec(xml);
  const version = Number(/\bversion="(\d+)"/.exec(found?.[1] ?? "")?.[1]);
  const inside = (found?.[2] ?? "").replace(
    /<!\[CDATA\[([\s\S]*?)\]\]>/g,
    (_, plain: string) => escaped(plain),
  );
  return {
    version: Number.isFinite(version) ? version : keptVersion,
    json: unescaped(inside),
  };
}

const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");

const named: Readonly<Record<string, string>> = {
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  amp: "&",
};

const unescaped = (text: string): string =>
  text.replace(
    /&(?:#x([\dA-Fa-f]+)|#(\d+)|(\w+));/g,
    (whole, hex: string | undefined, decimal: string | undefined, name) =>
      hex !== undefined
        ? String.fromCodePoint(parseInt(hex, 16))
        : decimal !== undefined
          ? String.fromCodePoint(Number(decimal))
          : (named[String(name)] ?? whole),
  );
