import { readdirSync } from "node:fs";
import path from "node:path";
import { projectFiles, root, textOf } from "./project-files";

test("the top level is the house as designed, and nothing else", () => {
  const made = ["node_modules", "dist", "coverage"];
  const there = readdirSync(root).filter(
    (name) => !name.startsWith(".") && !made.includes(name),
  );
  expect(there.sort()).toEqual(
    [
      "CHANGELOG.md",
      "DEVELOPERS.md",
      "LICENSE",
      "README.md",
      "docs",
      "manifest",
      "package-lock.json",
      "package.json",
      "sample-workbooks",
      "src",
      "tests",
      "tsconfig.json",
      "webpack.config.js",
    ].sort(),
  );
});

test("no source file is longer than 250 lines, standards apart", () => {
  const long = projectFiles("src")
    .filter((file) => /\.(ts|tsx|cjs|css)$/.test(file))
    .filter((file) => !file.startsWith("src/standards/"))
    .map((file) => ({ file, lines: textOf(file).split("\n").length - 1 }))
    .filter(({ lines }) => lines > 250);
  expect(long).toEqual([]);
});

test("no folder is a drawer for leftovers, and files are kebab-case nouns", () => {
  const drawers = /(^|\/)(utils?|commons?|helpers?|shared|libs?|misc)(\/|\.)/i;
  const files = projectFiles("src");
  expect(files.filter((file) => drawers.test(file))).toEqual([]);
  expect(
    files
      .map((file) => path.basename(file))
      .filter((name) => !/^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z]+)+$/.test(name)),
  ).toEqual([]);
});

test("every package is pinned exactly", () => {
  const { dependencies, devDependencies } = JSON.parse(
    textOf("package.json"),
  ) as Record<"dependencies" | "devDependencies", Record<string, string>>;
  const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version),
  );
  expect(loose).toEqual([]);
});

test("the lock file names no place to fetch from and matches what is pinned", () => {
  const { packages } = JSON.parse(textOf("package-lock.json")) as {
    packages: Record<
      string,
      {
        version?: string;
        resolved?: string;
        dependencies?: Record<string, string>;
        devDependencies?: Record<string, string>;
      }
    >;
  };
  const fetched = Object.values(packages).filter(
    ({ resolved }) => resolved !== undefined,
  );
  expect(fetched).toEqual([]);
  const top = packages[""];
  for (const [name, version] of Object.entries({
    ...top?.dependencies,
    ...top?.devDependencies,
  }))
    expect([name, packages[`node_modules/${name}`]?.version]).toEqual([
      name,
      version,
    ]);
});
