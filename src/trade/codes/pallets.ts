export interface Packing {
  readonly perCase: number;
  readonly casesPerLayer: number;
  readonly layers: number;
}

export interface Palletised {
  readonly fullPallets: number;
  /** Full cases on a last pallet that is not full. */
  readonly casesOnLast: number;
  /** Bottles that fill no case. */
  readonly looseBottles: number;
}

/** How bottles go onto pallets: whole cases only, and the bottles left over stay loose. */
export function palletise(bottles: number, packing: Packing): Palletised {
  const { perCase, casesPerLayer, layers } = packing;
  const cases = Math.floor(bottles / perCase);
  const perPallet = casesPerLayer * layers;
  return {
    fullPallets: Math.floor(cases / perPallet),
    casesOnLast: cases % perPallet,
    looseBottles: bottles - cases * perCase,
  };
}
