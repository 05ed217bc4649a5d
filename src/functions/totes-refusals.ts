const mixed = [
  ["2026-03-02", "26-01", "BLEND-1", 600],
  ["2026-03-03", "BLEND-1", "RUN-40", 500],
  ["2026-03-05", "BLEND-1", "RUN-41", 500],
] as const;
const round = [
  ["2026-03-02", "26-01", "KETTLE", 600],
  ["2026-03-02", "KETTLE", "FILLER", 500],
  ["2026-03-02", "FILLER", "KETTLE", 100],
] as const;
const late = [
  ["2026-03-02", "BLEND-1", "RUN-40", 500],
  ["2026-03-03", "26-01", "BLEND-1", 600],
  ["2026-03-05", "BLEND-1", "RUN-41", 500],
] as const;

/** Refused calls of the family, for the pages. */
export const toteRefusals = {
  TOTE_NET: [
    { when: "the two weights are swapped", args: [132, 3044] },
    { when: "the tote is above its plate limit", args: [3310, 132, 3300] },
  ],
  SALE_AMOUNT: [
    {
      when: "a price by the gallon has no Brix",
      args: [2936, 32.2, "per gal"],
    },
  ],
  TRACE: [
    { when: "the lot is in no movement", args: ["26-10", mixed] },
    { when: "nothing has left what is traced", args: ["RUN-40", mixed] },
    {
      when: "nothing has come into what is traced",
      args: ["26-01", mixed, "back"],
    },
    { when: "more is drawn than came in", args: ["26-01", mixed] },
    { when: "a container gives before it is filled", args: ["26-01", late] },
    { when: "syrup goes round within a day", args: ["26-01", round] },
    {
      when: "syrup comes back into the lot",
      args: ["26-01", [...round, ["2026-03-04", "KETTLE", "26-01", 50]]],
    },
  ],
  CHECK_DIGIT: [
    { when: "it is a number, not text", args: [40_000_100_100] },
    { when: "a leading zero is lost", args: ["4000010010"] },
    { when: "a letter stands among the digits", args: ["4000010O100"] },
  ],
  WITH_CHECK_DIGIT: [
    { when: "it is a number, not text", args: [40_000_100_100] },
    { when: "the check digit is there already", args: ["10400001001001"] },
  ],
  CASE_CODE: [
    { when: "the bottle's check digit is wrong", args: ["400001001005"] },
    { when: "a leading zero is lost", args: ["40000100100"] },
    { when: "it is a case's number already", args: ["10400001001001"] },
    { when: "the indicator is 9", args: ["400001001004", 9] },
  ],
  PALLET_CODE: [
    { when: "the prefix is too short", args: ["400", 1234] },
    { when: "the serial is too long", args: ["0400001", 1_234_567_890] },
  ],
} as const;
