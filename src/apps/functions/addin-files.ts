import { manifestFaults } from "../../../manifest/faults";
import { manifestSource } from "../../../manifest/source";
import { unifiedManifest } from "../../../manifest/unified";
import { manifestXml } from "../../../manifest/xml";
import { functions } from "../../functions";
import { baseAddress } from "../base-address";
import { frontPage } from "./front-page";
import { metadata } from "./metadata";

/** Where the files will be served; left out, the address `npm run excel` serves at. */
export interface Served {
  readonly base?: string | undefined;
}

/** Every file of the add-in that is made from definitions, by name. Throws when the manifest would have faults. */
export function files({ base }: Served = {}): Readonly<Record<string, string>> {
  const source = {
    ...manifestSource,
    base: baseAddress(base ?? manifestSource.base),
  };
  const xml = manifestXml(source);
  const faults = manifestFaults(xml);
  if (faults.length > 0)
    throw new Error(`manifest.xml has faults: ${faults.join("; ")}`);
  return {
    [source.metadata]: json(metadata(functions, source.base + source.front)),
    [source.front]: frontPage(source, functions),
    "manifest.xml": xml,
    "unified/manifest.json": json(unifiedManifest(source)),
  };
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
