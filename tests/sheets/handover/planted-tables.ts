import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";

const DEMO = join(__dirname, "../../../sample-workbooks/fernkettle-hollow");

/** What is hidden in a farm's tables, to be looked for in what leaves the farm. */
export interface Planted {
  readonly words: string[];
  readonly figures: number[];
}

/** Columns whose words no audience is shown, and columns whose figures none is. */
const places: Readonly<
  Record<string, { readonly words?: string[]; readonly figures?: string[] }>
> = {
  "farm_settings.csv": { words: ["note"] },
  "energy.csv": { words: ["note"] },
  "bulk_lots.csv": {
    figures: ["inbound_freight_usd", "light_transmission_pct"],
  },
  "lines.csv": { words: ["note"] },
  "wages.csv": { figures: ["hourly_usd"] },
  "yearly_overheads.csv": { words: ["note"] },
  "channels.csv": { words: ["note"] },
  "sku_materials.csv": { words: ["note"] },
  "bottling_runs.csv": { figures: ["fill_temperature_F"] },
  "oak_barrels.csv": { figures: ["barrel_cost_usd"] },
  "tote_shipments.csv": { figures: ["tote_deposit_usd"] },
  "tote_payments.csv": { words: ["note"] },
  "stock_count.csv": { figures: ["counted_lb"] },
  "fill_checks.csv": { figures: ["full_g"] },
};
const MOST_A_COLUMN = 15;

/** Names that are called otherwise throughout the book: lots, growers, runs, barrels, contracts and other customers. */
const named: Readonly<Record<string, string>> = {
  "bulk_lots.csv": "lot",
  "bottling_runs.csv": "run",
  "oak_barrels.csv": "barrel",
  "tote_contracts.csv": "contract",
};
const others = [
  "Larkspindle Foods (Canada)",
  "Nettlecombe Sauces",
  "Pinwhistle Creamery",
  "Nettlecombe",
  "Threepond Inns",
];

/** Few enough products that the sheets are worked out quickly, other customers' among them. */
const PRODUCTS = 4;

interface CsvTable {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The demo farm's CSV files with a secret of its own in every such place. */
export function plantedFolder(): {
  readonly files: ReadonlyMap<string, string>;
  readonly planted: Planted;
} {
  const planted: Planted = { words: [], figures: [] };
  const tables = new Map(
    readdirSync(DEMO)
      .filter((name) => name.endsWith(".csv") && !name.startsWith("messy"))
      .map((name) => [name, read(join(DEMO, name))]),
  );
  const renamed = newNames(tables, planted);
  const kept = keptProducts(tables);
  return {
    planted,
    files: new Map(
      [...tables].map(([name, table]) => [
        name,
        text(withSecrets(name, cut(table, kept), renamed, planted)),
      ]),
    ),
  };
}

const read = (file: string): CsvTable => {
  const [headings = [], ...rows] = Papa.parse<string[]>(
    readFileSync(file, "utf8").trimEnd(),
  ).data;
  return { headings, rows };
};

const text = ({ headings, rows }: CsvTable): string =>
  `${Papa.unparse([[...headings], ...rows.map((row) => [...row])])}\n`;

const columnOf = ({ headings, rows }: CsvTable, heading: string): string[] => {
  const at = headings.indexOf(heading);
  return rows.map((row) => row[at] ?? "");
};

function newNames(
  tables: ReadonlyMap<string, CsvTable>,
  { words }: Planted,
): ReadonlyMap<string, string> {
  const growers = columnOf(tables.get("bulk_lots.csv") as CsvTable, "grower");
  const names = [
    ...others,
    ...growers,
    ...Object.entries(named).flatMap(([file, heading]) =>
      columnOf(tables.get(file) as CsvTable, heading),
    ),
  ];
  return new Map(
    [...new Set(names)].map((name, i) => {
      const secret = `ZQ${String(100 + i)}-K`;
      words.push(secret);
      return [name, secret];
    }),
  );
}

/** Our product, other customers' and as many more. */
function keptProducts(
  tables: ReadonlyMap<string, CsvTable>,
): readonly string[] {
  const skus = tables.get("skus.csv") as CsvTable;
  const owners = columnOf(skus, "label_owner");
  return columnOf(skus, "sku").filter(
    (_, i) => owners[i] !== "own" || i < PRODUCTS,
  );
}

function cut(table: CsvTable, products: readonly string[]): CsvTable {
  const at = table.headings.indexOf("sku");
  return at < 0
    ? table
    : {
        ...table,
        rows: table.rows.filter((row) => products.includes(row[at] ?? "")),
      };
}

function withSecrets(
  name: string,
  { headings, rows }: CsvTable,
  renamed: ReadonlyMap<string, string>,
  planted: Planted,
): CsvTable {
  const { words = [], figures = [] } = places[name] ?? {};
  return {
    headings,
    rows: rows.map((row, r) =>
      row.map((cell, c) => {
        const heading = headings[c] ?? "";
        if (
          r < MOST_A_COLUMN &&
          words.includes(heading) &&
          !isBulkPrice(row[0])
        ) {
          const word = `Zephyrine Quill ${planted.words.length}`;
          planted.words.push(word);
          return word;
        }
        if (r < MOST_A_COLUMN && figures.includes(heading)) {
          // Near what stands there, so that nothing else in the book turns odd.
          const figure = Number(
            (Number(cell) + 0.001 * planted.figures.length + 0.00017).toFixed(
              5,
            ),
          );
          planted.figures.push(figure);
          return String(figure);
        }
        return calledOtherwise(cell, renamed);
      }),
    ),
  };
}

/** Becomes a row of the bulk prices, without its note. */
const isBulkPrice = (setting: string | undefined): boolean =>
  /^replacement price/i.test(setting ?? "");

const calledOtherwise = (
  cell: string,
  renamed: ReadonlyMap<string, string>,
): string =>
  renamed.get(cell) ??
  cell.replace(
    /(?<![\w-])(\d\d-\d\d|RUN-\d+|OAK-\d+)(?![\w-])/g,
    (name) => renamed.get(name) ?? name,
  );
