import { unusable } from "./cannot-answer";
import { readNumber } from "./read-number";
import { as, type Share } from "./quantity";

/** Reads a share: 0.35, or the text "35 %". A number above 1 is refused (#VALUE!) with the reading it would have had. */
export function readShare(raw: number | string, name: string): Share {
  if (typeof raw === "string") {
    const percent = /^(.*?)\s*%$/.exec(raw.trim());
    if (percent) return as<Share>(readNumber(percent[1] ?? "", name) / 100);
  }
  const value = typeof raw === "number" ? raw : readNumber(raw, name);
  if (value > 1) {
    throw unusable(
      `${name}: ${plain(value)} reads as ${plain(value * 100)} %; type ${plain(value)} % or ${plain(value / 100)}`,
    );
  }
  return as<Share>(value);
}

/**
 * Reads a figure stated in per cent: 75, or the text "75 %". A number between 0 and 1 is refused (#VALUE!): it may be a
 * cell formatted as per cent, where 0.75 is meant as 75.
 */
export function readPercent(raw: number | string, name: string): number {
  if (typeof raw === "string") {
    const percent = /^(.*?)\s*%$/.exec(raw.trim());
    if (percent) return readNumber(percent[1] ?? "", name);
  }
  const value = typeof raw === "number" ? raw : readNumber(raw, name);
  if (value > 0 && value <= 1) {
    throw unusable(
      `${name}: ${plain(value)} could be ${plain(value)} % or ${plain(value * 100)} %; type "${plain(value)} %" or ${plain(value * 100)}`,
    );
  }
  return value;
}

const plain = (value: number): string => String(Number(value.toPrecision(12)));
