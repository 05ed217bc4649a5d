import { functions } from "../../src/functions";
import { answer, explained } from "../../src/functions/answer";
import type { Answer, Definition, Example } from "../../src/functions/define";

const cases = functions.flatMap((definition) =>
  definition.examples.map((example) => ({
    definition,
    example,
    title: `${definition.name}(${JSON.stringify(example.args).slice(1, -1)}) — ${example.source}`,
  })),
);

test.each(cases)(
  "$title",
  ({ definition, example }: { definition: Definition; example: Example }) => {
    const given = [answer(definition, example.args)].flat(2);
    const wanted = [example.gives].flat(2);
    expect(given).toHaveLength(wanted.length);
    for (const [i, want] of wanted.entries())
      agrees(given[i], want, example.within);
    expect(explained(definition, example.args).why).toMatch(/\S/);
  },
);

function agrees(given: unknown, wanted: Answer, within?: number): void {
  if (typeof wanted !== "number") expect(given).toBe(wanted);
  else
    expect(Math.abs((given as number) - wanted)).toBeLessThanOrEqual(
      within ?? Math.abs(wanted) * 1e-9,
    );
}
