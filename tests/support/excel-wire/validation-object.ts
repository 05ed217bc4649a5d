import type { Area } from "../../../src/sheets/workbook";
import { overlap, type SheetState } from "./book-state";
import { refuseProtected } from "./range-objects";
import { badArgument, type WireObject } from "./wire-object";

const longestList = 255;
const longestText = 255;

/** What may be typed into some areas. */
export function validationObject(
  sheet: SheetState,
  areas: readonly Area[],
): WireObject {
  const change = (what: object): void => {
    refuseProtected(sheet);
    for (const area of areas) {
      const found = sheet.validations.find((v) => same(v.area, area));
      if (found) Object.assign(found, what);
      else if (sheet.validations.some((v) => overlap(v.area, area)))
        throw badArgument("rules that overlap are not modelled");
      else sheet.validations.push({ area, rule: {}, ...what });
    }
  };
  return {
    kind: "DataValidation",
    set: {
      Rule: (rule: { list?: { source: string } }) => {
        const source = rule.list?.source;
        if (source && !source.startsWith("=") && source.length > longestList)
          throw badArgument("a list has at most 255 characters");
        change({ rule });
      },
      ErrorAlert: (errorAlert: { message: string }) => {
        if (errorAlert.message.length > longestText)
          throw badArgument("an alert has at most 255 characters");
        change({ errorAlert });
      },
      Prompt: (prompt: { message: string }) => {
        if (prompt.message.length > longestText)
          throw badArgument("a prompt has at most 255 characters");
        change({ prompt });
      },
    },
  };
}

const same = (a: Area, b: Area): boolean =>
  a.row === b.row &&
  a.column === b.column &&
  a.rows === b.rows &&
  a.columns === b.columns;
