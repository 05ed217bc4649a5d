const { createHash } = require("node:crypto");
const fs = require("node:fs");
const path = require("node:path");
const { setTimeout: pause } = require("node:timers/promises");

/** Where each configuration puts its files, the folders it takes nothing from, and what it takes from outside the sources. */
const BUILDS = {
  functions: {
    folder: "addin",
    without: ["src/apps/pane", "src/apps/workbench", "src/apps/taskpane"],
  },
  taskpane: {
    folder: "taskpane",
    without: ["src/apps/cli", "src/apps/workbench"],
  },
  workbench: {
    folder: "workbench",
    without: ["src/apps/cli"],
    // The demo farm's records come with the page.
    also: ["sample-workbooks/fernkettle-hollow"],
  },
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
  const { folder } = BUILDS[name];
  const output = path.join(root, "dist", folder);
  if (isFresh(root, output, name)) return;
  const lock = path.join(root, "dist", `.building-${name}`);
  const unlock = await takeLock(lock);
  try {
    // Another process may have built it while this one waited.
    if (isFresh(root, output, name)) return;
    announce();
    const sources = fingerprint(root, name);
    await build(root, name);
    fs.writeFileSync(path.join(output, STAMP), sources);
  } finally {
    unlock();
  }
}

function isFresh(root, output, name) {
  const stamp = path.join(output, STAMP);
  return (
    fs.existsSync(stamp) &&
    fs.readFileSync(stamp, "utf8") === fingerprint(root, name)
  );
}

function fingerprint(root, name) {
  const { without, also = [] } = BUILDS[name];
  const hash = createHash("sha256");
  const files = [...SOURCES, ...also].flatMap((place) =>
    filesAt(root, place, without),
  );
  for (const file of files) {
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

/** Quiet: what webpack says is shown only when it fails. Settings are those of `--env`; a folder is used in place of dist's. */
async function build(root, name, settings = {}, folder = undefined) {
  const webpack = require("webpack");
  const configurations = require(path.join(root, "webpack.config.js"));
  const configuration = configurations(settings).find(
    (each) => each.name === name,
  );
  if (folder !== undefined) configuration.output.path = folder;
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

module.exports = { build, buildWhenStale };
