// `npm test`: every check there is, in one go. The last line says how many passed and how many failed.
const { spawn } = require("node:child_process");
const { mkdirSync, readFileSync, rmSync } = require("node:fs");
const path = require("node:path");

const root = path.join(__dirname, "..");
const bin = (...parts) => path.join(root, "node_modules", ...parts);
const REPORT = path.join(root, "tests/output/jest.json");
const ESLINT_CONFIG = "tests/architecture/eslint.config.mjs";

const types = {
  name: "types",
  run: [bin("typescript/bin/tsc"), "--noEmit", "-p", "."],
};
const lint = {
  name: "lint",
  run: [
    bin("eslint/bin/eslint.js"),
    "--config",
    ESLINT_CONFIG,
    "--max-warnings",
    "0",
    ".",
  ],
};
const format = {
  name: "format",
  run: [bin("prettier/bin/prettier.cjs"), "--check", "."],
};
const build = { name: "build", run: [path.join(__dirname, "build.cjs")] };
const lanes = [[build], [lint, types, format]];

void main().then(({ passed, failed }) => {
  process.stdout.write(`${passed} passed, ${failed} failed\n`);
  process.exitCode = failed > 0 ? 1 : 0;
});

async function main() {
  let passed = 0;
  let failed = 0;
  const count = (ok) => (ok ? (passed += 1) : (failed += 1));
  // Two at a time: one of them is as long as the other three.
  await Promise.all(
    lanes.map(async (lane) => {
      for (const { name, run } of lane) count(await check(name, run));
    }),
  );
  const tests = await runJest();
  if (!tests.ok && tests.failed === 0) failed += 1;
  return { passed: passed + tests.passed, failed: failed + tests.failed };
}

/** Runs one check quietly; what it said is shown only when it failed. */
async function check(name, run) {
  const started = Date.now();
  const { code, said } = await node(run, "pipe");
  const seconds = ((Date.now() - started) / 1000).toFixed(1);
  process.stdout.write(
    `${name} ${code === 0 ? "passed" : "FAILED"} (${seconds} s)\n`,
  );
  if (code !== 0) process.stdout.write(`${said.trimEnd()}\n`);
  return code === 0;
}

async function runJest() {
  mkdirSync(path.dirname(REPORT), { recursive: true });
  rmSync(REPORT, { force: true });
  const { code } = await node(
    [
      bin("jest/bin/jest.js"),
      "--maxWorkers=2",
      "--json",
      `--outputFile=${REPORT}`,
      ...process.argv.slice(2),
    ],
    "progress",
  );
  const report = readReport();
  if (!report) {
    process.stdout.write("jest gave no report: it did not run.\n");
    return { ok: false, passed: 0, failed: 1 };
  }
  if (report.numTotalTests === 0) {
    process.stdout.write("jest found no tests: that counts as a failure.\n");
    return { ok: false, passed: 0, failed: 1 };
  }
  if (report.numPendingTests > 0)
    process.stdout.write(`${report.numPendingTests} tests were skipped.\n`);
  return {
    ok: code === 0,
    passed: report.numPassedTests,
    // A file that could not even be loaded holds no counted tests, yet it failed.
    failed: report.numFailedTests + report.numRuntimeErrorTestSuites,
  };
}

function readReport() {
  try {
    return JSON.parse(readFileSync(REPORT, "utf8"));
  } catch {
    return undefined;
  }
}

/** With "progress" its error output, where jest reports, goes straight through and its JSON is dropped. */
function node(args, mode) {
  const child = spawn(process.execPath, args, {
    cwd: root,
    stdio:
      mode === "pipe"
        ? ["ignore", "pipe", "pipe"]
        : ["ignore", "ignore", "inherit"],
    env: { ...process.env, CI: process.env.CI ?? "true" },
  });
  let said = "";
  child.stdout?.on("data", (text) => (said += text));
  child.stderr?.on("data", (text) => (said += text));
  return new Promise((resolve) =>
    child.on("close", (code) => resolve({ code, said })),
  );
}
