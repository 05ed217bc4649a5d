import type {
  BaseValueObject,
  generateAstNode,
} from "@univerjs/engine-formula";

export type FormulaNode = ReturnType<typeof generateAstNode>;
export type PartNode = ReturnType<FormulaNode["getChildren"]>[number];

/** The engine's numbers for its kinds of nodes (0.25.1), for which it exports no names. */
const kind = {
  reference: 1,
  value: 2,
  function: 4,
  lambda: 5,
  lambdaParameter: 6,
  union: 10,
  prefix: 11,
  suffix: 12,
} as const;

/** One parsed formula that stands for every formula of its outline; before each use it is told whose turn it is. */
export class FormulaPattern {
  /** The references a formula reads. Of several that come together it reads the rectangle around them. */
  readonly reads: readonly (readonly PartNode[])[];
  readonly isVolatile: boolean;
  readonly isAsync: boolean;
  /** What it reads is known only once other cells are calculated, as with INDIRECT. */
  readonly isUnforeseeable: boolean;
  /** Defined names it goes by. */
  readonly names: readonly string[];
  readonly #node: FormulaNode;
  #parts: readonly string[] = [];

  private constructor(node: FormulaNode, all: readonly PartNode[]) {
    this.#node = node;
    this.reads = [...readsOf(node)];
    this.isVolatile = all.some((one) => one.isForcedCalculateFunction());
    this.isAsync = all.some((one) => one.isAsync());
    this.isUnforeseeable = all.some(isUnforeseeable);
    this.names = node.getDefinedNames() ?? [];
    all.forEach(rememberText);
  }

  static alone(node: FormulaNode): FormulaPattern {
    return new FormulaPattern(node, [...nodesOf(node)]);
  }

  /** Undefined unless the parts taken out of the formula are the parsed cells and numbers, one for one. */
  static shared(
    node: FormulaNode,
    parts: readonly string[],
  ): FormulaPattern | undefined {
    const all = [...nodesOf(node)];
    const slots = all.filter(isSlot);
    const fits =
      slots.length === parts.length &&
      slots.every((slot, i) => holds(slot, parts[i] ?? "")) &&
      !all.some(
        ({ nodeType }) =>
          nodeType === kind.lambda || nodeType === kind.lambdaParameter,
      );
    if (!fits) return undefined;
    const pattern = new FormulaPattern(node, all);
    slots.forEach((slot, i) => {
      const sheet = slot.getToken().slice(0, -(parts[i] ?? "").length);
      slot.getToken = () => sheet + (pattern.#parts[i] ?? "");
    });
    return pattern;
  }

  turnedTo(parts: readonly string[]): FormulaNode {
    this.#parts = parts;
    return this.#node;
  }
}

/** A cell or a number. Texts and references into tables are the same in all formulas of an outline. */
const isSlot = (node: PartNode): boolean => {
  const token = node.getToken();
  return node.nodeType === kind.reference
    ? /\d$/.test(token)
    : node.nodeType === kind.value && /^[\d.]/.test(token);
};

const holds = (slot: PartNode, part: string): boolean => {
  const token = slot.getToken();
  return (
    token === part ||
    (slot.nodeType === kind.reference && token.endsWith(`!${part}`))
  );
};

const isUnforeseeable = (node: PartNode): boolean =>
  (node.nodeType === kind.function && node.isAddress()) ||
  (node.nodeType === kind.prefix && node.getToken() === "@") ||
  (node.nodeType === kind.suffix && node.getToken() === "#") ||
  (node.nodeType === kind.union && cornersOf(node) === undefined);

/** What a rectangle lies within whose ends are cells, or are picked by INDEX out of what can be foreseen. */
function cornersOf(union: PartNode): readonly PartNode[] | undefined {
  const corners = union.getChildren().map((end) => {
    const picked = isIndex(end) ? end.getChildren()[0] : end;
    if (picked?.nodeType === kind.reference) return [picked];
    return picked?.nodeType === kind.union ? cornersOf(picked) : undefined;
  });
  return corners.every((found) => found !== undefined)
    ? corners.flat()
    : undefined;
}

const isIndex = (node: PartNode): boolean =>
  node.nodeType === kind.function && node.getToken().toUpperCase() === "INDEX";

/** The engine asks of every text at every use whether it is a date, which takes longer than most arithmetic. */
function rememberText(node: PartNode): void {
  if (node.nodeType !== kind.value || !node.getToken().startsWith('"')) return;
  node.execute();
  const value = node.getValue();
  if (value?.isValueObject() && (value as BaseValueObject).isString())
    node.execute = () => node.setValue(value);
}

function* nodesOf(node: PartNode): Generator<PartNode> {
  yield node;
  for (const child of node.getChildren()) yield* nodesOf(child);
}

function* readsOf(node: PartNode): Generator<readonly PartNode[]> {
  if (node.nodeType === kind.reference) {
    yield [node];
    return;
  }
  const corners = node.nodeType === kind.union ? cornersOf(node) : undefined;
  if (corners) yield corners;
  for (const child of node.getChildren())
    if (!corners || isIndex(child)) yield* readsOf(child);
}
