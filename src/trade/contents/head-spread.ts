import { as, type ColdLitres } from "../../measures/quantity";
import { mean } from "./sample";

export interface HeadBottle {
  readonly volume: ColdLitres;
  readonly head: number;
}

export interface HeadFill {
  readonly head: number;
  readonly mean: ColdLitres;
  /** Against the mean of all bottles. */
  readonly difference: ColdLitres;
}

/** How each filling head fills against all of them together, in the order of the heads. Refuses (#VALUE!) no bottles. */
export function headSpread(
  bottles: readonly HeadBottle[],
): readonly HeadFill[] {
  const overall = mean(bottles.map(({ volume }) => volume));
  const byHead = new Map<number, ColdLitres[]>();
  for (const { head, volume } of bottles) {
    const filled = byHead.get(head);
    if (filled) filled.push(volume);
    else byHead.set(head, [volume]);
  }
  return [...byHead]
    .sort(([a], [b]) => a - b)
    .map(([head, volumes]) => ({
      head,
      mean: mean(volumes),
      difference: as<ColdLitres>(mean(volumes) - overall),
    }));
}
