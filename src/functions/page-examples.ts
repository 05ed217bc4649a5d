import { isoDate } from "../measures/read-date";
import { as, type DaySerial } from "../measures/quantity";
import { explained } from "./answer";
import type { Answer, Answers, Definition, Example, Raw } from "./define";
import { formulaBlock, sentence, table } from "./page-markdown";

/** Every example as a cell formula, with the cells it refers to, its answer, its arithmetic and where the answer comes from. */
export function examplesOf(definition: Definition): string {
  let before = "";
  return definition.examples
    .flatMap((example) => {
      const { texts, cells } = written(example.args);
      const sheet = cells.length > 0 ? cellTable(cells) : "";
      const again =
        sheet === before ? "With the same cells," : "With these cells,";
      before = sheet;
      return [
        ...(sheet ? [again, ...(again.includes("same") ? [] : [sheet])] : []),
        formulaBlock(`=SYRUP.${definition.name}(${texts.join(", ")})`),
        given(definition, example),
        `> ${sentence(explained(definition, example.args).why)}`,
        `Where the answer comes from: ${example.source}.`,
      ];
    })
    .join("\n\n");
}

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

function cellTable(blocks: readonly Block[]): string {
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
  return table(["", ...columns.map((_, c) => letter(c))], rows);
}

const letter = (column: number): string => String.fromCharCode(65 + column);

/** Differences that only come from counting in twos say nothing to a reader. */
const BINARY_NOISE = 1e-8;

function given(definition: Definition, example: Example): string {
  const { gives, within } = example;
  const to =
    within === undefined || within <= BINARY_NOISE
      ? ""
      : `, to within ${plain(within)}`;
  if (Array.isArray(gives)) {
    const rows = (gives as Answers).map((row) => row.map(shown));
    return `gives these cells${to}:\n\n${table(definition.gives.spills ?? [], rows)}`;
  }
  if (definition.gives.unit === "date")
    return `gives **${isoDate(as<DaySerial>(Number(gives)))}**, in a cell formatted as a date.`;
  const unit = unitOfAnswer(definition, example);
  return `gives **${shown(gives as Answer)}${unit && ` ${unit}`}**${to}.`;
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
  { args: raw }: Example,
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
