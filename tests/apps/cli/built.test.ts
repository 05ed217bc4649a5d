import { execFileSync, spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { root } from "../../architecture/project-files";

beforeAll(() => {
  execFileSync(process.execPath, ["tests/build.cjs", "cli"], { cwd: root });
}, 180_000);

/** The command line as `npm run -s` starts it, in a process of its own. */
function started(args: readonly string[], input = "") {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [path.join(root, "src/apps/cli/launch.cjs"), ...args],
    { cwd: root, input, encoding: "utf8" },
  );
  return { status, stdout, stderr };
}

test("a call answers on standard output and ends with 0", () => {
  const { status, stdout, stderr } = started([
    "call",
    "POUNDS_PER_GALLON",
    "[66]",
  ]);
  expect([status, stderr]).toEqual([0, ""]);
  expect(stdout.endsWith("\n")).toBe(true);
  // Source: 11.0297 lb/gal, the function's own example.
  expect(JSON.parse(stdout)).toEqual({
    name: "POUNDS_PER_GALLON",
    value: expect.closeTo(11.0297, 4) as number,
  });
});

test("an error value is an answer too, and ends with 2", () => {
  const { status, stdout, stderr } = started(["call", "DENSITY", "[99]"]);
  expect([status, stderr]).toEqual([2, ""]);
  expect(JSON.parse(stdout)).toEqual({
    name: "DENSITY",
    error: { code: "#N/A", message: expect.any(String) as string },
  });
});

test("a refusal goes to standard error alone, and ends with 2", () => {
  const { status, stdout, stderr } = started(["call", "DENSITY", "66"]);
  expect([status, stdout]).toEqual([2, ""]);
  expect(stderr).toMatch(/^The arguments must be one JSON array .*\n$/);
});

test("many lines come back one for one and in order", () => {
  const asked = Array.from({ length: 500 }, (_, i) => 40 + i / 20);
  const { status, stdout } = started(
    ["call", "-"],
    asked
      .map((brix) => JSON.stringify({ name: "DENSITY", args: [brix] }))
      .join("\r\n"),
  );
  expect(status).toBe(0);
  const values = stdout
    .trimEnd()
    .split("\n")
    .map((line) => (JSON.parse(line) as { value: number }).value);
  expect(values).toHaveLength(asked.length);
  expect(values).toEqual([...values].sort((a, b) => a - b));
});

test("the samples take no arguments, and an unknown command says which there are", () => {
  expect(started(["samples", "elsewhere"])).toEqual({
    status: 2,
    stdout: "",
    stderr: '"elsewhere" is not known here. Usage: npm run samples\n',
  });
  const { status, stderr } = started(["brew"]);
  expect(status).toBe(2);
  const [, named = ""] =
    /^"brew" is no command of ours; there are (.+) and start\.\n$/.exec(
      stderr,
    ) ?? [];
  const { scripts } = JSON.parse(
    readFileSync(path.join(root, "package.json"), "utf8"),
  ) as { readonly scripts: Readonly<Record<string, string>> };
  // Every command can be started by npm, and every such script is a command.
  expect(named.split(", ").sort()).toEqual(
    Object.keys(scripts)
      .filter(
        (name) => scripts[name]?.includes("launch.cjs") && name !== "start",
      )
      .sort(),
  );
});
