/** The words of a text as the search compares them: without accents, capitals and plural endings. */
export const wordsOf = (text: string): readonly string[] =>
  text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/['’]/g, "")
    .split(/[^\p{L}\p{N}°]+/u)
    .filter(Boolean)
    .map(singular);

function singular(word: string): string {
  if (word.length < 4 || /(ss|us|is)$/.test(word)) return word;
  if (/ies$/.test(word)) return `${word.slice(0, -3)}y`;
  if (/(x|ch|sh|ss)es$/.test(word)) return word.slice(0, -2);
  return word.replace(/s$/, "");
}
