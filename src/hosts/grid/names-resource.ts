import type { DefinedName } from "../../sheets/workbook";

interface GridName {
  readonly id: string;
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId: string;
}

const wholeBook = "AllDefaultWorkbook";
const reference =
  /^(?:'(?:[^']|'')+'!|[^\s!'()]+!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/i;

/** The grid takes a reference as it is and anything else as a formula with its "=". */
export const namesToGrid = (
  names: readonly DefinedName[],
): Readonly<Record<string, GridName>> =>
  Object.fromEntries(
    names.map(({ name, refersTo }, i) => [
      `name-${i + 1}`,
      {
        id: `name-${i + 1}`,
        name,
        formulaOrRefString: reference.test(refersTo)
          ? refersTo
          : `=${refersTo}`,
        localSheetId: wholeBook,
      },
    ]),
  );

export const namesFromGrid = (
  names: readonly Pick<GridName, "name" | "formulaOrRefString">[],
): readonly DefinedName[] =>
  names.map(({ name, formulaOrRefString }) => ({
    name,
    refersTo: formulaOrRefString.replace(/^=/, ""),
  }));
