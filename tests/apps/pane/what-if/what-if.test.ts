import { inOrder } from "../../../../src/apps/pane/what-if/falling-list";
import { pictureSentence } from "../../../../src/apps/pane/what-if/margin-picture";
import type { Moved } from "../../../../src/apps/pane/what-if/what-if";

const moved = (changes: Partial<Moved>): Moved => ({
  product: "G250-AM",
  channel: "Farm counter",
  price: 13.49,
  left: 0.61,
  goal: 0.58,
  cost: 4.4681,
  newCost: 4.6533,
  share: 0.041,
  isOver: true,
  holdMoney: 13.69,
  holdPercent: 14.05,
  askMoney: 13.99,
  askPercent: 14.99,
  newLeft: 0.6,
  verdict: "meets its goal",
  steps: [],
  ...changes,
});

test("those that fall under their goal come first, then the least left against it; without a price none", () => {
  const order = inOrder([
    moved({ product: "keeps" }),
    moved({
      product: "under",
      newLeft: 0.3,
      verdict: "under its goal already",
    }),
    moved({ product: "falls", newLeft: 0.57, verdict: "falls under its goal" }),
    moved({ product: "no price", newLeft: "", verdict: "" }),
  ]);
  expect(order.map(({ product }) => product)).toEqual([
    "falls",
    "under",
    "keeps",
  ]);
});

test("the picture's sentence says from where to where, and until when the goal is met", () => {
  // From 62 % to 58 % over 0.80 is 5 points a dollar: 60 % is left after 0.40.
  expect(
    pictureSentence(moved({ goal: 0.6 }), [
      { x: -0.4, y: 0.62 },
      { x: 0.4, y: 0.58 },
    ]),
  ).toBe(
    "From 62 % of Farm counter's price with bulk $0.40 cheaper to 58 % with bulk $0.40 dearer; goal 60 %, met until bulk is as it is.",
  );
  expect(
    pictureSentence(moved({ goal: 0.5 }), [
      { x: -0.4, y: 0.62 },
      { x: 0.4, y: 0.58 },
    ]),
  ).toContain("met throughout");
});
