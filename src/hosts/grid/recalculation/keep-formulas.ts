import { IConfigService, type Injector } from "@univerjs/core";
import {
  AstTreeBuilder,
  ICalculateFormulaService,
  IDefinedNamesService,
  IDependencyManagerService,
  IFeatureCalculationManagerService,
  IFormulaCurrentConfigService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
  Interpreter,
  IOtherFormulaManagerService,
  ISuperTableService,
  Lexer,
  LexerTreeBuilder,
} from "@univerjs/engine-formula";
import { DueFormulas } from "./due-formulas";
import { FormulaPatterns } from "./formula-patterns";
import { KeptCalculation } from "./kept-calculation";

/**
 * Puts the calculation with a memory in the place of the engine's own. To be called before a workbook is opened. Gives a
 * number that goes up whenever a formula has come, gone or changed by the last calculation, or may have.
 */
export function keepFormulas(injector: Injector): () => number {
  let made: KeptCalculation | undefined;
  injector.replace([
    ICalculateFormulaService,
    {
      useFactory: () => {
        const config = injector.get(IFormulaCurrentConfigService);
        const runtime = injector.get(IFormulaRuntimeService);
        const interpreter = injector.get(Interpreter);
        const lexer = injector.get(Lexer);
        const builder = injector.get(AstTreeBuilder);
        const knows = {
          config,
          runtime,
          interpreter,
          tables: injector.get(ISuperTableService),
          names: injector.get(IDefinedNamesService),
          beside: injector.get(IOtherFormulaManagerService),
          features: injector.get(IFeatureCalculationManagerService),
          engineMemory: injector.get(IDependencyManagerService),
          texts: injector.get(LexerTreeBuilder),
          freshPatterns: () => new FormulaPatterns(config, lexer, builder),
        };
        made = new KeptCalculation(knows, new DueFormulas(knows), [
          injector.get(IConfigService),
          lexer,
          config,
          runtime,
          injector.get(IFormulaDependencyGenerator),
          interpreter,
          builder,
        ]);
        return made;
      },
    },
  ]);
  return () => made?.edition ?? 0;
}
