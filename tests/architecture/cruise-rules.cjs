const { layers } = require("./layers.cjs");

const folders = Object.keys(layers);

/** The pattern for the files of one folder, without those of a folder inside it that has an entry of its own. */
function filesOf(folder) {
  const inner = folders
    .filter((other) => other.startsWith(`${folder}/`))
    .map((other) => other.slice(folder.length + 1));
  // "trade" itself has no entry: it stands for all its rooms.
  const except =
    inner.length > 0 && folders.includes(folder)
      ? `(?!(?:${inner.join("|")})/)`
      : "";
  return `^src/${folder}/${except}`;
}

const packages = (names) =>
  names.map((name) =>
    name.endsWith("/*")
      ? `node_modules/(@types/)?${name.slice(0, -1)}`
      : `node_modules/(@types/)?${name}(/|$)`,
  );

const NPM = [
  "npm",
  "npm-dev",
  "npm-optional",
  "npm-peer",
  "npm-bundled",
  "npm-no-pkg",
  "npm-unknown",
];

const orNone = (names) => (names.length === 0 ? "nothing" : names.join(", "));

const rulesOf = ([folder, { may, npm, node = false, outside = [] }]) => [
  {
    name: `${folder} imports`,
    comment: `src/${folder} may import only: ${orNone([...may, ...outside])}`,
    severity: "error",
    from: { path: filesOf(folder) },
    to: {
      path: "^[^/]+/",
      pathNot: [
        filesOf(folder),
        ...may.map(filesOf),
        ...outside.map((place) => `^${place}/`),
        "node_modules/",
      ],
      dependencyTypesNot: ["core", "undetermined", "unknown"],
    },
  },
  {
    name: `${folder} packages`,
    comment: `src/${folder} may use only these packages: ${orNone(npm)}`,
    severity: "error",
    from: { path: filesOf(folder) },
    to: { dependencyTypes: NPM, pathNot: packages(npm) },
  },
  ...(node
    ? []
    : [
        {
          name: `${folder} Node modules`,
          comment: `src/${folder} must run in a browser: no Node built-ins`,
          severity: "error",
          from: { path: filesOf(folder) },
          to: { dependencyTypes: ["core"] },
        },
      ]),
];

/** Rules and options for dependency-cruiser, made from the layers. */
const rules = {
  forbidden: [
    ...Object.entries(layers).flatMap(rulesOf),
    {
      name: "no folder outside the house",
      comment: "every file under src belongs to a folder listed in layers.cjs",
      severity: "error",
      from: { path: "^src/", pathNot: folders.map(filesOf) },
      to: {},
    },
    {
      name: "no cycles",
      comment: "two files that need each other are one concept, or miss one",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "resolvable",
      comment: "what is imported must exist",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
  ],
};

const options = {
  ruleSet: rules,
  validate: true,
  tsPreCompilationDeps: true,
  doNotFollow: { path: "node_modules" },
  exclude: { path: "\\.css$" },
  enhancedResolveOptions: {
    exportsFields: ["exports"],
    conditionNames: ["import", "require", "node", "default", "types"],
    mainFields: ["module", "main", "types"],
    extensions: [".ts", ".tsx", ".mjs", ".js", ".cjs", ".d.ts", ".json"],
  },
};

module.exports = { options };
