import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { handoverCopy, workedOut } from "../../../src/apps/cli/handover-copy";
import { leaksIn } from "../../../src/hosts/file/leaks/leak-check";
import { writeCopy } from "../../../src/hosts/file/leaks/write-copy";
import { readXlsx } from "../../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx";
import { noTicks, type Ticks } from "../../../src/sheets/handover/audiences";
import type { Copy } from "../../../src/sheets/handover/copy";
import { liveSheets } from "../../../src/sheets/handover/asked-sheets";
import { readAsked } from "../../../src/sheets/handover/read-asked";
import { unitOfFigure } from "../../../src/sheets/metric/figure-units";
import { metricCopy } from "../../../src/sheets/metric/metric-copy";
import { copyInUnits } from "../../../src/sheets/metric/unit-system";
import { copyIn } from "../../../src/sheets/words/french-copy";
import type { Stored, Workbook } from "../../../src/sheets/workbook";
import { demoTables } from "../../book/csv-folder";
import { pairsOf, typed, valueAt } from "../../support/handed-over";
import { convertWithLibreOffice } from "../../support/libre-office";

/** Exact by definition: the international pound of 1959 and the US gallon of 231 in³ (NIST Special Publication 811, from memory). */
const KG = 0.45359237;
const L = 3.785411784;

const inMetric: Readonly<Record<string, (figure: number) => number>> = {
  lb: (v) => v * KG,
  gal: (v) => v * L,
  "lb/gal": (v) => (v * KG) / L,
  "per lb": (v) => v / KG,
  "per gal": (v) => v / L,
  "°F": (v) => ((v - 32) * 5) / 9,
};

const SHEET = "Cost P250-LOFT";
const wide: Ticks = {
  ...noTicks,
  show: ["syrup", "stock", "lots", "lot prices", "stock average"],
};

interface Pairing {
  readonly name: string;
  readonly plain: Copy;
  readonly metric: Copy;
}

let pairings: readonly Pairing[];
let recalculated: ReadonlyMap<string, Workbook>;
let tried: readonly string[];

/** What a reader tries, in the plain copy's units. */
const tries: readonly (readonly [string, number])[] = [
  ["bottles", 2400],
  ["fill", 375.5],
  ["loss", 0.031],
  ["brix", 67.2],
  ["bulk_price", 3.17],
];

function withTries(copy: Copy, isMetric: boolean): Workbook {
  const pairs = pairsOf(copy);
  return tries.reduce((workbook, [name, value]) => {
    const pair = pairs.find((one) => one.name === name);
    if (!pair || pair.fate !== "input") throw new Error(`no input ${name}`);
    const unit = unitOfFigure("costing", name);
    const turned =
      unit === undefined || !isMetric ? value : inMetric[unit]?.(value);
    return typed(workbook, SHEET, pair.inCopy, turned ?? Number.NaN);
  }, copy.workbook);
}

beforeAll(async () => {
  const worked = await workedOut(demoTables(), {
    asked: readAsked("costing:P250-LOFT"),
  });
  const named = (name: string, ticks: Ticks): Pairing => {
    const plain = handoverCopy(worked, "partner", ticks);
    return { name, plain, metric: metricCopy(plain) };
  };
  const partner = named("partner", noTicks);
  const french = copyIn(partner.plain, "fr");
  pairings = [
    partner,
    named("wide", wide),
    { name: "french", plain: french, metric: copyInUnits(french, "metric") },
  ];
  const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-metric-"));
  const files = new Map<string, Uint8Array>();
  for (const { name, plain, metric } of pairings) {
    files.set(`${name}-plain`, await writeCopy(plain));
    files.set(`${name}-metric`, await writeCopy(metric));
  }
  tried = ["tried-plain", "tried-metric"];
  files.set("tried-plain", await writeXlsx(withTries(partner.plain, false)));
  files.set("tried-metric", await writeXlsx(withTries(partner.metric, true)));
  const paths = [...files].map(([name, bytes]) => {
    const file = join(folder, `${name}.xlsx`);
    writeFileSync(file, bytes);
    return file;
  });
  const made = convertWithLibreOffice(paths, { to: "xlsx", recalculate: true });
  const read = new Map<string, Workbook>();
  for (const [i, name] of [...files.keys()].entries())
    read.set(
      name,
      (await readXlsx(readFileSync(made[i] ?? ""), `${name}.xlsx`)).workbook,
    );
  recalculated = read;
}, 300_000);

const same = (a: Stored, b: Stored): boolean =>
  typeof a === "number" && typeof b === "number"
    ? Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-3)
    : JSON.stringify(a ?? "") === JSON.stringify(b ?? "");

/** Every figure of both copies; those with a metric unit are turned by the definition. */
function differences(
  plainName: string,
  metricName: string,
  { plain, metric }: Pairing,
): { readonly found: readonly string[]; readonly turned: number } {
  const [ours, theirs] = [plainName, metricName].map((name) => {
    const workbook = recalculated.get(name);
    if (!workbook) throw new Error(`no ${name}`);
    return workbook;
  }) as [Workbook, Workbook];
  const left = new Set(metric.preview.leftInUnit?.map(({ what }) => what));
  let turned = 0;
  const found = plain.sheets.flatMap(({ sheet, figures, from }) =>
    figures.flatMap(({ row, column, of: { figure } }) => {
      const unit = left.has(figure.label)
        ? undefined
        : unitOfFigure(from.kind, figure.name);
      const was = valueAt(ours, sheet.name, { row, column });
      const is = valueAt(theirs, sheet.name, { row, column });
      if (unit !== undefined && typeof was === "number") turned += 1;
      const wanted =
        unit === undefined || typeof was !== "number"
          ? was
          : (inMetric[unit]?.(was) ?? null);
      return same(is, wanted)
        ? []
        : [
            `${sheet.name}, ${figure.name} ${row},${column}: ${JSON.stringify(is)}, not ${JSON.stringify(wanted)} (${unit ?? "as it was"})`,
          ];
    }),
  );
  return { found, turned };
}

test.each([
  ["partner", 5],
  ["wide", 60],
  ["french", 5],
])(
  "LibreOffice works out every cell of the %s's metric copy as the plain one's times the exact factor",
  (name, least) => {
    const pairing = pairings.find((one) => one.name === name);
    if (!pairing) throw new Error(`no ${name}`);
    const { found, turned } = differences(
      `${name}-plain`,
      `${name}-metric`,
      pairing,
    );
    expect(found).toEqual([]);
    expect(turned).toBeGreaterThanOrEqual(least);
  },
);

test("what a reader tries moves the metric copy as the same try moves the plain one", () => {
  const [partner] = pairings;
  if (!partner) throw new Error("no partner");
  const { found } = differences(tried[0] ?? "", tried[1] ?? "", partner);
  expect(found).toEqual([]);
  const cost = (name: string): Stored => {
    const pair = pairsOf(partner.plain).find(
      (one) => one.name === "cost.full.replacement",
    );
    const workbook = recalculated.get(name);
    return pair && workbook ? valueAt(workbook, SHEET, pair.inCopy) : null;
  };
  expect(cost("tried-metric")).not.toBeCloseTo(
    Number(cost("partner-metric")),
    2,
  );
});

test("nothing of a metric copy speaks of pounds, gallons or °F but what is named as left", () => {
  for (const { metric } of pairings)
    for (const [i, { figures, from }] of metric.sheets.entries()) {
      const sheet = metric.workbook.sheets[i];
      const own = new Set(figures.map(({ row, column }) => `${row},${column}`));
      const customary = sheet?.cells.flatMap(({ row, column, value }) =>
        typeof value === "string" &&
        !own.has(`${row},${column}`) &&
        /\blbs?\b|\bpounds?\b|\bgal(lons?)?\b|°F|\blivres?\b/i.test(value)
          ? [`${from.asked} ${row},${column}: ${value}`]
          : [],
      );
      expect(customary).toEqual([]);
    }
});

test("the price list's bulk prices are for a kg", () => {
  const contents = demoTables();
  const { workbook, sheets } = liveSheets(contents, readAsked("prices"));
  const plain = handoverCopy(
    {
      live: workbook,
      day: "2026-11-20",
      // What the list works out does not matter here, only where its figures stand.
      sheets: sheets.map((sheet) => ({ ...sheet, valueAt: () => 2.6 })),
    },
    "partner",
    noTicks,
  );
  const { workbook: metric, preview } = metricCopy(plain);
  const bulk = pairsOf(plain).filter(({ name }) => /^bulk_/.test(name));
  expect(bulk.length).toBeGreaterThan(1);
  for (const { sheet, inCopy } of bulk) {
    expect(valueAt(metric, sheet, inCopy)).toBeCloseTo(2.6 / KG, 12);
    const unit = { row: inCopy.row, column: inCopy.column + 1 };
    expect(valueAt(metric, sheet, unit)).toBe("per kg");
  }
  expect(preview.leftInUnit?.map(({ what }) => what)).toEqual(["A fl oz"]);
});

test("a yellow cell's rule is turned with it", () => {
  const [partner] = pairings;
  const at = pairsOf(partner?.plain ?? { sheets: [] }).find(
    ({ name }) => name === "bulk_price",
  )?.inCopy;
  const rule = (copy: Copy | undefined) =>
    copy?.workbook.sheets[0]?.validations.find(
      ({ area }) => area.row === at?.row && area.column === at.column,
    );
  expect(rule(partner?.plain)?.rule).toMatchObject({ min: 0, max: 1000 });
  expect(rule(partner?.metric)?.rule).toEqual({
    kind: "number",
    min: 0,
    max: expect.closeTo(1000 / KG, 9) as number,
  });
  expect(rule(partner?.metric)?.message).toBe("A price per kg, 0 or more.");
});

test("what was removed is looked for in metric too", async () => {
  const [partner] = pairings;
  const metric = partner?.metric;
  const price = [...(metric?.secrets.figures ?? [])].find(
    ([, where]) => where === "Lots, Landed per lb",
  )?.[0];
  if (!metric || price === undefined) throw new Error("no landed price");
  const planted = (value: number): Workbook => ({
    ...metric.workbook,
    sheets: metric.workbook.sheets.map((sheet, i) =>
      i > 0
        ? sheet
        : { ...sheet, print: { ...sheet.print, foot: `at ${value}` } as never },
    ),
  });
  const leaks = async (value: number) => {
    const workbook = planted(value);
    return leaksIn(await writeXlsx(workbook), workbook, metric.secrets);
  };
  for (const value of [price / KG, Number((price / KG).toFixed(4))])
    expect((await leaks(value)).map(({ says }) => says).join()).toContain(
      "Lots, Landed per lb",
    );
  const plain = { ...partner.plain.secrets };
  const workbook = planted(price / KG);
  expect(await leaksIn(await writeXlsx(workbook), workbook, plain)).toEqual([]);
}, 60_000);
