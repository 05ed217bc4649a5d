import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { iconSizes, manifestSource } from "../../manifest/source";
import { functions as definitions } from "../../src/functions";
import { answer } from "../../src/functions/answer";
import { root } from "./project-files";

const addIn = path.join(root, "dist/addin");
const taskpane = path.join(root, "dist/taskpane");
const built = (file: string, folder = addIn): string =>
  readFileSync(path.join(folder, file), "utf8");
interface Piece {
  readonly file: string;
  readonly text: string;
}

const zipped = (texts: readonly string[]): number =>
  texts.reduce((sum, text) => sum + gzipSync(text).length, 0);

beforeAll(() => {
  execFileSync(process.execPath, ["tests/build.cjs", "functions", "taskpane"], {
    cwd: root,
  });
}, 300_000);

test("what Excel loads for the functions is under 60 KB zipped, with no zod and no React in it", () => {
  const script = built("functions.js");
  expect(zipped([script])).toBeLessThan(60 * 1024);
  expect(script).not.toMatch(/ZodError|_zod\b|react\.(element|transitional)/);
});

test("the built script, run as Excel runs it, hands over at once every name the metadata lists", () => {
  const associated = new Map<string, (...given: unknown[]) => unknown>();
  const CustomFunctions = {
    associate: (id: string, run: (...given: unknown[]) => unknown) =>
      associated.set(id, run),
    Error,
    ErrorCode: {},
  };
  runInContext(built("functions.js"), createContext({ CustomFunctions }));
  const { functions } = JSON.parse(built("functions.json")) as {
    functions: readonly { id: string }[];
  };
  expect([...associated.keys()]).toEqual(functions.map(({ id }) => id));
  // Source: 11.076 lb/gal at 66.9 °Bx, to the digits the model and printed tables share (see POUNDS_PER_GALLON).
  expect(associated.get("POUNDS_PER_GALLON")?.(66.9, null, {})).toBeCloseTo(
    11.076,
    2,
  );
});

test("the built script, lighter by its words, still gives the answer of every example", () => {
  const answers = new Map<string, (...given: unknown[]) => unknown>();
  const CustomFunctions = {
    associate: (id: string, run: (...given: unknown[]) => unknown) =>
      answers.set(id, run),
  };
  // Rows are made in the test's own world, as Excel's are made in the script's.
  runInContext(
    built("functions.js"),
    createContext({ CustomFunctions, Array, Error }),
  );
  expect(built("functions.js")).not.toContain("hand arithmetic");
  for (const definition of definitions)
    for (const { args: given } of definition.examples) {
      const padded = Object.keys(definition.args).map(
        (_, i) => given[i] ?? null,
      );
      const script = answers.get(definition.name)?.(...padded, {});
      expect(JSON.stringify(script)).toBe(
        JSON.stringify(answer(definition, given)),
      );
    }
});

test("where Excel's library did not arrive, the script does nothing and breaks nothing", () => {
  expect(() =>
    runInContext(built("functions.js"), createContext({})),
  ).not.toThrow();
});

test("the pane comes in pieces: a first script under 5 KB, the pane under 250 KB zipped, no grid in any", () => {
  const first = built("taskpane.js", taskpane);
  expect(zipped([first])).toBeLessThan(5 * 1024);
  const pieces = readdirSync(path.join(taskpane, "pane"))
    .filter((file) => file.endsWith(".js"))
    .map((file) => ({ file, text: built(`pane/${file}`, taskpane) }));
  // What start-up imports for the pane; the other pieces come when a view is opened or trouble is told.
  const wanted = wantedFor(first, pieces);
  expect(wanted.length).toBeGreaterThan(0);
  expect(wanted.length).toBeLessThan(pieces.length);
  expect(zipped(wanted.map(({ text }) => text))).toBeLessThan(250 * 1024);
  expect(pieces.filter(({ text }) => text.includes("univer"))).toEqual([]);
});

/** The built start-up fetches pieces together, as `Promise.all([n.e(601), n.e(600)])`: the heavier such list is the pane. */
function wantedFor(first: string, pieces: readonly Piece[]): readonly Piece[] {
  const together = [...first.matchAll(/Promise\.all\(\[([^\]]+)\]\)/g)]
    .map(([, list = ""]): readonly string[] => list.match(/\d+/g) ?? [])
    .map((ids) =>
      pieces.filter(({ file }) => ids.includes(file.split(".")[0] ?? "")),
    );
  const weight = (some: readonly Piece[]): number =>
    some.reduce((sum, { text }) => sum + text.length, 0);
  return together.toSorted((a, b) => weight(b) - weight(a))[0] ?? [];
}

test("pages and manifests name only files that are built, and icons have the size they say", () => {
  const manifests = ["manifest.xml", "unified/manifest.json"].flatMap((file) =>
    [...built(file).matchAll(/"(https:[^"#]+)/g)]
      .map(([, address = ""]) => address)
      .filter((address) => address.startsWith(manifestSource.base))
      .map((address) => address.slice(manifestSource.base.length)),
  );
  expect(manifests).toEqual(
    expect.arrayContaining([
      "functions.js",
      "functions.json",
      "taskpane.html",
      "index.html",
    ]),
  );
  for (const file of new Set(manifests))
    expect(
      built(file, file === "taskpane.html" ? taskpane : addIn).length,
    ).toBeGreaterThan(0);
  for (const size of iconSizes)
    expect(pngSize(`assets/icon-${size}.png`)).toEqual([size, size]);
  // Source: Microsoft's page on the unified manifest's icons: color 192 by 192, outline 32 by 32.
  expect(pngSize("unified/color.png")).toEqual([192, 192]);
  expect(pngSize("unified/outline.png")).toEqual([32, 32]);
});

function pngSize(file: string): readonly [number, number] {
  const png = readFileSync(path.join(addIn, file));
  return [png.readUInt32BE(16), png.readUInt32BE(20)];
}

test("the page's scripts stand in their order and its rules let in only ourselves and Excel's library", () => {
  const page = built("taskpane.html", taskpane);
  const scripts = [...page.matchAll(/<script\s+(\w+)\s+src="([^"]+)"/g)].map(
    ([, how, src]) => [how, src],
  );
  expect(scripts).toEqual([
    ["async", "taskpane.js"],
    ["defer", "https://appsforoffice.microsoft.com/lib/1/hosted/office.js"],
    ["defer", "functions.js"],
  ]);
  const rules = /content="(default-src[^"]+)"/.exec(page)?.[1] ?? "";
  expect(rules).toContain("default-src 'none'");
  expect(rules).toContain(
    "script-src 'self' https://appsforoffice.microsoft.com;",
  );
  expect(rules).not.toMatch(/unsafe-eval|script-src[^;]*unsafe-inline|\*/);
  // Source: Excel on the web frames the page, so a rule about frames would shut it out.
  expect(rules).not.toContain("frame-ancestors");
  expect(page).not.toMatch(/<script(?![^>]*src=)|\son[a-z]+=/);
});
