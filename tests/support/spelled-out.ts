import { strFromU8, unzipSync } from "fflate";

/**
 * A package read with no code of ours but the unzipping: the text of every part, as it stands, with the codes for signs
 * taken off, and with its tags taken out so that what is cut into runs reads together.
 */
export const spelledOut = (bytes: Uint8Array): readonly string[] =>
  Object.entries(unzipSync(bytes)).flatMap(([name, part]) => {
    const raw = strFromU8(part);
    const wide = Buffer.from(part).toString("utf16le");
    return [
      raw,
      wide,
      raw.replace(/<[^>]*>/g, ""),
      raw.replace(/<[^>]*>/g, " "),
    ]
      .flatMap((text) => [text, signs(text)])
      .map((text) => `${name} ${text}`);
  });

const signs = (text: string): string =>
  text
    .replace(/%([0-9A-F]{2})/gi, (_, hex: string) =>
      String.fromCharCode(parseInt(hex, 16)),
    )
    .replace(/&#x([0-9a-f]+);/gi, (_, hex: string) =>
      String.fromCodePoint(parseInt(hex, 16)),
    )
    .replace(/&#(\d+);/g, (_, code: string) =>
      String.fromCodePoint(Number(code)),
    )
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&")
    .replace(/_x([0-9A-F]{4})_/gi, (_, hex: string) =>
      String.fromCharCode(parseInt(hex, 16)),
    );

/** Which of the words stand in one of the texts, whatever their case. */
export function wordsFound(
  words: readonly string[],
  texts: readonly string[],
): readonly string[] {
  const all = texts.join("\n").toLowerCase();
  return words.filter((word) => all.includes(word.toLowerCase()));
}

/** Which of the figures stand in one of the texts: in full, rounded to no fewer than five digits, in hundredths, grouped or with a comma. */
export function figuresFound(
  figures: readonly number[],
  texts: readonly string[],
): readonly number[] {
  const found = new Set<string>();
  for (const text of texts)
    for (const [run] of text.matchAll(/\d[\d.,'\u00a0\u202f]*(?:e[+-]?\d+)?/gi))
      for (const reading of [
        run.replace(/[,'\u00a0\u202f]/g, ""),
        run.replace(/[.'\u00a0\u202f]/g, "").replace(",", "."),
      ])
        if (Number.isFinite(Number(reading)))
          found.add(Number(reading).toPrecision(12));
  return figures.filter((figure) =>
    [figure, figure * 100].some((value) =>
      [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].some((decimals) => {
        const rounded = Number(value.toFixed(decimals));
        const digits = String(rounded).replace(/^0\.0*|\D/g, "").length;
        return (
          digits >=
            Math.min(5, String(value).replace(/^0\.0*|\D/g, "").length) &&
          found.has(rounded.toPrecision(12))
        );
      }),
    ),
  );
}
