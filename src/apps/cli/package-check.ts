import path from "node:path";
import type { PackageFiles } from "./package-files";

/**
 * What is wrong with a package, a sentence each: a manifest or page that names a file that is not in it, or a page that
 * loads something from elsewhere. (The XML manifest is checked when it is made.)
 */
export const packageFaults = (
  files: PackageFiles,
  base: string,
): readonly string[] => [...missingFiles(files, base), ...strangers(files)];

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
