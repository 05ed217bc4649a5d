import { typeHeight } from "../../src/trade/contents/type-height";
import { usTypeHeights } from "./us-type-height";

test.each(usTypeHeights)(
  "a panel over $over and up to $upTo in² needs type of $height inch",
  ({ over, upTo, height }) => {
    for (const area of [over + 0.01, upTo])
      expect(typeHeight(area).height).toBe(height);
    expect(typeHeight(upTo + 0.01).height).toBeGreaterThan(height);
  },
);
