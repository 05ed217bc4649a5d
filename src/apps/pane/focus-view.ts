/** Where the keyboard goes when what it stood on is gone. */
export const VIEW_ID = "pane-view";

/** Back to the view: a write may hand the keyboard to the sheet, or take away the button that was pressed. */
export const focusView = (): void =>
  document.getElementById(VIEW_ID)?.focus({ preventScroll: true });
