import { unusable } from "../../measures/cannot-answer";
import { type SheetKind, sheetKinds } from "./topics";

/** One sheet somebody wants handed over: "costing:P250-LOFT", "prices". */
export interface Asked {
  readonly kind: SheetKind;
  readonly of?: string;
}

/** Reads "costing:P250-LOFT,prices"; refuses (#VALUE!) a word that is no sheet and one twice. */
export function readAsked(written: string): readonly Asked[] {
  const asked = written
    .split(",")
    .map((one) => one.trim())
    .filter((one) => one !== "")
    .map(readOne);
  if (asked.length === 0)
    throw unusable(`--sheets names no sheet; there are ${forms}`);
  const texts = asked.map((one) => askedText(one).toLowerCase());
  const twice = texts.find((text, i) => texts.indexOf(text) !== i);
  if (twice !== undefined) throw unusable(`--sheets names ${twice} twice`);
  return asked;
}

const forms = "costing:PRODUCT, prices, quote:PRODUCT and totes:BUYER";

function readOne(written: string): Asked {
  const [word = "", ...rest] = written.split(":");
  const of = rest.join(":").trim();
  const kind = sheetKinds.find((one) => one === word.trim().toLowerCase());
  if (!kind) throw unusable(`--sheets: "${written}" is none of ${forms}`);
  if (kind === "prices") {
    if (of !== "")
      throw unusable(`--sheets: prices is the whole list and takes no "${of}"`);
    return { kind };
  }
  if (of === "")
    throw unusable(
      `--sheets: "${written}" says not of what; there are ${forms}`,
    );
  return { kind, of };
}

export const askedText = ({ kind, of }: Asked): string =>
  of === undefined ? kind : `${kind}:${of}`;
