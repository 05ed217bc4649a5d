import type { JobGroup } from "./job";

export const toteJobs: readonly JobGroup[] = [
  {
    title: "Totes, contracts and money owed",
    jobs: [
      { question: "What is in a tote?", by: "TOTE_NET" },
      {
        question: "How many gallons are in a tote?",
        cells: [
          ["Gross, lb", 3052],
          ["Tare, lb", 140],
          ["Brix", 66.9],
        ],
        formula: "=SYRUP.VOLUME_OF(SYRUP.TOTE_NET(B2, B3), B4)",
        gives: 262.91,
        unit: "gal at 68 °F",
        within: 0.06,
        source: "hand arithmetic with 11.0759 lb/gal: 2,912 ÷ 11.0759",
      },
      { question: "What is a tote billed at?", by: "SALE_AMOUNT" },
      { question: "What is left of a contract?", by: "CONTRACT_LEFT" },
      {
        question: "How many totes are still to go?",
        cells: [
          ["Contract, lb", 40_000],
          ["In a usual tote, lb", 2912],
          ["Shipped, lb", 11_600],
          ["Shipped, lb", 11_648],
        ],
        formula: "=ROUNDUP(SYRUP.CONTRACT_LEFT(B2, B4:B5)/B3, 0)",
        gives: 6,
        unit: "totes",
        source: "hand arithmetic: 16,752 ÷ 2,912 = 5.75",
      },
      {
        question: "Is a load dense enough for its contract?",
        cells: [
          ["Lot", "lb", "Brix"],
          ["L-03", 2000, 65.8],
          ["L-07", 3000, 66.4],
          ["At least", null, 66],
        ],
        formula:
          '=IF(SYRUP.BLEND_BRIX(B3:B4, C3:C4)>=C5, "dense enough", "too thin")',
        gives: "dense enough",
        unit: "",
        source:
          "hand arithmetic: (2,000 × 65.8 + 3,000 × 66.4) ÷ 5,000 = 66.16",
      },
      { question: "How late is a payment?", by: "DAYS_LATE" },
      { question: "In which band of age is an invoice?", by: "AGE_BAND" },
      {
        question: "What is our weight against theirs worth?",
        cells: [
          ["Our net, lb", 2912],
          ["Their net, lb", 2892],
          ["Price per lb", 2.45],
          ["Allowed", 0.005],
        ],
        formula: '=IF(ABS(B2-B3)<=B5*B2, "within the allowed", (B2-B3)*B4)',
        gives: 49,
        unit: "",
        source: "hand arithmetic: 20 lb is 0.69 %, × 2.45",
      },
      {
        question: "What deposits are out?",
        cells: [
          ["Totes out", 42],
          ["Totes back", 35],
          ["Deposit each", 150],
        ],
        formula: "=(B2-B3)*B4",
        gives: 1050,
        unit: "",
        source: "hand arithmetic: 7 × 150",
      },
      {
        question: "How many totes go on a truck?",
        cells: [
          ["Places on the floor", 20],
          ["Truck may carry, lb", 44_000],
          ["Gross of a tote, lb", 3052],
        ],
        formula: "=MIN(B2, INT(B3/B4))",
        gives: 14,
        unit: "totes",
        source: "hand arithmetic: 44,000 ÷ 3,052 = 14.4: the weight binds",
      },
      {
        question: "What does a pound cost delivered?",
        cells: [
          ["Net, lb", 40_000],
          ["Price of the load", 96_000],
          ["Freight", 2000],
        ],
        formula: "=SYRUP.LANDED_PRICE(B2, B3, B4)",
        gives: 2.45,
        unit: "per lb",
        source: "hand arithmetic: 98,000 ÷ 40,000",
      },
      { question: "Where did a lot go, to the pound?", by: "MASS_BALANCE" },
      { question: "What is a lot in, and who has it?", by: "TRACE" },
      {
        question: "Do the next pounds earn more in bottles or in totes?",
        cells: [
          ["Price of a bottle", 8],
          ["Its cost without syrup", 3.2],
          ["mL in each", 250],
          ["Brix", 66.9],
          ["Lost on the way", 0.02],
          ["A tote pays per lb", 2.6],
        ],
        formula:
          '=IF((B2-B3)/SYRUP.SYRUP_PER_BOTTLE(B4, B5, B6)>B7, "bottles", "totes")',
        gives: "bottles",
        unit: "",
        source: "hand arithmetic: 4.80 ÷ 0.746 lb = 6.43 a pound",
      },
    ],
  },
  {
    title: "Years, kilograms and two moneys",
    jobs: [
      {
        question: "How much of a bottle's rise since last year is syrup?",
        cells: [
          ["mL in each", 250],
          ["Brix", 66.9],
          ["Lost on the way", 0.02],
          ["Per lb last year", 2.17],
          ["Per lb this year", 2.42],
        ],
        formula: "=SYRUP.SYRUP_PER_BOTTLE(B2, B3, B4)*(B6-B5)",
        gives: 0.1866,
        unit: "a bottle",
        within: 0.0001,
        source: "hand arithmetic: 0.746415 lb × 0.25",
      },
      {
        question: "What is it in litres, kilograms and °C?",
        cells: [
          ["Litres", 1000],
          ["Brix", 66.9],
        ],
        formula: '=SYRUP.WEIGHT_OF(B2&" L", B3, "20 °C", "kg")',
        gives: 1327.2,
        unit: "kg",
        within: 0.3,
        source:
          "hand arithmetic with 11.0759 lb/gal: × 0.45359237 ÷ 3.785411784",
      },
      {
        question:
          "What is an amount in the other money, at its own day's rate?",
        cells: [
          ["Amount in CAD", 11_822.06],
          ["Day", "2026-11-25"],
          ["Money", "Valid from", "USD for one"],
          ["CAD", "2026-10-05", 0.73],
          ["CAD", "2026-11-14", 0.72],
        ],
        formula: '=ROUND(B2*SYRUP.PRICE_ON("CAD", B3, A5:C6), 2)',
        gives: 8511.88,
        unit: "USD",
        source: "hand arithmetic: 11,822.06 × 0.72",
      },
    ],
  },
];
