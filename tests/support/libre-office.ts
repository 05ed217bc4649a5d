import { execFileSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { basename, extname, join } from "node:path";
import { pathToFileURL } from "node:url";

interface Conversion {
  /** What to make: "xlsx", "csv" (the first sheet only) or "pdf". */
  readonly to: "xlsx" | "csv" | "pdf";
  /** Work out every formula anew instead of trusting the stored results. Functions LibreOffice lacks then give #NAME?. */
  readonly recalculate?: boolean;
}

/**
 * Converts files with LibreOffice and returns the paths of the results, in the order given, in a new temporary folder.
 * Starting the program takes seconds, a further file almost nothing: pass several files in one call.
 * Throws when LibreOffice is missing or does not produce one of the files.
 */
export function convertWithLibreOffice(
  files: readonly string[],
  { to, recalculate = false }: Conversion,
): readonly string[] {
  const names = files.map((file) => basename(file, extname(file)));
  if (new Set(names).size < names.length)
    throw new Error(
      `Two files to convert have the same name: ${names.join(", ")}`,
    );
  const out = mkdtempSync(join(tmpdir(), "tare-and-tally-converted-"));
  const profile = mkdtempSync(join(tmpdir(), "tare-and-tally-office-"));
  try {
    writeSettings(profile, recalculate);
    const said = execFileSync(
      process.env["SOFFICE"] ?? "soffice",
      [
        `-env:UserInstallation=${pathToFileURL(profile).href}`,
        "--headless",
        "--norestore",
        "--convert-to",
        to === "xlsx" ? "xlsx:Calc MS Excel 2007 XML" : to,
        "--outdir",
        out,
        ...files,
      ],
      { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"], timeout: 180_000 },
    );
    return names.map((name) => {
      const path = join(out, `${name}.${to}`);
      if (!existsSync(path))
        throw new Error(`LibreOffice made no ${name}.${to}. It said: ${said}`);
      return path;
    });
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
}

/** 0 = always recalculate on load, 1 = never; LibreOffice's own default asks, which means never without a window. */
function writeSettings(profile: string, recalculate: boolean): void {
  const mode = recalculate ? 0 : 1;
  const setting = (name: string): string =>
    `<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="${name}" oor:op="fuse"><value>${mode}</value></prop></item>`;
  mkdirSync(join(profile, "user"), { recursive: true });
  writeFileSync(
    join(profile, "user", "registrymodifications.xcu"),
    `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
${setting("OOXMLRecalcMode")}
${setting("ODFRecalcMode")}
</oor:items>
`,
  );
}
