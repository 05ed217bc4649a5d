import {
  generateAstNode,
  type AstTreeBuilder,
  type IFormulaCurrentConfigService,
  type Lexer,
  type LexerNode,
} from "@univerjs/engine-formula";
import { FormulaPattern, type FormulaNode } from "./formula-pattern";
import { shapeOf } from "./formula-shape";

/** A formula ready to be worked out: its pattern, and its own cells and numbers. */
export interface ParsedFormula {
  readonly pattern: FormulaPattern;
  readonly parts: readonly string[];
}

/**
 * Parses formulas of one outline once together. The engine parses every formula anew at each calculation of a book
 * with more formulas than it remembers, 5,000.
 */
export class FormulaPatterns {
  readonly #config: IFormulaCurrentConfigService;
  readonly #lexer: Lexer;
  readonly #builder: AstTreeBuilder;
  /** By outline; undefined where the formulas of an outline cannot be parsed together. */
  readonly #shared = new Map<string, FormulaPattern | undefined>();
  readonly #alone = new Map<string, FormulaPattern>();

  constructor(
    config: IFormulaCurrentConfigService,
    lexer: Lexer,
    builder: AstTreeBuilder,
  ) {
    this.#config = config;
    this.#lexer = lexer;
    this.#builder = builder;
  }

  of(formula: string): ParsedFormula {
    const { outline, parts } = shapeOf(formula);
    const known = this.#shared.get(outline);
    if (known) return { pattern: known, parts };
    if (!this.#shared.has(outline)) {
      const pattern = FormulaPattern.shared(this.#parse(formula), parts);
      this.#shared.set(outline, pattern);
      if (pattern) return { pattern, parts };
    }
    return this.alone(formula);
  }

  /** For a formula that is moved as it is worked out, and so cannot take turns with others. */
  alone(formula: string): ParsedFormula {
    const known = this.#alone.get(formula);
    const pattern = known ?? FormulaPattern.alone(this.#parse(formula));
    if (!known) this.#alone.set(formula, pattern);
    return { pattern, parts: [] };
  }

  /** Past the engine's own memory: what is kept there must not turn to other formulas. */
  #parse(formula: string): FormulaNode {
    const words = this.#lexer.treeBuilder(formula);
    const node =
      typeof words === "string"
        ? undefined
        : this.#builder.parse(words as LexerNode);
    return (
      node ??
      generateAstNode("", formula, this.#lexer, this.#builder, this.#config)
    );
  }
}
