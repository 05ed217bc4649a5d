// Plain Node and webpack only: this file must run before anything of ours has been built.
const { existsSync } = require("node:fs");
const path = require("node:path");

const root = path.join(__dirname, "../../..");
const [command, ...rest] = process.argv.slice(2);

launch().catch((problem) => {
  process.stderr.write(`${problem.message}\n`);
  process.exitCode = 2;
});

async function launch() {
  if (!existsSync(path.join(root, "node_modules/webpack")))
    throw new Error(
      "The packages are not installed yet: run `npm ci` in this folder first.",
    );
  const { buildWhenStale } = require("./build-when-stale.cjs");
  if (command === "start") {
    if (rest.length > 0)
      throw new Error(
        "`npm start` takes no arguments; PORT=3001 npm start uses another port.",
      );
    const { checkedPort, serve } = require("./serve.cjs");
    const port = checkedPort(process.env.PORT);
    await buildWhenStale(root, "workbench", () =>
      process.stderr.write("Building the workbench, about half a minute …\n"),
    );
    const address = await serve(path.join(root, "dist/workbench"), port);
    process.stdout.write(`Tare & Tally workbench: ${address}\n`);
    return;
  }
  await buildWhenStale(root, "cli");
  // npm runs every script in the project's folder; a file named on the command line is meant where the user stands.
  if (process.env.npm_lifecycle_event === command && process.env.INIT_CWD)
    process.chdir(process.env.INIT_CWD);
  require(path.join(root, "dist/cli/main.cjs"));
}
