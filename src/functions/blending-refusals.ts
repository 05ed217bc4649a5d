const lots = [
  ["A-1", 4000, 66, 2.5, 72, "no"],
  ["A-2", 3000, 67, 2.6, 18, "no"],
  ["A-3", 2000, 66.5, 2.7, 80, "yes"],
  ["A-4", 1500, 67, 2.75, 60, null],
] as const;
const unmeasured = [
  ["A-1", 4000, 66, 2.5, 72, "no"],
  ["A-2", 3000, 67, 2.6, null, "no"],
] as const;
const noPounds = [
  ["A-1", 4000, 66, 2.5, 72, "no"],
  ["A-2", null, 67, 2.6, 18, "no"],
] as const;
const halfRow = (
  figures: readonly (readonly number[])[],
): { readonly when: string; readonly args: readonly unknown[] } => ({
  when: "a lot has its figure but no weight",
  args: [[[1200], [null]], figures],
});

/** By function: calls that no limit of an argument refuses by itself. */
export const blendingRefusals = {
  BLEND_BRIX: [
    halfRow([[65.9], [67.1]]),
    {
      when: "a lot has its weight but no Brix",
      args: [
        [[1200], [800]],
        [[65.9], [null]],
      ],
    },
    {
      when: "weights and Brix do not stand side by side",
      args: [[[1200], [800]], [[65.9]]],
    },
    {
      when: "nothing goes in",
      args: [
        [[0], [0]],
        [[65.9], [67.1]],
      ],
    },
  ],
  BLEND_PRICE: [halfRow([[2.5], [2.24]])],
  BLEND_COLOR: [
    halfRow([[72], [18]]),
    {
      when: "no light comes through",
      args: [
        [[1000], [1000]],
        [[72], [0]],
      ],
    },
  ],
  BLEND_PARTNER: [
    { when: "both lots are thinner", args: [1000, 65.9, 66.2, 66.5] },
    { when: "both lots are heavier", args: [1000, 66.9, 66.8, 66.5] },
    { when: "lot B is at the target itself", args: [1000, 65.9, 66.5, 66.5] },
    { when: "both lots are at the target", args: [1000, 66.5, 66.5, 66.5] },
  ],
  BLEND_SHARES: [
    { when: "both lots are thinner", args: [65.9, 66.2, 66.5] },
    { when: "both lots are at the target", args: [66.5, 66.5, 66.5] },
  ],
  BLEND_PLAN: [
    { when: "a row has no pounds", args: [noPounds, 1000, 66] },
    {
      when: "a lot has no transmission though a limit needs it",
      args: [unmeasured, 1000, 66, null, 50],
    },
    { when: "the limits of Brix are swapped", args: [lots, 1000, 67, 66] },
    { when: "there is not so much syrup", args: [lots, 20_000, 66] },
    {
      when: "there is not so much organic syrup",
      args: [lots, 5000, 66, null, null, true],
    },
    { when: "the lots are too thin", args: [lots, 5000, 67.5] },
    { when: "the lots are too heavy", args: [lots, 5000, 64, 65.5] },
    { when: "the lots are too dark", args: [lots, 5000, 66, null, 85] },
    {
      when: "Brix and colour cannot be had together",
      args: [lots, 5000, 66.7, null, 60],
    },
  ],
} as const;
