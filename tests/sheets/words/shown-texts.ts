import type { Contents } from "../../../src/book/contents";
import {
  type Live,
  liveSheets,
} from "../../../src/sheets/handover/asked-sheets";
import { figuresOf } from "../../../src/sheets/handover/figures";
import type { Asked } from "../../../src/sheets/handover/read-asked";
import type { SheetToCopy } from "../../../src/sheets/handover/sheet-to-copy";
import { topicOf } from "../../../src/sheets/handover/topics";
import type { Block } from "../../../src/sheets/model";
import type { Workbook } from "../../../src/sheets/workbook";

/** What sheets of every kind may show to anybody, whatever the book holds: their own texts and those in their formulas. */
export interface ShownTexts {
  readonly layout: ReadonlySet<string>;
  readonly literals: ReadonlySet<string>;
}

/** Every sheet that can be handed over of a book: each product's costing and quote, the price list, each buyer's account. */
export function everySheet(contents: readonly Contents[]): Live {
  const column = (table: string, heading: string): readonly string[] => {
    const found = contents.find(({ name }) => name === table);
    const at = found?.headings.indexOf(heading) ?? -1;
    return [...new Set(found?.rows.map((row) => String(row[at] ?? "")))];
  };
  const asked: readonly Asked[] = [
    ...column("Products", "Product").flatMap((of): readonly Asked[] => [
      { kind: "costing", of },
      { kind: "quote", of },
    ]),
    { kind: "prices" },
    ...column("Invoices", "Customer").map((of): Asked => ({
      kind: "totes",
      of,
    })),
  ];
  return liveSheets(contents, asked, { bottles: [300, 600] });
}

export function shownTexts(
  sheets: readonly Pick<SheetToCopy, "kind" | "placed">[],
): ShownTexts {
  const layout = new Set<string>();
  const literals = new Set<string>();
  for (const { kind, placed } of sheets) {
    const isShown = (name: string): boolean =>
      name === "title" || topicOf(kind, name) !== undefined;
    for (const block of placed.description.blocks)
      for (const text of textsOf(block, isShown)) layout.add(text);
    for (const { title, says, unit, series } of placed.description.charts ?? [])
      for (const text of [title, says, unit, ...series.map((s) => s.name)])
        if (text !== undefined) layout.add(text);
    for (const { name, content } of figuresOf(placed)) {
      if (!isShown(name) || typeof content !== "object") continue;
      for (const one of [content.formula, content.portable ?? ""])
        for (const [, text = ""] of one.matchAll(/"((?:[^"]|"")*)"/g))
          literals.add(text);
    }
  }
  return { layout, literals };
}

/** The texts of what is shown of a block, its title among them; a block of which nothing is shown has none. */
function textsOf(
  block: Block,
  isShown: (name: string) => boolean,
): readonly string[] {
  const own = (): readonly (string | undefined)[] => {
    switch (block.kind) {
      // The title is a figure; notes are written anew for every copy.
      case "title":
      case "notes":
        return [];
      case "lines":
        return block.lines
          .filter(({ name }) => isShown(name))
          .flatMap(({ label, unit, hint, ruleSays }) => [
            label,
            unit,
            hint,
            ruleSays,
          ]);
      case "table":
        return [
          ...block.columns
            .filter(({ name }) => isShown(`${block.name}.${name}`))
            .map(({ label }) => label),
          ...(block.total?.columns.some((name) =>
            isShown(`${block.name}.${name}.total`),
          )
            ? [block.total.label]
            : []),
        ];
      case "comparison":
        return block.lines
          .filter(({ name }) => isShown(`${block.name}.${name}`))
          .flatMap(({ label, unit }) => [label, unit]);
      case "matrix": {
        const cell = (row: string, column: string): boolean =>
          isShown(`${block.name}.${row}.${column}`);
        return [
          ...block.rows
            .filter((row) => block.columns.some((c) => cell(row.name, c.name)))
            .map(({ label }) => label),
          ...block.columns
            .filter((c) => block.rows.some((row) => cell(row.name, c.name)))
            .map(({ label }) => label),
        ];
      }
    }
  };
  const texts = own().filter(
    (text): text is string => text !== undefined && text !== "",
  );
  return texts.length > 0 && "title" in block && block.title !== ""
    ? [block.title, ...texts]
    : texts;
}

/** Every text of a finished workbook that a person may see, with the place it stands in. */
export const textsIn = ({
  title,
  sheets,
}: Workbook): readonly { readonly where: string; readonly text: string }[] => [
  { where: "title of the file", text: title },
  ...sheets.flatMap(({ name, cells, validations, charts, print, tables }) =>
    [
      name,
      print?.foot,
      ...cells.flatMap(({ value, note }) => [
        typeof value === "string" ? value : undefined,
        note,
      ]),
      ...tables.flatMap(({ columns }) => columns.map((one) => one.heading)),
      ...validations.flatMap(({ message, rule }) => [
        message,
        ...(rule.kind === "list" ? rule.choices : []),
      ]),
      ...(charts ?? []).flatMap((chart) => [
        chart.title,
        chart.says,
        chart.unit,
        ...chart.series.map((one) => one.name),
      ]),
    ].flatMap((text) =>
      text === undefined || text === "" ? [] : [{ where: name, text }],
    ),
  ),
];

/** The texts in quotes in a workbook's formulas. */
export const literalsIn = ({
  sheets,
}: Workbook): readonly { readonly where: string; readonly text: string }[] =>
  sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ formula = "" }) =>
      [...formula.matchAll(/"((?:[^"]|"")*)"/g)].map(([, text = ""]) => ({
        where: name,
        text: text.replace(/""/g, '"'),
      })),
    ),
  );
