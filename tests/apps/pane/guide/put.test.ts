import {
  emptyFillIn,
  type FillIn,
} from "../../../../src/apps/pane/guide/fill-in";
import { put, whyNot } from "../../../../src/apps/pane/guide/put";
import { look, type Shown } from "../../../../src/apps/pane/guide/use-preview";
import { functionNamed, functions } from "../../../../src/functions";
import { answer } from "../../../../src/functions/answer";
import type { Definition } from "../../../../src/functions/define";
import type { FakeHost } from "../../../support/fake-host";
import { opened } from "./book";

const named = (name: string): Definition => {
  const found = functionNamed(name);
  if (!found) throw new Error(`${name} is gone`);
  return found;
};

let host: FakeHost;
beforeEach(async () => {
  ({ host } = await opened());
});

async function lookAt(
  name: string,
  typed: FillIn["typed"],
  target: string,
): Promise<Shown> {
  const [tables, names, sheets] = await Promise.all([
    host.readTables(),
    host.readNames(),
    host.sheetNames(),
  ]);
  const fillIn = { ...emptyFillIn, typed };
  return look(host, { tables, names, sheets }, named(name), fillIn, target);
}

const hot = { volume: "250", brix: "66.9", fill_temperature: "185" };

test("typed figures are answered before anything is written", async () => {
  const { preview, landing } = await lookAt("HOT_VOLUME", hot, "Work!D9");
  expect(preview?.formula).toBe("=SYRUP.HOT_VOLUME(250, 66.9, 185)");
  // Source: 1328.19 ÷ 1289.73 of 250 mL, the example of the function's own page.
  expect(preview?.gives).toMatch(/^257\.45\d* mL$/);
  expect(preview?.call?.line).toMatch(/250 mL/);
  expect(landing).toMatchObject({ holds: undefined, obstacle: undefined });
  expect(host.workbook().sheets[1]?.cells).toHaveLength(7);
});

test("cells of the sheet are read as well, and said", async () => {
  const { preview } = await lookAt(
    "HOT_VOLUME",
    { ...hot, brix: "house_brix", fill_temperature: "B2" },
    "Work!D9",
  );
  expect(preview?.formula).toBe("=SYRUP.HOT_VOLUME(250, house_brix, B2)");
  expect(preview?.gives).toMatch(/^257\.45\d* mL$/);
  expect(preview?.call?.args[1]?.value).toBe("66.9");
});

test("a reference names its sheet only where the answer stands on another", async () => {
  const typed = { pieces: "3000", breaks: "'Price breaks'!A2:B4" };
  const away = await lookAt("BREAK_PRICE", typed, "Work!D9");
  expect(away.preview?.formula).toBe(
    "=SYRUP.BREAK_PRICE(3000, 'Price breaks'!A2:B4)",
  );
  // Source: read off the table of breaks: 2,016 is reached, 8,064 is not.
  expect(away.preview?.gives).toBe("1.21 each");
  const home = await lookAt("BREAK_PRICE", typed, "'Price breaks'!D9");
  expect(home.preview?.formula).toBe("=SYRUP.BREAK_PRICE(3000, A2:B4)");
  expect(home.preview?.gives).toBe("1.21 each");
});

test("what is missing is named, and nothing can be put", async () => {
  const shown = await lookAt("HOT_VOLUME", { brix: "66.9" }, "Work!D9");
  expect(shown.preview?.missing).toEqual(["volume", "fill_temperature"]);
  expect(shown.preview?.call).toBeUndefined();
  const why = whyNot(named("HOT_VOLUME"), shown);
  expect(why?.says).toMatch(/^Still needed: .+, .+\.$/);
  expect(why?.argument).toBe("volume");
});

test("a typed figure the function refuses is refused here, in its own sentence", async () => {
  const shown = await lookAt("HOT_VOLUME", { ...hot, brix: "66,9" }, "Work!D9");
  expect(shown.preview?.call?.refusal).toMatch(/66\.9 written with a comma/);
  expect(whyNot(named("HOT_VOLUME"), shown)?.says).toMatch(/^Brix: "66,9"/);
});

test("a blank cell that will be filled later keeps nobody from writing the formula", async () => {
  const shown = await lookAt("HOT_VOLUME", { ...hot, brix: "B4" }, "Work!D9");
  expect(shown.preview?.call?.refusal).toBe("needs brix");
  expect(whyNot(named("HOT_VOLUME"), shown)).toBeUndefined();
});

test.each([
  ["one of the cells it reads", "Work!B1", /reads Work, B1/],
  ["a place that is no cell", "somewhere", /is no cell/],
  ["no place at all", " ", /Select the cell for the answer/],
])("it does not go into %s", async (_, target, sentence) => {
  const shown = await lookAt("HOT_VOLUME", { ...hot, brix: "B1" }, target);
  expect(whyNot(named("HOT_VOLUME"), shown)?.says).toMatch(sentence);
});

describe("an answer of several cells", () => {
  // 1,500 bottles in cases of 12, 10 cases a layer, 6 layers: two pallets of 720 and five cases.
  const pallets = {
    bottles: "1500",
    per_case: "12",
    cases_per_layer: "10",
    layers: "6",
  };
  test("says which cells it fills", async () => {
    const shown = await lookAt("PALLETS", pallets, "Work!D9");
    expect(shown.landing).toMatchObject({ fills: "D9:F9", holds: undefined });
    expect(shown.preview?.gives).toMatchObject({ rows: [["2", "5", "0"]] });
    expect(whyNot(named("PALLETS"), shown)).toBeUndefined();
  });
  test("does not go where a cell to be filled is not empty", async () => {
    await host.setCell({ sheet: "Work", row: 8, column: 5 }, "kept");
    const shown = await lookAt("PALLETS", pallets, "Work!D9");
    expect(whyNot(named("PALLETS"), shown)?.says).toBe(
      "The answer fills Work, D9:F9, and F9 holds “kept”. Choose a cell with room, or empty them.",
    );
  });
  test("does not go into a table", async () => {
    await host.setCell({ sheet: "Price breaks", row: 3, column: 1 }, null);
    const shown = await lookAt("PALLETS", pallets, "'Price breaks'!B4");
    expect(whyNot(named("PALLETS"), shown)?.says).toMatch(
      /a table such as Breaks does not take/,
    );
  });
});

test("a cell that is not empty is said, and comes back when taken back", async () => {
  const shown = await lookAt("HOT_VOLUME", hot, "Work!B3");
  const { preview, landing } = shown;
  if (!preview || typeof landing !== "object") throw new Error("not read");
  expect(landing.holds).toBe("“2”");
  const { says, takeBack } = await put(
    host,
    named("HOT_VOLUME"),
    preview,
    landing,
  );
  expect(says).toMatch(/^SYRUP\.HOT_VOLUME is now in Work, B3/);
  expect(await host.readCell(landing.place)).toMatchObject({
    formula: "=SYRUP.HOT_VOLUME(250, 66.9, 185)",
  });
  expect(await takeBack?.()).toBe("Work, B3 is as it was.");
  const after = await host.readCell(landing.place);
  expect(after.value).toBe("2");
  expect(after.formula).toBeUndefined();
});

const isPlain = (definition: Definition): boolean =>
  definition.examples[0].args.every(
    (raw) => typeof raw !== "object" || raw === null,
  );

test.each(functions.filter(isPlain).map((f) => [f.name, f] as const))(
  "%s: its first example typed into the form gives its answer",
  async (name, definition) => {
    const [example] = definition.examples;
    const typed = Object.fromEntries(
      Object.keys(definition.args).map((argument, i) => {
        const raw = example.args[i] ?? "";
        return [
          argument,
          typeof raw === "boolean" ? String(raw).toUpperCase() : String(raw),
        ];
      }),
    );
    const { preview } = await lookAt(name, typed, "Work!H40");
    expect(preview?.troubles).toEqual({});
    expect(preview?.call?.refusal).toBeUndefined();
    // What the function gives for the example is checked against its source elsewhere.
    expect(preview?.call?.answer).toEqual(answer(definition, example.args));
  },
);
