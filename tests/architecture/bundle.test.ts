import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { root } from "./project-files";

const built = (file: string): string =>
  readFileSync(path.join(root, "dist/addin", file), "utf8");

beforeAll(() => {
  execFileSync(process.execPath, ["tests/build.cjs", "functions"], {
    cwd: root,
  });
}, 180_000);

test("what Excel loads for the functions is under 40 KB zipped, with no zod and no React in it", () => {
  const script = built("functions.js");
  expect(gzipSync(script).length).toBeLessThan(40 * 1024);
  expect(script).not.toMatch(/ZodError|_zod\b|react\.(element|transitional)/);
});

test("the built script, run as Excel runs it, answers under every name the metadata lists", () => {
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

test("the page and the manifest name only files that are built", () => {
  const named = [
    ...built("manifest.xml").matchAll(
      /DefaultValue="https:[^"]+?3000\/([^"]+)"/g,
    ),
    ...built("functions.html").matchAll(/src="(?!https:)([^"]+)"/g),
  ].map(([, file = ""]) => file);
  expect(named).toEqual(
    expect.arrayContaining([
      "functions.js",
      "functions.json",
      "functions.html",
    ]),
  );
  for (const file of named) expect(built(file).length).toBeGreaterThan(0);
});
