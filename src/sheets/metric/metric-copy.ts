import type { Copy } from "../handover/copy";
import { FIGURES_SHEET } from "../handover/cut-tables";
import type { LeftInUnit } from "../handover/preview";
import type { Secrets } from "../handover/secrets";
import type { Sheet } from "../workbook";
import {
  inMetric,
  unitOfFigure,
  type UsUnit,
  whyLeftAlone,
} from "./figure-units";
import {
  metricSheet,
  MustStay,
  placeKey,
  type UnitFigure,
} from "./metric-sheet";

/** A copy in metric: kg, L, kg/L, °C and money for a kg, by the exact factors; what cannot follow stays in its unit and is named. */
export function metricCopy(copy: Copy): Copy {
  const left: LeftInUnit[] = [];
  const turned = copy.sheets.map((one, i) => {
    const sheet = copy.workbook.sheets[i];
    if (!sheet) throw new Error("a copied sheet is not in its workbook");
    const own = new Set(
      one.figures.map(({ row, column }) => placeKey(row, column)),
    );
    const isText = (row: number, column: number): boolean =>
      !own.has(placeKey(row, column));
    const { figures, stays } = followable(sheet, unitFigures(one), isText);
    const name = sheet.name;
    left.push(
      ...stays.map(({ what, why }) => ({ sheet: name, what, why })),
      ...leftAlone(one).map((rest) => ({ sheet: name, ...rest })),
    );
    return {
      sheet: withFoot(metricSheet(sheet, figures, isText)),
      bare: (bare: Sheet) =>
        withFoot(metricSheet(bare, figures, isText, sheet)),
    };
  });
  if (copy.workbook.sheets.length > turned.length)
    left.push({
      sheet: copy.workbook.sheets[turned.length]?.name ?? FIGURES_SHEET,
      what: "what the formulas read of the book",
      why: "tables of the book go along as they are kept",
    });
  const { secrets } = copy;
  return {
    ...copy,
    preview: { ...copy.preview, leftInUnit: left },
    workbook: {
      ...copy.workbook,
      sheets: copy.workbook.sheets.map((sheet, i) => turned[i]?.sheet ?? sheet),
    },
    sheets: copy.sheets.map((one, i) => ({
      ...one,
      sheet: turned[i]?.sheet ?? one.sheet,
    })),
    secrets: {
      ...secrets,
      figures: withMetricSpellings(secrets),
      bare: {
        ...secrets.bare,
        sheets: secrets.bare.sheets.map(
          (sheet, i) => turned[i]?.bare(sheet) ?? sheet,
        ),
      },
    },
  };
}

function unitFigures({
  from,
  figures,
}: Copy["sheets"][number]): readonly UnitFigure[] {
  return figures.flatMap(({ row, column, of: { figure } }) => {
    const unit = unitOfFigure(from.kind, figure.name);
    return unit === undefined
      ? []
      : [
          {
            row,
            column,
            name: figure.name,
            label: figure.label,
            unit,
            isInTable: figure.self !== undefined && !figure.self.across,
          },
        ];
  });
}

/** The figures that can be in metric together; the others go one name at a time, so that no formula reads half a column. */
function followable(
  sheet: Sheet,
  all: readonly UnitFigure[],
  isText: (row: number, column: number) => boolean,
): {
  readonly figures: readonly UnitFigure[];
  readonly stays: readonly Omit<LeftInUnit, "sheet">[];
} {
  const stays = new Map<string, Omit<LeftInUnit, "sheet">>();
  for (;;) {
    const figures = all.filter(({ name }) => !stays.has(name));
    try {
      metricSheet(sheet, figures, isText);
      return { figures, stays: [...stays.values()] };
    } catch (problem) {
      if (!(problem instanceof MustStay)) throw problem;
      for (const { name, label } of problem.figures)
        stays.set(name, { what: label, why: problem.why });
      if (problem.figures.length === 0)
        throw new Error(`nothing can stay: ${problem.why}`);
    }
  }
}

const leftAlone = ({
  figures,
}: Copy["sheets"][number]): readonly Omit<LeftInUnit, "sheet">[] => [
  ...new Map(
    figures.flatMap(({ of: { figure } }) => {
      const why = whyLeftAlone(figure.name);
      return why === undefined
        ? []
        : [[figure.name, { what: figure.label, why }] as const];
    }),
  ).values(),
];

const withFoot = (sheet: Sheet): Sheet =>
  sheet.print?.foot === undefined
    ? sheet
    : {
        ...sheet,
        print: { ...sheet.print, foot: `${sheet.print.foot} · kg, L, °C` },
      };

/** What was removed is as much a secret in metric: the units are those its heading or label names. */
function withMetricSpellings({ figures }: Secrets): Secrets["figures"] {
  const all = new Map(figures);
  for (const [value, where] of figures)
    for (const unit of unitsNamed(where)) {
      const metric = inMetric(unit, value);
      if (!all.has(metric)) all.set(metric, where);
    }
  return all;
}

/** "Lots, Landed per lb", "Products, Fill mL": the customary units in words of where a figure stood. */
function unitsNamed(where: string): readonly UsUnit[] {
  if (/\b(lb|pounds) (per|a) gal/i.test(where)) return ["lb/gal"];
  // A bulk price or a contract's says beside it what it is for.
  if (/\b(ToteContracts|BulkPrices)\b.*\bprice/i.test(where))
    return ["per lb", "per gal"];
  if (/\b(per|a) (lb|pound)\b/i.test(where)) return ["per lb"];
  if (/\b(per|a) gal(lon)?\b/i.test(where)) return ["per gal"];
  if (/\b(lb|pounds)\b/i.test(where)) return ["lb"];
  if (/\bgal(lons)?\b/i.test(where)) return ["gal"];
  return /°F\b|°F$/.test(where) && !/Brix|Gallons/.test(where) ? ["°F"] : [];
}
