import type { JobGroup } from "./job";

export const costingJobs: readonly JobGroup[] = [
  {
    title: "Materials and freight",
    jobs: [
      { question: "What does a piece cost at my quantity?", by: "BREAK_PRICE" },
      { question: "Do I buy up to the next break?", by: "BEST_BUY" },
      {
        question:
          "What is tied up in labels left over from one customer's job?",
        cells: [
          ["Least order", 2500],
          ["Bottles", 1200],
          ["Labels per bottle", 1],
          ["Spoiled", 0.04],
          ["Price each", 0.14],
        ],
        formula: "=MAX(0, B2-SYRUP.PIECES_TO_DRAW(B3, B4, B5))*B6",
        gives: 175,
        unit: "",
        source: "hand arithmetic: 1,250 are used, 1,250 are left, × 0.14",
      },
      {
        question: "What does a bottle cost with its freight?",
        cells: [
          ["Bottles ordered", 2016],
          ["Freight of the order", 252],
          ["From", "Price each"],
          [504, 1.42],
          [2016, 1.21],
        ],
        formula: "=SYRUP.BREAK_PRICE(B2, A5:B6)+B3/B2",
        gives: 1.335,
        unit: "each",
        source: "hand arithmetic: 1.21 + 252 ÷ 2,016",
      },
      {
        question: "How many pieces do I draw so that enough are left?",
        by: "PIECES_TO_DRAW",
      },
      {
        question: "What does a bottle carry of plates and artwork?",
        cells: [
          ["Plates and artwork", 450],
          ["Bottles they will serve", 3000],
        ],
        formula: "=B2/B3",
        gives: 0.15,
        unit: "a bottle",
        source: "hand arithmetic: 450 ÷ 3,000",
      },
      { question: "What does a part cost on a day?", by: "PRICE_ON" },
      {
        question: "By how much has a part's price moved?",
        cells: [
          ["Part", "BTL-250"],
          ["Then", "2026-02-01"],
          ["Now", "2026-11-25"],
          ["Part", "Valid from", "Price"],
          ["BTL-250", "2026-01-01", 1.25],
          ["BTL-250", "2026-10-05", 1.35],
        ],
        formula:
          "=SYRUP.PRICE_ON(B2, B4, A6:C7)/SYRUP.PRICE_ON(B2, B3, A6:C7)-1",
        gives: 0.08,
        unit: "as a share",
        source: "hand arithmetic: 1.35 ÷ 1.25",
      },
    ],
  },
  {
    title: "Wages, heat and yearly bills",
    jobs: [
      { question: "What does an hour of work really cost?", by: "LOADED_WAGE" },
      { question: "What work is in a bottle?", by: "LABOR_PER_BOTTLE" },
      {
        question: "What work is in a bottle, from the bare wage?",
        cells: [
          ["Crew", 4],
          ["Wage per hour", 20],
          ["Payroll add-ons", 0.2],
          ["Paid but not working", 0.04],
          ["Bottles", 1000],
          ["Bottles an hour", 500],
          ["Set-up, min", 30],
          ["Clean-down, min", 30],
        ],
        formula:
          "=SYRUP.LABOR_PER_BOTTLE(B2*SYRUP.LOADED_WAGE(B3, B4, B5), B6, B7, B8, B9)",
        gives: 0.3,
        unit: "a bottle",
        source: "hand arithmetic: 4 × 25 = 100 an hour for 3 h ÷ 1,000",
      },
      { question: "What heat does a batch take?", by: "HEAT_ENERGY" },
      { question: "How much fuel is that?", by: "FUEL_FOR_HEAT" },
      {
        question: "What does it cost to heat a kettle and keep it hot?",
        cells: [
          ["Gallons", 100],
          ["Brix", 66],
          ["From, °F", 62],
          ["To, °F", 187],
          ["BTU an hour while it waits", 20_000],
          ["Hours it waits", 2],
          ["Efficiency", 0.6],
          ["Propane per gal", 2.5],
        ],
        formula:
          '=SYRUP.FUEL_FOR_HEAT(SYRUP.HEAT_ENERGY(SYRUP.WEIGHT_OF(B2, B3), B3, B4, B5)+B6*B7, "propane", B8)*B9',
        gives: 6.03,
        unit: "",
        within: 0.18,
        source:
          "hand arithmetic: 1,103 lb × 125 °F × 0.666 BTU/lb·°F + 40,000 BTU, ÷ 60 % ÷ 91,500 × 2.50; the heat is known to ±3 %",
      },
      {
        question: "What does a change-over put on each bottle?",
        cells: [
          ["Minutes", 60],
          ["Crew per hour", 72],
          ["Syrup rinsed out, lb", 12],
          ["Syrup per lb", 2.4],
          ["Chemicals and water", 9.2],
          ["Bottles", 1000],
        ],
        formula: "=(B2/60*B3+B4*B5+B6)/B7",
        gives: 0.11,
        unit: "a bottle",
        source: "hand arithmetic: (72 + 28.80 + 9.20) ÷ 1,000",
      },
      {
        question: "How is a yearly bill shared to the cent?",
        by: "ALLOCATE",
      },
      {
        question: "Do the shares of a bill add up?",
        cells: [
          ["Bottling", 0.6],
          ["Totes", 0.25],
          ["Barrels", 0.08],
        ],
        formula:
          '=IF(ABS(SUM(B2:B4)-1)<=0.001, "adds up", TEXT(1-SUM(B2:B4), "0 %")&" is missing")',
        gives: "7 % is missing",
        unit: "",
        source: "hand arithmetic: 60 + 25 + 8 = 93",
      },
      {
        question: "What does an hour on a machine cost?",
        cells: [
          ["Price", 48_000],
          ["Years it lasts", 12],
          ["Upkeep a year", 1000],
          ["Hours used a year", 250],
        ],
        formula: "=(B2/B3+B4)/B5",
        gives: 20,
        unit: "per h",
        source: "hand arithmetic: (4,000 + 1,000) ÷ 250",
      },
    ],
  },
  {
    title: "Stock and the cost of a bottle",
    jobs: [
      {
        question: "What does the syrup of a run cost, three ways?",
        by: "LOT_COST",
      },
      {
        question: "What would it cost more to buy it again today?",
        cells: [
          ["Needed, lb", 1200],
          ["Received", "Left, lb", "Price per lb"],
          ["2026-03-20", 1000, 2.4],
          ["2026-04-08", 500, 2.6],
        ],
        formula:
          '=SYRUP.LOT_COST("replacement", B2, A4:C5)-SYRUP.LOT_COST("oldest first", B2, A4:C5)',
        gives: 200,
        unit: "",
        source: "hand arithmetic: 3,120 − (2,400 + 520)",
      },
      {
        question: "How much syrup goes into a bottle?",
        by: "SYRUP_PER_BOTTLE",
      },
      { question: "What does the syrup in a bottle cost?", by: "SYRUP_COST" },
      {
        question: "What does a bottle cost, with no part forgotten?",
        by: "COST_TOTAL",
      },
      {
        question: "What is the bulk syrup worth?",
        cells: [
          ["Received", "Left, lb", "Price per lb"],
          ["2026-03-20", 1000, 2.4],
          ["2026-04-08", 500, 2.6],
        ],
        formula: '=SYRUP.LOT_COST("average", SUM(B3:B4), A3:C4)',
        gives: 3700,
        unit: "",
        source: "hand arithmetic: 2,400 + 1,300",
      },
      {
        question: "What is a count short of the book, in money?",
        cells: [
          ["By the book, lb", 24_310],
          ["Counted, lb", 24_180],
          ["Price per lb", 2.45],
        ],
        formula: "=SYRUP.MASS_BALANCE(B2, B3)*B4",
        gives: 318.5,
        unit: "",
        source: "hand arithmetic: 130 × 2.45",
      },
    ],
  },
];
