import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";
import { root } from "../../architecture/project-files";

export type Check = ((value: unknown) => boolean) & {
  errors?: readonly object[] | null;
};

interface Validator {
  compile(schema: object): Check;
  addSchema(schema: object, key: string): void;
}

/**
 * Microsoft's published schema of the unified manifest, version 1.25, or what one of its definitions says about each
 * thing of a list.
 */
export function publishedSchema(eachOf?: string): Check {
  const tool = createRequire(require.resolve("office-addin-manifest"));
  const ofManifest = createRequire(tool.resolve("@microsoft/app-manifest"));
  const Draft4 = (
    ofManifest("ajv-draft-04") as { default: new (o: object) => Validator }
  ).default;
  const validator = new Draft4({
    strict: false,
    logger: false,
    validateFormats: false,
    allErrors: true,
  });
  validator.addSchema(
    ofManifest(
      "./json-schemas/teams/v1.25/MicrosoftTeams.schema.json",
    ) as object,
    "published",
  );
  return validator.compile(
    eachOf === undefined
      ? { $ref: "published#" }
      : { type: "array", items: { $ref: `published#/definitions/${eachOf}` } },
  );
}

/** In a process of its own, because jest on Node 20 cannot load the ES modules it is made of. */
export function readByMicrosoft(
  name: string,
  text: string,
  how: "read" | "validate" = "read",
): unknown {
  const folder = mkdtempSync(path.join(tmpdir(), "manifest-"));
  const call =
    how === "read"
      ? "OfficeAddinManifest.readManifestFile"
      : "validateManifest";
  try {
    const file = path.join(folder, name);
    writeFileSync(file, text);
    return JSON.parse(
      execFileSync(
        process.execPath,
        [
          "-e",
          `require("office-addin-manifest").${call}(process.argv[1])
            .then((read) => process.stdout.write(JSON.stringify(read)))`,
          file,
        ],
        { encoding: "utf8", cwd: root },
      ),
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}
