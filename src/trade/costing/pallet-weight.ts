import {
  as,
  type Brix,
  type ColdLitres,
  type Kilograms,
} from "../../measures/quantity";
import { weightOf } from "../syrup/weight";

export interface Packed {
  readonly fill: ColdLitres;
  readonly brix: Brix;
  readonly emptyBottle: Kilograms;
  readonly emptyCase: Kilograms;
  readonly emptyPallet: Kilograms;
  readonly perCase: number;
  readonly perPallet: number;
}

export interface PackedWeights {
  readonly bottle: Kilograms;
  readonly case: Kilograms;
  readonly fullPallet: Kilograms;
  /** The pallet that is not full; undefined where every pallet is. A part-filled case is one more case on it. */
  readonly lastPallet: Kilograms | undefined;
  readonly all: Kilograms;
}

/** What bottles, cases and pallets weigh on a scale; caps, labels and wrap are not counted. */
export function packedWeights(
  packed: Packed,
  load: {
    readonly fullPallets: number;
    readonly casesOnLast: number;
    readonly looseBottles: number;
  },
): PackedWeights {
  const bottle = packed.emptyBottle + weightOf(packed.fill, packed.brix);
  const oneCase = packed.perCase * bottle + packed.emptyCase;
  const fullPallet = packed.perPallet * oneCase + packed.emptyPallet;
  const loose =
    load.looseBottles > 0 ? load.looseBottles * bottle + packed.emptyCase : 0;
  const last =
    load.casesOnLast > 0 || loose > 0
      ? load.casesOnLast * oneCase + loose + packed.emptyPallet
      : undefined;
  return {
    bottle: as<Kilograms>(bottle),
    case: as<Kilograms>(oneCase),
    fullPallet: as<Kilograms>(fullPallet),
    lastPallet: last === undefined ? undefined : as<Kilograms>(last),
    all: as<Kilograms>(load.fullPallets * fullPallet + (last ?? 0)),
  };
}
