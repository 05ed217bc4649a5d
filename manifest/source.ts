/** What Excel is told about the add-in. The manifest files are made from this; addresses are relative to `base`. */
export interface ManifestSource {
  readonly id: string;
  readonly version: string;
  readonly provider: string;
  readonly locale: string;
  readonly title: string;
  readonly about: string;
  /** What stands before the dot in `=SYRUP.DENSITY(66.9)`. */
  readonly namespace: string;
  /** Where the built files are served; https, with a slash at the end. */
  readonly base: string;
  readonly page: string;
  readonly script: string;
  readonly metadata: string;
  readonly icons: Readonly<Record<16 | 32 | 64 | 80, string>>;
  readonly requires: readonly {
    readonly set: string;
    readonly version: string;
  }[];
}

export const manifestSource: ManifestSource = {
  id: "6304c9fd-fbed-4a6f-943f-9777281a8bb3",
  version: "0.1.0.0",
  provider: "Tare & Tally contributors",
  locale: "en-US",
  title: "Tare & Tally",
  about:
    "Worksheet functions and costing for the office of a maple-syrup packing farm.",
  namespace: "SYRUP",
  base: "https://localhost:3000/",
  page: "functions.html",
  script: "functions.js",
  metadata: "functions.json",
  icons: {
    16: "assets/icon-16.png",
    32: "assets/icon-32.png",
    64: "assets/icon-64.png",
    80: "assets/icon-80.png",
  },
  requires: [
    { set: "SharedRuntime", version: "1.1" },
    { set: "CustomFunctionsRuntime", version: "1.1" },
  ],
};
