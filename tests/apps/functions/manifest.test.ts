import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { manifestSource } from "../../../manifest/source";
import { manifestXml } from "../../../manifest/xml";

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
}

const xml = manifestXml(manifestSource);
const all = everyElement(parse(xml));

// Source: the order of elements Microsoft publishes for the add-in-only manifest (office-js-docs, "How to find the
// proper order of manifest elements", read 2026-08).
const ORDER: Readonly<Record<string, readonly string[]>> = {
  OfficeApp:
    "Id AlternateId Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl AppDomains Hosts Requirements DefaultSettings Permissions Dictionary VersionOverrides ExtendedOverrides".split(
      " ",
    ),
  VersionOverrides: ["Description", "Requirements", "Hosts", "Resources"],
  "VersionOverrides Host": ["Runtimes", "AllFormFactors", "DesktopFormFactor"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  Resources: ["bt:Images", "bt:Urls", "bt:ShortStrings", "bt:LongStrings"],
};

test("the manifest's elements stand in the prescribed order", () => {
  for (const { element, inside } of all) {
    const key =
      element.name === "Host" && inside.includes("VersionOverrides")
        ? "VersionOverrides Host"
        : element.name;
    const order = ORDER[key];
    if (!order || (key === "Host" && element.children.length === 0)) continue;
    const places = element.children.map(({ name }) => order.indexOf(name));
    expect([key, places]).toEqual([key, [...places].sort((a, b) => a - b)]);
    expect(places).not.toContain(-1);
  }
});

test("every resource the manifest names exists, is used, and is short enough", () => {
  const defined = all
    .filter(({ element }) => element.name.startsWith("bt:"))
    .map(({ element }) => element.attributes["id"])
    .filter((id) => id !== undefined);
  const used = all
    .map(({ element }) => element.attributes["resid"])
    .filter((id) => id !== undefined);
  expect([...new Set(used)].sort()).toEqual([...defined].sort());
  expect(used.filter((id) => id.length > 32)).toEqual([]);
});

test("with one long-lived runtime no pane has an id of its own", () => {
  expect(all.some(({ element }) => element.attributes["lifetime"])).toBe(true);
  expect(all.some(({ element }) => element.name === "TaskpaneId")).toBe(false);
});

test("every address in the manifest is https, and every icon it names is there", () => {
  const addresses = all
    .map(({ element }) => element.attributes["DefaultValue"] ?? "")
    .filter((value) => /\.(png|html|js|json)$/.test(value));
  expect(addresses.length).toBeGreaterThan(5);
  expect(addresses.filter((a) => !a.startsWith("https://"))).toEqual([]);
  for (const file of Object.values(manifestSource.icons)) {
    const png = readFileSync(
      path.join(__dirname, "../../../manifest/icons", path.basename(file)),
    );
    const size = Number(/\d+/.exec(path.basename(file))?.[0]);
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([size, size]);
  }
});

test("Microsoft's own manifest reader finds our name, version and permissions", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "manifest-"));
  try {
    const file = path.join(folder, "manifest.xml");
    writeFileSync(file, xml);
    expect(readByMicrosoftsReader(file)).toMatchObject({
      id: manifestSource.id,
      version: manifestSource.version,
      displayName: "Tare & Tally",
      hosts: ["Workbook"],
      permissions: "ReadWriteDocument",
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
});

/** In a process of its own, because jest on Node 20 cannot load the ES modules it is made of. */
const readByMicrosoftsReader = (file: string): unknown =>
  JSON.parse(
    execFileSync(
      process.execPath,
      [
        "-e",
        `require("office-addin-manifest").OfficeAddinManifest.readManifestFile(process.argv[1])
          .then((read) => process.stdout.write(JSON.stringify(read)))`,
        file,
      ],
      { encoding: "utf8", cwd: path.join(__dirname, "../../..") },
    ),
  );

/** Enough of XML for our own output; throws when tags do not pair. */
function parse(text: string): Element {
  const top: Element = { name: "", attributes: {}, children: [] };
  const open = [top];
  for (const [, closing, name = "", inner = "", alone] of text.matchAll(
    /<(\/?)([A-Za-z][\w:]*)((?:\s+[\w:]+="[^"]*")*)\s*(\/?)>/g,
  )) {
    if (closing) {
      if (open.pop()?.name !== name)
        throw new Error(`</${name}> closes nothing`);
      continue;
    }
    const attributes = Object.fromEntries(
      [...inner.matchAll(/([\w:]+)="([^"]*)"/g)].map(([, key, value]) => [
        key,
        value,
      ]),
    ) as Record<string, string>;
    const element: Element = { name, attributes, children: [] };
    open.at(-1)?.children.push(element);
    if (!alone) open.push(element);
  }
  if (open.length !== 1) throw new Error("a tag is left open");
  return top;
}

function everyElement(
  from: Element,
  inside: readonly string[] = [],
): readonly { element: Element; inside: readonly string[] }[] {
  return from.children.flatMap((element) => [
    { element, inside },
    ...everyElement(element, [...inside, element.name]),
  ]);
}
