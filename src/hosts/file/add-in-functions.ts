import { callsAddIn } from "./formula-text";
import { partText, unpack, type Parts } from "./package-parts";
import { allNamed, parseXml } from "./xml";

/** Whether anything in a workbook file needs an add-in to be calculated: a cell, a name, a rule, a table's column or a chart. */
export const holdsAddInFunctions = (bytes: Uint8Array): boolean =>
  formulasOf(unpack(bytes)).some(({ formula }) => callsAddIn(formula));

/** Every formula of a package with the part it stands in. */
export const formulasOf = (
  parts: Parts,
): readonly { readonly part: string; readonly formula: string }[] =>
  Object.keys(parts)
    .filter(
      (part) =>
        /^xl\/.*\.xml$/.test(part) && holdsFormulas(partText(parts, part)),
    )
    .flatMap((part) => {
      const root = parseXml(partText(parts, part));
      return elements.flatMap((name) =>
        allNamed(root, name).map(({ text }) => ({ part, formula: text })),
      );
    });

const elements = [
  "f",
  "formula",
  "formula1",
  "formula2",
  "definedName",
  "calculatedColumnFormula",
  "totalsRowFormula",
] as const;

/** Spares parsing the parts that cannot matter: shared texts, styles, plain data. */
const holdsFormulas = (xml: string): boolean =>
  /<(\w+:)?(f|formula\d?|definedName|calculatedColumnFormula|totalsRowFormula)[\s>]/.test(
    xml,
  );
