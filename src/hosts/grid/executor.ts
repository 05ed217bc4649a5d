import {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  FunctionType,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
  type IFunctionInfo,
} from "@univerjs/engine-formula";
import { CalculationMode } from "@univerjs/sheets-formula";
import { CannotAnswer, unanswerable } from "../../measures/cannot-answer";
import type { EnginePlace, Refusals } from "./refusals";
import {
  namespace,
  type WorksheetAnswer,
  type WorksheetArgument,
  type WorksheetFunction,
} from "./worksheet-function";

/** The engine's configuration for our functions: what calculates and what autocomplete tells. */
export function formulaConfig(
  functions: readonly WorksheetFunction[],
  refusals: Refusals,
): {
  readonly function: [typeof BaseFunction, string][];
  readonly description: IFunctionInfo[];
  readonly initialFormulaComputing: CalculationMode;
} {
  return {
    function: functions.map((f) => [
      executor(f, refusals),
      `${namespace}.${f.name}`,
    ]),
    description: functions.map(described),
    // Values that came with a workbook may be from other functions than ours.
    initialFormulaComputing: CalculationMode.FORCED,
  };
}

/**
 * One of our functions inside the engine. The engine's own way to add functions turns blanks into 0, and lets one
 * thrown error end the whole calculation; so we stand one level lower.
 */
function executor(
  definition: WorksheetFunction,
  refusals: Refusals,
): typeof BaseFunction {
  return class extends BaseFunction {
    // With a count set, the engine answers a wrong count with a bare #N/A before we can say what is missing.
    override minParams = -1;
    override maxParams = -1;
    override needsFormulaDataModel = true;

    override calculate(...given: BaseValueObject[]): BaseValueObject {
      try {
        const answer = definition.answer(readArguments(definition, given));
        const result = shown(definition, answer);
        refusals.forget(this.#place());
        return result;
      } catch (error) {
        const { code, sentence } = refusal(definition, error);
        const keep = error instanceof PassedOn ? "rememberEcho" : "remember";
        refusals[keep](this.#place(), code, sentence, this.#formula());
        return ErrorValueObject.create(code);
      }
    }

    #place(): EnginePlace {
      return {
        book: this.unitId ?? "",
        sheet: this.subUnitId ?? "",
        row: this.row,
        column: this.column,
      };
    }

    #formula(): string {
      const { book, sheet, row, column } = this.#place();
      return (
        this._formulaDataModel?.getFormulaStringByCell(
          row,
          column,
          sheet,
          book,
        ) ?? ""
      );
    }
  };
}

/** An error that came in with an argument and goes out again as it is. */
class PassedOn extends Error {
  constructor(
    readonly code: ErrorType,
    argument: string,
  ) {
    super(`${argument}: the cell holds the error ${code}`);
  }
}

class NotOneValue extends Error {}

function readArguments(
  definition: WorksheetFunction,
  given: readonly BaseValueObject[],
): readonly unknown[] {
  const count = Math.max(definition.args.length, given.length);
  return Array.from({ length: count }, (_, i) => {
    const argument = definition.args[i];
    return argument
      ? readArgument(argument, given[i])
      : rawValue(given[i] ?? null);
  });
}

function readArgument(
  argument: WorksheetArgument,
  given: BaseValueObject | undefined,
): unknown {
  if (given === undefined) return null;
  const rows = rectangle(given);
  if (argument.range) return rows ?? blankOr(rawValue(given));
  const cells = rows?.flat() ?? [rawValue(given)];
  if (cells.length !== 1)
    throw new NotOneValue(
      `${spoken(argument.name)}: one value is wanted, not ${cells.length} cells`,
    );
  const [cell] = cells;
  if (isError(cell))
    throw new PassedOn(cell.error as ErrorType, spoken(argument.name));
  return cell;
}

const blankOr = (value: unknown): unknown =>
  value === null ? null : [[value]];

function rectangle(
  given: BaseValueObject,
): readonly (readonly unknown[])[] | undefined {
  if (!given.isArray()) return undefined;
  const array = given as ArrayValueObject;
  const values = array.getArrayValue();
  return Array.from({ length: array.getRowCount() }, (_, row) =>
    Array.from({ length: array.getColumnCount() }, (_, column) =>
      rawValue(values[row]?.[column] ?? null),
    ),
  );
}

function rawValue(value: BaseValueObject | null): unknown {
  if (value === null || value.isNull()) return null;
  if (value.isError())
    return { error: (value as ErrorValueObject).getErrorType() as string };
  return value.getValue();
}

const isError = (raw: unknown): raw is { readonly error: string } =>
  typeof raw === "object" && raw !== null && "error" in raw;

function shown(
  definition: WorksheetFunction,
  answer: WorksheetAnswer,
): BaseValueObject {
  if (!isRows(answer)) return cellValue(answer);
  const columnCount = Math.max(0, ...answer.map((row) => row.length));
  if (columnCount === 0)
    throw unanswerable(`${namespace}.${definition.name} found nothing to list`);
  return ArrayValueObject.create({
    calculateValueList: answer.map((row) =>
      Array.from({ length: columnCount }, (_, i) => cellValue(row[i] ?? "")),
    ),
    rowCount: answer.length,
    columnCount,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

const isRows = (
  answer: WorksheetAnswer,
): answer is Exclude<WorksheetAnswer, number | string | boolean> =>
  Array.isArray(answer);

function cellValue(value: number | string | boolean): BaseValueObject {
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (typeof value === "string") return StringValueObject.create(value);
  if (Number.isFinite(value)) return NumberValueObject.create(value);
  throw new Error(`the answer is ${value}`);
}

function refusal(
  definition: WorksheetFunction,
  error: unknown,
): { readonly code: ErrorType; readonly sentence: string } {
  if (error instanceof CannotAnswer)
    return { code: error.code as ErrorType, sentence: error.message };
  if (error instanceof PassedOn)
    return { code: error.code, sentence: error.message };
  if (error instanceof NotOneValue)
    return { code: ErrorType.VALUE, sentence: error.message };
  // eslint-disable-next-line no-console -- a fault of ours must be seen somewhere, and the calculation must go on
  console.error(`${namespace}.${definition.name} broke down`, error);
  return {
    code: ErrorType.VALUE,
    sentence: `an internal problem in ${namespace}.${definition.name}; the other cells are not touched by it`,
  };
}

const described = (definition: WorksheetFunction): IFunctionInfo => ({
  functionName: `${namespace}.${definition.name}`,
  functionType: FunctionType.User,
  description: definition.summary,
  abstract: definition.summary,
  functionParameter: definition.args.map((argument) => ({
    name: argument.name,
    detail: argument.detail,
    example: argument.example,
    require: argument.optional ? 0 : 1,
    repeat: 0,
  })),
});

const spoken = (name: string): string => name.replace(/_/g, " ");
