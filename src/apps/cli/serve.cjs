const fs = require("node:fs");
const http = require("node:http");
const path = require("node:path");

const HOST = "127.0.0.1";

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".xml": "application/xml",
  ".zip": "application/zip",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

// Nothing leaves the machine: the page may load and call only what this server gives it.
const HEADERS = {
  "Content-Security-Policy": [
    "default-src 'self'",
    "img-src 'self' data: blob:",
    "style-src 'self' 'unsafe-inline'",
    "font-src 'self' data:",
    "worker-src 'self' blob:",
    "script-src 'self'",
  ].join("; "),
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cache-Control": "no-cache",
};

/** Serves one folder and nothing outside it; gives the address once it listens. */
function serve(folder, port) {
  const server = http.createServer((request, response) =>
    respond(fs.realpathSync(folder), request, response),
  );
  return new Promise((resolve, reject) => {
    server.once("error", (problem) =>
      reject(
        problem.code === "EADDRINUSE"
          ? new Error(
              `Port ${port} is taken by another program; PORT=${port + 1} npm start uses another one.`,
            )
          : problem,
      ),
    );
    server.listen(port, HOST, () =>
      resolve(`http://${HOST}:${server.address().port}`),
    );
  });
}

function checkedPort(given) {
  if (given === undefined || given === "") return 3000;
  const port = Number(given);
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new Error(`PORT: "${given}" is not a port number from 0 to 65535.`);
  return port;
}

/** Answers a request from the folder; `headers` go with every answer. */
function respond(folder, request, response, headers = HEADERS) {
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.writeHead(405, { ...headers, Allow: "GET, HEAD" }).end();
    return;
  }
  const file = fileFor(folder, request.url);
  if (file === undefined) {
    response
      .writeHead(404, { ...headers, "Content-Type": TYPES[".txt"] })
      .end("There is nothing at this address.\n");
    return;
  }
  response.writeHead(200, {
    ...headers,
    "Content-Type": TYPES[path.extname(file)] ?? "application/octet-stream",
    "Content-Length": fs.statSync(file).size,
  });
  if (request.method === "HEAD") response.end();
  else fs.createReadStream(file).pipe(response);
}

/** The file an address means, or undefined when there is none inside the folder (links are followed first). */
function fileFor(folder, url) {
  let wanted;
  try {
    wanted = decodeURIComponent(new URL(url, `http://${HOST}`).pathname);
  } catch {
    return undefined;
  }
  if (wanted.includes("\0")) return undefined;
  const named = path.join(
    folder,
    wanted.endsWith("/") ? `${wanted}index.html` : wanted,
  );
  if (!fs.existsSync(named)) return undefined;
  const real = fs.realpathSync(named);
  const inside = real.startsWith(folder + path.sep);
  return inside && fs.statSync(real).isFile() ? real : undefined;
}

module.exports = { serve, respond, checkedPort };
