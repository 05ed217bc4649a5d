/** Colours of lines and bars that stand out from the pane's ground, in both themes. */
export const pictureColors = (dark: boolean): readonly string[] =>
  dark
    ? ["#e0ab7c", "#a7c7dd", "#a9cdb0", "#cbb3e6"]
    : ["#8a4b22", "#274a66", "#3f5f4a", "#6d4f8f"];

/** Dashes tell lines apart where colours do not. */
export const dashes: readonly string[] = ["", "7 4", "2 4", "10 3 2 3"];
