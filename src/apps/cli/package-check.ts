import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";
import type { PackageFiles } from "./package-files";

/**
 * What is wrong with a package, a sentence each: a manifest that names a file that is not in it, a script or style from
 * elsewhere, a unified manifest that Microsoft's own checker refuses. (The XML is checked when it is made.)
 */
export async function packageFaults(
  root: string,
  files: PackageFiles,
  base: string,
): Promise<readonly string[]> {
  return [
    ...missingFiles(files, base),
    ...strangers(files),
    ...(await schemaFaults(root, textOf(files, "unified/manifest.json"))),
  ];
}

function textOf(files: PackageFiles, file: string): string {
  const bytes = files.get(file);
  if (!bytes) throw new Error(`${file} is not in the package`);
  return bytes.toString("utf8");
}

function missingFiles(files: PackageFiles, base: string): readonly string[] {
  const inManifests = ["manifest.xml", "unified/manifest.json"].flatMap(
    (manifest) =>
      [...textOf(files, manifest).matchAll(/"(https:[^"]+)"/g)]
        .map(([, address = ""]) => address.replace(/&amp;/g, "&"))
        .filter((address) => address.startsWith(base))
        .map((address) => ({
          manifest,
          file: address.slice(base.length).replace(/#.*$/, ""),
        })),
  );
  const inPages = pagesOf(files).flatMap(([page, html]) =>
    addressesIn(html, /./)
      .filter((address) => !/^(https?:|data:|#)/.test(address))
      .map((address) => ({
        manifest: page,
        file: path.posix.join(
          path.posix.dirname(page),
          address.replace(/#.*$/, ""),
        ),
      })),
  );
  return [...inManifests, ...inPages]
    .filter(({ file }) => !files.has(file))
    .map(({ manifest, file }) => `${manifest} names ${file}, which is missing`);
}

const pagesOf = (files: PackageFiles): readonly (readonly [string, string])[] =>
  [...files]
    .filter(([file]) => file.endsWith(".html"))
    .map(([file, bytes]) => [file, bytes.toString("utf8")] as const);

/** Excel's connecting library is the only thing that may come from elsewhere: its maker asks for that. */
const LIBRARY = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

const strangers = (files: PackageFiles): readonly string[] =>
  pagesOf(files).flatMap(([page, html]) =>
    addressesIn(html, /^(script|link|img|iframe)$/)
      .filter((address) => /^https?:/.test(address) && address !== LIBRARY)
      .map((address) => `${page} loads ${address} from elsewhere`),
  );

/** Addresses in src and href of such elements; a page made small has no quotes round them. */
const addressesIn = (html: string, elements: RegExp): readonly string[] =>
  [
    ...html.matchAll(
      /<([a-z]+)\s[^>]*?\b(?:src|href)=(?:"([^"]*)"|([^"'\s>]+))/g,
    ),
  ]
    .filter(([, element = ""]) => elements.test(element))
    .map(([, , quoted, bare]) => quoted ?? bare ?? "");

interface Checker {
  validateManifest(file: string): Promise<{
    readonly isValid: boolean;
    readonly report?: {
      readonly errors?: readonly { readonly content?: string }[];
    };
  }>;
}

async function schemaFaults(
  root: string,
  manifest: string,
): Promise<readonly string[]> {
  const { validateManifest } = createRequire(path.join(root, "package.json"))(
    "office-addin-manifest",
  ) as Checker;
  const folder = mkdtempSync(path.join(tmpdir(), "manifest-"));
  try {
    const file = path.join(folder, "manifest.json");
    writeFileSync(file, manifest);
    const { isValid, report } = await validateManifest(file);
    if (isValid) return [];
    const said = (report?.errors ?? []).map(({ content }) => content ?? "?");
    return [`unified/manifest.json is refused: ${said.join(", ")}`];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
