import { declaredVolume } from "../../src/trade/contents/declared-volume";
import { liquidVolumes } from "./handbook-44-volumes";

test.each(liquidVolumes)(
  "a label that says 1 $unit declares $printed mL",
  ({ unit, printed, decimals }) => {
    const ours = declaredVolume(`1 ${unit}`).larger.volume * 1000;
    expect(Math.abs(ours - printed)).toBeLessThanOrEqual(0.5 * 10 ** -decimals);
  },
);
