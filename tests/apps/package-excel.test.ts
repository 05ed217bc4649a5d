import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { get } from "node:https";
import type { IncomingMessage } from "node:http";
import type { Server } from "node:https";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { certificate } from "../../src/apps/cli/excel-certificate";
import { serveSecurely } from "../../src/apps/cli/excel-server";
import { sideloadSteps } from "../../src/apps/cli/excel-steps";
import { root, textOf } from "../architecture/project-files";

let folder: string;
let server: Server | undefined;

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "excel-"));
});
afterEach(() => {
  server?.close();
  server = undefined;
  rmSync(folder, { recursive: true });
});

test("a certificate is made on the spot, is trusted by whoever trusts its maker, and is kept while it is good", async () => {
  const pair = await certificate(root, folder);
  writeFileSync(path.join(folder, "functions.json"), '{"functions":[]}');
  server = await serveSecurely(root, folder, 0, pair);
  const { port } = server.address() as AddressInfo;
  const answer = await fetched(port, "/functions.json");
  expect(answer.response.statusCode).toBe(200);
  expect(answer.text).toBe('{"functions":[]}');
  // Source: Microsoft's page on functions.json: Excel on the web reads it across origins.
  expect(answer.response.headers["access-control-allow-origin"]).toBe("*");
  expect(answer.response.headers["content-security-policy"]).toBeUndefined();
  expect((await certificate(root, folder)).cert).toEqual(pair.cert);
}, 60_000);

test("a certificate that is no good any more is replaced", async () => {
  const { cert } = await certificate(root, folder);
  writeFileSync(path.join(folder, "localhost.crt"), "no certificate");
  const again = await certificate(root, folder);
  expect(again.cert.toString()).toMatch(/BEGIN CERTIFICATE/);
  expect(again.cert.equals(cert)).toBe(false);
}, 60_000);

test("a port that is taken is said, with the way to another", async () => {
  const pair = await certificate(root, folder);
  server = await serveSecurely(root, folder, 0, pair);
  const { port } = server.address() as AddressInfo;
  await expect(serveSecurely(root, folder, port, pair)).rejects.toThrow(
    `Port ${port} is taken by another program; npm run excel -- --port ${port + 1} uses another one.`,
  );
}, 60_000);

test("the steps name Windows, Mac and the web, and the trust only where it is missing", () => {
  const served = { base: "https://localhost:3443/", manifest: "manifest.xml" };
  const steps = sideloadSteps({ ...served, trust: "npx trust it" }).join("\n");
  for (const name of ["Windows:", "Mac:", "Web:", "npx trust it"])
    expect(steps).toContain(name);
  expect(sideloadSteps({ ...served, trust: undefined }).join("\n")).not.toMatch(
    /trust the certificate/,
  );
});

test("the documents the steps point to are there", () => {
  for (const [file] of sideloadSteps({
    base: "",
    manifest: "",
    trust: undefined,
  })
    .join("\n")
    .matchAll(/docs\/[\w-]+\.md/g))
    expect(textOf(file).length).toBeGreaterThan(500);
});

async function fetched(
  port: number,
  file: string,
): Promise<{ readonly response: IncomingMessage; readonly text: string }> {
  const ca = readFileSync(path.join(folder, "ca.crt"));
  const request = get(`https://localhost:${port}${file}`, { ca });
  const [response] = (await once(request, "response")) as [IncomingMessage];
  const chunks: Buffer[] = [];
  for await (const chunk of response) chunks.push(chunk as Buffer);
  return { response, text: Buffer.concat(chunks).toString("utf8") };
}
