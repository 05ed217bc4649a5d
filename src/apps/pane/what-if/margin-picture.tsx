import type { ReactNode } from "react";
import { share } from "../money";
import { LinePicture } from "../pictures/line-picture";
import { usePaneStyles } from "../styles";
import type { Moved, WhatIf } from "./what-if";

/** What is left of a product's price while bulk moves, against its goal. */
export function MarginPicture(props: {
  readonly whatIf: WhatIf;
  readonly drawn: Moved;
  readonly dark: boolean;
}): ReactNode {
  const { whatIf, drawn, dark } = props;
  const pane = usePaneStyles();
  const points = whatIf.steps.flatMap((x, i) => {
    const y = drawn.steps[i];
    return typeof x === "number" && typeof y === "number" ? [{ x, y }] : [];
  });
  if (points.length < 2 || typeof drawn.goal !== "number")
    return (
      <p className={pane.plain}>
        {drawn.product} has no price{drawn.channel && ` in ${drawn.channel}`},
        or its cost is withheld.
      </p>
    );
  return (
    <LinePicture
      title={`Left of the price of ${drawn.product} in ${drawn.channel}`}
      says={pictureSentence(drawn, points)}
      across="Bulk moves by, per lb"
      up="left of the price"
      lines={[{ name: "left of the price", points }]}
      level={{ name: "goal", y: drawn.goal }}
      mark={{ name: "today", x: 0 }}
      showX={(x) =>
        `${x < 0 ? "−" : x > 0 ? "+" : ""}${Math.abs(x).toFixed(2)}`
      }
      showY={(y) => share(y)}
      dark={dark}
    />
  );
}

/** "18.4 ¢" style words for the picture: from where to where, and where the goal is crossed. */
export function pictureSentence(
  drawn: Moved,
  points: readonly { readonly x: number; readonly y: number }[],
): string {
  const [first] = points;
  const last = points.at(-1);
  if (!first || !last || typeof drawn.goal !== "number") return "";
  const from = `From ${share(first.y)} of ${drawn.channel}'s price with bulk ${moved(first.x)} to ${share(last.y)} with bulk ${moved(last.x)}; goal ${share(drawn.goal)}`;
  const slope = (last.y - first.y) / (last.x - first.x);
  const crossing = first.x + (drawn.goal - first.y) / slope;
  return Number.isFinite(crossing) && crossing > first.x && crossing < last.x
    ? `${from}, met until bulk is ${moved(crossing)}.`
    : `${from}, ${first.y >= drawn.goal && last.y >= drawn.goal ? "met throughout" : "missed throughout"}.`;
}

const moved = (by: number): string =>
  Math.abs(by) < 0.005
    ? "as it is"
    : `$${Math.abs(by).toFixed(2)} ${by < 0 ? "cheaper" : "dearer"}`;
