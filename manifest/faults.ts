import { parseXml, type Element } from "./parse-xml";

/**
 * What is wrong with an add-in-only manifest, a sentence each; nothing for a sound one. There is no published schema
 * that can be run offline, so the published order of elements and the limits are held here.
 */
export function manifestFaults(xml: string): readonly string[] {
  let root: Element;
  try {
    root = parseXml(xml);
  } catch (problem) {
    return [`It is no XML: ${(problem as Error).message}`];
  }
  const all = everyElement(root);
  return [
    ...orderFaults(all),
    ...resourceFaults(all),
    ...addressFaults(all),
    ...lengthFaults(all),
    ...runtimeFaults(all),
    ...identityFaults(root),
  ];
}

interface Placed {
  readonly element: Element;
  /** Names of what it stands in, outermost first. */
  readonly inside: readonly string[];
}

const everyElement = (
  element: Element,
  inside: readonly string[] = [],
): readonly Placed[] => [
  { element, inside },
  ...element.children.flatMap((child) =>
    everyElement(child, [...inside, element.name]),
  ),
];

const words = (text: string): readonly string[] => text.split(" ");

// Source: Microsoft's "How to find the proper order of manifest elements" (office-js-docs, manifest-element-ordering),
// read 2026-08; for the ribbon's own elements the order of its add-in-command samples.
const ORDER: Readonly<Record<string, readonly string[]>> = {
  OfficeApp: words(
    "Id AlternateId Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl AppDomains Hosts Requirements DefaultSettings Permissions Dictionary VersionOverrides ExtendedOverrides",
  ),
  VersionOverrides: words("Description Requirements Hosts Resources"),
  "VersionOverrides Host": words(
    "Runtimes AllFormFactors DesktopFormFactor MobileFormFactor",
  ),
  DesktopFormFactor: words("GetStarted FunctionFile ExtensionPoint"),
  "CustomFunctions ExtensionPoint": words("Script Page Metadata Namespace"),
  Group: words("Label Icon Control"),
  Control: words("Label Supertip Icon Action"),
  Supertip: words("Title Description"),
  Resources: words("bt:Images bt:Urls bt:ShortStrings bt:LongStrings"),
};

function orderFaults(all: readonly Placed[]): readonly string[] {
  return all.flatMap(({ element, inside }) => {
    const order = ORDER[kindOf(element, inside)];
    if (!order) return [];
    const places = element.children.map(({ name }) => order.indexOf(name));
    return element.children.flatMap(({ name }, i) => {
      const place = places[i] ?? -1;
      if (place < 0) return [`<${name}> does not belong in <${element.name}>`];
      return i > 0 && place < (places[i - 1] ?? 0)
        ? [`<${name}> is out of order in <${element.name}>`]
        : [];
    });
  });
}

function kindOf(element: Element, inside: readonly string[]): string {
  if (element.name === "Host" && inside.includes("VersionOverrides"))
    return "VersionOverrides Host";
  return element.name === "ExtensionPoint"
    ? `${element.attributes["xsi:type"]} ExtensionPoint`
    : element.name;
}

function resourceFaults(all: readonly Placed[]): readonly string[] {
  const defined = texts(all, ({ name, attributes }) =>
    name.startsWith("bt:") ? attributes["id"] : undefined,
  );
  const used = texts(all, ({ attributes }) => attributes["resid"]);
  return [
    ...[...new Set(used)]
      .filter((id) => !defined.includes(id))
      .map((id) => `resid "${id}" is used and nowhere defined`),
    ...defined
      .filter((id) => !used.includes(id))
      .map((id) => `resource "${id}" is defined and nowhere used`),
    ...defined
      .filter((id, i) => defined.indexOf(id) !== i)
      .map((id) => `resource "${id}" is defined twice`),
    ...defined
      .filter((id) => id.length > 32)
      .map((id) => `resource "${id}" has an id longer than 32 characters`),
  ];
}

const texts = (
  all: readonly Placed[],
  of: (element: Element) => string | undefined,
): readonly string[] =>
  all.map(({ element }) => of(element)).filter((text) => text !== undefined);

const HOLDS_ADDRESS = /(Url|SourceLocation|bt:Image)$/;

function addressFaults(all: readonly Placed[]): readonly string[] {
  return all.flatMap(({ element: { name, attributes } }) => {
    const address = attributes["DefaultValue"];
    if (!HOLDS_ADDRESS.test(name) || address === undefined) return [];
    if (!address.startsWith("https://"))
      return [`<${name}> must be an https address, not "${address}"`];
    return address.length > 2048 ? [`<${name}> is longer than 2048`] : [];
  });
}

// Source: MS-OWEMXML, simple types ShortString and LongString, and the published descriptions of the elements.
const LONGEST: Readonly<Record<string, number>> = {
  ProviderName: 125,
  DisplayName: 125,
  Description: 250,
  "bt:ShortStrings": 125,
  "bt:LongStrings": 250,
};

function lengthFaults(all: readonly Placed[]): readonly string[] {
  return all.flatMap(({ element, inside }) => {
    const longest = LONGEST[element.name] ?? LONGEST[inside.at(-1) ?? ""];
    const text = element.attributes["DefaultValue"] ?? element.text;
    return longest !== undefined && text.length > longest
      ? [`<${element.name}> is longer than ${longest} characters: ${text}`]
      : [];
  });
}

/** With one long-lived runtime the page, the function file and the pane are the same address, and no pane has an id. */
function runtimeFaults(all: readonly Placed[]): readonly string[] {
  const runtime = all.find(
    ({ element }) =>
      element.name === "Runtime" && element.attributes["lifetime"] === "long",
  );
  if (!runtime) return ["there is no runtime with a long lifetime"];
  const page = runtime.element.attributes["resid"];
  const mustBePage = all.filter(
    ({ element, inside }) =>
      element.name === "FunctionFile" ||
      (element.name === "SourceLocation" &&
        ["Page", "Action"].includes(inside.at(-1) ?? "")),
  );
  return [
    ...mustBePage
      .filter(({ element }) => element.attributes["resid"] !== page)
      .map(
        ({ element, inside }) =>
          `<${element.name}> in <${inside.at(-1)}> must be the runtime's page, "${page}"`,
      ),
    ...all
      .filter(({ element }) => element.name === "TaskpaneId")
      .map(() => "<TaskpaneId> must not be used with a shared runtime"),
  ];
}

const GUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

function identityFaults(root: Element): readonly string[] {
  const said = (name: string): string =>
    root.children.find((child) => child.name === name)?.text ?? "";
  return [
    ...(GUID.test(said("Id")) ? [] : [`<Id> is no GUID: "${said("Id")}"`]),
    ...(/^\d{1,5}(\.\d{1,5}){3}$/.test(said("Version"))
      ? []
      : [`<Version> must be four numbers, not "${said("Version")}"`]),
  ];
}
