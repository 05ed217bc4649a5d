/**
 * Edits of a part's text that leave every other character as it was. A file may carry its elements under a prefix of its
 * own (`<x:worksheet>`); what is put in takes it over.
 */

/** The prefix, with its colon, of the root element: "" or "x:". */
export const prefixOf = (xml: string): string =>
  /<(?![?!])([A-Za-z_][\w.-]*:)?[A-Za-z_]/.exec(xml)?.[1] ?? "";

/** A snippet written without prefixes, under the prefix of the part it goes into. */
export const prefixed = (snippet: string, prefix: string): string =>
  prefix === ""
    ? snippet
    : snippet.replace(/<(\/?)(?=[A-Za-z])/g, `<$1${prefix}`);

/** Puts a snippet in as the last child of the one element of this name, or undefined when there is none. */
export function appendedTo(
  xml: string,
  element: string,
  snippet: string,
): string | undefined {
  const prefix = prefixOf(xml);
  const inside = prefixed(snippet, prefix);
  const name = `${prefix}${element}`;
  const closing = xml.lastIndexOf(`</${name}>`);
  if (closing >= 0) return xml.slice(0, closing) + inside + xml.slice(closing);
  const empty = new RegExp(`<${name}((?:\\s[^>]*?)?)\\s*/>`).exec(xml);
  if (!empty) return undefined;
  const opened = `<${name}${empty[1] ?? ""}>${inside}</${name}>`;
  return (
    xml.slice(0, empty.index) +
    opened +
    xml.slice(empty.index + empty[0].length)
  );
}

/** Puts a whole element in after the last of the named ones that the part has. */
export function insertedAfter(
  xml: string,
  elements: readonly string[],
  snippet: string,
): string {
  const prefix = prefixOf(xml);
  let at = -1;
  for (const element of elements) {
    const name = `${prefix}${element}`;
    const closing = xml.lastIndexOf(`</${name}>`);
    if (closing >= 0) at = Math.max(at, closing + name.length + 3);
    for (const empty of xml.matchAll(
      new RegExp(`<${name}(?:\\s[^>]*)?/>`, "g"),
    ))
      at = Math.max(at, empty.index + empty[0].length);
  }
  if (at < 0)
    throw new Error(`the part has none of the elements ${elements.join(", ")}`);
  return xml.slice(0, at) + prefixed(snippet, prefix) + xml.slice(at);
}

/** Puts a whole element in as the first child of the root. */
export function insertedFirst(xml: string, snippet: string): string {
  const prefix = prefixOf(xml);
  const root = new RegExp(`<${prefix}[A-Za-z][^>]*>`).exec(xml);
  if (!root) throw new Error("the part has no root element");
  const at = root.index + root[0].length;
  return xml.slice(0, at) + prefixed(snippet, prefix) + xml.slice(at);
}

/** The `count` of a list set to what it now holds; a list without one stays without. */
export const counted = (xml: string, element: string, count: number): string =>
  xml.replace(
    new RegExp(`(<${prefixOf(xml)}${element}\\b[^>]*?\\bcount=")\\d+(")`),
    `$1${count}$2`,
  );

/** The prefix a part gives the namespace of relationship ids, with the part as it must be to use it. */
export function withRelationPrefix(xml: string): {
  readonly xml: string;
  readonly prefix: string;
} {
  const given =
    /xmlns:([\w.-]+)="http:\/\/schemas\.openxmlformats\.org\/officeDocument\/2006\/relationships"/.exec(
      xml,
    )?.[1];
  if (given) return { xml, prefix: given };
  const root = new RegExp(`<${prefixOf(xml)}[A-Za-z][\\w.-]*`).exec(xml);
  if (!root) throw new Error("the part has no root element");
  const at = root.index + root[0].length;
  return {
    xml: `${xml.slice(0, at)} xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"${xml.slice(at)}`,
    prefix: "r",
  };
}
