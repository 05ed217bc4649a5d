// Builds everything that ships, as far as the sources changed since it was last built.
const path = require("node:path");
const { buildWhenStale } = require("../src/apps/cli/build-when-stale.cjs");

const root = path.join(__dirname, "..");

(async () => {
  const asked = process.argv.slice(2);
  for (const name of asked.length > 0
    ? asked
    : ["functions", "taskpane", "workbench", "cli"])
    await buildWhenStale(root, name);
})().catch((problem) => {
  process.stderr.write(`${problem.message}\n`);
  process.exitCode = 1;
});
