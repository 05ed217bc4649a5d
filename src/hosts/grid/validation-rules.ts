import {
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationRenderMode,
  DataValidationType,
  type ISheetDataValidationRule,
} from "@univerjs/core";
import type { Validation } from "../../sheets/workbook";
import { areaToRange, rangeToArea } from "./ranges";

type Rule = Validation["rule"];
type Limits = Extract<Rule, { readonly min?: number }>;

/** Stands for "no limit": the grid knows no number rule without one. */
const unlimited = "-1e+300";

const types = {
  number: DataValidationType.DECIMAL,
  "whole number": DataValidationType.WHOLE,
  date: DataValidationType.DATE,
} as const;

export const validationToGrid = (
  validation: Validation,
  uid: string,
): ISheetDataValidationRule => ({
  uid,
  ranges: [areaToRange(validation.area)],
  allowBlank: true,
  ...ruleToGrid(validation.rule),
  errorStyle: errorStyleOf(validation.strict),
  ...(validation.message === undefined
    ? {}
    : {
        showErrorMessage: true,
        error: validation.message,
        showInputMessage: true,
        prompt: validation.message,
      }),
});

/** One validation for each range; kinds of rule the model does not know are left out. */
export function validationsFromGrid(
  rule: ISheetDataValidationRule,
): readonly Validation[] {
  const found = ruleFromGrid(rule);
  if (!found) return [];
  return rule.ranges.map((range) => ({
    area: rangeToArea(range),
    rule: found,
    ...(rule.errorStyle === DataValidationErrorStyle.STOP
      ? { strict: true }
      : rule.errorStyle === DataValidationErrorStyle.WARNING
        ? { strict: false }
        : {}),
    ...(rule.error ? { message: rule.error } : {}),
  }));
}

const errorStyleOf = (strict: boolean | undefined): DataValidationErrorStyle =>
  strict === undefined
    ? DataValidationErrorStyle.INFO
    : strict
      ? DataValidationErrorStyle.STOP
      : DataValidationErrorStyle.WARNING;

type GridRule = Pick<
  ISheetDataValidationRule,
  "type" | "formula1" | "formula2" | "operator" | "renderMode" | "showDropDown"
>;

function ruleToGrid(rule: Rule): GridRule {
  if (rule.kind === "list" || rule.kind === "list from")
    return {
      type: DataValidationType.LIST,
      formula1:
        rule.kind === "list"
          ? JSON.stringify(rule.choices)
          : `=${rule.source.replace(/^=/, "")}`,
      showDropDown: true,
      renderMode: DataValidationRenderMode.ARROW,
    };
  const { min, max, kind } = rule;
  if (min !== undefined && max !== undefined)
    return {
      type: types[kind],
      operator: DataValidationOperator.BETWEEN,
      formula1: String(min),
      formula2: String(max),
    };
  if (max !== undefined)
    return {
      type: types[kind],
      operator: DataValidationOperator.LESS_THAN_OR_EQUAL,
      formula1: String(max),
    };
  return {
    type: types[kind],
    operator: DataValidationOperator.GREATER_THAN_OR_EQUAL,
    formula1: min === undefined ? unlimited : String(min),
  };
}

function ruleFromGrid(rule: ISheetDataValidationRule): Rule | undefined {
  if (rule.type === DataValidationType.LIST) return listFromGrid(rule);
  const kind = (["number", "whole number", "date"] as const).find(
    (k) => types[k] === rule.type,
  );
  return kind && limitsFromGrid(kind, rule);
}

function listFromGrid(rule: ISheetDataValidationRule): Rule {
  const given = rule.formula1 ?? "";
  if (given.startsWith("="))
    return { kind: "list from", source: given.slice(1) };
  return { kind: "list", choices: choicesOf(given) };
}

/** The grid's own dialog writes choices with commas between. */
function choicesOf(given: string): readonly string[] {
  try {
    const parsed: unknown = JSON.parse(given);
    if (Array.isArray(parsed) && parsed.every((c) => typeof c === "string"))
      return parsed;
  } catch {
    // Not the quoted form, so it is the other one.
  }
  return given.split(",").filter((choice) => choice !== "");
}

function limitsFromGrid(
  kind: Limits["kind"],
  rule: ISheetDataValidationRule,
): Limits | undefined {
  const first = numberOf(rule.formula1);
  const second = numberOf(rule.formula2);
  switch (rule.operator) {
    case DataValidationOperator.BETWEEN:
      return first === undefined || second === undefined
        ? undefined
        : { kind, min: first, max: second };
    case DataValidationOperator.LESS_THAN_OR_EQUAL:
      return first === undefined ? undefined : { kind, max: first };
    case DataValidationOperator.GREATER_THAN_OR_EQUAL:
      if (rule.formula1 === unlimited) return { kind };
      return first === undefined ? undefined : { kind, min: first };
    default:
      return undefined;
  }
}

const numberOf = (given: string | undefined): number | undefined =>
  given === undefined || given.trim() === "" || !Number.isFinite(Number(given))
    ? undefined
    : Number(given);
