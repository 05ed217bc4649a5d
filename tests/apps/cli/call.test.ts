import { runCommand } from "../../../src/apps/cli/run-command";

async function run(args: readonly string[], input: readonly string[] = []) {
  const said: string[] = [];
  const complained: string[] = [];
  const code = await runCommand(args, {
    root: "",
    lines: async function* () {
      yield* input;
    },
    say: (line) => said.push(line),
    complain: (line) => complained.push(line),
  });
  return { code, said, complained };
}
const replies = (said: readonly string[]): unknown[] =>
  said.map((line) => JSON.parse(line) as unknown);

test("a function answers as one line of JSON", async () => {
  const { code, said } = await run(["call", "syrup.density", "[66.9]"]);
  expect(code).toBe(0);
  expect(replies(said)).toEqual([
    { name: "DENSITY", value: expect.closeTo(1.32819, 5) as number },
  ]);
});

test("an error value keeps its sentence and ends with 2", async () => {
  const { code, said } = await run(["call", "DENSITY", "[null]"]);
  expect(code).toBe(2);
  expect(replies(said)).toEqual([
    { name: "DENSITY", error: { code: "#VALUE!", message: "needs brix" } },
  ]);
});

test("lines are answered in their order, and a bad one does not stop the next", async () => {
  const { code, said } = await run(
    ["call", "-"],
    [
      '{"name":"NOPE"}',
      "{",
      '{"name":"DENSITY","args":[99]}',
      "",
      '{"name":"DENSITY","args":[66]}',
    ],
  );
  expect(code).toBe(2);
  expect(replies(said)).toEqual([
    expect.objectContaining({
      name: "NOPE",
      error: expect.objectContaining({ code: "#NAME?" }) as object,
    }),
    expect.objectContaining({ name: null }),
    expect.objectContaining({
      error: expect.objectContaining({ code: "#N/A" }) as object,
    }),
    expect.objectContaining({
      name: "DENSITY",
      value: expect.any(Number) as number,
    }),
  ]);
});

test.each([
  ["no command", []],
  ["an unknown command", ["toString"]],
  ["arguments that are no JSON array", ["call", "DENSITY", "66.9"]],
  ["too many arguments", ["call", "DENSITY", "[66]", "[68]"]],
  ["an unknown option", ["cost", "somewhere", "--speed", "9"]],
  ["an output that is no workbook", ["book", "somewhere", "--out", "x.txt"]],
])("%s is refused in one sentence and answers nothing", async (_, args) => {
  const { code, said, complained } = await run(args);
  expect([code, said, complained.length]).toEqual([2, [], 1]);
});
