/**
 * The house, said once: a folder under src, what it may import and which npm packages it may use. A file belongs to
 * the longest folder that holds it. From this come the rules that tests/architecture/layers.test.ts checks and the
 * table in docs/architecture.md (`npm run docs`).
 */
const layers = {
  measures: { may: [], npm: ["big.js"] },
  standards: { may: ["measures"], npm: [] },

  "trade/syrup": { may: ["measures", "standards"], npm: [] },
  "trade/filling": { may: ["measures", "standards", "trade/syrup"], npm: [] },
  "trade/blending": {
    may: ["measures", "standards", "trade/syrup"],
    npm: ["yalps"],
  },
  "trade/lines": { may: ["measures", "standards"], npm: [] },
  "trade/totes": { may: ["measures", "standards", "trade/syrup"], npm: [] },
  "trade/contents": { may: ["measures", "standards", "trade/syrup"], npm: [] },
  "trade/costing": {
    may: [
      "measures",
      "standards",
      "trade/syrup",
      "trade/lines",
      "trade/filling",
      "trade/totes",
    ],
    npm: [],
  },
  "trade/pricing": {
    may: ["measures", "standards", "trade/costing"],
    npm: [],
  },
  "trade/codes": { may: ["measures", "standards"], npm: [] },

  terms: { may: ["measures"], npm: [] },
  // A native formula carries the published coefficients in its text, so functions read the standards too.
  functions: { may: ["measures", "standards", "trade", "terms"], npm: [] },
  // A cell of the book is read by the same few lines as a function's argument.
  book: { may: ["measures", "trade", "terms", "functions"], npm: ["zod"] },
  sheets: {
    may: ["measures", "trade", "terms", "functions", "book"],
    npm: ["zod"],
  },

  hosts: { may: everyLayerBelowHosts(), npm: [] },
  "hosts/excel": {
    may: [...everyLayerBelowHosts(), "hosts"],
    npm: ["@microsoft/office-js-helpers"],
  },
  "hosts/grid": {
    may: [...everyLayerBelowHosts(), "hosts"],
    npm: ["@univerjs/*", "rxjs"],
  },
  "hosts/file": {
    may: [...everyLayerBelowHosts(), "hosts"],
    npm: ["hucre", "fflate", "papaparse"],
  },

  // Bars are drawn for the pane and the command line alike, from one file.
  apps: { may: everyLayerBelowApps(), npm: ["bwip-js"] },
  "apps/pane": {
    may: [...everyLayerBelowApps(), "apps"],
    npm: ["react", "react-dom", "@fluentui/*"],
  },
  "apps/functions": {
    may: [...everyLayerBelowApps(), "apps"],
    npm: [],
    outside: ["manifest"],
  },
  "apps/taskpane": {
    may: [...everyLayerBelowApps(), "apps", "apps/pane", "apps/functions"],
    npm: ["react", "react-dom", "@fluentui/*"],
  },
  "apps/workbench": {
    may: [...everyLayerBelowApps(), "apps", "apps/pane"],
    npm: ["react", "react-dom", "@fluentui/*"],
    outside: ["sample-workbooks"],
  },
  "apps/cli": {
    may: [...everyLayerBelowApps(), "apps", "apps/cli/bench"],
    npm: ["webpack", "office-addin-manifest", "typescript"],
    node: true,
  },
  // The writing library stands here only as the yardstick of our own writer.
  "apps/cli/bench": {
    may: [...everyLayerBelowApps(), "apps", "apps/cli"],
    npm: ["hucre"],
    node: true,
  },
};

function everyLayerBelowHosts() {
  return [
    "measures",
    "standards",
    "trade",
    "terms",
    "functions",
    "book",
    "sheets",
  ];
}

function everyLayerBelowApps() {
  return [
    ...everyLayerBelowHosts(),
    "hosts",
    "hosts/excel",
    "hosts/grid",
    "hosts/file",
  ];
}

module.exports = { layers };
