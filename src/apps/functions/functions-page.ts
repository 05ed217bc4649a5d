import type { ManifestSource } from "../../../manifest/source";
import type { Definition } from "../../functions/define";

/** The page Excel keeps open for the functions: it loads them and lists what they answer. */
export function functionsPage(
  source: ManifestSource,
  definitions: readonly Definition[],
): string {
  const items = definitions.map(
    (definition) =>
      `<dt>${source.namespace}.${definition.name}</dt>\n<dd>${text(definition.summary)}</dd>`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${text(source.title)}</title>
<script src="https://appsforoffice.microsoft.com/lib/1/hosted/office.js"></script>
<script src="${source.script}"></script>
<style>
body { font: 14px/1.4 system-ui, sans-serif; margin: 1rem; }
dt { font-weight: 600; overflow-wrap: anywhere; }
dd { margin: 0 0 0.75rem; }
</style>
</head>
<body>
<h1>${text(source.title)}</h1>
<p>The functions are ready. Type <code>=${source.namespace}.</code> in a cell.</p>
<dl>
${items.join("\n")}
</dl>
</body>
</html>
`;
}

const text = (words: string): string =>
  words.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
