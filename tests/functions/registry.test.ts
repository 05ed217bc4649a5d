import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import fc from "fast-check";
import { functions } from "../../src/functions";
import { explained } from "../../src/functions/answer";
import type { Definition } from "../../src/functions/define";
import { nativeCall } from "../../src/functions/native-call";
import { readArgument } from "../../src/functions/read-argument";
import { CannotAnswer } from "../../src/measures/cannot-answer";
import { as, type DaySerial } from "../../src/measures/quantity";
import { isoDate } from "../../src/measures/read-date";
import { sources } from "../../src/standards/sources";
import { anyArguments } from "../support/any-argument";

const each = functions.map((f) => [f.name, f] as const);
const source = resolve(__dirname, "../../src");

describe("names", () => {
  test("no two functions, and no two questions, are the same", () => {
    expect(new Set(functions.map((f) => f.name)).size).toBe(functions.length);
    expect(new Set(functions.map((f) => f.question)).size).toBe(
      functions.length,
    );
  });

  // Custom-function ids: letters, digits, underscores and points, a letter first, 128 characters at most.
  test.each(each)("%s is a legal id and a legal name in a file", (name) => {
    expect(name).toMatch(/^[A-Z][A-Z0-9_]{2,}$/);
    expect(`SYRUP.${name}`.length).toBeLessThanOrEqual(128);
    // Anything that looks like a cell, as LOG10 or AB12, would be read as one.
    expect(name).not.toMatch(/^[A-Z]{1,3}\d+$/);
    expect(`_xldudf_SYRUP_${name}`).toMatch(/^_[A-Za-z0-9_]{1,254}$/);
  });

  test.each(each)("%s names its arguments in lower case", (_, { args }) => {
    for (const argument of Object.keys(args))
      expect(argument).toMatch(/^[a-z][a-z0-9_]*$/);
  });
});

describe("words", () => {
  test.each(each)("%s says in one sentence what it gives", (_, definition) => {
    expect(definition.summary).toMatch(/^[A-Z][^\n]*[^.]\.$/);
    expect(definition.summary).not.toMatch(/\.\s/);
    expect(definition.summary.length).toBeLessThanOrEqual(120);
    expect(definition.question).toMatch(/^[A-Z].*\?$/);
    expect(definition.gives.about).toMatch(/\S/);
  });

  test.each(each)("%s warns where the syrup is hot", (_, { args, caution }) => {
    if ("fill_temperature" in args) expect(caution).toMatch(/scalds/);
  });

  test.each(each)(
    "%s always shows its arithmetic, with figures a person can read",
    (_, definition) => {
      let answered = 0;
      const raws = fc.sample(anyArguments(definition.args), {
        seed: 7,
        numRuns: 300,
      });
      for (const raw of [...definition.examples.map((e) => e.args), ...raws]) {
        const why = whyOf(definition, raw);
        if (why === undefined) continue;
        answered += 1;
        expect(why).toMatch(/\S/);
        expect(why).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
      }
      expect(answered).toBeGreaterThanOrEqual(definition.examples.length);
    },
  );

  test.each(each)(
    "%s shows two calls or more, and its arithmetic ends in their answers",
    (_, definition) => {
      expect(definition.examples.length).toBeGreaterThanOrEqual(2);
      for (const { args } of definition.examples) {
        const { answer, why } = explained(definition, args);
        const figures = [answer].flat(2).filter(isNumber);
        if (figures.length === 0) continue;
        const found = figures.some((value) => shows(why, value, definition));
        if (!found) throw new Error(`${why}\nholds none of ${figures.join()}`);
      }
    },
  );
});

const isNumber = (value: unknown): value is number => typeof value === "number";

/** Whether a sentence holds a value, as rounded as it is written there: plain, in per cent, as a day, without its sign. */
function shows(why: string, value: number, { gives }: Definition): boolean {
  if (gives.unit === "date") return why.includes(isoDate(as<DaySerial>(value)));
  const wanted = Math.abs(value) * (gives.unit === "share" ? 100 : 1);
  return (why.match(/\d[\d,]*(\.\d+)?/g) ?? []).some((written) => {
    const digits = written.replace(/,/g, "");
    const lastPlace = digits.includes(".")
      ? 10 ** -(digits.length - digits.indexOf(".") - 1)
      : 10 ** (/0*$/.exec(digits)?.[0].length ?? 0);
    return Math.abs(Number(digits) - wanted) <= 0.5 * lastPlace * (1 + 1e-6);
  });
}

function whyOf(
  definition: Definition,
  raw: readonly unknown[],
): string | undefined {
  try {
    return explained(definition, raw).why;
  } catch (error) {
    // A refusal is an answer too: one sentence, no placeholder left in it.
    if (!(error instanceof CannotAnswer)) throw error;
    expect(error.message).toMatch(/\S/);
    expect(error.message).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
    return undefined;
  }
}

describe("arguments", () => {
  test.each(each)("%s asks for what it needs first", (_, { args }) => {
    const canBeLeftOut = Object.values(args).map((t) => "otherwise" in t);
    expect(canBeLeftOut).toEqual([...canBeLeftOut].sort());
  });

  test.each(each)("%s can read its own defaults", (_, { args }) => {
    for (const [name, term] of Object.entries(args))
      if ("otherwise" in term)
        expect(() => readArgument(term, null, name)).not.toThrow();
  });

  test.each(each)("%s refuses each required blank by name", (_, definition) => {
    const [example] = definition.examples;
    for (const [i, [name, term]] of Object.entries(definition.args).entries()) {
      if ("otherwise" in term) continue;
      const raw = example.args.map((given, at) => (at === i ? null : given));
      expect(() => explained(definition, raw)).toThrow(
        `needs ${name.replace(/_/g, " ")}`,
      );
    }
  });
});

/** Sources of measured figures: what stands on them is never exact. */
const MEASURED = [
  "icumsaDensity",
  "bettinSpieweck",
  "refractionFit",
  "refractometerTable",
  "genotelle",
  "starzakPeacock",
  "heatCapacityForm",
  "hydrometerGlass",
];

describe("sources", () => {
  test("whatever stands on measured figures says how sure it is", () => {
    const unsaid = functions.filter(
      ({ basis, uncertainty }) =>
        basis.some((id) => MEASURED.includes(id)) && !uncertainty,
    );
    expect(unsaid.map(({ name }) => name)).toEqual([]);
  });

  test("whatever stands on the heat of syrup at filling says ±0.1 %, or what follows from it", () => {
    for (const { args, uncertainty, basis } of functions)
      if ("fill_temperature" in args && basis.includes("vermontChart"))
        expect(uncertainty).toMatch(/±/);
  });

  test.each(each)("%s rests on sources that are listed", (_, definition) => {
    expect(definition.basis.length).toBeGreaterThan(0);
    for (const id of definition.basis)
      expect(Object.keys(sources)).toContain(id);
    for (const { source: said } of definition.examples)
      expect(said).toMatch(/\S/);
  });

  test("no source is listed that nothing rests on", () => {
    const used = new Set<string>(functions.flatMap((f) => f.basis));
    const prose = filesUnder(source)
      .filter((file) => !file.endsWith(join("standards", "sources.ts")))
      .map((file) => readFileSync(file, "utf8"))
      .join("\n");
    const idle = Object.keys(sources).filter(
      (id) => !used.has(id) && !new RegExp(`\\b${id}\\b`).test(prose),
    );
    expect(idle).toEqual([]);
  });
});

/** Worksheet functions that every spreadsheet has had since before 2010, none of them volatile. */
const PLAIN = new Set(
  "ABS AND CEILING COUNT COUNTA COUNTIF DATE DAY EDATE EXP FLOOR IF IFERROR INDEX INT ISBLANK ISERROR ISNA ISNUMBER ISTEXT LARGE LEFT LEN LN LOG10 LOOKUP LOWER MATCH MAX MID MIN MOD MONTH N NA NORMSINV NOT OR PI POWER PRODUCT RANK RIGHT ROUND ROUNDDOWN ROUNDUP ROW ROWS SIGN SMALL SQRT STDEV SUBSTITUTE SUM SUMIF SUMPRODUCT SUMSQ T TEXT TINV TRIM UPPER VALUE YEAR".split(
    " ",
  ),
);

describe("native forms", () => {
  test("every function has one, or its reason for having none", () => {
    const unexplained = functions.filter(
      ({ native, noNative }) => !native && !noNative,
    );
    expect(unexplained.map(({ name }) => name)).toEqual([]);
    const both = functions.filter(({ native, noNative }) => native && noNative);
    expect(both.map(({ name }) => name)).toEqual([]);
  });

  test("a native form is one formula in one cell, so what fills several has none", () => {
    const spilling = functions.filter((f) => f.native && f.gives.spills);
    expect(spilling.map(({ name }) => name)).toEqual([]);
  });

  test("a reason reads on after a colon", () => {
    for (const { noNative } of functions)
      if (noNative !== undefined) expect(noNative).toMatch(/^[a-z].{20,}[^.]$/);
  });

  const withNative = each.filter(([, f]) => f.native);

  test.each(withNative)(
    "%s uses only plain worksheet functions and plain numbers",
    (_, definition) => {
      const cells = Object.keys(definition.args).map(
        (_name, i) => `Settings!$B$${i + 10}`,
      );
      const needed = Object.values(definition.args).map((term, i) =>
        "otherwise" in term ? "" : (cells[i] ?? ""),
      );
      for (const given of [cells, needed])
        expectPlain(nativeCall(definition, given));
    },
  );
});

function expectPlain(formula: string): void {
  const bare = formula.replace(/"[^"]*"/g, '""');
  for (const [, called = ""] of bare.matchAll(/([A-Z][A-Z0-9.]*)\(/g))
    expect([...PLAIN]).toContain(called);
  expect(bare).not.toMatch(/\d[eE][-+]?\d/);
  expect(bare).not.toMatch(/^=|NaN|undefined|Infinity/);
  let open = 0;
  for (const [bracket] of bare.matchAll(/[()]/g)) {
    open += bracket === "(" ? 1 : -1;
    expect(open).toBeGreaterThanOrEqual(0);
  }
  expect(open).toBe(0);
  // The longest formula a worksheet takes.
  expect(formula.length).toBeLessThan(8192);
}

test("neither zod nor a user interface can be reached from the functions", () => {
  const packages = reachablePackages(join(source, "functions", "index.ts"));
  expect(packages).toContain("big.js");
  const allowed = ["big.js", "yalps", "simple-statistics"];
  expect(packages.filter((name) => !allowed.includes(name))).toEqual([]);
});

const IMPORT = /^(?:(?:import|export)\s[^"'`;=]*\bfrom|import)\s+"([^"]+)"/gm;

/** The packages that a file and everything it imports ask for. */
function reachablePackages(entry: string): readonly string[] {
  const seen = new Set<string>();
  const packages = new Set<string>();
  const waiting = [entry];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (seen.has(file)) continue;
    seen.add(file);
    const text = readFileSync(file, "utf8");
    for (const [, from = ""] of text.matchAll(IMPORT)) {
      if (!from.startsWith(".")) packages.add(from);
      else waiting.push(fileOf(resolve(dirname(file), from)));
    }
  }
  expect(seen.size).toBeGreaterThan(20);
  return [...packages].sort();
}

function fileOf(path: string): string {
  const found = [`${path}.ts`, `${path}.tsx`, join(path, "index.ts")].find(
    existsSync,
  );
  if (!found) throw new Error(`Nothing to import at ${relative(source, path)}`);
  return found;
}

const filesUnder = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => join(folder, file));
