import type { Area } from "../workbook";
import { turns, type UsUnit } from "./figure-units";
import { type Node, nodesOf } from "./formula-nodes";

/** Where a formula's cells stand in metric now, and what they hold. */
export interface Turned {
  /** The customary unit a cell had before it was turned; undefined for one that stays as it is. */
  readonly unitAt: (row: number, column: number) => UsUnit | undefined;
  readonly isNumberAt: (row: number, column: number) => boolean;
}

/** A formula that cannot read these cells once they are turned. */
export class CannotRead extends Error {
  constructor(readonly area: Area) {
    super("cells turned to metric are read in a way that cannot follow");
  }
}

/** Sees only whether there is a number, text or nothing. */
const ONLY_LOOKS = new Set(
  "ISNUMBER,ISTEXT,ISBLANK,ISERROR,ISNA,COUNT,COUNTA,COUNTBLANK,ROWS,COLUMNS,ROW,COLUMN".split(
    ",",
  ),
);
/** Of one range: what comes out is in the unit of what goes in. */
const KEEPS_UNIT = new Set("SUM,MAX,MIN,AVERAGE,MEDIAN".split(","));
/** The same of one range, at a place that the second argument names. */
const TAKES_A_PLACE = new Set(["SMALL", "LARGE"]);
const ARITHMETIC = new Set("+-*/^".split(""));

/**
 * The same formula over cells some of which now hold metric figures: it gives what it gave before, in the unit it had.
 * Throws CannotRead where it reads them in a way for which there is no equal.
 */
export const rewritten = (formula: string, turned: Turned): string =>
  `=${listText(nodesOf(formula.slice(1)), turned)}`;

/** The same formula with its result turned to metric; text, blanks and errors pass as they are. */
export function inMetricFormula(formula: string, unit: UsUnit): string {
  const { times, before } = turns[unit];
  const body = formula.slice(1);
  const turnedBody =
    before === 0 ? `(${body})*${times}` : `((${body})${before})*${times}`;
  return isArithmetic(nodesOf(body))
    ? `=${turnedBody}`
    : `=IF(ISNUMBER(${body}),${turnedBody},${body})`;
}

/** Whether it gives a number or an error whatever its cells hold, so that the result need not be asked about. */
function isArithmetic(nodes: readonly Node[]): boolean {
  const [only, ...more] = nodes;
  if (only?.kind === "call" && only.name === "" && more.length === 0)
    return isArithmetic(only.args[0] ?? []);
  const signs = nodes.flatMap((node) =>
    node.kind === "sign" ? [node.text] : [],
  );
  return signs.length > 0 && signs.every((sign) => ARITHMETIC.has(sign));
}

const listText = (nodes: readonly Node[], turned: Turned): string =>
  nodes.map((node, i) => nodeText(node, i, nodes, turned)).join("");

function nodeText(
  node: Node,
  i: number,
  among: readonly Node[],
  turned: Turned,
): string {
  const beside = [among[i - 1], among[i + 1]].flatMap((one) =>
    one?.kind === "sign" ? [one.text] : [],
  );
  if (node.kind === "call") {
    const unit = resultUnit(node, turned);
    const text = callText(node, turned);
    return unit ? back(unit, text, beside) : text;
  }
  if (node.kind !== "cells") return node.text;
  const unit = unitOf(node.area, turned);
  if (unit === undefined || isComparedWithNothing(i, among)) return node.text;
  // A figure joined to words would show the last digits of the conversion.
  if (node.area.rows * node.area.columns > 1 || beside.includes("&"))
    throw new CannotRead(node.area);
  return back(unit, node.text, beside);
}

/** `A1=""` and `A1<>""` ask the same of a figure in any unit. */
function isComparedWithNothing(i: number, among: readonly Node[]): boolean {
  const [sign, nothing] = [among[i + 1], among[i + 2]];
  return (
    i === 0 &&
    sign?.kind === "sign" &&
    (sign.text === "=" || sign.text === "<>") &&
    nothing?.kind === "quoted" &&
    nothing.text === '""'
  );
}

/** A metric figure in the unit the formula counts on; text beside it, which arithmetic refuses, passes elsewhere. */
function back(unit: UsUnit, text: string, beside: readonly string[]): string {
  const { times, before } = turns[unit];
  const plain =
    before === 0 ? `${text}/${times}` : `${text}/${times}+${-before}`;
  return beside.some((sign) => ARITHMETIC.has(sign))
    ? `(${plain})`
    : `IF(ISNUMBER(${text}),${plain},${text})`;
}

function callText(
  node: Extract<Node, { kind: "call" }>,
  turned: Turned,
): string {
  const { name, args } = node;
  const written = args.map((arg, i) => argText(name, args, arg, i, turned));
  const call = `${name}(${written.join(",")})`;
  if (name !== "SUMPRODUCT") return call;
  const scale = args.flatMap((arg) => {
    const range = onlyCells(arg);
    const unit = range && unitOf(range.area, turned);
    return unit ? [turns[unit].times] : [];
  });
  return scale.length === 0 ? call : `(${call}/${scale.join("/")})`;
}

function argText(
  name: string,
  args: readonly (readonly Node[])[],
  arg: readonly Node[],
  i: number,
  turned: Turned,
): string {
  const cells = onlyCells(arg);
  const unit = cells && unitOf(cells.area, turned);
  if (!cells || !unit) return listText(arg, turned);
  const isRange = cells.area.rows * cells.area.columns > 1;
  if (ONLY_LOOKS.has(name)) return cells.text;
  if (!isRange) {
    // A sum passes over text in a cell, but not over the text that a calculation makes of it.
    if (
      KEEPS_UNIT.has(name) &&
      !turned.isNumberAt(cells.area.row, cells.area.column)
    )
      throw new CannotRead(cells.area);
    return listText(arg, turned);
  }
  const isScaled =
    turns[unit].before === 0 &&
    (name === "SUMPRODUCT" ||
      (KEEPS_UNIT.has(name) && args.length === 1) ||
      (TAKES_A_PLACE.has(name) && i === 0) ||
      (name === "SUMIFS" && i === 0) ||
      (name === "SUMIF" && i === 2));
  if (isScaled || (name === "INDEX" && i === 0)) return cells.text;
  throw new CannotRead(cells.area);
}

/** The unit a call's result has because of a range of turned cells in it. */
function resultUnit(
  { name, args }: Extract<Node, { kind: "call" }>,
  turned: Turned,
): UsUnit | undefined {
  const from =
    KEEPS_UNIT.has(name) ||
    TAKES_A_PLACE.has(name) ||
    name === "INDEX" ||
    name === "SUMIFS"
      ? 0
      : name === "SUMIF"
        ? 2
        : undefined;
  const cells = from === undefined ? undefined : onlyCells(args[from] ?? []);
  if (!cells || cells.area.rows * cells.area.columns === 1) return undefined;
  return unitOf(cells.area, turned);
}

function onlyCells(
  nodes: readonly Node[],
): Extract<Node, { kind: "cells" }> | undefined {
  const [only, ...more] = nodes;
  return only?.kind === "cells" && more.length === 0 ? only : undefined;
}

/** The one unit of the turned cells of an area; throws where turned cells stand beside others. */
function unitOf(
  area: Area,
  { unitAt, isNumberAt }: Turned,
): UsUnit | undefined {
  const found = new Set<UsUnit | undefined>();
  for (let r = area.row; r < area.row + area.rows; r += 1)
    for (let c = area.column; c < area.column + area.columns; c += 1) {
      const unit = unitAt(r, c);
      if (unit !== undefined || isNumberAt(r, c)) found.add(unit);
    }
  if (found.size > 1) throw new CannotRead(area);
  const [only] = found;
  return only;
}
