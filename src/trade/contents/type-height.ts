import { typeHeights } from "../../standards/type-height";

export interface TypeHeight {
  readonly height: number;
  /** The panel is more than this and at most `upTo`, in square inches. */
  readonly over: number;
  readonly upTo: number;
}

/** Least height in inches of the declaration, for a main panel of so many square inches. Sources: typeHeight, typeHeightAbove. */
export function typeHeight(panelArea: number): TypeHeight {
  const place = typeHeights.findIndex(({ upTo }) => panelArea <= upTo);
  const step = typeHeights[place];
  if (!step) throw new Error("The last step is for panels of any size");
  return { ...step, over: typeHeights[place - 1]?.upTo ?? 0 };
}
