import type { RoundTrip } from "../returned/copy-file";

export type CopiesPart = "handover" | "returned" | "season" | "binder";

/** What stays chosen while another view is looked at. */
export interface CopiesState {
  readonly part: CopiesPart;
  readonly trip: RoundTrip;
}

export const startOfCopies: CopiesState = { part: "handover", trip: {} };
