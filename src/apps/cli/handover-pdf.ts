import { execFile } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { unusable } from "../../measures/cannot-answer";

/** Makes the pages of a copy beside it, with LibreOffice. Refuses (#VALUE!) where it is not installed; the copy stays. */
export async function pdfOf(file: string): Promise<string> {
  const profile = mkdtempSync(path.join(tmpdir(), "tare-and-tally-pages-"));
  const made = file.replace(/\.xlsx$/i, ".pdf");
  try {
    await promisify(execFile)(
      process.env["SOFFICE"] ?? "soffice",
      [
        `-env:UserInstallation=${pathToFileURL(profile).href}`,
        "--headless",
        "--norestore",
        "--convert-to",
        "pdf",
        "--outdir",
        path.dirname(file),
        file,
      ],
      { timeout: 180_000 },
    );
  } catch (problem) {
    throw unusable(
      (problem as NodeJS.ErrnoException).code === "ENOENT"
        ? `${path.basename(file)} is written; --pdf needs LibreOffice, which is not installed: print it from the program you open it with.`
        : `${path.basename(file)} is written; LibreOffice made no pages of it.`,
    );
  } finally {
    rmSync(profile, { recursive: true, force: true });
  }
  if (!existsSync(made))
    throw unusable(
      `${path.basename(file)} is written; LibreOffice made no pages of it.`,
    );
  return made;
}
