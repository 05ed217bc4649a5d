import { IUniverInstanceService } from "@univerjs/core";
import { SheetsDataValidationValidatorService } from "@univerjs/sheets-data-validation";
import type { Engine } from "./engine";

/**
 * The grid checks typed values against their rules when the page has time, and then throws where the workbook has given
 * way to another by then (0.25.1). A workbook that is gone has nothing left to check.
 */
export function cureLateChecks(engine: Engine): void {
  const injector = engine.univer.__getInjector();
  const open = injector.get(IUniverInstanceService);
  const checks = injector.get(SheetsDataValidationValidatorService);
  const check = checks.validatorRanges.bind(checks);
  checks.validatorRanges = async (book, sheet, ranges) =>
    open.getUnit(book) ? check(book, sheet, ranges) : [];
}
