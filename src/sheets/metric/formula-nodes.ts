import type { Area } from "../workbook";

/** A formula taken apart as far as its references and calls; everything else is text as it stands. */
export type Node =
  | { readonly kind: "text" | "sign" | "quoted"; readonly text: string }
  | { readonly kind: "cells"; readonly text: string; readonly area: Area }
  | {
      readonly kind: "call";
      /** In capitals; "" for brackets alone. */
      readonly name: string;
      readonly args: readonly (readonly Node[])[];
    };

const TOKEN = new RegExp(
  [
    String.raw`("(?:[^"]|"")*")`,
    String.raw`((?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?|[A-Za-z_]\w*\[(?:[^[\]]|\[[^\]]*\])*\]|\{[^}]*\})`,
    String.raw`\$?([A-Z]{1,3})\$?(\d{1,7})(?::\$?([A-Z]{1,3})\$?(\d{1,7}))?(?![\w(.!])`,
    String.raw`([A-Za-z_][\w.]*)\(`,
    String.raw`(\d+\.?\d*(?:[eE][+-]?\d+)?|\.\d+|[A-Za-z_][\w.]*|\s+|#[\w/!?]+)`,
    String.raw`(<=|>=|<>|[=<>+\-*/^&%:])`,
    String.raw`([(),])`,
  ].join("|"),
  "y",
);

/** Takes a formula without its "=" apart. A text that is no formula is a programmer's mistake and throws. */
export function nodesOf(formula: string): readonly Node[] {
  let at = 0;
  const list = (closes: boolean): readonly (readonly Node[])[] => {
    const args: Node[][] = [[]];
    for (;;) {
      if (at >= formula.length) {
        if (closes) throw new Error(`A bracket is missing in ${formula}`);
        return args;
      }
      TOKEN.lastIndex = at;
      const m = TOKEN.exec(formula);
      if (!m)
        throw new Error(
          `What is "${formula.slice(at, at + 12)}" in ${formula}?`,
        );
      at = TOKEN.lastIndex;
      const [text, quoted, elsewhere, column, , , , name, plain, sign] = m;
      const own = args.at(-1);
      if (quoted !== undefined) own?.push({ kind: "quoted", text });
      else if (elsewhere ?? plain) own?.push({ kind: "text", text });
      else if (column !== undefined)
        own?.push({ kind: "cells", text, area: areaOf(m) });
      else if (name !== undefined)
        own?.push({ kind: "call", name: name.toUpperCase(), args: list(true) });
      else if (sign !== undefined) own?.push({ kind: "sign", text });
      else if (text === "(")
        own?.push({ kind: "call", name: "", args: list(true) });
      else if (text === ",") args.push([]);
      else return args;
    }
  };
  const [nodes = []] = list(false);
  return nodes;
}

/** Whether a formula reads cells of another sheet. */
export const readsElsewhere = (formula: string): boolean =>
  formula.replace(/"(?:[^"]|"")*"/g, "").includes("!$") ||
  /'![A-Z$]/.test(formula.replace(/"(?:[^"]|"")*"/g, ""));

function areaOf(m: RegExpExecArray): Area {
  const [row, column] = [Number(m[4]) - 1, columnNumber(m[3] ?? "")];
  return {
    row,
    column,
    rows: (m[6] === undefined ? row : Number(m[6]) - 1) - row + 1,
    columns: (m[5] === undefined ? column : columnNumber(m[5])) - column + 1,
  };
}

const columnNumber = (letters: string): number =>
  [...letters].reduce((n, letter) => n * 26 + letter.charCodeAt(0) - 64, 0) - 1;
