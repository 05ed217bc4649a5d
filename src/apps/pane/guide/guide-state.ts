import type { FillIn } from "./fill-in";

/** Where a person is in the guide; it stays while they look at another view or at the sheet. */
export interface GuideState {
  readonly words: string;
  /** The name of the function whose page is open. */
  readonly open: string | undefined;
  /** What was filled in, by function. */
  readonly fillIns: Readonly<Record<string, FillIn>>;
}

export const startOfGuide: GuideState = {
  words: "",
  open: undefined,
  fillIns: {},
};
