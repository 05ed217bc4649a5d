import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { PapersAnswer } from "../../../src/apps/cli/papers";
import { withCheckDigit } from "../../../src/trade/codes/check-digit";
import { root } from "../../architecture/project-files";
import { run } from "./array-terminal";

const demo = path.join(root, "sample-workbooks/fernkettle-hollow");
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "papers-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

const asked = (...more: readonly string[]): readonly string[] => [
  "papers",
  demo,
  "--ticket",
  "T-044",
  "--out",
  folder,
  ...more,
];

test("one tote's papers are written as pages and bars, and not replaced unasked", async () => {
  const numbers = [
    "--prefix",
    "0400001",
    "--item",
    withCheckDigit("9040000100001"),
  ];
  const { code, said, complained } = await run(asked(...numbers, "--json"));
  expect([code, complained]).toEqual([0, []]);
  const answer = JSON.parse(said.join("")) as PapersAnswer;
  expect(answer).toMatchObject({
    billOfLading: "BOL-026",
    lot: "T-044",
    missing: [],
  });
  expect([...answer.files].sort()).toEqual(readdirSync(folder).sort());
  expect(answer.files).toEqual([
    "weight-ticket-T-044.html",
    "bill-of-lading-BOL-026.html",
    "tote-label-T-044.html",
    "tote-label-T-044-bars-1.svg",
    "tote-label-T-044-bars-2.svg",
  ]);
  expect(
    readFileSync(path.join(folder, "tote-label-T-044.html"), "utf8"),
  ).toContain("<svg ");
  const again = await run(asked());
  expect(again.code).toBe(2);
  expect(again.complained.join("")).toMatch(/exists already.*--force/);
  expect((await run(asked("--force"))).code).toBe(0);
});

test.each([
  [["papers", demo], /Needs --ticket/],
  [["papers", demo, "--ticket", "T-044"], /Needs --out/],
  [
    [
      "papers",
      demo,
      "--ticket",
      "T-044",
      "--out",
      "x",
      "--as-of",
      "2026-01-01",
    ],
    /no tote T-044 has left by that day/,
  ],
])(
  "what cannot be answered is a sentence and writes nothing: %#",
  async (args, says) => {
    const { code, complained } = await run(args);
    expect(code).toBe(2);
    expect(complained.join("")).toMatch(says);
  },
);
