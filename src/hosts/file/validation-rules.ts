import type { DataValidation } from "hucre/xlsx";
import { unusable } from "../../measures/cannot-answer";
import { cellAddress } from "../../sheets/address";
import type { Area, Validation } from "../../sheets/workbook";
import { formulaFromFile, formulaInFile } from "./formula-text";
import { areaOf, areaReference } from "./ranges";
import { moveFormula } from "./shared-formula";
import { textFromFile, textInAttribute, textInFile } from "./worksheet-text";
import { childNamed, type XmlElement } from "./xml";

type Rule = Validation["rule"];
type Limits = Extract<Rule, { readonly min?: number }>;

/** A file has no number rule without a limit; these refuse no number and no date. */
const unlimited = {
  number: "-1E+300",
  "whole number": "-1E+300",
  date: "0",
} as const;
const kinds = {
  number: "decimal",
  "whole number": "whole",
  date: "date",
} as const;
const longestList = 255;
const longestError = 225;
const longestPrompt = 255;

export function validationToFile(
  { area, rule, strict, message }: Validation,
  sheet: string,
): DataValidation {
  return {
    range: areaReference(area),
    ...ruleToFile(
      rule,
      `Sheet ${sheet}, cell ${cellAddress(area.row, area.column)}`,
    ),
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: strict ? "stop" : "warning",
    ...(message === undefined
      ? {}
      : {
          showInputMessage: true,
          inputMessage: textInAttribute(message.slice(0, longestPrompt)),
          errorMessage: textInAttribute(message.slice(0, longestError)),
        }),
  };
}

/** One validation for each area a rule covers, or undefined for a kind of rule the model does not know. */
export function validationsFromFile(
  element: XmlElement,
): readonly Validation[] | undefined {
  const { attributes } = element;
  const areas = (
    attributes["sqref"] ??
    childNamed(element, "sqref")?.text ??
    ""
  )
    .trim()
    .split(/\s+/)
    .map(areaOf);
  const rule = ruleFromFile(element);
  const [first] = areas;
  if (!rule || !first) return undefined;
  const message = attributes["prompt"] ?? attributes["error"];
  return areas.map((area) => ({
    area,
    rule: ruleFor(rule, first, area),
    ...((attributes["errorStyle"] ?? "stop") === "stop"
      ? { strict: true }
      : {}),
    ...(message ? { message: textFromFile(message) } : {}),
  }));
}

function ruleToFile(
  rule: Rule,
  where: string,
): Pick<DataValidation, "type" | "operator" | "formula1" | "formula2"> {
  if (rule.kind === "list")
    return { type: "list", formula1: choicesToFile(rule.choices, where) };
  if (rule.kind === "list from")
    return { type: "list", formula1: textInFile(formulaInFile(rule.source)) };
  const type = kinds[rule.kind];
  const { min, max } = rule;
  if (min !== undefined && max !== undefined)
    return {
      type,
      operator: "between",
      formula1: String(min),
      formula2: String(max),
    };
  if (max !== undefined)
    return { type, operator: "lessThanOrEqual", formula1: String(max) };
  return {
    type,
    operator: "greaterThanOrEqual",
    formula1: min === undefined ? unlimited[rule.kind] : String(min),
  };
}

function choicesToFile(choices: readonly string[], where: string): string {
  const apart = choices.find((choice) => choice.includes(","));
  if (apart !== undefined)
    throw unusable(
      `${where}: the choice "${apart}" has a comma, which the list of a worksheet file cannot hold; keep the choices in cells instead.`,
    );
  const listed = choices.join(",");
  if (listed.length > longestList)
    throw unusable(
      `${where}: the choices come to ${listed.length} characters and a worksheet file holds ${longestList}; keep the choices in cells instead.`,
    );
  return `"${textInFile(listed.replace(/"/g, '""'))}"`;
}

function ruleFromFile(element: XmlElement): Rule | undefined {
  const { type, operator = "between" } = element.attributes;
  const first = formulaText(element, "formula1");
  if (type === "list") {
    const quoted = /^"([\s\S]*)"$/.exec(first);
    return quoted
      ? {
          kind: "list",
          choices: (quoted[1] ?? "")
            .replace(/""/g, '"')
            .split(",")
            .map((choice) => choice.trim()),
        }
      : { kind: "list from", source: formulaFromFile(first).slice(1) };
  }
  const kind = (["number", "whole number", "date"] as const).find(
    (k) => kinds[k] === type,
  );
  return (
    kind &&
    limitsFromFile(kind, operator, first, formulaText(element, "formula2"))
  );
}

function limitsFromFile(
  kind: Limits["kind"],
  operator: string,
  first: string,
  second: string,
): Limits | undefined {
  const low = limit(first);
  const high = limit(second);
  if (low === undefined) return undefined;
  if (operator === "greaterThanOrEqual")
    return low === Number(unlimited[kind]) ? { kind } : { kind, min: low };
  if (operator === "lessThanOrEqual") return { kind, max: low };
  if (operator === "equal") return { kind, min: low, max: low };
  return operator === "between" && high !== undefined
    ? { kind, min: low, max: high }
    : undefined;
}

/** A range in the source of a list moves with the area it is for, unless it is fixed. */
const ruleFor = (rule: Rule, first: Area, area: Area): Rule =>
  rule.kind === "list from"
    ? {
        ...rule,
        source: moveFormula(
          rule.source,
          area.row - first.row,
          area.column - first.column,
        ),
      }
    : rule;

/** Excel 2010 and later keep a rule that reads another sheet in an extension, its formula one element deeper. */
function formulaText(element: XmlElement, name: string): string {
  const formula = childNamed(element, name);
  return textFromFile(
    childNamed(formula, "f")?.text ?? formula?.text ?? "",
  ).trim();
}

const limit = (text: string): number | undefined =>
  text === "" || !Number.isFinite(Number(text)) ? undefined : Number(text);
