import { manifestSource } from "../../../manifest/source";
import { manifestXml } from "../../../manifest/xml";
import { functions } from "../../functions";
import { functionsPage } from "./functions-page";
import { metadata } from "./metadata";

/** Every file of the add-in that is made from definitions, by name. ADDIN_BASE_URL says where it will be served. */
export function files(): Readonly<Record<string, string>> {
  const source = { ...manifestSource, base: base() };
  return {
    [source.metadata]: `${JSON.stringify(metadata(functions), null, 2)}\n`,
    [source.page]: functionsPage(source, functions),
    "manifest.xml": manifestXml(source),
  };
}

function base(): string {
  const given = process.env["ADDIN_BASE_URL"] ?? manifestSource.base;
  if (!given.startsWith("https://"))
    throw new Error(`ADDIN_BASE_URL must start with https://, not "${given}"`);
  return given.endsWith("/") ? given : `${given}/`;
}
