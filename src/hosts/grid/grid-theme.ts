import { defaultTheme } from "@univerjs/themes";

/** Warm neutrals around a maple brown; the browns from 500 on and the greys from 400 on are readable on white. */
export const gridTheme: typeof defaultTheme = {
  ...defaultTheme,
  primary: {
    50: "#fbf5ef",
    100: "#f5e6d6",
    200: "#ebcdb0",
    300: "#dcab82",
    400: "#c68654",
    500: "#97531f",
    600: "#7a3e12",
    700: "#64320e",
    800: "#4f270b",
    900: "#3d1e09",
  },
  gray: {
    50: "#faf8f6",
    100: "#f2eee9",
    200: "#e6dfd7",
    300: "#b5a999",
    400: "#766c60",
    500: "#5d544a",
    600: "#3f3933",
    700: "#322d28",
    800: "#282420",
    900: "#1f1b18",
  },
};
