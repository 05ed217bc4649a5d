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
];

export const functionNamed = (name: string): Definition | undefined =>
  functions.find((f) => f.name === name.toUpperCase().replace(/^SYRUP\./, ""));
