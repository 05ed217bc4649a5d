import { FluentProvider } from "@fluentui/react-components";
import { renderToStaticMarkup } from "react-dom/server";
import { CallView } from "../../../../src/apps/pane/why/call-view";
import { sentence } from "../../../../src/apps/pane/sentence";
import {
  explain,
  type Explanation,
} from "../../../../src/apps/pane/why/explain";
import { functions } from "../../../../src/functions";
import { answer, explained } from "../../../../src/functions/answer";
import type { Definition, Raw } from "../../../../src/functions/define";
import { refusals } from "../../../../src/functions/page-refusals";
import { CannotAnswer } from "../../../../src/measures/cannot-answer";
import { cellAddress } from "../../../../src/sheets/address";
import type { Cell, Stored, Workbook } from "../../../../src/sheets/workbook";
import { fakeHost } from "../../../support/fake-host";

/** A call as a person has it: ranges on the sheet "Data", everything else in the formula on the sheet "Work". */
function placed(
  definition: Definition,
  args: readonly Raw[],
): { readonly formula: string; readonly cells: readonly Cell[] } {
  const cells: Cell[] = [];
  let column = 0;
  const texts = args.map((raw) => {
    if (!Array.isArray(raw)) return literal(raw);
    const rows = raw.map((row: unknown) =>
      Array.isArray(row) ? (row as readonly Stored[]) : [row as Stored],
    );
    const from = column;
    const width = Math.max(...rows.map((row) => row.length));
    column += width + 1;
    rows.forEach((row, r) =>
      row.forEach((value, c) =>
        cells.push({ row: r + 1, column: from + c, value }),
      ),
    );
    return `'Data'!${cellAddress(1, from)}:${cellAddress(rows.length, from + width - 1)}`;
  });
  return { formula: `=SYRUP.${definition.name}(${texts.join(", ")})`, cells };
}

const literal = (raw: Raw): string =>
  raw === null || raw === undefined
    ? ""
    : typeof raw === "string"
      ? `"${raw.replaceAll('"', '""')}"`
      : String(raw).toUpperCase();

async function whyOf(
  definition: Definition,
  args: readonly Raw[],
  value: Stored,
): Promise<Extract<Explanation, { kind: "formula" }>> {
  const { formula, cells } = placed(definition, args);
  const plain = {
    tables: [],
    validations: [],
    merges: [],
    widths: {},
    heights: {},
    frozen: { rows: 0, columns: 0 },
  };
  const book: Workbook = {
    title: "Invented",
    names: [],
    sheets: [
      {
        ...plain,
        name: "Work",
        cells: [{ row: 4, column: 1, formula, value }],
      },
      { ...plain, name: "Data", cells },
    ],
  };
  const host = fakeHost(book);
  const facts = await host.readCell({ sheet: "Work", row: 4, column: 1 });
  const found = await explain(facts, { host, tables: [], names: [] });
  if (found.kind !== "formula") throw new Error(`${formula} was not read`);
  return found;
}

const each = functions.map((f) => [f.name, f] as const);

test.each(each)(
  "SYRUP.%s: the cell of its first example shows the arithmetic",
  async (_, definition) => {
    const { args } = definition.examples[0];
    const known = explained(definition, args);
    const value = Array.isArray(known.answer)
      ? ((known.answer as readonly (readonly Stored[])[])[0]?.[0] ?? null)
      : (known.answer as Stored);
    const { calls, problem } = await whyOf(definition, args, value);
    expect(problem).toBeUndefined();
    // The line itself is checked where the function is; here, that the pane reads every argument to the same line.
    expect(calls.map(({ line }) => line)).toEqual([known.why]);
    expect(calls[0]?.args.map(({ value: shown }) => shown)).not.toContain(
      "not read",
    );
  },
);

/** Calls that are refused: each needed argument blank in turn, and what the function's own page lists. */
const refusedCalls = functions.flatMap((definition) => {
  const [{ args }] = definition.examples;
  const blanks = Object.entries(definition.args).flatMap(([name, term], i) =>
    "otherwise" in term
      ? []
      : [
          [
            definition.name,
            `${name} is blank`,
            definition,
            Object.keys(definition.args).map((__, c) =>
              c === i ? null : args[c],
            ),
          ] as const,
        ],
  );
  const listed = (refusals[definition.name] ?? []).map(
    ({ when, args: refused }) =>
      [definition.name, when, definition, refused] as const,
  );
  return [...blanks, ...listed];
});

test.each(refusedCalls)(
  "SYRUP.%s: when %s, the cell says so",
  async (_, __, definition, args) => {
    const refusal = refusalOf(definition, args);
    const { calls, problem } = await whyOf(definition, args, {
      error: refusal.code,
    });
    expect(problem).toBe(sentence(refusal.message));
    expect(calls.map((call) => call.refusal)).toEqual([refusal.message]);
    const needed = Object.entries(definition.args).find(
      ([name]) => refusal.message === `needs ${name.replaceAll("_", " ")}`,
    );
    if (needed) expect(calls[0]?.instead.join(" ")).toContain(needed[1].label);
  },
);

test.each(
  functions.filter(({ caution }) => caution).map((f) => [f.name, f] as const),
)(
  "SYRUP.%s: the view shows its caution, whether it answers or refuses",
  async (_, definition) => {
    const [{ args }] = definition.examples;
    const blank = args.map(() => null);
    const shows = async (given: readonly Raw[], value: Stored) => {
      const [call] = (await whyOf(definition, given, value)).calls;
      if (!call) throw new Error("no call");
      return renderToStaticMarkup(
        <FluentProvider>
          <CallView call={call} isOnly />
        </FluentProvider>,
      );
    };
    const caution = definition.caution ?? "";
    const answered = await shows(args, 1);
    expect(answered).toContain(caution);
    expect(answered).toContain(definition.summary.replaceAll("'", "&#x27;"));
    expect(await shows(blank, { error: "#VALUE!" })).toContain(caution);
  },
);

test.each(
  functions
    .filter(({ args }) => "fill_temperature" in args)
    .map((f) => [f.name, f] as const),
)(
  "SYRUP.%s is worked with hot syrup and has a caution to show",
  (_, { caution }) => expect(caution).toMatch(/scalds/),
);

function refusalOf(definition: Definition, args: readonly Raw[]): CannotAnswer {
  try {
    answer(definition, args);
  } catch (refusal) {
    if (refusal instanceof CannotAnswer) return refusal;
    throw refusal;
  }
  throw new Error(`SYRUP.${definition.name} is not refused`);
}
