import { unusable } from "../../measures/cannot-answer";
import { cellAddress } from "../../sheets/address";
import type { Sheet, Validation } from "../../sheets/workbook";
import { areaOn } from "./on-sheet";
import type { Step } from "./step";

/** What may be typed into an area. A list that Excel cannot hold is refused before anything is written. */
export function validationStep(
  sheet: Sheet,
  { area, rule, strict, message }: Validation,
): Step {
  const excelRule = ruleFor(
    rule,
    `${sheet.name}, ${cellAddress(area.row, area.column)}`,
  );
  return {
    bytes: 1200 + JSON.stringify(excelRule).length + 2 * (message?.length ?? 0),
    run: (context) => {
      const { dataValidation } = areaOn(context, sheet, area);
      dataValidation.rule = excelRule;
      dataValidation.errorAlert = {
        showAlert: true,
        style: strict ? "Stop" : "Warning",
        title: "",
        message: (message ?? "").slice(0, longestAlert),
      };
      if (message !== undefined)
        dataValidation.prompt = {
          showPrompt: true,
          title: "",
          message: message.slice(0, longestPrompt),
        };
    },
  };
}

const longestList = 255;
const longestAlert = 225;
const longestPrompt = 255;
/** Excel has no number rule without a limit; these refuse no number and no day. */
const lowest = -1e300;
const firstDay = 0;

function ruleFor(
  rule: Validation["rule"],
  where: string,
): Excel.DataValidationRule {
  if (rule.kind === "list")
    return {
      list: { inCellDropDown: true, source: listed(rule.choices, where) },
    };
  if (rule.kind === "list from")
    return { list: { inCellDropDown: true, source: `=${rule.source}` } };
  const limits = limitsFor(rule, rule.kind === "date" ? firstDay : lowest);
  if (rule.kind === "whole number") return { wholeNumber: limits };
  if (rule.kind === "number") return { decimal: limits };
  // The object model takes days as text of one fixed form, or as numbers in a formula's clothes; the latter is exact.
  const { formula1, formula2, operator } = limits;
  return {
    date: {
      operator,
      formula1: `=${formula1}`,
      ...(formula2 === undefined ? {} : { formula2: `=${formula2}` }),
    },
  };
}

function limitsFor(
  { min, max }: { readonly min?: number; readonly max?: number },
  none: number,
): Limits {
  if (min !== undefined && max !== undefined)
    return { operator: "Between", formula1: min, formula2: max };
  if (max !== undefined)
    return { operator: "LessThanOrEqualTo", formula1: max };
  return { operator: "GreaterThanOrEqualTo", formula1: min ?? none };
}

interface Limits {
  readonly operator: "Between" | "LessThanOrEqualTo" | "GreaterThanOrEqualTo";
  readonly formula1: number;
  readonly formula2?: number;
}

function listed(choices: readonly string[], where: string): string {
  const apart = choices.find((choice) => choice.includes(","));
  if (apart !== undefined)
    throw unusable(
      `${where}: the choice "${apart}" has a comma, which a list in Excel cannot hold; keep the choices in cells instead`,
    );
  const text = choices.join(",");
  if (text.startsWith("="))
    throw unusable(
      `${where}: the choice "${choices[0]}" starts with "=", which Excel takes for a formula; keep the choices in cells instead`,
    );
  if (text.length > longestList)
    throw unusable(
      `${where}: the choices come to ${text.length} characters and a list in Excel holds ${longestList}; keep the choices in cells instead`,
    );
  return text;
}
