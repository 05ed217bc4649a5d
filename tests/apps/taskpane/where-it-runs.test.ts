import { OfficeMockObject } from "office-addin-mock";

// The mock takes only the names of programs from there, for models that are a program's; ours is Office itself.
jest.mock("office-addin-manifest", () => ({ OfficeApp: {} }));

// Microsoft's helper package looks for its surroundings when it is loaded, so they are there before it is.
const globals = globalThis as unknown as Record<string, unknown>;
const before = { window: globals["window"], Office: globals["Office"] };
afterEach(() => {
  Object.assign(globalThis, before);
  jest.resetModules();
});

async function whereItRuns(office: unknown): Promise<string> {
  Object.assign(globalThis, {
    window: globalThis,
    Office: office,
    sessionStorage: { getItem: () => null, setItem: () => undefined },
  });
  const helpers = await import("../../../src/hosts/excel/runtime-helpers");
  return helpers.whereItRuns();
}

test("Microsoft's mock of Excel on the web is said to be Excel on the web", async () => {
  const office = new OfficeMockObject({
    context: { host: "Excel", platform: "OfficeOnline" },
  });
  expect(await whereItRuns(office)).toBe("Excel on the web");
});

test.each([
  [{ host: "Excel", platform: "PC" }, "Excel on Windows"],
  [{ host: "Excel", platform: "Mac" }, "Excel on Mac"],
  [{ host: "Word", platform: "PC" }, "an Office program on Windows"],
])("%j is said in plain words", async (context, words) => {
  expect(await whereItRuns({ context })).toBe(words);
});

test("without Office it is a browser", async () => {
  expect(await whereItRuns(undefined)).toBe("a browser without Excel");
});
