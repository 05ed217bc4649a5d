import type { ManifestSource } from "../../../manifest/source";
import type { Definition } from "../../functions/define";

/** The page people find at the add-in's address: what it is, how it is installed, what it keeps, what it answers. */
export function frontPage(
  source: ManifestSource,
  definitions: readonly Definition[],
): string {
  const items = definitions.map(
    (definition) =>
      `<dt id="${definition.name}">${source.namespace}.${definition.name}(${text(argumentsOf(definition))})</dt>\n<dd>${text(definition.summary)}</dd>`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src 'self'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<link rel="icon" href="${source.icon(32)}">
<title>${text(source.title)}</title>
<style>
body { font: 16px/1.5 "Segoe UI", "Liberation Sans", Arial, sans-serif; max-width: 42rem; margin: 2rem auto; padding: 0 1rem; }
dt { font-family: ui-monospace, Consolas, monospace; font-size: 0.9rem; overflow-wrap: anywhere; }
dd { margin: 0 0 0.75rem; }
img { float: right; margin-left: 1rem; }
</style>
</head>
<body>
<main>
<img src="${source.icon(80)}" width="80" height="80" alt="">
<h1>${text(source.title)}</h1>
<p>${text(source.about)} Version ${source.version}.</p>
<h2 id="install">Install in Excel</h2>
<ul>
<li><a href="manifest.xml" download>manifest.xml</a>, for Excel on Windows, Mac and the web. On the web: <b>Home</b>, <b>Add-ins</b>, <b>More Add-ins</b>, <b>My Add-ins</b>, <b>Upload My Add-in</b>, this file.</li>
<li>For a whole office, whoever administers Microsoft 365 uploads the same file under <b>Integrated apps</b>.</li>
<li><a href="unified.zip" download>unified.zip</a>, the same add-in with the unified manifest, for administrators who want that form. Install one of both, never both.</li>
</ul>
<p>Then type <code>=${source.namespace}.</code> in a cell, or press <b>${text(source.button.label)}</b> on the Home tab.</p>
<p>No Excel at hand? <a href="workbench/index.html">Open the workbench</a>: the same functions and the same pane in this browser.</p>
<h2 id="what-is-kept">What is kept, and where</h2>
<p>Everything stays in your workbook. The add-in sends nothing anywhere, keeps no account and counts nobody. Its files come from this address; Excel's own connecting library comes from Microsoft, whose terms apply to it.</p>
<h2 id="terms">Terms and care</h2>
<p>MIT licence, without any warranty. Syrup at filling temperature scalds at once. What is shown is arithmetic, not a licence: your weights-and-measures, food-safety and process authorities decide.</p>
<h2 id="functions">The functions</h2>
<dl>
${items.join("\n")}
</dl>
</main>
</body>
</html>
`;
}

const argumentsOf = ({ args }: Definition): string =>
  Object.entries(args)
    .map(([name, term]) => ("otherwise" in term ? `[${name}]` : name))
    .join(", ");

const text = (words: string): string =>
  words
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
