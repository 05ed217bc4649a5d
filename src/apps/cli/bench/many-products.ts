import type { CellContent, Contents } from "../../../book/contents";

/** Tables every row of which belongs to one product. */
const OF_PRODUCTS = ["Products", "ProductMaterials", "Prices"];

/**
 * A farm with as many products as asked, made from a smaller one: its products over and over under new codes, each
 * with other fills, prices and runs. What the products share (parts, lots, lines, channels) stays.
 */
export function manyProducts(
  from: readonly Contents[],
  products: number,
): readonly Contents[] {
  const codes = columnOf(tableOf(from, "Products"), "Product");
  const rounds = Math.ceil(products / codes.length);
  const kept = new Set(
    Array.from({ length: products }, (_, i) =>
      codeOf(String(codes[i % codes.length]), Math.floor(i / codes.length)),
    ),
  );
  return from.map((table) => {
    if (table.name === "Runs") return withRuns(table, rounds, kept);
    if (!OF_PRODUCTS.includes(table.name)) return table;
    const at = indexOf(table, "Product");
    const rows = Array.from({ length: rounds }, (_, round) =>
      table.rows.map((row) =>
        row.map((cell, c) =>
          c === at
            ? codeOf(String(cell), round)
            : varied(table, c, cell, round),
        ),
      ),
    )
      .flat()
      .filter((row) => kept.has(String(row[at])));
    return withRows(table, rows);
  });
}

const codeOf = (code: string, round: number): string =>
  round === 0 ? code : `${code}-${round}`;

/** Figures that differ from round to round, by a few percent and never the same way twice in a row. */
function varied(
  table: Contents,
  column: number,
  cell: CellContent,
  round: number,
): CellContent {
  const number = typeof cell === "number" ? cell : Number(cell);
  if (round === 0 || cell === null || cell === "" || !Number.isFinite(number))
    return cell;
  const heading = table.headings[column] ?? "";
  const by = 1 + ((round * 7) % 11) / 100;
  if (heading === "Price") return Math.round(number * by * 100) / 100;
  if (heading === "Fill mL at 68 °F")
    return Math.round(number * (1 + (round % 5) / 1000) * 10) / 10;
  if (heading === "Fill seconds") return number + (round % 3);
  return cell;
}

/** Every product that has been run is run in every round, in sizes of its own. */
function withRuns(
  table: Contents,
  rounds: number,
  kept: ReadonlySet<string>,
): Contents {
  const [run, product, good] = ["Run", "Product", "Good bottles"].map((name) =>
    indexOf(table, name),
  );
  const rows = Array.from({ length: rounds }, (_, round) =>
    table.rows.map((row) =>
      row.map((cell, c) =>
        c === product
          ? codeOf(String(cell), round)
          : round === 0
            ? cell
            : c === run
              ? `${String(cell)}-${round}`
              : c === good
                ? Math.max(
                    60,
                    Math.round(Number(cell) * (0.6 + (round % 7) / 10)),
                  )
                : cell,
      ),
    ),
  )
    .flat()
    .filter((row) => kept.has(String(row[product ?? 0])));
  return withRows(table, rows);
}

/** Without a place in a file: these rows were never in one. */
function withRows(
  { from: _, ...table }: Contents,
  rows: Contents["rows"],
): Contents {
  return { ...table, rows };
}

function tableOf(all: readonly Contents[], name: string): Contents {
  const table = all.find((one) => one.name === name);
  if (!table) throw new Error(`no table ${name}`);
  return table;
}

const indexOf = (table: Contents, heading: string): number => {
  const at = table.headings.indexOf(heading);
  if (at < 0) throw new Error(`no ${heading} in ${table.name}`);
  return at;
};

const columnOf = (table: Contents, heading: string): readonly CellContent[] =>
  table.rows.map((row) => row[indexOf(table, heading)] ?? null);
