import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { bookTablesFromCsv, type CsvFile } from "../../src/book/from-csv";

const demo = join(__dirname, "../../sample-workbooks/fernkettle-hollow");

/** One CSV text as the file reader gives it; no cell of our test texts holds a line break. */
export function csvFile(text: string): CsvFile {
  const [headings = [], ...rest] = Papa.parse<string[]>(text.trimEnd()).data;
  return {
    headings,
    rows: rest.map((cells, i) => ({ line: i + 2, cells })),
  };
}

const texts: ReadonlyMap<string, string> = new Map(
  readdirSync(demo)
    .filter((name) => name.endsWith(".csv"))
    .map((name) => [name, readFileSync(join(demo, name), "utf8")]),
);

/** The demo farm's folder, with some files' texts changed or (undefined) taken away. */
export function demoFolder(
  changes: Readonly<
    Record<string, ((text: string) => string) | undefined>
  > = {},
): ReadonlyMap<string, CsvFile> {
  const folder = new Map<string, CsvFile>();
  for (const name of new Set([...texts.keys(), ...Object.keys(changes)])) {
    const change = name in changes ? changes[name] : (text: string) => text;
    if (change) folder.set(name, csvFile(change(texts.get(name) ?? "")));
  }
  return folder;
}

/** Changes one word or line of a file, and fails if it is not there. */
export const replacing =
  (from: string, to: string) =>
  (text: string): string => {
    if (!text.includes(from)) throw new Error(`no "${from}" in the demo file`);
    return text.replace(from, to);
  };

/** What only a run plan asks of the settings. */
const PLAN_SETTINGS =
  /^(Least kettle fill|Empty case|Empty pallet|Best-by months|Day length|Break after|Break length),.*\n/gm;

/** The settings file of a farm that has entered nothing a run plan alone asks for, with other lines at its end. */
export const barePlanSettings =
  (lines = "") =>
  (text: string): string => {
    const bare = text.replace(PLAN_SETTINGS, "");
    if (bare === text) throw new Error("no setting of run plans in the demo");
    return `${bare.trimEnd()}\n${lines}\n`;
  };

export const demoTables = () => bookTablesFromCsv(demoFolder()).tables;
