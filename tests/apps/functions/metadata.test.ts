import { metadata } from "../../../src/apps/functions/metadata";
import { functions } from "../../../src/functions";
import { publishedSchema } from "./published-checks";

const { functions: described } = metadata(functions);

test("Excel's published schema accepts the description of every function", () => {
  const check = publishedSchema("extensionFunction");
  check(described);
  expect(check.errors ?? []).toEqual([]);
  expect(check([{ id: "A", name: "A", description: "" }])).toBe(false);
});

test("every function keeps the naming rules Excel states for custom functions", () => {
  // Source: learn.microsoft.com, "Custom functions naming and localization", read 2026-08: letters, digits, _ and .,
  // starting with a letter, 3 to 128 characters; a name that reads as a cell address is refused.
  const broken = described
    .map(({ id }) => id)
    .filter(
      (id) =>
        !/^[A-Z][A-Z0-9._]{2,127}$/.test(id) ||
        /^[A-Z]{1,3}[0-9]{1,7}$/.test(id) ||
        /^R[0-9]*C[0-9]*$/.test(id),
    );
  expect(broken).toEqual([]);
});

test("two functions never meet under one name in a stored file, where dots become underscores", () => {
  // Source: Microsoft in Excel-Custom-Functions issue 108: a file holds "_xldudf_" and the name with its namespace.
  const stored = described.map(
    ({ id }) => `_xldudf_${`SYRUP.${id}`.replace(/\./g, "_").toUpperCase()}`,
  );
  expect(new Set(stored).size).toBe(stored.length);
  expect(stored.length).toBeGreaterThan(0);
});

test("ids, names and texts keep the lengths Excel states, and a name is its id", () => {
  // Source: the published schema's maxLength: 64 for names, 128 for descriptions; 128 parameters.
  for (const { id, name, description, parameters } of described) {
    expect(name).toBe(id);
    expect(id.length).toBeLessThanOrEqual(64);
    expect(description.length).toBeLessThanOrEqual(128);
    expect(parameters.length).toBeLessThanOrEqual(128);
    const names = parameters.map((p) => p.name);
    expect([id, new Set(names).size]).toEqual([id, names.length]);
    for (const p of parameters) {
      expect(p.name.length).toBeLessThanOrEqual(64);
      expect(p.description.length).toBeLessThanOrEqual(128);
    }
  }
});

test("help for a function leads to its place on the add-in's front page", () => {
  const [first] = metadata(
    functions,
    "https://farm.example/index.html",
  ).functions;
  expect(first?.helpUrl).toBe(`https://farm.example/index.html#${first?.id}`);
  expect(described.every(({ helpUrl }) => helpUrl === undefined)).toBe(true);
});

test("an argument that may be left out never stands before one that is needed", () => {
  const broken = described.filter(({ parameters }) => {
    const first = parameters.findIndex((p) => p.optional);
    return first >= 0 && parameters.slice(first).some((p) => !p.optional);
  });
  expect(broken.map(({ id }) => id)).toEqual([]);
});

test("the unit of a quantity stands in the text Excel shows while typing", () => {
  const density = described.find(({ id }) => id === "DENSITY");
  expect(density?.parameters).toEqual([
    expect.objectContaining({
      name: "brix",
      type: "any",
      description: "Dissolved solids by mass, at 68 °F (°Bx).",
    }),
    expect.objectContaining({
      name: "temperature",
      optional: true,
      description: "Syrup temperature (°F). Left out: 68 °F.",
    }),
    expect.objectContaining({ name: "unit", type: "string", optional: true }),
  ]);
});

test("a range is a matrix, and so is an answer that fills several cells", () => {
  for (const [i, definition] of functions.entries()) {
    expect(described[i]?.result.dimensionality).toBe(
      definition.gives.spills ? "matrix" : undefined,
    );
    const kinds = Object.values(definition.args).map(({ kind }) => kind);
    expect(described[i]?.parameters.map((p) => p.dimensionality)).toEqual(
      kinds.map((kind) =>
        kind === "list" || kind === "rows" ? "matrix" : undefined,
      ),
    );
  }
});
