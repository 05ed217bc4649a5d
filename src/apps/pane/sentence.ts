/** A refusal as a sentence: with a capital, and a full stop where it has none. */
export const sentence = (text: string): string => {
  const capital = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.?!]$/.test(capital) ? capital : `${capital}.`;
};
