import {
  mkdtempSync,
  rmSync,
  symlinkSync,
  mkdirSync,
  writeFileSync,
} from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { spawn, type ChildProcess } from "node:child_process";
import { root } from "../../architecture/project-files";

let top: string;
let child: ChildProcess;
let port: number;

beforeAll(async () => {
  top = mkdtempSync(path.join(tmpdir(), "serve-"));
  mkdirSync(path.join(top, "site"));
  writeFileSync(path.join(top, "site/index.html"), "hello");
  writeFileSync(path.join(top, "secret.txt"), "secret");
  symlinkSync(path.join(top, "secret.txt"), path.join(top, "site/link.txt"));
  child = spawn(process.execPath, [
    "-e",
    `require(process.argv[1]).serve(process.argv[2], 0).then((at) => process.stdout.write(at))`,
    path.join(root, "src/apps/cli/serve.cjs"),
    path.join(top, "site"),
  ]);
  const address = await new Promise<string>((resolve) =>
    child.stdout?.once("data", (text: Buffer) => resolve(text.toString())),
  );
  port = Number(new URL(address).port);
});
afterAll(() => {
  child.kill();
  rmSync(top, { recursive: true });
});

/** Written by hand, because a polite client would tidy the path first. */
const request = (line: string): Promise<string> =>
  new Promise((resolve, reject) => {
    let answer = "";
    const socket = connect(port, "127.0.0.1", () =>
      socket.write(`${line} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`),
    );
    socket.on("data", (text) => (answer += text.toString()));
    socket.on("end", () => resolve(answer)).on("error", reject);
  });

test("the page comes with rules that let nothing in from elsewhere", async () => {
  const answer = await request("GET /");
  expect(answer).toMatch(/^HTTP\/1.1 200/);
  expect(answer).toContain("default-src 'self'");
  expect(answer).toMatch(/hello$/);
});

test.each([
  "/../secret.txt",
  "/%2e%2e/secret.txt",
  "/..%2fsecret.txt",
  "/link.txt",
  "/%00",
  "/%zz",
  "//",
])("nothing outside the folder is given away for %s", async (target) => {
  const answer = await request(`GET ${target}`);
  expect(answer).not.toMatch(/\r\n\r\nsecret/);
  if (target !== "//") expect(answer).toMatch(/^HTTP\/1.1 404/);
});

test("nothing can be sent to it", async () => {
  expect(await request("POST /")).toMatch(/^HTTP\/1.1 405/);
});
