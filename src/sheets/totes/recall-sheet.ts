import type { BookTrace, TracedContainer } from "../../book/totes-trace";
import { tracedPounds } from "../../book/totes-trace";
import type { DaySerial } from "../../measures/quantity";
import { isoDate } from "../../measures/read-date";
import { look, type Role } from "../looks";
import { sheetNameOf } from "../named-figures";
import type { Cell, Sheet } from "../workbook";
import { day, weight } from "./columns";

export interface RecallQuestion {
  readonly found: BookTrace;
  readonly asOf: DaySerial;
  /** When somebody began, as a worksheet's day and time. */
  readonly startedAt: number;
}

/** Whom to call and what to find, where traced syrup lies now. */
interface Goal {
  readonly what: string;
  readonly name: string;
  readonly detail: string;
  readonly pounds: number;
  readonly cases: number | undefined;
}

const clock = "yyyy-mm-dd hh:mm";

/**
 * A page to carry a recall, or the exercise of one, through: whom to call, what to find, blanks for the time of the call
 * and the pounds found, and what follows from them. Its pounds are a record of the trace, not formulas into the book.
 */
export function recallSheet({ found, asOf, startedAt }: RecallQuestion): Sheet {
  const page = new Page();
  const goals = goalsOf(found);
  const list = LIST + 2;
  const [lb, lbFound] = [column("D", list, goals), column("G", list, goals)];
  page.put(
    0,
    0,
    "title",
    `Recall list: ${found.name}, by the book of ${isoDate(asOf)}`,
  );
  page.put(
    1,
    0,
    "aside",
    "A list is as complete as the book. Check it against runs and bills of lading; your food-safety authority decides what must be called back.",
  );
  page.heading(3, "How it went", 4);
  page.line(4, "Syrup that left it", tracedPounds(found.total), weight, "lb");
  page.line(5, "Of it on this list or lost", `=${lb.sum}`, weight, "lb");
  page.line(
    6,
    "Not accounted for in the book",
    tracedPounds(found.unexplained),
    weight,
    "lb",
  );
  page.line(7, "Begun", startedAt, clock, "", "input");
  page.line(8, "Last call made", "", clock, "type the date and time", "input");
  page.line(
    9,
    "Minutes it took",
    `=IF(AND(ISNUMBER(B8),ISNUMBER(B9)),ROUND((B9-B8)*1440,0),"")`,
    "0",
    "minutes",
  );
  page.line(
    10,
    "Found",
    `=IF(COUNT(${lbFound.range})=0,"",SUM(${lbFound.range}))`,
    weight,
    "lb",
  );
  page.line(
    11,
    "Of what can be found",
    `=IF(COUNT(${lbFound.range})=0,"",SUM(${lbFound.range})/SUM(${lb.range}))`,
    "0.0%",
    "",
  );
  page.heading(LIST, "Whom to call, what to find", 7);
  page.row(
    LIST + 1,
    ["What", "Which", "Where", "lb", "Cases", "Called at", "Found lb"].map(
      (text) => ["subheading", text],
    ),
  );
  goals.forEach((goal, i) =>
    page.row(list + i, [
      ["label", goal.what],
      ["label", goal.name],
      ["label", goal.detail],
      ["calculated", goal.pounds, weight],
      ["calculated", goal.cases ?? "", "#,##0"],
      ["input", "", clock],
      ["input", "", weight],
    ]),
  );
  const steps = list + Math.max(1, goals.length) + 1;
  page.heading(steps, "Every movement that carried it", 7);
  page.row(
    steps + 1,
    ["From", "To", "Date", "lb", "Share", "Step", ""].map((text) => [
      "subheading",
      text,
    ]),
  );
  found.steps.forEach(({ step, day: on, from, to, weight: moved, share }, i) =>
    page.row(steps + 2 + i, [
      ["label", from],
      ["label", to],
      ["calculated", on, day],
      ["calculated", tracedPounds(moved), weight],
      ["calculated", share, "0.0%"],
      ["calculated", step, "0"],
    ]),
  );
  return {
    name: sheetNameOf("Recall", found.name),
    cells: page.cells,
    tables: [],
    validations: [],
    merges: [],
    widths: { 0: 32, 1: 30, 2: 26, 3: 12, 4: 10, 5: 17, 6: 11 },
    heights: { 0: 26 },
    frozen: { rows: 1, columns: 0 },
    tabColor: "#9c2f1f",
    print: {
      paper: "letter",
      landscape: false,
      fit: "one page wide",
      headings: { first: 0, rows: 1 },
      foot: `Recall list ${found.name}`,
    },
  };
}

/** The row where the list begins. */
const LIST = 13;

function goalsOf({
  direction,
  containers,
  buyers,
}: BookTrace): readonly Goal[] {
  const rests = (container: TracedContainer): number =>
    tracedPounds(direction === "forward" ? container.rests : container.weight);
  return [
    ...(direction === "forward"
      ? buyers.map(({ buyer, weight: pounds, totes }) => ({
          what: "Buyer",
          name: buyer,
          detail: `totes ${totes.join(", ")}`,
          pounds: tracedPounds(pounds),
          cases: undefined,
        }))
      : []),
    ...containers
      .filter(
        (container) =>
          container.kind !== "buyer" &&
          (direction === "back" || rests(container) > 0),
      )
      .map((container) => ({
        what: words[container.kind],
        name: container.name,
        detail: container.run
          ? `${container.run.product}, ${container.run.goodBottles.toLocaleString("en-US")} bottles`
          : "",
        pounds: rests(container),
        cases: container.cases,
      })),
  ];
}

const words = {
  lot: "Lot",
  barrel: "Oak barrel",
  run: "Run",
  tote: "Tote",
  buyer: "Buyer",
  loss: "Lost",
  "season before": "Used in the season before",
  other: "Other",
} as const;

/** The cells of a list's column. */
function column(
  letter: string,
  first: number,
  goals: readonly Goal[],
): { readonly range: string; readonly sum: string } {
  const range = `${letter}${first + 1}:${letter}${first + Math.max(1, goals.length)}`;
  return { range, sum: `SUM(${range})` };
}

type Written = readonly [Role, string | number, string?];

class Page {
  readonly cells: Cell[] = [];

  put(
    row: number,
    at: number,
    role: Role,
    content: string | number,
    format?: string,
  ): void {
    const style = look(role, format);
    const place = { row, column: at, style };
    if (typeof content === "string" && content.startsWith("="))
      this.cells.push({ ...place, formula: content });
    else if (content === "") this.cells.push(place);
    else this.cells.push({ ...place, value: content });
  }

  row(row: number, all: readonly Written[]): void {
    all.forEach(([role, content, format], at) =>
      this.put(row, at, role, content, format),
    );
  }

  heading(row: number, title: string, columns: number): void {
    this.row(
      row,
      Array.from({ length: columns }, (_, i) => [
        "heading",
        i === 0 ? title : "",
      ]),
    );
  }

  line(
    row: number,
    label: string,
    content: string | number,
    format: string,
    unit: string,
    role: Role = "calculated",
  ): void {
    this.row(row, [
      ["label", label],
      [role, content, format],
      ["unit", unit],
    ]);
  }
}
