import { functionNamed } from "../../../src/functions";
import { associateAll } from "../../../src/hosts/excel/associate";
import type { Definition } from "../../../src/functions/define";

type Associated = (...given: unknown[]) => unknown;

const associated = new Map<string, Associated>();

class WorksheetError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

// What Excel's own library offers a page, as its documentation describes it.
const excel = {
  associate: (id: string, run: Associated) => associated.set(id, run),
  Error: WorksheetError,
  ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
};

const density = functionNamed("DENSITY");
if (!density) throw new Error("DENSITY is missing");
const faulty: Definition = {
  ...density,
  name: "FAULTY",
  compute: () => {
    throw new TypeError("undefined is not a function");
  },
};

beforeAll(() => {
  Object.assign(globalThis, { CustomFunctions: excel });
  associateAll([density, faulty]);
});

const call = (name: string, ...given: unknown[]): unknown =>
  associated.get(name)?.(...given);

test("Excel's own last argument, the invocation, is not taken for one of ours", () => {
  const invocation = { address: "Sheet1!A1" };
  expect(call("DENSITY", 66.9, null, null, invocation)).toBeCloseTo(1.32819, 5);
});

test("arguments left out arrive as null and count as their defaults", () => {
  expect(call("DENSITY", 66.9, null, null, {})).toBe(
    call("DENSITY", 66.9, 68, "kg/L", {}),
  );
});

test.each([
  ["a blank that is needed", [null, null, null], "#VALUE!", "needs brix"],
  ["a Brix beyond the table", [99, null, null], "#N/A", "above 85 °Bx"],
])(
  "%s becomes a worksheet error with its sentence",
  (_, given, code, sentence) => {
    const refusal = caught(() => call("DENSITY", ...given, {}));
    expect(refusal).toMatchObject({ code });
    expect(refusal.message).toContain(sentence);
  },
);

test("a fault of ours is an error in the cell that does not blame the figures", () => {
  const refusal = caught(() => call("FAULTY", 66.9, null, null, {}));
  expect(refusal).toMatchObject({ code: "#VALUE!" });
  expect(refusal.message).toMatch(/fault of its own/);
});

test("an Excel without errors to choose from still gets the sentence", () => {
  // Source: CustomFunctions.Error came with CustomFunctionsRuntime 1.2; what is thrown before is #VALUE!.
  const old = { associate: excel.associate };
  Object.assign(globalThis, { CustomFunctions: old });
  try {
    const refusal = caught(() => call("DENSITY", null, null, null, {}));
    expect(refusal).not.toBeInstanceOf(WorksheetError);
    expect(refusal.message).toContain("needs brix");
  } finally {
    Object.assign(globalThis, { CustomFunctions: excel });
  }
});

function caught(run: () => unknown): Error {
  try {
    run();
  } catch (problem) {
    return problem as Error;
  }
  throw new Error("nothing was refused");
}
