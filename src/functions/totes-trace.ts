import { withoutNoise } from "../measures/exact";
import { optional } from "../terms/term";
import { toteTerms as terms } from "../terms/totes";
import { registerOf } from "../trade/totes/movements";
import { type Trace, trace } from "../trade/totes/trace";
import { inPounds } from "./by-weight";
import { defineFunction, type Values } from "./define";
import { figure } from "./wording";

const args = {
  lot: terms.lot,
  movements: terms.movements,
  direction: optional(terms.direction, "forward"),
} as const;

const traceOf = ({ lot, movements, direction }: Values<typeof args>): Trace =>
  trace(
    registerOf(
      movements.map(({ date, from, to, lb }) => ({
        day: date,
        from,
        to,
        weight: lb,
      })),
    ),
    lot,
    direction,
  );

/** Places written out one by one; beyond these the sentence would be longer than the sheet is wide. */
const WRITTEN_OUT = 4;

const blended = [
  ["2026-03-02", "26-01", "BLEND-1", 600],
  ["2026-03-02", "26-02", "BLEND-1", 400],
  ["2026-03-03", "BLEND-1", "RUN-40", 500],
  ["2026-03-04", "26-02", "BLEND-1", 500],
  ["2026-03-05", "BLEND-1", "RUN-41", 500],
] as const;

export const toteTraceFunctions = [
  defineFunction({
    name: "TRACE",
    family: "Totes and codes",
    summary:
      "Every movement that carried syrup of a lot, onward to runs and totes, or back to lots.",
    question: "Where did this lot go, and what is in this run?",
    args,
    gives: {
      about: "the movements that carry the syrup traced",
      unit: "",
      spills: ["Step", "From", "To", "lb", "Share"],
    },
    basis: ["arithmetic", "commonPractice"],
    notes: [
      "Every barrel, blend and tank is a well-mixed pool: a draw carries a share of everything that went in before it and was not drawn yet. Common practice, no source; syrup that lies in layers does not keep to it.",
      "Movements count in order of their dates, those of one day as listed.",
      "Step 1 is out of the lot (forward) or into what is traced (back), step 2 the next movement, the shortest way counted.",
      "lb is the traced part of what was moved. Share is that part of what was moved (forward), or of all that came into what is traced (back).",
      "Forward, what lies at the ends adds up to what left the lot. Back, the shares of step 1 add up to 1, and so do those of the lots nothing came into.",
      "A lot nothing comes into is taken as it is: how much it held is not asked. What a barrel loses stays in its pool unless the loss is a movement of its own.",
      "Less than a billionth of a movement is not listed.",
    ],
    caution:
      "A recall list is as complete as the movements are. Check it against the runs and the bills of lading; your food-safety authority decides what must be called back.",
    examples: [
      {
        args: ["26-01", blended],
        gives: [
          [1, "26-01", "BLEND-1", 600, 1],
          [2, "BLEND-1", "RUN-40", 300, 0.6],
          [2, "BLEND-1", "RUN-41", 150, 0.3],
        ],
        source:
          "hand arithmetic: 600 of 1,000 lb is 60 %; 300 lb are left, with 700 others; half of that pool is drawn",
      },
      {
        args: ["RUN-41", blended, "back"],
        gives: [
          [1, "BLEND-1", "RUN-41", 500, 1],
          [2, "26-01", "BLEND-1", 150, 0.3],
          [2, "26-02", "BLEND-1", 100, 0.2],
          [2, "26-02", "BLEND-1", 250, 0.5],
        ],
        source:
          "hand arithmetic: of 600, 400 and 500 lb a half, a half and nothing went to RUN-40, and half of the rest to RUN-41",
      },
    ],
    noNative:
      "the answer fills as many rows as there are movements to follow, one leading to the next, which one plain formula from before 2019 cannot do",
    compute: (values) =>
      traceOf(values).moves.map(({ step, from, to, weight, share }) => [
        step,
        from,
        to,
        withoutNoise(inPounds(weight)),
        withoutNoise(share),
      ]),
    why: (values) => {
      const { moves, total, ends } = traceOf(values);
      const places = ends
        .slice(0, WRITTEN_OUT)
        .map(({ name, weight }) => `${name} ${figure(inPounds(weight), 7)} lb`);
      const more = ends.length - places.length;
      const listed = [...places, ...(more > 0 ? [`${more} more`] : [])];
      const moved = `${figure(inPounds(total), 7)} lb`;
      return values.direction === "forward"
        ? `${moved} left ${values.lot}, in ${moves.length} movements, and are now in: ${listed.join(" + ")}`
        : `${moved} came into ${values.lot}, in ${moves.length} movements, from: ${listed.join(" + ")}`;
    },
  }),
];
