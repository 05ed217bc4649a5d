import {
  childNamed,
  childrenNamed,
  escapeXml,
  parseXml,
  type XmlElement,
} from "../xml";
import { appendedTo, counted, insertedFirst } from "./xml-insertion";

/** A user's styles with another file's at the end of every list: the user's own numbers stay what they were. */
export interface GraftedStyles {
  readonly xml: string;
  /** What to add to a style number of the other file. */
  readonly offset: number;
}

/** Lists of fonts, fills and borders are taken over whole; number formats get numbers nobody uses yet. */
export function graftStyles(user: string, ours: string): GraftedStyles {
  const held = parseXml(user);
  const added = parseXml(ours);
  const formats = formatNumbers(held, added);
  let xml = user;
  const offsets: Record<string, number> = {};
  if (formats.size > 0) xml = withFormats(xml, held, added, formats);
  for (const list of ["fonts", "fills", "borders"] as const) {
    offsets[list] = sizeOf(held, list);
    xml = appended(xml, list, innerText(ours, list), held, added);
  }
  const offset = sizeOf(held, "cellXfs");
  const cells = innerText(ours, "cellXfs").replace(
    /\b(numFmtId|fontId|fillId|borderId|xfId)="(\d+)"/g,
    (_, what: string, number: string) => {
      const n = Number(number);
      if (what === "xfId") return 'xfId="0"';
      if (what === "numFmtId") return `numFmtId="${formats.get(n) ?? n}"`;
      const list = `${what.slice(0, -2)}s`;
      return `${what}="${n + (offsets[list] ?? 0)}"`;
    },
  );
  return { xml: appended(xml, "cellXfs", cells, held, added), offset };
}

const sizeOf = (styles: XmlElement, list: string): number =>
  childNamed(styles, list)?.children.length ?? 0;

function appended(
  xml: string,
  list: string,
  snippet: string,
  held: XmlElement,
  added: XmlElement,
): string {
  const done = appendedTo(xml, list, snippet);
  if (done === undefined) throw new Error(`the styles have no ${list}`);
  return counted(done, list, sizeOf(held, list) + sizeOf(added, list));
}

const innerText = (xml: string, list: string): string =>
  new RegExp(`<${list}\\b[^>]*>([\\s\\S]*)</${list}>`).exec(xml)?.[1] ?? "";

const FIRST_OWN_FORMAT = 164;

/** For every number format of ours, the user's number for the same code, or a new one. */
function formatNumbers(
  held: XmlElement,
  added: XmlElement,
): ReadonlyMap<number, number> {
  const known = new Map(
    formatsOf(held).map(({ code, number }) => [code, number]),
  );
  let next = Math.max(
    FIRST_OWN_FORMAT,
    ...formatsOf(held).map(({ number }) => number + 1),
  );
  const found = new Map<number, number>();
  for (const { code, number } of formatsOf(added)) {
    const same = known.get(code);
    found.set(number, same ?? next);
    if (same === undefined) next += 1;
  }
  return found;
}

const formatsOf = (
  styles: XmlElement,
): readonly { readonly code: string; readonly number: number }[] =>
  childrenNamed(childNamed(styles, "numFmts"), "numFmt").map(
    ({ attributes }) => ({
      code: attributes["formatCode"] ?? "",
      number: Number(attributes["numFmtId"]),
    }),
  );

function withFormats(
  xml: string,
  held: XmlElement,
  added: XmlElement,
  numbers: ReadonlyMap<number, number>,
): string {
  const taken = new Set(formatsOf(held).map(({ number }) => number));
  const fresh = formatsOf(added).filter(
    ({ number }) => !taken.has(numbers.get(number) ?? number),
  );
  const snippet = fresh
    .map(
      ({ code, number }) =>
        `<numFmt numFmtId="${numbers.get(number)}" formatCode="${escapeXml(code)}"/>`,
    )
    .join("");
  const done = appendedTo(xml, "numFmts", snippet);
  if (done === undefined)
    return insertedFirst(
      xml,
      `<numFmts count="${fresh.length}">${snippet}</numFmts>`,
    );
  return counted(done, "numFmts", taken.size + fresh.length);
}
