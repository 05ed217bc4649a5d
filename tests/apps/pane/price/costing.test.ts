import { channelFacts } from "../../../../src/apps/pane/price/channel-facts";
import {
  isShort,
  isShortByFees,
  readCosting,
} from "../../../../src/apps/pane/price/costing";
import { costingName } from "../../../../src/sheets/costing/names";
import type { Stored, Workbook } from "../../../../src/sheets/workbook";
import { fakeHost } from "../../../support/fake-host";

/** A sheet laid out in an order of its own: the pane goes by names, not by addresses. */
const book: Workbook = {
  title: "Invented",
  names: [
    named("bottles", "$C$2"),
    named("full_replacement", "$C$9"),
    named("missing", "$C$11"),
    named("parts", "$A$4:$B$6"),
    named("channels", "$A$13:$G$15"),
    named("checks", "$E$4:$F$5"),
  ],
  sheets: [
    {
      name: "It's a cost",
      cells: [
        ...at(1, 2, [[1200]]),
        ...at(3, 0, [
          ["Syrup", 1.91],
          ["", null],
          ["Crew", 0.21],
        ]),
        ...at(3, 4, [
          ["Lots cover the run", "ok"],
          ["Freight", "not entered"],
        ]),
        ...at(8, 2, [[6.09]]),
        ...at(10, 2, [[""]]),
        ...at(12, 0, [
          ["Private label", 7.2, 0.155, 0.32, 0.183, 9.99, "under its goal"],
          ["Wholesale", "", "", 0.38, "", 10.99, "no price yet"],
          ["", "", "", "", "", "", ""],
        ]),
      ],
      tables: [],
      validations: [],
      merges: [],
      widths: {},
      heights: {},
      frozen: { rows: 0, columns: 0 },
    },
  ],
};

function named(
  key: Parameters<typeof costingName>[1],
  cells: string,
): Workbook["names"][number] {
  return { name: costingName("X-1", key), refersTo: `'It''s a cost'!${cells}` };
}

function at(
  top: number,
  left: number,
  values: readonly (readonly Stored[])[],
): Workbook["sheets"][number]["cells"] {
  return values.flatMap((row, r) =>
    row.map((value, c) => ({ row: top + r, column: left + c, value })),
  );
}

test("a costing is read from wherever its names point, spare rows left out", async () => {
  const costing = await readCosting(fakeHost(book), book.names, "X-1");
  expect(costing).toMatchObject({
    sheet: "It's a cost",
    figure: {
      bottles: {
        value: 1200,
        place: { sheet: "It's a cost", row: 1, column: 2 },
      },
      full_replacement: { value: 6.09 },
    },
    parts: [
      { name: "Syrup", perBottle: 1.91 },
      { name: "Crew", perBottle: 0.21 },
    ],
    checks: [{ what: "Freight", says: "not entered" }],
  });
  expect(
    costing?.channels.map((c) => [c.channel, c.price, isShort(c)]),
  ).toEqual([
    ["Private label", 7.2, true],
    ["Wholesale", "", false],
  ]);
});

test("short in spite of its margin is told apart from short by its margin", () => {
  const channel = {
    channel: "Own web shop",
    price: 13.49,
    margin: 0.657,
    goal: 0.55,
    markup: 1.912,
    goalPrice: 14.99,
    verdict: "under its goal",
    kept: null,
  };
  expect(isShortByFees(channel)).toBe(true);
  expect(isShortByFees({ ...channel, margin: 0.5 })).toBe(false);
  expect(isShortByFees({ ...channel, verdict: "meets its goal" })).toBe(false);
});

test("a channel's figures are told once each, and a withheld one not at all", () => {
  const channel = {
    channel: "Own web shop",
    price: 13.49,
    margin: 0.657,
    goal: 0.55,
    markup: 1.912,
    goalPrice: 14.99,
    verdict: "under its goal",
    kept: 0.48,
  };
  const told = (changes: object): readonly (readonly string[])[] =>
    channelFacts({ ...channel, ...changes });
  expect(told({})).toEqual([
    ["Margin", "65.7 %"],
    ["Markup", "191.2 %"],
    ["After its own costs", "48 %"],
    ["Goal", "55 %"],
    ["Price for the goal", "$14.99"],
  ]);
  const names = (changes: object): readonly (string | undefined)[] =>
    told(changes).map(([name]) => name);
  expect(names({ kept: 0.657 })).not.toContain("After its own costs");
  const refused = { error: "#N/A" };
  expect(
    names({
      margin: refused,
      markup: refused,
      kept: refused,
      goalPrice: refused,
    }),
  ).toEqual(["Goal"]);
});

test("the cells are asked for once, as one rectangle", async () => {
  const host = fakeHost(book);
  const asked: string[] = [];
  await readCosting(
    {
      readArea: async (...area) => {
        asked.push(area.join(" "));
        return host.readArea(...area);
      },
    },
    book.names,
    "X-1",
  );
  expect(asked).toEqual(["It's a cost 1 0 14 7"]);
});

test("a product without a sheet has no costing", async () => {
  expect(await readCosting(fakeHost(book), book.names, "X-2")).toBeUndefined();
});
