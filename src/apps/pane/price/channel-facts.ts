import type { Stored } from "../../../sheets/workbook";
import { amount, share } from "../money";
import type { ChannelPrice } from "./costing";

/**
 * The figures of a channel that there is something to say about: an error stays out, for the verdict says in words what
 * is wrong, and so does what a channel keeps where that is its margin once more.
 */
export function channelFacts(
  channel: ChannelPrice,
): readonly (readonly [name: string, value: string])[] {
  const { margin, markup, kept, goal, goalPrice } = channel;
  const facts: readonly (readonly [string, Stored, (v: Stored) => string])[] = [
    ["Margin", margin, share],
    ["Markup", markup, share],
    ...(typeof kept === "number" && share(kept) !== share(margin)
      ? [["After its own costs", kept, share] as const]
      : []),
    ["Goal", goal, share],
    ["Price for the goal", goalPrice, amount],
  ];
  return facts
    .filter(([, value]) => typeof value !== "object" || value === null)
    .map(([name, value, say]) => [name, say(value)]);
}
