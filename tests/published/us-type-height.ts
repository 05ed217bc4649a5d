/**
 * 21 CFR 102.28 and 16 CFR 500.21 as read: least type height in inches by the area of the panel in square inches, up to and
 * including. The larger steps of 21 CFR 101.7(i) were not read and stand in no published check.
 */
export const usTypeHeights = [
  { over: 0, upTo: 5, height: 0.0625 },
  { over: 5, upTo: 25, height: 0.125 },
] as const;
