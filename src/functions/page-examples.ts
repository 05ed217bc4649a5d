import { isoDate } from "../measures/read-date";
import { as, type DaySerial } from "../measures/quantity";
import { explained } from "./answer";
import type { Answer, Answers, Definition, Example, Raw } from "./define";
import { formulaBlock, sentence, table } from "./page-markdown";

/** An example as it stands on a sheet. */
export interface ExampleFacts {
  readonly formula: string;
  /** The cells it refers to, with column letters on top and row numbers in front; none for plain values. */
  readonly cells: Grid | undefined;
  /** One line, or the cells of an answer that fills several. */
  readonly gives: string | Grid;
  /** What stands after the answer: ", to within 0.05", ", in a cell formatted as a date", or nothing. */
  readonly remark: string;
  readonly why: string;
  readonly source: string;
}

export interface Grid {
  readonly heading: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export function exampleFacts(
  definition: Definition,
  example: Example,
): ExampleFacts {
  const { texts, cells } = written(example.args);
  return {
    formula: `=SYRUP.${definition.name}(${texts.join(", ")})`,
    cells: cells.length > 0 ? cellGrid(cells) : undefined,
    gives: answerShown(definition, example),
    remark: remark(definition, example),
    why: sentence(explained(definition, example.args).why),
    source: example.source,
  };
}

/** Every example as a cell formula, with the cells it refers to, its answer, its arithmetic and where the answer comes from. */
export function examplesOf(definition: Definition): string {
  let before = "";
  return definition.examples
    .flatMap((example) => {
      const facts = exampleFacts(definition, example);
      const sheet = facts.cells ? gridTable(facts.cells) : "";
      const again =
        sheet === before ? "With the same cells," : "With these cells,";
      before = sheet;
      return [
        ...(sheet ? [again, ...(again.includes("same") ? [] : [sheet])] : []),
        formulaBlock(facts.formula),
        givenWords(facts),
        `> ${facts.why}`,
        `Where the answer comes from: ${facts.source}.`,
      ];
    })
    .join("\n\n");
}

const givenWords = ({ gives, remark }: ExampleFacts): string =>
  typeof gives === "string"
    ? `gives **${gives}**${remark}.`
    : `gives these cells${remark}:\n\n${gridTable(gives)}`;

const gridTable = ({ heading, rows }: Grid): string => table(heading, rows);

/** A range of an example, where it stands on the sheet. */
interface Block {
  readonly column: number;
  readonly rows: readonly (readonly Raw[])[];
}

/** The first row of the pictured sheet that holds cells. */
const FIRST_ROW = 2;

/** The texts of the arguments; ranges stand beside each other from A2 on. */
function written(args: readonly Raw[]): {
  readonly texts: readonly string[];
  readonly cells: readonly Block[];
} {
  const cells: Block[] = [];
  let column = 0;
  const texts = args.map((raw) => {
    if (!Array.isArray(raw)) return argumentText(raw);
    const rows = raw as readonly (readonly Raw[])[];
    const width = rows[0]?.length ?? 1;
    cells.push({ column, rows });
    const first = `${letter(column)}${FIRST_ROW}`;
    column += width;
    return `${first}:${letter(column - 1)}${FIRST_ROW + rows.length - 1}`;
  });
  return { texts, cells };
}

const argumentText = (raw: Raw): string =>
  raw === null || raw === undefined
    ? ""
    : typeof raw === "string"
      ? `"${raw.replace(/"/g, '""')}"`
      : String(raw).toUpperCase();

function cellGrid(blocks: readonly Block[]): Grid {
  const height = Math.max(...blocks.map(({ rows }) => rows.length));
  const columns = blocks.flatMap(({ rows }) => (rows[0] ?? []).map(() => ""));
  const rows = Array.from({ length: height }, (_, r) => [
    String(FIRST_ROW + r),
    ...blocks.flatMap(({ rows }) =>
      [...(rows[r] ?? (rows[0] ?? []).map(() => ""))].map((raw) =>
        raw === null || raw === undefined ? "" : String(raw),
      ),
    ),
  ]);
  return { heading: ["", ...columns.map((_, c) => letter(c))], rows };
}

const letter = (column: number): string => String.fromCharCode(65 + column);

/** Differences that only come from counting in twos say nothing to a reader. */
const BINARY_NOISE = 1e-8;

function remark(definition: Definition, { within }: Example): string {
  if (isDate(definition)) return ", in a cell formatted as a date";
  return within === undefined || within <= BINARY_NOISE
    ? ""
    : `, to within ${plain(within)}`;
}

const isDate = ({ gives }: Definition): boolean => gives.unit === "date";

/** An answer with its unit, or the cells it fills. */
export function answerShown(
  definition: Definition,
  { args, gives }: Pick<Example, "args" | "gives">,
): string | Grid {
  if (Array.isArray(gives))
    return {
      heading: definition.gives.spills ?? [],
      rows: (gives as Answers).map((row) => row.map(shown)),
    };
  if (isDate(definition)) return isoDate(as<DaySerial>(Number(gives)));
  const unit = unitOfAnswer(definition, args);
  return `${shown(gives as Answer)}${unit && ` ${unit}`}`;
}

const shown = (value: Answer): string =>
  typeof value === "number"
    ? (Number.isInteger(value) ? value : Number(value.toPrecision(7)))
        .toLocaleString("en-US", { maximumFractionDigits: 12 })
        .replace("-", "−")
    : String(value);

/** The unit asked for, or the stated one; none where it depends on the call. */
function unitOfAnswer(
  { args, gives }: Definition,
  raw: readonly Raw[],
): string {
  const place = Object.keys(args).indexOf("unit");
  const asked = place < 0 ? undefined : raw[place];
  if (typeof asked === "string") return asked;
  if (gives.unit.startsWith("money"))
    return gives.unit.replace("money", "").trim();
  return / or /.test(gives.unit) || gives.unit === "share" ? "" : gives.unit;
}

const plain = (value: number): string =>
  value.toLocaleString("en-US", { maximumFractionDigits: 12 });
