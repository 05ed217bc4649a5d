import {
  createDarkTheme,
  createLightTheme,
  type BrandVariants,
  type Theme,
} from "@fluentui/react-components";

/** From bark to sugar: the one accent of the house. */
const maple: BrandVariants = {
  10: "#120804",
  20: "#26130a",
  30: "#3b1d0f",
  40: "#4b2612",
  50: "#5a2e15",
  60: "#6a3819",
  70: "#7a411d",
  80: "#8a4b22",
  90: "#a8622f",
  100: "#d08a52",
  110: "#d89a66",
  120: "#e0ab7c",
  130: "#e8bd95",
  140: "#efcfae",
  150: "#f5e0c9",
  160: "#fbf1e5",
};

const fonts = {
  fontFamilyBase:
    '"Segoe UI Variable Text", "Segoe UI", "Source Sans 3", "Liberation Sans", Arial, sans-serif',
  fontFamilyNumeric:
    '"Segoe UI Variable Text", "Segoe UI", "Source Sans 3", "Liberation Sans", Arial, sans-serif',
};

/** For headings and the figures people look for first. */
export const serif =
  '"Iowan Old Style", "Palatino Linotype", Palatino, "Book Antiqua", Georgia, "Liberation Serif", serif';

export const lightTheme: Theme = {
  ...createLightTheme(maple),
  ...fonts,
  colorNeutralBackground1: "#fffdf8",
  colorNeutralBackground1Hover: "#f7efe2",
  colorNeutralBackground1Pressed: "#f0e4d2",
  colorNeutralBackground1Selected: "#f2e7d6",
  colorNeutralBackground2: "#faf4ea",
  colorNeutralBackground3: "#f4ebdc",
  colorSubtleBackgroundHover: "#f4ebdc",
  colorNeutralForeground1: "#2b2119",
  colorNeutralForeground2: "#4a3c30",
  colorNeutralForeground3: "#62544a",
  colorNeutralForeground4: "#6b5d51",
  colorNeutralStroke1: "#cdbda9",
  colorNeutralStroke2: "#e0d3c2",
  colorNeutralStrokeAccessible: "#7a6858",
};

export const darkTheme: Theme = {
  ...createDarkTheme(maple),
  ...fonts,
  colorNeutralBackground1: "#201913",
  colorNeutralBackground1Hover: "#2f261e",
  colorNeutralBackground1Pressed: "#17110d",
  colorNeutralBackground1Selected: "#342a21",
  colorNeutralBackground2: "#1a1410",
  colorNeutralBackground3: "#2a2119",
  colorSubtleBackgroundHover: "#2f261e",
  colorNeutralForeground1: "#f6ede2",
  colorNeutralForeground2: "#dccdbc",
  colorNeutralForeground3: "#bfae9b",
  colorNeutralForeground4: "#b3a28f",
  colorNeutralStroke1: "#5e4f42",
  colorNeutralStroke2: "#453a30",
  colorNeutralStrokeAccessible: "#a8957f",
};
