/** What Excel is told about the add-in. Both manifests are made from this; addresses are relative to `base`. */
export interface ManifestSource {
  /** The add-in-only manifest's own GUID. It never changes: Excel knows the add-in by it. */
  readonly id: string;
  /** The unified manifest's GUID. A second one, so that one machine never mistakes the two for one another. */
  readonly unifiedId: string;
  /** Three numbers, as in package.json. */
  readonly version: string;
  readonly provider: string;
  readonly locale: string;
  readonly title: string;
  readonly about: string;
  /** What the button says and what its tip explains. */
  readonly button: { readonly label: string; readonly tip: string };
  readonly accent: string;
  /** What stands before the dot in `=SYRUP.DENSITY(66.9)`. */
  readonly namespace: string;
  /** Where the built files are served; https, with a slash at the end. */
  readonly base: string;
  /** The one page of the shared runtime: it holds the functions and the pane. */
  readonly page: string;
  readonly script: string;
  readonly metadata: string;
  /** For people: what this is, how it is installed, what it keeps. */
  readonly front: string;
  readonly icon: (pixels: IconSize) => string;
  readonly requires: readonly RequirementSet[];
}

export interface RequirementSet {
  readonly set: string;
  readonly version: string;
}

/** Ribbon 16, 32, 80; lists 32 and 64; 128 for lists on dense screens. */
export const iconSizes = [16, 32, 64, 80, 128] as const;
export type IconSize = (typeof iconSizes)[number];

export const manifestSource: ManifestSource = {
  id: "6304c9fd-fbed-4a6f-943f-9777281a8bb3",
  unifiedId: "d82b3656-e842-4ff7-9080-f179d0309431",
  version: "0.1.0",
  provider: "Tare & Tally contributors",
  locale: "en-US",
  title: "Tare & Tally",
  about:
    "Worksheet functions and costing for the office of a maple-syrup packing farm.",
  button: {
    label: "Tare & Tally",
    tip: "Opens the pane: what a bottle costs, what to charge, and why a cell shows what it shows.",
  },
  accent: "#8a4b22",
  namespace: "SYRUP",
  base: "https://localhost:3443/",
  page: "taskpane.html",
  script: "functions.js",
  metadata: "functions.json",
  front: "index.html",
  icon: (pixels) => `assets/icon-${pixels}.png`,
  // As low as the code allows: what newer Excel adds is asked for while running.
  requires: [
    { set: "SharedRuntime", version: "1.1" },
    { set: "CustomFunctionsRuntime", version: "1.1" },
  ],
};
