import { unusable } from "../../measures/cannot-answer";
import { as, type Millimetres } from "../../measures/quantity";
import { canadaTypeHeights } from "../../standards/canada-type-height";

/**
 * Least height of the numerals of the net quantity on a principal display surface of so many cm². Refuses (#VALUE!) no
 * surface. Source: canadaTypeHeight, from memory.
 */
export function canadaTypeHeight(surface: number): Millimetres {
  if (!(surface > 0))
    throw unusable(
      `surface: ${surface} must be more than 0 cm², the principal display surface of the label`,
    );
  const step = canadaTypeHeights.find(({ upTo }) => surface <= upTo);
  if (!step) throw new Error("The last step is for surfaces of any size");
  return as<Millimetres>(step.height);
}
