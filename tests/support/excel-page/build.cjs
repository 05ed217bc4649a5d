// Builds Excel's page as it ships, with one file replaced: behind the port stands a workbook in memory.
const path = require("node:path");
const webpack = require("webpack");

const root = path.join(__dirname, "../../..");
const [folder] = process.argv.slice(2);
const page = require("../../../webpack.config.js")({}).find(
  ({ name }) => name === "taskpane",
);

webpack({
  ...page,
  // A memory of its own: the page that ships must never be put together from this one.
  cache: { ...page.cache, name: "taskpane-in-memory" },
  output: { ...page.output, path: folder },
  plugins: [
    ...page.plugins,
    new webpack.NormalModuleReplacementPlugin(
      /hosts\/excel\/excel-host$/,
      path.join(root, "tests/support/excel-page/workbook-in-memory.ts"),
    ),
  ],
}).run((problem, stats) => {
  if (!problem && !stats.hasErrors()) return;
  process.stderr.write(String(problem ?? stats.toString("errors-only")));
  process.exitCode = 1;
});
