/** A rectangle of one sheet; rows and columns count from 0, ends included. */
export interface SheetArea {
  readonly sheet: string;
  readonly fromRow: number;
  readonly toRow: number;
  readonly fromColumn: number;
  readonly toColumn: number;
}

/** An area that formulas read, and those that do. */
export interface ReadArea<Formula> {
  readonly area: SheetArea;
  readonly readers: Set<Formula>;
}

/** Areas of at most so many cells are found by each of their cells; larger ones, of which there are few, by column. */
const fewCells = 64;

/** Who reads a cell. An area read by many formulas is kept once, so that a column read by every row stays cheap. */
export class ReadAreas<Formula> {
  readonly #sheets = new Map<string, AreasOfSheet<Formula>>();

  add(area: SheetArea, reader: Formula): ReadArea<Formula> {
    const known = this.#sheets.get(area.sheet);
    const sheet = known ?? new AreasOfSheet<Formula>();
    if (!known) this.#sheets.set(area.sheet, sheet);
    const found = sheet.exactly(area);
    found.readers.add(reader);
    return found;
  }

  remove(read: ReadArea<Formula>, reader: Formula): void {
    read.readers.delete(reader);
    if (read.readers.size === 0)
      this.#sheets.get(read.area.sheet)?.forget(read);
  }

  /** The areas that hold the cell. */
  at(sheet: string, row: number, column: number): readonly ReadArea<Formula>[] {
    return this.#sheets.get(sheet)?.at(row, column) ?? [];
  }

  /** The areas that share a cell with this one. */
  touching(area: SheetArea): readonly ReadArea<Formula>[] {
    return [...(this.#sheets.get(area.sheet)?.all() ?? [])].filter((read) =>
      overlap(read.area, area),
    );
  }
}

const columnsOfSheet = 16_384;
export const cellKey = (row: number, column: number): number =>
  row * columnsOfSheet + column;

export const isOneCell = (area: SheetArea): boolean =>
  area.fromRow === area.toRow && area.fromColumn === area.toColumn;

export const holds = (area: SheetArea, row: number, column: number): boolean =>
  row >= area.fromRow &&
  row <= area.toRow &&
  column >= area.fromColumn &&
  column <= area.toColumn;

/** The rectangle around areas of one sheet; nothing where one of them leads nowhere. */
export function around(areas: readonly SheetArea[]): SheetArea | undefined {
  const [first] = areas;
  if (!first || areas.some((area) => area.fromRow < 0)) return undefined;
  return {
    sheet: first.sheet,
    fromRow: Math.min(...areas.map((area) => area.fromRow)),
    toRow: Math.max(...areas.map((area) => area.toRow)),
    fromColumn: Math.min(...areas.map((area) => area.fromColumn)),
    toColumn: Math.max(...areas.map((area) => area.toColumn)),
  };
}

class AreasOfSheet<Formula> {
  readonly #all = new Map<string, ReadArea<Formula>>();
  readonly #byCell = new Map<number, ReadArea<Formula>[]>();
  readonly #byColumn = new Map<number, ReadArea<Formula>[]>();

  all(): Iterable<ReadArea<Formula>> {
    return this.#all.values();
  }

  exactly(area: SheetArea): ReadArea<Formula> {
    const name = nameOf(area);
    const known = this.#all.get(name);
    if (known) return known;
    const made = { area, readers: new Set<Formula>() };
    this.#all.set(name, made);
    for (const [list, at] of this.#listsOf(area)) {
      const held = list.get(at);
      if (held) held.push(made);
      else list.set(at, [made]);
    }
    return made;
  }

  forget(read: ReadArea<Formula>): void {
    this.#all.delete(nameOf(read.area));
    for (const [list, at] of this.#listsOf(read.area)) {
      const left = list.get(at)?.filter((one) => one !== read) ?? [];
      if (left.length > 0) list.set(at, left);
      else list.delete(at);
    }
  }

  at(row: number, column: number): readonly ReadArea<Formula>[] {
    const close = this.#byCell.get(cellKey(row, column)) ?? [];
    const wide =
      this.#byColumn
        .get(column)
        ?.filter(({ area }) => holds(area, row, column)) ?? [];
    return wide.length === 0 ? close : [...close, ...wide];
  }

  *#listsOf(
    area: SheetArea,
  ): Generator<[Map<number, ReadArea<Formula>[]>, number]> {
    const rows = area.toRow - area.fromRow + 1;
    const columns = area.toColumn - area.fromColumn + 1;
    const byCell = rows * columns <= fewCells;
    for (let c = area.fromColumn; c <= area.toColumn; c += 1)
      if (byCell)
        for (let r = area.fromRow; r <= area.toRow; r += 1)
          yield [this.#byCell, cellKey(r, c)];
      else yield [this.#byColumn, c];
  }
}

const nameOf = (area: SheetArea): string =>
  `${area.fromRow},${area.toRow},${area.fromColumn},${area.toColumn}`;

const overlap = (a: SheetArea, b: SheetArea): boolean =>
  a.fromRow <= b.toRow &&
  b.fromRow <= a.toRow &&
  a.fromColumn <= b.toColumn &&
  b.fromColumn <= a.toColumn;
