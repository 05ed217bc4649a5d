import { execFileSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { packageFaults } from "../../src/apps/cli/package-check";
import type { PackageFiles } from "../../src/apps/cli/package-files";
import { writePackage } from "../../src/apps/cli/package-output";
import {
  schemaFaults,
  type ManifestCheck,
} from "../../src/apps/cli/package-schema";
import { manifestFaults } from "../../manifest/faults";
import { root } from "../architecture/project-files";
import { run } from "./cli/array-terminal";
import { readByMicrosoft } from "./functions/published-checks";

const BASE = "https://farm.example/tools/syrup/";
let files: PackageFiles;
let folder: string;

beforeAll(() => {
  files = packaged();
}, 300_000);
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "package-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** What the command itself writes, read back; in a process of its own, as a person runs it. */
function packaged(): PackageFiles {
  const out = mkdtempSync(path.join(tmpdir(), "packaged-"));
  try {
    execFileSync(
      process.execPath,
      ["src/apps/cli/launch.cjs", "package", "--base", BASE, "--out", out],
      { cwd: root, stdio: ["ignore", "ignore", "pipe"] },
    );
    return new Map(
      readdirSync(out, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map(({ parentPath, name }) => path.join(parentPath, name))
        .map((full) => [
          path.relative(out, full).replaceAll(path.sep, "/"),
          readFileSync(full),
        ]),
    );
  } finally {
    rmSync(out, { recursive: true });
  }
}

const text = (file: string): string => files.get(file)?.toString("utf8") ?? "";

test("a package holds the add-in, its pane, both manifests, the icons and the workbench", () => {
  for (const file of [
    "index.html",
    "taskpane.html",
    "taskpane.js",
    "functions.js",
    "functions.json",
    "manifest.xml",
    "unified.zip",
    "assets/icon-16.png",
    "assets/icon-128.png",
    "workbench/index.html",
  ])
    expect([file, (files.get(file)?.length ?? 0) > 0]).toEqual([file, true]);
  expect([...files.keys()].filter((file) => /built-from/.test(file))).toEqual(
    [],
  );
});

test("it passes every check that needs no network, and names no other place than its own", async () => {
  expect(manifestFaults(text("manifest.xml"))).toEqual([]);
  expect(packageFaults(files, BASE)).toEqual([]);
  expect(await schemaFaults(microsofts, text("unified/manifest.json"))).toEqual(
    [],
  );
  for (const file of [
    "manifest.xml",
    "unified/manifest.json",
    "functions.json",
  ]) {
    expect(text(file)).toContain(BASE);
    expect(text(file)).not.toContain("localhost");
  }
});

test("a package with a missing file or with something from elsewhere is found out", () => {
  const broken = new Map(files);
  broken.delete("functions.js");
  broken.set(
    "index.html",
    Buffer.from(
      '<script src="https://cdn.example/x.js"></script><link rel=icon href=https://cdn.example/y.png>',
    ),
  );
  expect(packageFaults(broken, BASE)).toEqual(
    expect.arrayContaining([
      "manifest.xml names functions.js, which is missing",
      "taskpane.html names functions.js, which is missing",
      "index.html loads https://cdn.example/x.js from elsewhere",
      "index.html loads https://cdn.example/y.png from elsewhere",
    ]),
  );
});

test.each([
  ["an id that is no GUID", /"id": "[0-9a-f-]{36}"/, '"id": "syrup"'],
  ["no developer", '"developer"', '"maker"'],
])("a unified manifest with %s is refused", async (_, from, to) => {
  const broken = text("unified/manifest.json").replace(from, to);
  expect(await schemaFaults(microsofts, broken)).toEqual([
    expect.stringMatching(/^unified\/manifest\.json is refused: .{10}/),
  ]);
});

/** In a process of its own, where it can be loaded. */
const microsofts: ManifestCheck = async (file) =>
  readByMicrosoft(
    "manifest.json",
    readFileSync(file, "utf8"),
    "validate",
  ) as Awaited<ReturnType<ManifestCheck>>;

test("the same sources and address give the same bytes", () => {
  const again = packaged();
  const differing = [...again].filter(
    ([file, bytes]) => !files.get(file)?.equals(bytes),
  );
  expect(again.size).toBe(files.size);
  expect(differing.map(([file]) => file)).toEqual([]);
}, 120_000);

describe("put into a folder", () => {
  const one = new Map([
    ["index.html", Buffer.from("one")],
    ["pane/a.js", Buffer.from("a")],
  ]);
  const two = new Map([
    ["index.html", Buffer.from("two")],
    ["pane/b.js", Buffer.from("b")],
  ]);
  const inFolder = (file: string): string => path.join(folder, file);

  test("a later package replaces the earlier one's files, and no others", () => {
    writeFileSync(inFolder("CNAME"), "farm.example");
    writePackage(one, folder);
    writePackage(two, folder);
    expect(readFileSync(inFolder("index.html"), "utf8")).toBe("two");
    expect(readdirSync(inFolder("pane"))).toEqual(["b.js"]);
    expect(readFileSync(inFolder("CNAME"), "utf8")).toBe("farm.example");
  });

  test("a stranger's file in the way stops everything, and nothing is written", () => {
    writeFileSync(inFolder("index.html"), "somebody's own page");
    expect(() => writePackage(one, folder)).toThrow(
      /index\.html is there already and is not from an earlier package; nothing was written/,
    );
    expect(readdirSync(folder)).toEqual(["index.html"]);
    expect(readFileSync(inFolder("index.html"), "utf8")).toBe(
      "somebody's own page",
    );
  });

  test("a list that points out of the folder takes nothing away there", () => {
    mkdirSync(inFolder("out"));
    writeFileSync(inFolder("keep.txt"), "keep");
    writeFileSync(inFolder("out/packaged-files.txt"), "../keep.txt\n");
    writePackage(one, inFolder("out"));
    expect(existsSync(inFolder("keep.txt"))).toBe(true);
  });

  test("a file in place of the folder is refused", () => {
    writeFileSync(inFolder("file"), "");
    expect(() => writePackage(one, inFolder("file"))).toThrow(
      /that is a file, not a folder/,
    );
  });
});

test.each([
  [["package"], /^Needs --base/],
  [
    ["package", "--base", "http://farm.example/"],
    /^base: .* must start with https/,
  ],
  [
    ["package", "--base", "farm.example"],
    /^base: "farm.example" is no address/,
  ],
  [["package", "here", "--base", BASE], /^"here" is not known here/],
  [["excel", "--port", "0"], /^--port 0: not a port number/],
  [["excel", "now"], /^"now" is not known here/],
])("%j is refused with a sentence", async (args, says) => {
  const { code, said, complained } = await run(args);
  expect([code, said]).toEqual([2, []]);
  expect(complained).toEqual([expect.stringMatching(says)]);
});
