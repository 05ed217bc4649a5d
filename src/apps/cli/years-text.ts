import { findingText } from "../../book/finding";
import type { YearsJson } from "./years-answer";

/** Season against season, as a person reads it at a terminal. */
export function yearsText(answer: YearsJson): readonly string[] {
  const told = answer.products.filter(({ change }) => change !== null);
  const untold = answer.products.filter(({ change }) => change === null);
  const names = told[0]?.steps.map(({ name }) => name) ?? [];
  return [
    `Cost of a bottle as it was made, ${answer.against} against ${answer.season}`,
    "Parts, wages and energy are at the book's one list in both seasons.",
    "",
    row("Product", [
      String(answer.against),
      ...names,
      String(answer.season),
      "change",
    ]),
    ...told.map((product) =>
      row(product.product, [
        money(product.before.cost),
        ...product.steps.map(({ change }) => cents(change)),
        money(product.after.cost),
        cents(product.change ?? 0),
      ]),
    ),
    ...untold.map(
      ({ product, needs }) => `${product}: needs ${needs.join(", ")}`,
    ),
    "",
    `Totes of ${answer.season}, by what they left`,
    row("Customer", ["totes", "lb", "sold", "syrup", "left", "of sales"]),
    ...answer.customers.map((one) =>
      row(one.customer, [
        String(one.totes),
        whole(one.pounds),
        `${whole(one.sold)} ${one.currency}`,
        whole(one.syrup),
        whole(one.left),
        one.leftShare === undefined
          ? "–"
          : `${(one.leftShare * 100).toFixed(1)} %`,
      ]),
    ),
    "",
    `Bottles of ${answer.season}, by what they leave at ${answer.earned.channel}`,
    row("Product", ["bottles", "price", "cost", "left"]),
    ...answer.earned.products.map((one) =>
      row(one.product, [
        whole(one.bottles),
        money(one.price ?? null),
        money(one.cost ?? null),
        whole(one.left),
      ]),
    ),
    ...(answer.findings.length === 0
      ? []
      : ["", "Findings", ...answer.findings.map((f) => `- ${findingText(f)}`)]),
  ];
}

const row = (label: string, cells: readonly string[]): string =>
  label.padEnd(22) +
  cells.map((cell) => ` ${cell.padStart(Math.max(11, cell.length))}`).join("");

const whole = (value: number | undefined): string =>
  value === undefined ? "–" : Math.round(value).toLocaleString("en-US");
const money = (value: number | null): string =>
  value === null ? "–" : value.toFixed(4);
const cents = (value: number): string =>
  `${value < 0 ? "−" : "+"}${Math.abs(value * 100).toFixed(1)} ¢`;
