import { realpathSync } from "node:fs";
import { createRequire } from "node:module";
import type { IncomingMessage, ServerResponse } from "node:http";
import { createServer, type Server } from "node:https";
import path from "node:path";
import { unusable } from "../../measures/cannot-answer";

/** Only this machine can reach it. */
const HOST = "127.0.0.1";

/** Serves one folder over https on this machine and nothing outside it; gives the server once it listens. */
export function serveSecurely(
  root: string,
  folder: string,
  port: number,
  pair: { readonly cert: Buffer; readonly key: Buffer },
): Promise<Server> {
  const { respond } = createRequire(path.join(root, "package.json"))(
    "./src/apps/cli/serve.cjs",
  ) as Responder;
  const server = createServer(
    { cert: pair.cert, key: pair.key },
    (request, response) =>
      respond(realpathSync(folder), request, response, HEADERS),
  );
  return new Promise((resolve, reject) => {
    server.once("error", (problem: NodeJS.ErrnoException) =>
      reject(
        problem.code === "EADDRINUSE"
          ? unusable(
              `Port ${port} is taken by another program; npm run excel -- --port ${port + 1} uses another one.`,
            )
          : problem,
      ),
    );
    server.listen(port, HOST, () => resolve(server));
  });
}

interface Responder {
  respond(
    folder: string,
    request: IncomingMessage,
    response: ServerResponse,
    headers: Readonly<Record<string, string>>,
  ): void;
}

/** The page brings its own content rules. Excel on the web reads functions.json from another origin. */
const HEADERS = {
  "Access-Control-Allow-Origin": "*",
  "X-Content-Type-Options": "nosniff",
  "Cache-Control": "no-cache",
};
