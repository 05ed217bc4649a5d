// Serves a folder as any static host would: with no rules of its own, so that the page's own are what is tried.
const fs = require("node:fs");
const http = require("node:http");
const { respond } = require("../../../src/apps/cli/serve.cjs");

const [folder] = process.argv.slice(2);
const server = http.createServer((request, response) =>
  respond(fs.realpathSync(folder), request, response, {}),
);
server.listen(0, "127.0.0.1", () =>
  process.stdout.write(`http://127.0.0.1:${server.address().port}`),
);
