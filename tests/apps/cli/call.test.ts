import { run } from "./array-terminal";

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

const answerTo = async (name: string, args: unknown): Promise<unknown> => {
  const { said } = await run(["call", name, JSON.stringify(args)]);
  return replies(said)[0];
};

test("a range is rows of cells, a null in it or for an argument a blank", async () => {
  const lots = [
    ["2026-03-20", 1000, 2.4],
    ["2026-04-08", 2000, 2.6],
    [null, null, null],
  ];
  // Hand arithmetic: 1,000 × 2.40 + 800 × 2.60.
  expect(await answerTo("LOT_COST", ["oldest first", 1800, lots])).toEqual({
    name: "LOT_COST",
    value: expect.closeTo(4480, 9) as number,
  });
  expect(await answerTo("DENSITY", [66.9, null])).toEqual(
    await answerTo("DENSITY", [66.9]),
  );
});

test("an answer of several cells comes as its rows", async () => {
  // Hand arithmetic: 100 shared 1 : 3.
  expect(await answerTo("ALLOCATE", [100, [[1], [3]]])).toEqual({
    name: "ALLOCATE",
    value: [[25], [75]],
  });
});

test("arguments beside lines from standard input are refused", async () => {
  const { code, said, complained } = await run(["call", "-", "[66]"]);
  expect([code, said]).toEqual([2, []]);
  expect(complained[0]).toContain("one too many");
});

test("a line whose arguments are no list is answered in its place", async () => {
  const { said } = await run(
    ["call", "-"],
    ['{"name":"DENSITY","args":66}', '{"args":[66]}', "[66]"],
  );
  expect(replies(said)).toEqual([
    expect.objectContaining({
      name: "DENSITY",
      error: { code: "#VALUE!", message: "args: a JSON array is wanted" },
    }),
    expect.objectContaining({ name: null }),
    expect.objectContaining({ name: null }),
  ]);
});
