import { readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { functionNamed } from "../../src/functions";
import { answer } from "../../src/functions/answer";

const demo = join(__dirname, "../../sample-workbooks/fernkettle-hollow");

export type DemoRow = Readonly<Record<string, string>>;

/** The rows of one of the demo farm's files, by heading, as they are written there. */
export const demoRows = (name: string): readonly DemoRow[] =>
  Papa.parse<DemoRow>(readFileSync(join(demo, name), "utf8").trimEnd(), {
    header: true,
  }).data;

/** What a worksheet cell with this function shows. */
export function cell(name: string, ...args: readonly unknown[]): unknown {
  const definition = functionNamed(name);
  if (!definition) throw new Error(`No function ${name}`);
  return answer(definition, args);
}
