/** The layers object of tests/architecture/layers.cjs. */
export type Layers = Readonly<
  Record<
    string,
    {
      readonly may: readonly string[];
      readonly npm: readonly string[];
      readonly node?: boolean;
      readonly outside?: readonly string[];
    }
  >
>;

/** The layers as a Markdown table, its columns aligned as Prettier aligns them. */
export function layersTable(layers: Layers): string {
  const rows = [
    ["folder", "may import", "npm packages"],
    ...Object.entries(layers).map(([folder, { may, npm, node, outside }]) => [
      code(folder),
      orDash([
        ...may,
        ...(outside ?? []).map((place) => `${place} (top level)`),
      ]),
      orDash([...npm.map(code), ...(node ? ["Node built-ins"] : [])]),
    ]),
  ];
  const widths = [0, 1, 2].map((c) =>
    Math.max(...rows.map((row) => row[c]?.length ?? 0)),
  );
  const line = (cells: readonly string[], fill = " "): string =>
    `| ${cells.map((cell, c) => cell.padEnd(widths[c] ?? 0, fill)).join(" | ")} |`;
  const [heading = [], ...body] = rows;
  return [
    line(heading),
    line(["", "", ""], "-"),
    ...body.map((row) => line(row)),
  ].join("\n");
}

const code = (name: string): string => `\`${name}\``;
const orDash = (words: readonly string[]): string =>
  words.length === 0 ? "-" : words.join(", ");
