import { renderToStaticMarkup } from "react-dom/server";
import fc from "fast-check";
import { BarsPicture } from "../../../../src/apps/pane/pictures/bars-picture";
import { LinePicture } from "../../../../src/apps/pane/pictures/line-picture";
import { placed, ticks } from "../../../../src/apps/pane/pictures/scale";

const margins = (
  <LinePicture
    title="Margin against bulk price"
    says="At $2.60 a lb the jug keeps 38 %; at $3.00 it keeps 31 %."
    across="Bulk price, $ a lb"
    up="Margin"
    lines={[
      {
        name: "Jug",
        points: [
          { x: 2.6, y: 0.38 },
          { x: 3, y: 0.31 },
        ],
      },
      {
        name: "Glass",
        points: [
          { x: 2.6, y: 0.44 },
          { x: 3, y: 0.41 },
        ],
      },
    ]}
    level={{ name: "Goal", y: 0.4 }}
    mark={{ name: "Today", x: 2.6 }}
    showX={(x) => x.toFixed(2)}
    showY={(y) => `${(y * 100).toFixed(0)} %`}
    dark={false}
  />
);

test("a picture of lines has a name, says what it shows and gives the same in figures", () => {
  const html = renderToStaticMarkup(margins);
  expect(html).toContain('role="img"');
  expect(html).toContain("<title");
  expect(html.match(/At \$2\.60 a lb the jug keeps 38 %/g)).toHaveLength(2);
  expect(html).toContain("The same in figures");
  for (const cell of ["2.60", "3.00", "38 %", "31 %", "44 %", "41 %"])
    expect(html).toContain(`>${cell}</t`);
  expect(html).not.toMatch(/NaN|Infinity|undefined/);
});

test("nothing is drawn where there is no line to draw", () => {
  expect(
    renderToStaticMarkup(
      <LinePicture
        title="x"
        says="x"
        across="x"
        up="y"
        lines={[{ name: "a", points: [{ x: 1, y: 1 }] }]}
        showX={String}
        showY={String}
        dark
      />,
    ),
  ).toBe("");
});

test("every bar carries its name and figure as text", () => {
  const html = renderToStaticMarkup(
    <BarsPicture
      label="Price an ounce"
      bars={[
        { name: "Pint", value: 1.1, shown: "$1.10" },
        {
          name: "Quart",
          value: 1.2,
          shown: "$1.20",
          remark: "dearer than two pints",
        },
        { name: "Free", value: 0, shown: "$0.00" },
      ]}
      dark={false}
    />,
  );
  for (const text of ["Pint", "$1.20", "dearer than two pints"])
    expect(html).toContain(text);
  expect(html).toContain("width:100%");
  expect(html).toContain("width:0%");
});

test("an axis takes in what it must, in round steps", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
      (low, span) => {
        const marks = ticks(low, low + span);
        const [first = NaN] = marks;
        const last = marks[marks.length - 1] ?? NaN;
        expect(first).toBeLessThanOrEqual(low + span * 1e-6);
        expect(last).toBeGreaterThanOrEqual(low + span - span * 1e-6);
        expect(marks.length).toBeLessThanOrEqual(8);
      },
    ),
  );
  expect(ticks(0.31, 0.44)).toEqual([0.3, 0.35, 0.4, 0.45]);
  expect(placed(5, [0, 10], [0, 100])).toBe(50);
});
