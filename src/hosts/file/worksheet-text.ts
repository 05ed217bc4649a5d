/** Text as workbook parts store it: characters XML cannot hold are written `_xHHHH_` (ECMA-376 part 1, ST_Xstring). */
export const textInFile = (text: string): string =>
  text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
    .replace(unwritable, (character) => hexForm(character));

/** As `textInFile`, for an attribute, where a plain line break would be read as a space. */
export const textInAttribute = (text: string): string =>
  textInFile(text).replace(/[\t\n\r]/g, (character) => hexForm(character));

/** The reverse of both. */
export const textFromFile = (text: string): string =>
  text.includes("_x")
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, hex: string) =>
        String.fromCharCode(parseInt(hex, 16)),
      )
    : text;

const unwritable =
  // eslint-disable-next-line no-control-regex -- control characters are what it looks for
  /[\u0000-\u0008\u000B-\u000D\u000E-\u001F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

const hexForm = (character: string): string =>
  `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`;
