import type { JobGroup } from "./job";

export const buyingJobs: readonly JobGroup[] = [
  {
    title: "Buying and receiving syrup",
    jobs: [
      {
        question: "What does a load of drums weigh, each with its own tare?",
        cells: [
          ["Drum", "Gross, lb", "Tare, lb"],
          ["1", 612, 44],
          ["2", 608, 46],
          ["3", 615.5, 44.5],
        ],
        formula: "=SYRUP.TOTE_NET(SUM(B3:B5), SUM(C3:C5))",
        gives: 1701,
        unit: "lb",
        source: "hand arithmetic: 1,835.5 − 134.5",
      },
      {
        question: "How many gallons is a lot, by its own density?",
        by: "VOLUME_OF",
      },
      {
        question: "What is this reading worth at 68 °F?",
        by: "BRIX_CORRECTED",
      },
      {
        question:
          "What do I pay a grower with a premium and a deduction per pound?",
        cells: [
          ["Net, lb", 2912],
          ["Price of the grade per lb", 2.4],
          ["Premium per lb", 0.25],
          ["Deduction per lb", 0.05],
        ],
        formula: "=ROUND(B2*(B3+B4-B5), 2)",
        gives: 7571.2,
        unit: "",
        source: "hand arithmetic: 2,912 × 2.60",
      },
      {
        question: "What do I pay when the price is for syrup of 66.0 °Bx?",
        cells: [
          ["Net, lb", 2912],
          ["Price per lb at 66.0 °Bx", 2.4],
          ["Brix of the lot", 67.1],
        ],
        formula: '=SYRUP.SALE_AMOUNT(B2, B3, "per lb at 66", B4)',
        gives: 7105.28,
        unit: "",
        source: "hand arithmetic: 2,912 × 2.40 × 67.1 ÷ 66",
      },
      {
        question: "What has this lot cost per pound when it stands here?",
        by: "LANDED_PRICE",
      },
      {
        question: "What does a pound cost once it is filtered?",
        cells: [
          ["Net, lb", 1000],
          ["Paid for the syrup", 2300],
          ["Freight", 70],
          ["Tests", 30],
          ["Lost in filtering", 0.01],
          ["Heel left in the drums, lb", 30],
        ],
        formula:
          "=SYRUP.USABLE_PRICE(SYRUP.LANDED_PRICE(B2, B3, B4, B5), B2, B6, B7)",
        gives: 2.5,
        unit: "per lb",
        source: "hand arithmetic: 2,400 ÷ (1,000 × 99 % − 30)",
      },
      {
        question: "Is this lot of the colour it was sold as?",
        cells: [
          ["Transmission, %", 47],
          ["Sold as", "Amber"],
        ],
        formula:
          '=IF(SYRUP.COLOR_CLASS(B2)=B3, "as sold", SYRUP.COLOR_CLASS(B2)&", not "&B3)',
        gives: "Dark, not Amber",
        unit: "",
        source: "the limits of the grade rules: Amber from 50 %",
      },
      {
        question: "Which of two offers is cheaper for the sugar in it?",
        cells: [
          ["Grower", "Ash Lane", "Upper Fork"],
          ["Net, lb", 5000, 4000],
          ["Asked for it", 12_000, 9520],
          ["Freight", 150, 200],
          ["Brix", 67.3, 65.7],
        ],
        formula:
          "=IF(SYRUP.LANDED_PRICE(B3, B4, B5)/B6<=SYRUP.LANDED_PRICE(C3, C4, C5)/C6, B2, C2)",
        gives: "Ash Lane",
        unit: "",
        source: "hand arithmetic: 2.43 ÷ 67.3 % = 3.611, 2.43 ÷ 65.7 % = 3.699",
      },
      {
        question: "How much must I buy for the season's bottles and totes?",
        cells: [
          ["Bottles planned", 8000],
          ["mL in each", 250],
          ["Brix", 66.9],
          ["Lost on the way", 0.02],
          ["Totes promised, lb", 12_000],
          ["In stock, lb", 3000],
        ],
        formula: "=B2*SYRUP.SYRUP_PER_BOTTLE(B3, B4, B5)+B6-B7",
        gives: 14_971.3,
        unit: "lb",
        within: 0.1,
        source:
          "hand arithmetic with 11.0759 lb/gal: 8,000 × 250 ÷ 3,785.41 × 11.0759 ÷ 98 % = 5,971.3; + 12,000 − 3,000",
      },
    ],
  },
];
