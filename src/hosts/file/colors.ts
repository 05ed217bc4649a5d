import { resolveThemeColor, type CellStyle } from "hucre/xlsx";

type FileColor = NonNullable<NonNullable<CellStyle["font"]>["color"]>;

/** `#rrggbb` of a colour in a file, or undefined where the file leaves it to the program (automatic). */
export function colorFromFile(
  color: FileColor | undefined,
  theme: readonly string[],
): string | undefined {
  if (!color) return undefined;
  if (color.rgb !== undefined) return `#${color.rgb.slice(-6).toLowerCase()}`;
  if (color.theme !== undefined) {
    const slot = themeSlots[color.theme] ?? color.theme;
    return `#${resolveThemeColor([...theme], slot, color.tint).toLowerCase()}`;
  }
  const listed =
    color.indexed === undefined ? undefined : palette[color.indexed % 64];
  // From 64 on the list names the program's own colours for text and ground.
  return listed === undefined || (color.indexed ?? 0) >= 64
    ? undefined
    : `#${listed}`;
}

/** Cells count light before dark; the theme part lists dark before light (ECMA-376 part 1, 18.8.3). */
const themeSlots: Readonly<Record<number, number>> = { 0: 1, 1: 0, 2: 3, 3: 2 };

const first = "000000 ffffff ff0000 00ff00 0000ff ffff00 ff00ff 00ffff";

/** The indexed colours of ECMA-376 part 1, 18.8.27, written from memory. */
const palette: readonly string[] = `${first} ${first}
800000 008000 000080 808000 800080 008080 c0c0c0 808080 9999ff 993366 ffffcc ccffff 660066 ff8080 0066cc ccccff
000080 ff00ff ffff00 00ffff 800080 800000 008080 0000ff 00ccff ccffff ccffcc ffff99 99ccff ff99cc cc99ff ffcc99
3366ff 33cccc 99cc00 ffcc00 ff9900 ff6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333`.split(
  /\s+/,
);
