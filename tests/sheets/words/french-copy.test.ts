import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  handoverCopy,
  workedOut,
  type WorkedOut,
} from "../../../src/apps/cli/handover-copy";
import { writeCopy } from "../../../src/hosts/file/leaks/write-copy";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import {
  type Audience,
  audienceNames,
  noTicks,
} from "../../../src/sheets/handover/audiences";
import type { Copy } from "../../../src/sheets/handover/copy";
import { readAsked } from "../../../src/sheets/handover/read-asked";
import { tablesOf } from "../../../src/sheets/tables-of";
import type { Stored, Workbook } from "../../../src/sheets/workbook";
import { copyInUnits } from "../../../src/sheets/metric/unit-system";
import { copyIn } from "../../../src/sheets/words/french-copy";
import { demoTables } from "../../book/csv-folder";
import { pairsOf, typed } from "../../support/handed-over";
import { convertWithLibreOffice } from "../../support/libre-office";
import { explainedBy, literalExplainedBy } from "./explained";
import { literalsIn, textsIn } from "./shown-texts";

const COSTING = "Cost P250-LOFT";

interface Both {
  readonly english: Copy;
  readonly french: Copy;
}

let folder: string;
let worked: WorkedOut;
let inBook: ReadonlySet<string>;
const copies = new Map<Audience, Both>();

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "tare-and-tally-french-"));
  worked = await workedOut(demoTables(), {
    asked: readAsked(
      "costing:P250-LOFT,prices,quote:P250-LOFT,totes:Oatloft Bakery",
    ),
  });
  inBook = new Set(
    tablesOf(worked.live).flatMap(({ rows }) =>
      rows.flat().flatMap((cell) => {
        const text = String(cell ?? "").trim();
        // "small-line hours" names a line of the farm before words of ours.
        return [text, text.replace(/-line hours$/, "")];
      }),
    ),
  );
  for (const audience of audienceNames) {
    const seesAccount = audience === "customer" || audience === "lender";
    const english = handoverCopy(
      {
        ...worked,
        sheets: worked.sheets.filter(
          ({ kind }) => kind !== "totes" || seesAccount,
        ),
      },
      audience,
      noTicks,
    );
    copies.set(audience, { english, french: copyIn(english, "fr") });
  }
}, 240_000);
afterAll(() => rmSync(folder, { recursive: true }));

const of = (audience: Audience): Both => {
  const found = copies.get(audience);
  if (!found) throw new Error(`no copy for ${audience}`);
  return found;
};

describe.each(audienceNames)("the French copy for %s", (audience) => {
  test("says everything in French but what was typed in the book", () => {
    const isExplained = explainedBy(inBook);
    expect(
      textsIn(of(audience).french.workbook).filter(
        ({ text }) => !isExplained(text),
      ),
    ).toEqual([]);
  });

  test("has French in its formulas, and what they look up as it was typed", () => {
    const isExplained = literalExplainedBy(inBook);
    expect(
      literalsIn(of(audience).french.workbook).filter(
        ({ text }) => !isExplained(text),
      ),
    ).toEqual([]);
  });

  test("leaves codes, names and parts as they were typed", () => {
    const { english, french } = of(audience);
    const names = pairsOf(english).filter(({ name }) =>
      /(^|\.)(product|description|part|item|lot|number|buyer|channel|name)$/.test(
        name,
      ),
    );
    expect(names.length).toBeGreaterThan(5);
    const at = (workbook: Workbook, sheet: number, row: number, c: number) =>
      workbook.sheets[sheet]?.cells.find(
        (cell) => cell.row === row && cell.column === c,
      )?.value;
    for (const { sheet, inCopy } of names) {
      const i = english.workbook.sheets.findIndex(({ name }) => name === sheet);
      const { row, column } = inCopy;
      expect(at(french.workbook, i, row, column)).toBe(
        at(english.workbook, i, row, column),
      );
    }
  });

  test("is searched for what was removed, and may go", async () => {
    await expect(writeCopy(of(audience).french)).resolves.toBeInstanceOf(
      Uint8Array,
    );
  });
});

test("a removed name in a French text is found and refused", async () => {
  const { french } = of("partner");
  const secret = [...french.secrets.names.keys()].find(
    (name) => name.length > 6,
  );
  const [first, ...rest] = french.workbook.sheets;
  if (secret === undefined || !first) throw new Error("nothing to plant");
  const cells = first.cells.map((cell) =>
    cell.value === "Équipe" ? { ...cell, value: `Équipe de ${secret}` } : cell,
  );
  await expect(
    writeCopy({
      ...french,
      workbook: { ...french.workbook, sheets: [{ ...first, cells }, ...rest] },
    }),
  ).rejects.toThrow(/was not written: .*sharedStrings/);
});

/** Numbers to 1e-9 of their size. */
const alike = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-3);

/** Figures within a text follow the settings of the program that writes them. */
const withoutFigures = (value: Stored | undefined): string =>
  String(value ?? "").replace(/\d[\d.,\u00a0\u202f ]*/g, "0");

/** Both copies with something tried, or as they are. */
function tried(
  { english, french }: Both,
  tries: readonly (readonly [string, number, number])[],
): readonly [Workbook, Workbook] {
  const sheet = english.workbook.sheets.findIndex(
    ({ name }) => name === COSTING,
  );
  const both = [english.workbook, french.workbook].map((workbook) => {
    const name = workbook.sheets[sheet]?.name ?? "";
    return tries.reduce((made, [figure, index, value]) => {
      const pair = pairsOf(english).filter(
        (one) => one.sheet === COSTING && one.name === figure,
      )[index];
      if (pair?.fate !== "input") throw new Error(`${figure} is no input`);
      return typed(made, name, pair.inCopy, value);
    }, workbook);
  });
  return [both[0] ?? english.workbook, both[1] ?? french.workbook];
}

test("LibreOffice works out the same numbers in both languages, and the French words that are stored", async () => {
  const cases = [
    ...audienceNames.map((audience) => ({
      name: audience,
      ours: tried(of(audience), []),
      isTried: false,
    })),
    {
      name: "tried",
      ours: tried(of("partner"), [
        ["bottles", 0, 2400],
        ["fill", 0, 375.5],
        ["brix", 0, 67.2],
        ["loss", 0, 0.031],
      ]),
      isTried: true,
    },
  ];
  const files: string[] = [];
  for (const { name, ours } of cases)
    for (const [i, workbook] of ours.entries()) {
      const file = join(folder, `${name}-${i === 0 ? "en" : "fr"}.xlsx`);
      writeFileSync(file, await writeXlsx(workbook));
      files.push(file);
    }
  const made = convertWithLibreOffice(files, { to: "xlsx", recalculate: true });
  const read = await Promise.all(
    made.map(
      async (file) => (await readXlsx(readFileSync(file), "a.xlsx")).workbook,
    ),
  );
  let numbers = 0;
  let words = 0;
  for (const [i, { name, ours, isTried }] of cases.entries()) {
    const [english, french] = [read[2 * i], read[2 * i + 1]];
    const stored = ours[1];
    const wrong: string[] = [];
    for (const [s, sheet] of (english?.sheets ?? []).entries()) {
      const theirs = cellsOf(french, s);
      const planned = cellsOf(stored, s);
      for (const { row, column, value } of sheet.cells) {
        const at = `${row},${column}`;
        const answer = theirs.get(at)?.value;
        const where = `${name}, ${sheet.name} ${at}: ${String(value)} and ${String(answer)}`;
        if (typeof value === "number") {
          numbers += 1;
          if (typeof answer !== "number" || !alike(value, answer))
            wrong.push(where);
        } else if (typeof answer === "number") wrong.push(where);
        const plan = planned.get(at);
        if (
          !isTried &&
          plan?.formula !== undefined &&
          typeof answer === "string"
        ) {
          words += 1;
          if (withoutFigures(answer) !== withoutFigures(plan.value))
            wrong.push(`${where}, stored ${String(plan.value)}`);
        }
      }
    }
    expect(wrong).toEqual([]);
  }
  expect(numbers).toBeGreaterThan(1500);
  expect(words).toBeGreaterThan(40);
}, 240_000);

const cellsOf = (workbook: Workbook | undefined, sheet: number) =>
  new Map(
    workbook?.sheets[sheet]?.cells.map((cell) => [
      `${cell.row},${cell.column}`,
      cell,
    ]),
  );

test("the partner's French costing reads as one", () => {
  const [sheet] = of("partner").french.workbook.sheets;
  expect(sheet?.name).toBe("Coût P250-LOFT");
  expect(sheet?.print).toMatchObject({
    language: "fr",
    foot: `Coût de revient de P250-LOFT · chiffres en date du ${worked.day}`,
  });
  const texts = new Set(sheet?.cells.map(({ value }) => value));
  for (const text of [
    "Coût de revient\u00a0: Private label Oatloft 250 mL (P250-LOFT)",
    `De Fernkettle Hollow Packing, pour un partenaire. Chiffres en date du ${worked.day}.`,
    "Coût complet d'une bouteille",
    "sous son objectif",
    "achetez jusqu'à 2\u00a0500\u00a0: le palier de prix suivant coûte moins cher en tout",
    "BTL-250 · Glass bottle 250 mL",
    "pour chaque tirage",
  ])
    expect(texts).toContain(text);
});

test("a French copy may be in metric too, and may go", async () => {
  const metric = copyInUnits(of("partner").french, "metric");
  const texts = new Set(textsIn(metric.workbook).map(({ text }) => text));
  for (const text of [
    "Poids d'un litre",
    "kg/L dans l'air à 20\u00a0°C",
    "Volume rempli à 20\u00a0°C",
  ])
    expect(texts).toContain(text);
  await expect(writeCopy(metric)).resolves.toBeInstanceOf(Uint8Array);
});

test("a copy in English is the very copy", () => {
  const { english } = of("partner");
  expect(copyIn(english, "en")).toBe(english);
});
