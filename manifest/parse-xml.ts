/** One element of a manifest. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Element[];
  /** The text directly inside it, without space around it. */
  readonly text: string;
}

interface Growing {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Growing[];
  text: string;
}

/** Enough of XML for a manifest (no CDATA, no document type); throws, with a sentence, when tags do not pair. */
export function parseXml(xml: string): Element {
  const top: Growing = { name: "", attributes: {}, children: [], text: "" };
  const open = [top];
  const body = xml.replace(/<\?[^>]*\?>|<!--[\s\S]*?-->/g, "");
  let last = 0;
  for (const tag of body.matchAll(
    /<(\/?)([A-Za-z][\w:]*)((?:\s+[\w:]+\s*=\s*"[^"]*")*)\s*(\/?)>/g,
  )) {
    const [whole, closing, name = "", inner = "", alone] = tag;
    const inside = open.at(-1);
    const between = body.slice(last, tag.index).trim();
    if (/[<>]/.test(between))
      throw new Error(`what stands before <${name}> is no XML: ${between}`);
    if (inside) inside.text += decoded(between);
    last = tag.index + whole.length;
    if (closing) {
      if (open.length < 2 || open.pop()?.name !== name)
        throw new Error(`</${name}> closes nothing`);
      continue;
    }
    const element: Growing = {
      name,
      attributes: attributesOf(inner),
      children: [],
      text: "",
    };
    inside?.children.push(element);
    if (!alone) open.push(element);
  }
  if (open.length !== 1) throw new Error(`<${open.at(-1)?.name}> is left open`);
  const [root, ...more] = top.children;
  if (!root || more.length > 0 || body.slice(last).trim() !== "")
    throw new Error("there must be one outermost element");
  return root;
}

const attributesOf = (inner: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    [...inner.matchAll(/([\w:]+)\s*=\s*"([^"]*)"/g)].map(
      ([, key = "", value = ""]) => [key, decoded(value)],
    ),
  );

const decoded = (text: string): string =>
  text
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&amp;/g, "&");
