import { writeFileSync } from "node:fs";
import path from "node:path";
import {
  metadata,
  type FunctionMetadata,
} from "../../src/apps/functions/metadata";
import { functions } from "../../src/functions";
import { root, textOf } from "./project-files";

/**
 * What workbooks out in the world rely on: a function's id, its arguments by place, and whether it fills one cell or
 * several. A name, an id or the order of arguments never changes once it stands here; a new function, or a new
 * argument that may be left out and comes last, is taken up by
 *
 *     RELEASE=accept npx jest tests/architecture/released-functions
 *
 * which adds and never takes away.
 */
interface Released {
  readonly id: string;
  readonly fills: "a cell" | "several cells";
  readonly arguments: readonly ReleasedArgument[];
}

interface ReleasedArgument {
  readonly name: string;
  readonly is: "needed" | "optional";
  readonly takes: "a cell" | "a range";
  readonly type: string;
}

const FILE = "tests/architecture/released-functions.json";
const now = metadata(functions).functions.map(asReleased);
const released = JSON.parse(textOf(FILE)) as readonly Released[];

if (process.env["RELEASE"] === "accept") {
  const found = breaks(released, now);
  if (found.length > 0)
    throw new Error(`These may not be accepted:\n${found.join("\n")}`);
  const text = `${JSON.stringify(now.toSorted(byId), null, 2)}\n`;
  writeFileSync(path.join(root, FILE), text);
}

test("no released function has lost its name or an argument, or changed their order", () => {
  expect(breaks(released, now)).toEqual([]);
});

test("what is new has been taken up as released", () => {
  const accepted = JSON.parse(textOf(FILE)) as readonly Released[];
  expect(
    additions(accepted, now).map(
      (what) =>
        `${what}. If it is meant to stay for ever: RELEASE=accept npx jest tests/architecture/released-functions`,
    ),
  ).toEqual([]);
});

describe("the check itself", () => {
  const one: Released = {
    id: "LOSS",
    fills: "a cell",
    arguments: [argument("volume", "needed"), argument("unit", "optional")],
  };
  const last = argument("season", "optional");

  test.each<readonly [string, Released, RegExp]>([
    ["another id", { ...one, id: "LOSSES" }, /^SYRUP.LOSS is gone/],
    [
      "arguments in another order",
      { ...one, arguments: one.arguments.toReversed() },
      /^SYRUP.LOSS: argument 1 was volume/,
    ],
    [
      "a lost argument",
      { ...one, arguments: one.arguments.slice(0, 1) },
      /^SYRUP.LOSS: argument 2 was unit/,
    ],
    [
      "a new argument in between",
      {
        ...one,
        arguments: [
          argument("volume", "needed"),
          last,
          argument("unit", "optional"),
        ],
      },
      /^SYRUP.LOSS: argument 2 was unit/,
    ],
    [
      "a new argument that is needed",
      { ...one, arguments: [...one.arguments, argument("season", "needed")] },
      /^SYRUP.LOSS: new argument season must be optional/,
    ],
    [
      "an argument that may no longer be left out",
      {
        ...one,
        arguments: [argument("volume", "needed"), argument("unit", "needed")],
      },
      /^SYRUP.LOSS: argument 2 was unit \(optional/,
    ],
    [
      "an answer that spills",
      { ...one, fills: "several cells" },
      /^SYRUP.LOSS filled a cell/,
    ],
  ])("%s is a break", (_, changed, says) => {
    expect(breaks([one], [changed])).toEqual([expect.stringMatching(says)]);
  });

  test("a new last argument that may be left out is an addition, no break; so is one that no longer must be given", () => {
    const more = { ...one, arguments: [...one.arguments, last] };
    expect(breaks([one], [more])).toEqual([]);
    expect(additions([one], [more])).toHaveLength(1);
    const eased = {
      ...one,
      arguments: [argument("volume", "optional"), argument("unit", "optional")],
    };
    expect(breaks([one], [eased])).toEqual([]);
    expect(additions([one], [eased])).toHaveLength(1);
  });

  function argument(
    name: string,
    is: ReleasedArgument["is"],
  ): ReleasedArgument {
    return { name, is, takes: "a cell", type: "any" };
  }
});

function asReleased({ id, parameters, result }: FunctionMetadata): Released {
  return {
    id,
    fills: result.dimensionality === "matrix" ? "several cells" : "a cell",
    arguments: parameters.map(({ name, optional, dimensionality, type }) => ({
      name,
      is: optional ? "optional" : "needed",
      takes: dimensionality === "matrix" ? "a range" : "a cell",
      type,
    })),
  };
}

function byId(one: Released, other: Released): number {
  return one.id < other.id ? -1 : 1;
}

function breaks(
  before: readonly Released[],
  after: readonly Released[],
): readonly string[] {
  return before.flatMap((old) => {
    const name = `SYRUP.${old.id}`;
    const same = after.find(({ id }) => id === old.id);
    if (!same) return [`${name} is gone: a released name stays`];
    const changed = old.arguments.flatMap((was, i) => {
      const is = same.arguments[i];
      return is && keeps(was, is)
        ? []
        : [
            `${name}: argument ${i + 1} was ${said(was)} and is ${is ? said(is) : "gone"}`,
          ];
    });
    const forced = same.arguments
      .slice(old.arguments.length)
      .filter(({ is }) => is === "needed")
      .map(
        ({ name: added }) => `${name}: new argument ${added} must be optional`,
      );
    const filled =
      same.fills === old.fills
        ? []
        : [`${name} filled ${old.fills} and fills ${same.fills}`];
    // One thing at a time: what follows a shifted argument is no news.
    return [...changed.slice(0, 1), ...forced, ...filled];
  });
}

function keeps(was: ReleasedArgument, is: ReleasedArgument): boolean {
  return (
    is.name === was.name &&
    is.takes === was.takes &&
    is.type === was.type &&
    // An argument may become one that can be left out, never the other way.
    (is.is === was.is || is.is === "optional")
  );
}

function said({ name, is, takes, type }: ReleasedArgument): string {
  return `${name} (${is}, ${takes}, ${type})`;
}

function additions(
  before: readonly Released[],
  after: readonly Released[],
): readonly string[] {
  return after
    .filter(
      (one) =>
        JSON.stringify(before.find(({ id }) => id === one.id)) !==
        JSON.stringify(one),
    )
    .map(({ id }) =>
      before.some((old) => old.id === id)
        ? `SYRUP.${id} takes more than before`
        : `SYRUP.${id} is new`,
    );
}
