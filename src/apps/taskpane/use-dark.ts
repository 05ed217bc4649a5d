import { useEffect, useState } from "react";

/** Dark or light: as Excel is set, or as the machine prefers where Excel does not say. */
export function useDark(): boolean {
  const [dark, setDark] = useState(isDark);
  useEffect(() => {
    const look = (): void => setDark(isDark());
    const query = matchMedia("(prefers-color-scheme: dark)");
    query.addEventListener("change", look);
    // Excel does not tell when its theme changes; whoever changed it comes back to the pane afterwards.
    document.addEventListener("visibilitychange", look);
    addEventListener("focus", look);
    return () => {
      query.removeEventListener("change", look);
      document.removeEventListener("visibilitychange", look);
      removeEventListener("focus", look);
    };
  }, []);
  useEffect(() => {
    document.documentElement.dataset["look"] = dark ? "dark" : "light";
  }, [dark]);
  return dark;
}

function isDark(): boolean {
  const theme = Office.context.officeTheme as Office.OfficeTheme | undefined;
  const background = theme && luminance(theme.bodyBackgroundColor);
  return background === undefined
    ? matchMedia("(prefers-color-scheme: dark)").matches
    : background < 0.5;
}

/** Of a color written "#RRGGBB", from 0 to 1, roughly as the eye weighs it; undefined for anything else. */
function luminance(color: string | undefined): number | undefined {
  const [, red, green, blue] =
    /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(color ?? "") ?? [];
  if (!red || !green || !blue) return undefined;
  const part = (hex: string): number => Number.parseInt(hex, 16) / 255;
  return 0.2126 * part(red) + 0.7152 * part(green) + 0.0722 * part(blue);
}
