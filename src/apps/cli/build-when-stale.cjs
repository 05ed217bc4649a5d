const { createHash } = require("node:crypto");
const fs = require("node:fs");
const path = require("node:path");
const { setTimeout: pause } = require("node:timers/promises");

/** Where each configuration puts its files, and folders it takes nothing from, so that a change there is no reason to build. */
const BUILDS = {
  functions: {
    folder: "addin",
    without: ["src/apps/pane", "src/apps/workbench", "src/apps/taskpane"],
  },
  workbench: { folder: "workbench", without: ["src/apps/cli"] },
  cli: {
    folder: "cli",
    without: ["src/apps/pane", "src/apps/workbench", "src/apps/taskpane"],
  },
};
const SOURCES = ["src", "manifest", "webpack.config.js", "package-lock.json"];
const STAMP = "built-from.txt";
const ONLY_ERRORS = {
  all: false,
  errors: true,
  errorDetails: false,
  errorStack: false,
  moduleTrace: true,
};
/** A lock this old was left behind by a build that was stopped. */
const ABANDONED_MS = 180_000;

/** Builds one named webpack configuration unless its output was made from exactly the present sources. */
async function buildWhenStale(root, name, announce = () => {}) {
  const { folder, without } = BUILDS[name];
  const output = path.join(root, "dist", folder);
  if (isFresh(root, output, without)) return;
  const lock = path.join(root, "dist", `.building-${name}`);
  const unlock = await takeLock(lock);
  try {
    // Another process may have built it while this one waited.
    if (isFresh(root, output, without)) return;
    announce();
    const sources = fingerprint(root, without);
    await build(root, name);
    fs.writeFileSync(path.join(output, STAMP), sources);
  } finally {
    unlock();
  }
}

function isFresh(root, output, without) {
  const stamp = path.join(output, STAMP);
  return (
    fs.existsSync(stamp) &&
    fs.readFileSync(stamp, "utf8") === fingerprint(root, without)
  );
}

function fingerprint(root, without) {
  const hash = createHash("sha256");
  for (const file of SOURCES.flatMap((name) => filesAt(root, name, without))) {
    const { mtimeMs, size } = fs.statSync(path.join(root, file));
    hash.update(`${file} ${mtimeMs} ${size}\n`);
  }
  return hash.digest("hex");
}

function filesAt(root, place, without) {
  if (without.includes(place)) return [];
  const full = path.join(root, place);
  if (!fs.statSync(full).isDirectory()) return [place];
  return fs
    .readdirSync(full)
    .sort()
    .flatMap((name) => filesAt(root, `${place}/${name}`, without));
}

/** Two commands started together must not build into the same folder at once. */
async function takeLock(lock) {
  fs.mkdirSync(path.dirname(lock), { recursive: true });
  for (;;) {
    try {
      fs.mkdirSync(lock);
      return () => fs.rmSync(lock, { recursive: true, force: true });
    } catch (problem) {
      if (problem.code !== "EEXIST") throw problem;
    }
    const taken = fs.statSync(lock, { throwIfNoEntry: false })?.mtimeMs;
    if (taken !== undefined && Date.now() - taken > ABANDONED_MS)
      fs.rmSync(lock, { recursive: true, force: true });
    await pause(100);
  }
}

/** Quiet: what webpack says is shown only when it fails. */
async function build(root, name) {
  const webpack = require("webpack");
  const configuration = require(path.join(root, "webpack.config.js")).find(
    (each) => each.name === name,
  );
  const compiler = webpack(configuration);
  const stats = await new Promise((resolve, reject) =>
    compiler.run((problem, result) =>
      problem ? reject(problem) : resolve(result),
    ),
  );
  // Closing is what stores the cache.
  await new Promise((resolve) => compiler.close(resolve));
  if (stats.hasErrors())
    throw new Error(
      `${stats.toString(ONLY_ERRORS)}\nBuilding "${name}" failed; the lines above say why.`,
    );
}

module.exports = { buildWhenStale };
