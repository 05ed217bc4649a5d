import { columnLetters, fixedAddress } from "./address";
import type { Area } from "./workbook";

/** Where a formula stands: how `{row.x}` and `{n}` resolve. */
export interface Self {
  readonly table: string;
  readonly index: number;
  readonly across: boolean;
}

/** A formula text with every name in braces turned into its address. A name that no block defines is a programmer's mistake and throws. */
export const withAddresses = (
  text: string,
  self: Self | undefined,
  places: ReadonlyMap<string, Area>,
): string =>
  text.replace(/\{([A-Za-z_][\w.:&]*)\}/g, (_, name: string) =>
    resolve(name, self, places),
  );

function resolve(
  name: string,
  self: Self | undefined,
  places: ReadonlyMap<string, Area>,
): string {
  if (name === "n" && self) return String(self.index + 1);
  const inRow = /^row\.(\w+)$/.exec(name);
  if (inRow && self) {
    const area = find(`${self.table}.${inRow[1]}`, places);
    return self.across
      ? `${columnLetters(area.column + self.index)}$${area.row + 1}`
      : `$${columnLetters(area.column)}${area.row + self.index + 1}`;
  }
  const above = /^row_above\.(\w+)$/.exec(name);
  if (above && self) {
    if (self.index === 0) return "0";
    return resolve(
      `row.${above[1]}`,
      { ...self, index: self.index - 1 },
      places,
    );
  }
  const span = /^(\w+)\.(\w+):(\w+)$/.exec(name);
  if (span) {
    const first = find(`${span[1]}.${span[2]}`, places);
    const last = find(`${span[1]}.${span[3]}`, places);
    return `${fixedAddress(first.row, first.column)}:${fixedAddress(last.row + last.rows - 1, last.column + last.columns - 1)}`;
  }
  const corners = /^(.+)\.\.(.+)$/.exec(name);
  if (corners) {
    const first = find(corners[1] ?? "", places);
    const last = find(corners[2] ?? "", places);
    return `${fixedAddress(first.row, first.column)}:${fixedAddress(last.row, last.column)}`;
  }
  if (name.endsWith("&"))
    return each(find(name.slice(0, -1), places)).join("&");
  const area = find(name, places);
  const from = fixedAddress(area.row, area.column);
  return area.rows === 1 && area.columns === 1
    ? from
    : `${from}:${fixedAddress(area.row + area.rows - 1, area.column + area.columns - 1)}`;
}

function find(name: string, places: ReadonlyMap<string, Area>): Area {
  const area = places.get(name);
  if (!area)
    throw new Error(`A formula names "${name}", which no block defines`);
  return area;
}

/** Every cell of a one-column or one-row area. */
const each = (area: Area): readonly string[] =>
  Array.from({ length: area.rows * area.columns }, (_, i) =>
    fixedAddress(
      area.row + Math.floor(i / area.columns),
      area.column + (i % area.columns),
    ),
  );
