import { blendingFunctions } from "./blending";
import { blendingPairFunctions } from "./blending-pairs";
import { blendingPlanFunctions } from "./blending-plan";
import { codeFunctions } from "./codes";
import { contentsFunctions, contentsLabelFunctions } from "./contents";
import { contentsFillFunctions } from "./contents-fill";
import { contentsSamplingFunctions } from "./contents-sampling";
import { contentsVerdictFunctions } from "./contents-verdict";
import { costLaborFunctions } from "./cost-labor";
import { costListFunctions } from "./cost-list";
import { costLotFunctions } from "./cost-lots";
import { costMaterialFunctions } from "./cost-materials";
import { costShareFunctions } from "./cost-shares";
import { costSyrupFunctions } from "./cost-syrup";
import type { Definition } from "./define";
import { fillingFunctions } from "./filling";
import { fillingHeatFunctions } from "./filling-heat";
import { fillingKettleFunctions } from "./filling-kettle";
import { fillingLevelFunctions } from "./filling-level";
import { lineCodeFunctions } from "./line-codes";
import { lineFunctions } from "./lines";
import { priceFunctions } from "./price";
import { priceChannelFunctions } from "./price-channels";
import { priceUnitFunctions } from "./price-units";
import { syrupFunctions } from "./syrup";
import { syrupHeatFunctions } from "./syrup-heat";
import { syrupReadingFunctions } from "./syrup-readings";
import { syrupScaleFunctions } from "./syrup-scales";
import { toteFunctions } from "./totes";
import { toteLateFunctions } from "./totes-late";
import { toteTraceFunctions } from "./totes-trace";

/** Every worksheet function, in the order of the families. */
export const functions: readonly Definition[] = [
  ...syrupFunctions,
  ...syrupScaleFunctions,
  ...syrupReadingFunctions,
  ...syrupHeatFunctions,
  ...fillingFunctions,
  ...fillingLevelFunctions,
  ...fillingKettleFunctions,
  ...fillingHeatFunctions,
  ...blendingFunctions,
  ...blendingPairFunctions,
  ...blendingPlanFunctions,
  ...lineFunctions,
  ...lineCodeFunctions,
  ...costSyrupFunctions,
  ...costMaterialFunctions,
  ...costLotFunctions,
  ...costListFunctions,
  ...costLaborFunctions,
  ...costShareFunctions,
  ...priceFunctions,
  ...priceChannelFunctions,
  ...priceUnitFunctions,
  ...contentsFunctions,
  ...contentsSamplingFunctions,
  ...contentsVerdictFunctions,
  ...contentsFillFunctions,
  ...contentsLabelFunctions,
  ...toteFunctions,
  ...toteLateFunctions,
  ...toteTraceFunctions,
  ...codeFunctions,
];

export const functionNamed = (name: string): Definition | undefined =>
  functions.find((f) => f.name === name.toUpperCase().replace(/^SYRUP\./, ""));
