import { execFileSync } from "node:child_process";
import path from "node:path";
import { root } from "./project-files";

interface Violation {
  readonly rule: string;
  readonly from: string;
  readonly to: string;
  readonly means: string;
}

const cruised = (
  folder: string,
): { readonly modules: number; readonly violations: readonly Violation[] } =>
  JSON.parse(
    execFileSync(
      process.execPath,
      [path.join(__dirname, "cruise.mjs"), folder],
      { cwd: root, encoding: "utf8" },
    ),
  ) as { modules: number; violations: Violation[] };

test("imports go only downward, packages stay in their rooms, and nothing runs in circles", () => {
  const { modules, violations } = cruised(root);
  expect(modules).toBeGreaterThan(50);
  expect(
    violations.map(({ from, to, means }) => `${from} imports ${to}: ${means}`),
  ).toEqual([]);
});

test("a house built wrongly is found out: upward, sideways, in a circle, with a strange package or a Node module", () => {
  const { violations } = cruised(path.join(__dirname, "broken-house"));
  const found = violations.map(
    ({ rule, from, to }) => `${rule}: ${from} → ${to}`,
  );
  expect(found).toEqual(
    expect.arrayContaining([
      "measures imports: src/measures/upward.ts → src/terms/word.ts",
      "hosts/grid imports: src/hosts/grid/sideways.ts → src/hosts/file/other.ts",
      expect.stringMatching(/^terms packages: src\/terms\/word.ts → .*zod/),
      "trade/syrup Node modules: src/trade/syrup/clock.ts → fs",
      "trade/lines imports: src/trade/lines/room.ts → src/trade/syrup/clock.ts",
      expect.stringMatching(/^no cycles: src\/sheets\/(one|two).ts/),
      "no folder outside the house: src/cellar/hidden.ts → src/measures/upward.ts",
      "resolvable: src/cellar/hidden.ts → ./nowhere",
    ]),
  );
});
