import { createRequire } from "node:module";
import { metadata } from "../../../src/apps/functions/metadata";
import { functions } from "../../../src/functions";

const { functions: described } = metadata(functions);

interface Validator {
  compile(
    schema: object,
  ): ((value: unknown) => boolean) & { errors?: readonly object[] | null };
  addSchema(schema: object, key: string): void;
}

/** Microsoft's published schema of the unified manifest, version 1.25, which also says what a custom function looks like. */
function publishedCheck() {
  const tool = createRequire(require.resolve("office-addin-manifest"));
  const ofManifest = createRequire(tool.resolve("@microsoft/app-manifest"));
  const Draft4 = (
    ofManifest("ajv-draft-04") as { default: new (o: object) => Validator }
  ).default;
  const validator = new Draft4({
    strict: false,
    logger: false,
    validateFormats: false,
    allErrors: true,
  });
  validator.addSchema(
    ofManifest(
      "./json-schemas/teams/v1.25/MicrosoftTeams.schema.json",
    ) as object,
    "published",
  );
  return validator.compile({
    type: "array",
    items: { $ref: "published#/definitions/extensionFunction" },
  });
}

test("Excel's published schema accepts the description of every function", () => {
  const check = publishedCheck();
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
  const stored = described.map(({ id }) => id.replace(/\./g, "_"));
  expect(new Set(stored).size).toBe(stored.length);
  expect(stored.length).toBeGreaterThan(0);
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
