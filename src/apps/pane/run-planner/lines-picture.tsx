import type { ReactNode } from "react";
import type { RunPlan } from "../../../book/run-plan";
import { amount, count } from "../money";
import { LinePicture } from "../pictures/line-picture";
import { Section } from "../section";

/** What each usual line costs over the run size, with this run marked; nothing with fewer than two of them. */
export function LinesPicture(props: {
  readonly plan: RunPlan;
  readonly dark: boolean;
}): ReactNode {
  const { plan, dark } = props;
  const options = plan.choice.options.filter(
    (option) =>
      option.line.crew > 0 &&
      (option.line.usual || option === plan.choice.chosen),
  );
  if (options.length < 2) return null;
  const even = plan.other?.option.crossover;
  const most = 1.4 * Math.max(plan.bottles, even ?? 0);
  const sizes = [...new Set([1, plan.bottles, even ?? 1, Math.round(most)])];
  const told = options
    .map(({ line, cost }) => `${line.name} ${amount(cost)}`)
    .join(", ");
  return (
    <Section title="What each line costs">
      <LinePicture
        title="Cost of crew, change-over and purge by run size"
        says={`This run of ${count(plan.bottles)}: ${told}.${even === undefined ? "" : ` Even at ${count(even)} bottles.`}`}
        across="bottles in the run"
        up="cost of the line"
        lines={options.map(({ line, fixed, each }) => ({
          name: line.name,
          points: sizes
            .sort((a, b) => a - b)
            .map((size) => ({ x: size, y: fixed + each * size })),
        }))}
        mark={{ name: "this run", x: plan.bottles }}
        showX={(bottles) => count(Math.round(bottles))}
        showY={(cost) => `$${count(Math.round(cost))}`}
        dark={dark}
      />
    </Section>
  );
}
