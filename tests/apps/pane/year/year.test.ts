import { plannedSheets, type Part } from "../../../../src/apps/pane/year/build";
import {
  openChecks,
  readFigures,
  words,
} from "../../../../src/apps/pane/year/figures";
import {
  typedName,
  typedPrice,
  typedShare,
  typedYear,
} from "../../../../src/apps/pane/year/typed";
import type { OpenBook } from "../../../../src/apps/pane/open-book";
import { channelsPlaces } from "../../../../src/sheets/channels/channels-sheet";
import { costingNames } from "../../../../src/sheets/costing/names";
import { farmBook } from "../../../../src/sheets/farm-book";
import { overheadsPlaces } from "../../../../src/sheets/overheads/overheads-sheet";
import { yearsPlaces } from "../../../../src/sheets/year-to-year/years-sheet";
import { demoTables } from "../../../book/csv-folder";
import { fakeHost } from "../../../support/fake-host";

const opened = async () => {
  const host = fakeHost(farmBook(demoTables()));
  const book = async (): Promise<OpenBook> => ({
    tables: await host.readTables(),
    names: await host.readNames(),
    sheets: await host.sheetNames(),
    reading: 1,
  });
  const build = async (part: Part, product = "G250-AM") => {
    const plan = plannedSheets(part, await book(), product);
    await host.apply(plan.change);
    return plan;
  };
  return { host, book, build };
};

test("channels bring the product's costing sheet with them, unless it is there", async () => {
  const { build, book } = await opened();
  const first = await build("channels");
  expect(first.change.addSheets?.map(({ name }) => name)).toEqual([
    "Channels G250-AM",
    "Cost G250-AM",
  ]);
  expect(costingNames((await book()).names, "G250-AM").channels).toBeDefined();
  const { host } = await opened();
  const again = plannedSheets(
    "channels",
    { ...(await book()), sheets: ["Cost G250-AM"] },
    "G250-AM",
  );
  expect(again.change.addSheets?.map(({ name }) => name)).toEqual([
    "Channels G250-AM",
  ]);
  expect(await host.sheetNames()).not.toContain("Channels G250-AM");
});

test("what will be written is said with its cells before it is", async () => {
  const { book } = await opened();
  const { writes } = plannedSheets("overheads", await book(), "");
  expect(writes[0]).toMatch(
    /^the sheet “Overheads by driver”, A1 to [A-Z]+\d+$/,
  );
  expect(writes[1]).toMatch(/^\d+ names for its figures$/);
});

test("a sheet that exists is not built twice", async () => {
  const { build } = await opened();
  await build("years");
  await expect(build("years")).rejects.toThrow(
    'The sheet "Years G250-AM" exists; rename or delete it before building a new one',
  );
});

test("each part's figures are found by their names once its sheet is there", async () => {
  const { host, book, build } = await opened();
  const found = async (part: Part) => {
    const { names } = await book();
    return part === "overheads"
      ? readFigures(host, overheadsPlaces(names))
      : part === "years"
        ? readFigures(host, yearsPlaces(names, "G250-AM"))
        : readFigures(host, channelsPlaces(names, "G250-AM"));
  };
  for (const part of ["channels", "overheads", "years"] as const) {
    expect(await found(part)).toBeUndefined();
    const { sheet } = await build(part);
    const figures = await found(part);
    expect(figures?.sheet).toBe(sheet);
  }
  const { names } = await book();
  const overheads = await readFigures(host, overheadsPlaces(names));
  expect(overheads?.rows("ways").map(([name]) => words(name))).toEqual([
    "Runs",
    "Lots drawn",
    "Lots and runs",
    "Gallons packed",
    "Products",
    "Revenue",
  ]);
  const years = await readFigures(host, yearsPlaces(names, "G250-AM"));
  expect(words(years?.rows("steps").at(-1)?.[0])).toBe("Change in all");
  const channels = await readFigures(host, channelsPlaces(names, "G250-AM"));
  expect(channels?.rows("sizes")[0]?.slice(1)).toEqual([1, 2, 4, 6]);
  expect(channels?.place("mailer")?.sheet).toBe("Channels G250-AM");
});

test("only checks that do not hold are shown", () => {
  expect(
    openChecks([
      ["Mailer", "not entered"],
      ["Sales tax", "ok"],
      ["Shipping", ""],
    ]),
  ).toEqual([{ what: "Mailer", says: "not entered" }]);
});

test("what is typed is read or refused in a sentence, and a blank stays blank", () => {
  expect([typedPrice("$1.35"), typedPrice(" "), typedShare("6 %")]).toEqual([
    1.35,
    null,
    0.06,
  ]);
  expect(typedShare("")).toBeNull();
  expect(typedYear("2025")).toBe(2025);
  expect(() => typedPrice("cheap")).toThrow(/is no price/);
  expect(() => typedPrice("-1")).toThrow(/is no price/);
  expect(() => typedYear("25")).toThrow(/is no year/);
  expect(() => typedName(" ")).toThrow(/needs a name/);
});
