/** An XML element without its namespace prefix; attributes keep theirs. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  /** The text directly inside, entities resolved. */
  readonly text: string;
}

interface Growing {
  readonly name: string;
  readonly tag: string;
  readonly attributes: Record<string, string>;
  readonly children: Growing[];
  text: string;
}

const token =
  /<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<!\[CDATA\[([\s\S]*?)\]\]>|<!DOCTYPE[^>]*>|<\/([^\s>]+)\s*>|<([^\s/>!?]+)((?:"[^"]*"|'[^']*'|[^"'>])*?)(\/?)>|([^<]+)/g;
const attribute = /([^\s=]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

/** The root element of an XML document. Throws an ordinary error when tags do not match. */
export function parseXml(xml: string): XmlElement {
  const root: Growing = {
    name: "",
    tag: "",
    attributes: {},
    children: [],
    text: "",
  };
  const open: Growing[] = [root];
  let end = xml.startsWith("\uFEFF") ? 1 : 0;
  for (const found of xml.slice(end).matchAll(token)) {
    const [whole, cdata, closing, opening, attributes, selfClosing, text] =
      found;
    end += whole.length;
    const top = open[open.length - 1] as Growing;
    if (text !== undefined) top.text += unescapeXml(text);
    else if (cdata !== undefined) top.text += cdata;
    else if (closing !== undefined) {
      if (top.tag !== closing)
        throw new Error(`</${closing}> closes <${top.tag}>`);
      open.pop();
    } else if (opening !== undefined) {
      const element = elementOf(opening, attributes ?? "");
      top.children.push(element);
      if (!selfClosing) open.push(element);
    }
  }
  const [document] = root.children;
  if (end < xml.length || open.length > 1 || !document)
    throw new Error("XML ends too early");
  return document;
}

const elementOf = (tag: string, attributes: string): Growing => ({
  name: tag.slice(tag.indexOf(":") + 1),
  tag,
  attributes: Object.fromEntries(
    Array.from(attributes.matchAll(attribute), ([, name, double, single]) => [
      name as string,
      unescapeXml(double ?? single ?? ""),
    ]),
  ),
  children: [],
  text: "",
});

export const childrenNamed = (
  element: XmlElement | undefined,
  name: string,
): readonly XmlElement[] =>
  element?.children.filter((child) => child.name === name) ?? [];

export const childNamed = (
  element: XmlElement | undefined,
  name: string,
): XmlElement | undefined =>
  element?.children.find((child) => child.name === name);

/** Every element of this name below, at any depth. */
export const allNamed = (
  element: XmlElement,
  name: string,
): readonly XmlElement[] =>
  element.children.flatMap((child) =>
    child.name === name
      ? [child, ...allNamed(child, name)]
      : allNamed(child, name),
  );

/** The relationship id an element carries, whatever prefix the file gave its namespace. */
export const relationId = (element: XmlElement): string | undefined =>
  Object.entries(element.attributes).find(([key]) => key.endsWith(":id"))?.[1];

/** Whether an attribute says yes; absent means `otherwise`. */
export const flagOf = (
  element: XmlElement | undefined,
  name: string,
  otherwise = false,
): boolean => {
  const value = element?.attributes[name];
  return value === undefined ? otherwise : value === "1" || value === "true";
};

const entities: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
};

function unescapeXml(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(/&(#x[0-9a-fA-F]+|#\d+|\w+);/g, (whole, name: string) => {
    if (!name.startsWith("#")) return entities[name] ?? whole;
    return String.fromCodePoint(
      name[1] === "x"
        ? parseInt(name.slice(2), 16)
        : parseInt(name.slice(1), 10),
    );
  });
}

export const escapeXml = (text: string): string =>
  text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
