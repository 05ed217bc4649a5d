import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { median } from "./clock";
import { type Figure, kilobytes, milliseconds } from "./figure";

const FUNCTIONS_KB = 60;
const PANE_KB = 250;
const WORKBENCH_KB = 400;
const LOAD_MS = 100;

/** What a browser fetches: the functions, and the workbench's first piece and all the others. */
export async function bundleFigures(root: string): Promise<readonly Figure[]> {
  await built(root, ["functions", "taskpane", "workbench"]);
  const workbench = path.join(root, "dist/workbench");
  const page = readFileSync(path.join(workbench, "index.html"), "utf8");
  const pieces = readdirSync(workbench).filter((file) =>
    /\.(js|css)$/.test(file),
  );
  const first = pieces.filter((file) => page.includes(file));
  const later = pieces.filter((file) => !first.includes(file));
  return [
    sizeFigure(
      "What Excel loads for the functions",
      [path.join(root, "dist/addin/functions.js")],
      FUNCTIONS_KB,
    ),
    sizeFigure(
      "Excel's pane, before a second view is opened",
      panePieces(path.join(root, "dist/taskpane")),
      PANE_KB,
    ),
    sizeFigure(
      "Workbench, before anything is shown",
      first.map((file) => path.join(workbench, file)),
      WORKBENCH_KB,
    ),
    sizeFigure(
      `Workbench, ${later.length} pieces fetched when they are wanted`,
      later.map((file) => path.join(workbench, file)),
    ),
  ];
}

/** The first script and what it fetches together for the pane: the heaviest such list in it (the others tell of trouble). */
function panePieces(folder: string): readonly string[] {
  const first = path.join(folder, "taskpane.js");
  const together = [
    ...readFileSync(first, "utf8").matchAll(/Promise\.all\(\[([^\]]+)\]\)/g),
  ].map(([, list = ""]) => list.match(/\d+/g) ?? []);
  const pieces = together.map((ids) =>
    readdirSync(path.join(folder, "pane"))
      .filter(
        (file) =>
          file.endsWith(".js") && ids.some((id) => file.startsWith(`${id}.`)),
      )
      .map((file) => path.join(folder, "pane", file)),
  );
  const weight = (files: readonly string[]): number =>
    files.reduce((sum, file) => sum + readFileSync(file).length, 0);
  const pane = pieces.toSorted((a, b) => weight(b) - weight(a))[0];
  if (!pane) throw new Error("The first script of the pane fetches nothing");
  return [first, ...pane];
}

/** A new process loads the functions as Excel does; the yardstick is only compiling the same script. */
export function loadFigures(root: string, rounds: number): readonly Figure[] {
  const script = path.join(root, "dist/addin/functions.js");
  const times = Array.from({ length: rounds }, () => coldLoad(script));
  const load = median(times.map((time) => time.load));
  return [
    {
      work: "Load the functions and hand every one to Excel, first time in a new process",
      takes: milliseconds(load),
      yardstick: milliseconds(median(times.map((time) => time.compile))),
      ratio: median(times.map((time) => time.load / time.compile)),
      aim: `under ${LOAD_MS} ms`,
      isMet: load < LOAD_MS,
    },
  ];
}

function sizeFigure(
  work: string,
  files: readonly string[],
  aimInKilobytes?: number,
): Figure {
  const contents = files.map((file) => readFileSync(file));
  const raw = contents.reduce((sum, bytes) => sum + bytes.length, 0);
  // As served: each file is zipped by itself.
  const zipped = contents.reduce(
    (sum, bytes) => sum + gzipSync(bytes).length,
    0,
  );
  return {
    work,
    takes: `${kilobytes(zipped)} zipped`,
    yardstick: kilobytes(raw),
    ratio: zipped / raw,
    ...(aimInKilobytes === undefined
      ? {}
      : {
          aim: `under ${aimInKilobytes} KB zipped`,
          isMet: zipped < aimInKilobytes * 1024,
        }),
  };
}

async function built(root: string, names: readonly string[]): Promise<void> {
  // Not bundled: webpack is no part of what it builds.
  const { buildWhenStale } = createRequire(path.join(root, "package.json"))(
    "./src/apps/cli/build-when-stale.cjs",
  ) as { buildWhenStale: (root: string, name: string) => Promise<void> };
  for (const name of names) await buildWhenStale(root, name);
}

interface ColdLoad {
  readonly compile: number;
  readonly load: number;
}

// In a process of its own, because an engine that has seen a script keeps what it made of it. The yardstick script
// differs by a space, so that it is not the same one.
const COLD_LOAD = `
const { readFileSync } = require("node:fs");
const { createContext, Script } = require("node:vm");
const text = readFileSync(process.argv[1], "utf8");
const clock = (work) => { const start = performance.now(); work(); return performance.now() - start; };
const compile = clock(() => new Script(text + " "));
const associated = [];
const CustomFunctions = { associate: (id, run) => associated.push([id, run]), Error, ErrorCode: {} };
const context = createContext({ CustomFunctions });
const load = clock(() => new Script(text).runInContext(context));
if (associated.length === 0) throw new Error("No function was handed over");
process.stdout.write(JSON.stringify({ compile, load }));
`;

const coldLoad = (script: string): ColdLoad =>
  JSON.parse(
    execFileSync(process.execPath, ["-e", COLD_LOAD, script], {
      encoding: "utf8",
    }),
  ) as ColdLoad;
