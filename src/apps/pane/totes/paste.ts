import type {
  CheckedLine,
  CheckedPaste,
} from "../../../book/tickets/check-tickets";
import type { ReadyTicket } from "../../../book/tickets/check-ticket";

/** What of a paste can be posted: the fine lines, and those whose reading somebody has said is right. */
export function postable(
  { lines }: CheckedPaste,
  accepted: ReadonlySet<string>,
): readonly (CheckedLine & { readonly ready: ReadyTicket })[] {
  return lines.flatMap((line) =>
    line.ready && (line.verdict === "fine" || accepted.has(line.text))
      ? [{ ...line, ready: line.ready }]
      : [],
  );
}

/** The paste without the lines that were posted; when no ticket is left, nothing is. */
export function leftOver(
  text: string,
  { lines }: CheckedPaste,
  posted: readonly CheckedLine[],
): string {
  if (posted.length === lines.length) return "";
  const gone = new Set(posted.map(({ line }) => line));
  return text
    .replace(/\r\n?/g, "\n")
    .split("\n")
    .filter((_, i) => !gone.has(i))
    .join("\n");
}

/** "4 fine, 2 to look at, 6 refused". */
export function countWords({ lines }: CheckedPaste): string {
  const count = (verdict: CheckedLine["verdict"]): number =>
    lines.filter((line) => line.verdict === verdict).length;
  return (
    [
      [count("fine"), "fine"],
      [count("asked"), "to look at"],
      [count("refused"), "refused"],
    ] as const
  )
    .filter(([number]) => number > 0)
    .map(([number, words]) => `${number} ${words}`)
    .join(", ");
}
