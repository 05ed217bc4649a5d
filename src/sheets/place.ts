import { sheetReference } from "./address";
import { withAddresses, type Self } from "./formula-names";
import type { ChartDescription, Content, SheetDescription } from "./model";
import { nativeFormula } from "./native-formula";
import { Draft, placeBlock } from "./place-block";
import type { Area, Cell, Chart, Sheet } from "./workbook";

/** A sheet with addresses, and where each of its names ended up. */
export interface PlacedSheet {
  readonly sheet: Sheet;
  readonly places: ReadonlyMap<string, Area>;
  readonly description: SheetDescription;
  /** The row each block of the description starts in. */
  readonly tops: readonly number[];
}

/**
 * Decides every address and writes every formula. `portable` sheets hold none of our functions.
 * A formula that names something no block defines is a programmer's mistake and throws.
 */
export function place(
  description: SheetDescription,
  how: { readonly portable: boolean },
): PlacedSheet {
  const draft = new Draft();
  const tops: number[] = [];
  let row = 0;
  for (const block of description.blocks) {
    tops.push(row);
    row = placeBlock(draft, block, row) + 1;
  }
  const cells = draft.cells.map(({ content, self, ...cell }) => ({
    ...cell,
    ...written(content, self, draft.places, how.portable),
  }));
  return {
    places: draft.places,
    description,
    tops,
    sheet: {
      name: description.name,
      cells,
      tables: [],
      validations: draft.validations,
      merges: [],
      widths: Object.fromEntries(description.widths.map((w, i) => [i, w])),
      heights: draft.heights,
      frozen: { rows: description.frozenRows, columns: 0 },
      ...(description.tabColor === undefined
        ? {}
        : { tabColor: description.tabColor }),
      ...(description.charts
        ? {
            charts: description.charts.map((chart) =>
              placedChart(chart, description.name, draft.places),
            ),
          }
        : {}),
      ...(description.print ? { print: description.print } : {}),
    },
  };
}

function written(
  content: Content,
  self: Self | undefined,
  places: ReadonlyMap<string, Area>,
  portable: boolean,
): Pick<Cell, "value" | "formula"> {
  if (typeof content !== "object")
    return content === "" ? {} : { value: content };
  const text = portable
    ? (content.portable ?? content.formula)
    : content.formula;
  const addressed = withAddresses(text, self, places);
  return { formula: portable ? nativeFormula(addressed) : addressed };
}

function placedChart(
  { beside, rows, columns, categories, series, ...chart }: ChartDescription,
  sheet: string,
  places: ReadonlyMap<string, Area>,
): Chart {
  const block = places.get(beside);
  if (!block)
    throw new Error(
      `A chart stands beside "${beside}", which no block defines`,
    );
  const reference = (text: string): string =>
    `${sheetReference(sheet)}!${withAddresses(text, undefined, places)}`;
  return {
    ...chart,
    categories: reference(categories),
    series: series.map(({ values, ...one }) => ({
      ...one,
      values: reference(values),
    })),
    area: {
      row: block.row,
      column: block.column + block.columns + 1,
      rows,
      columns,
    },
  };
}
