import { toSVG } from "bwip-js/browser";
import type { ElementString } from "../trade/codes/gs1-elements";

/** Width of the narrowest bar where the label has room for it. Source: customary for labels on pallets, from memory. */
const NARROWEST_MM = 0.5;
/** Width of the label between its margins. */
const ROOM_MM = 200;
/** Empty modules on either side, without which a reader does not find the bars. */
const QUIET = 10;

/** The bars of one code as SVG, drawn to size; its text is left to the page. */
export function toteBars({ text }: ElementString): string {
  const drawn = toSVG({
    bcid: "gs1-128",
    text,
    scaleX: 1,
    scaleY: 1,
    height: 24,
    paddingleft: QUIET,
    paddingright: QUIET,
  });
  const modules = Number(/viewBox="0 0 (\d+)/.exec(drawn)?.[1]);
  const width = Math.min(modules * NARROWEST_MM, ROOM_MM);
  return drawn.replace(
    "<svg ",
    `<svg role="img" aria-label="Bar code ${text}" width="${width}mm" preserveAspectRatio="none" `,
  );
}
