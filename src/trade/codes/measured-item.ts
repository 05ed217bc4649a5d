import { unusable } from "../../measures/cannot-answer";
import { type CodeElement, soldItem } from "./gs1-elements";

/** The 14 digits of goods sold by measured weight. Refuses (#VALUE!) a wrong length or check digit, and one that does not begin with 9. */
export function measuredItem(item: string): CodeElement {
  const element = soldItem(item);
  if (!element.value.startsWith("9"))
    throw unusable(
      `the item number: "${item}" begins with ${element.value.charAt(0)}; goods sold by measured weight have a number that begins with 9`,
    );
  return element;
}
