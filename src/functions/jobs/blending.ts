import type { JobGroup } from "./job";

export const blendingJobs: readonly JobGroup[] = [
  {
    title: "Density and blending",
    jobs: [
      {
        question: "How much of the second lot brings the first to a target?",
        by: "BLEND_PARTNER",
      },
      {
        question: "In what shares do two lots make the target?",
        by: "BLEND_SHARES",
      },
      { question: "What Brix does a mix of lots come to?", by: "BLEND_BRIX" },
      { question: "What does a mix of lots cost a pound?", by: "BLEND_PRICE" },
      {
        question: "Which lots make the cheapest mix that keeps to my limits?",
        by: "BLEND_PLAN",
      },
      {
        question: "How much water brings syrup down, or must be boiled off?",
        by: "WATER_FOR_BRIX",
      },
      {
        question: "How many gallons of water is that?",
        cells: [
          ["Syrup, lb", 3000],
          ["Brix", 67.8],
          ["Target", 66.9],
        ],
        formula: "=SYRUP.VOLUME_OF(SYRUP.WATER_FOR_BRIX(B2, B3, B4), 0)",
        gives: 4.85,
        unit: "gal",
        within: 0.005,
        source:
          "hand arithmetic: 3,000 × (67.8 ÷ 66.9 − 1) = 40.36 lb, at 8.32 lb/gal of water",
      },
      {
        question: "What do I give away in gallons packed too dense?",
        cells: [
          ["Gallons", 1000],
          ["Brix", 67.5],
          ["Target", 66.9],
          ["Price per lb", 2.4],
        ],
        formula: "=SYRUP.WEIGHT_OF(B2, B3)*(1-B4/B3)*B5",
        gives: 236.95,
        unit: "",
        within: 0.05,
        source:
          "hand arithmetic with 11.107 lb/gal: 11,107 lb × (1 − 66.9 ÷ 67.5) × 2.40",
      },
      {
        question: "What colour class will a mix fall in?",
        cells: [
          ["Lot", "lb", "Transmission, %"],
          ["Early", 3000, 75],
          ["Late", 1000, 20],
        ],
        formula: "=SYRUP.COLOR_CLASS(SYRUP.BLEND_COLOR(B3:B4, C3:C4))",
        gives: "Amber",
        unit: "",
        source:
          "hand arithmetic: 75^¾ × 20^¼ = 53.9 %; an estimate, test before packing",
      },
      {
        question: "Is every lot that goes into an organic product organic?",
        cells: [
          ["Lot", "Organic"],
          ["L-07", "yes"],
          ["L-09", "yes"],
          ["L-11", null],
        ],
        formula:
          '=IF(COUNTIF(B3:B5, "yes")=ROWS(B3:B5), "organic", "not organic")',
        gives: "not organic",
        unit: "",
        source: "by eye: one lot has no status, and a blank is not organic",
      },
    ],
  },
  {
    title: "Barrels and infusions",
    jobs: [
      {
        question: "What share of its syrup did a barrel keep?",
        cells: [
          ["Filled in, lb", 600],
          ["Came out, lb", 570],
        ],
        formula: "=SYRUP.MASS_BALANCE(B2, B3)/B2",
        gives: 0.05,
        unit: "as a share",
        source: "hand arithmetic: 30 ÷ 600",
      },
      {
        question: "How many gallons did it keep, when it also thickened?",
        cells: [
          ["Filled in, lb", 600],
          ["Brix", 66.5],
          ["Came out, lb", 570],
          ["Brix", 67],
        ],
        formula: "=SYRUP.VOLUME_OF(B2, B3)-SYRUP.VOLUME_OF(B4, B5)",
        gives: 2.834,
        unit: "gal",
        within: 0.002,
        source:
          "hand arithmetic with 11.0553 and 11.0810 lb/gal: 54.273 − 51.439",
      },
      {
        question: "What does a pound cost out of the barrel?",
        by: "AGED_PRICE",
      },
      {
        question: "How much will a barrel give on the day it is ready?",
        cells: [
          ["Filled in, gal", 52],
          ["Soaked into the wood, gal", 3],
          ["Lost to the air in a year", 0.03],
          ["Months", 24],
        ],
        formula: "=(B2-B3)*(1-B4)^(B5/12)",
        gives: 46.1041,
        unit: "gal",
        source: "hand arithmetic: 49 × 0.97 × 0.97",
      },
      {
        question: "What does a fill of a barrel cost that is sold on later?",
        cells: [
          ["Paid for the barrel", 165],
          ["Sold for", 40],
          ["Fills", 2],
        ],
        formula: "=(B2-B3)/B4",
        gives: 62.5,
        unit: "a fill",
        source: "hand arithmetic: 125 ÷ 2",
      },
      {
        question: "What does an infusion add to each good gallon?",
        cells: [
          ["Gallons in the batch", 40],
          ["Grams per gallon", 12],
          ["Price per gram", 0.11],
          ["Syrup held in the solids, lb", 6],
          ["Price of syrup per lb", 2.4],
          ["Brix", 66.9],
        ],
        formula: "=(B2*B3*B4+B5*B6)/(B2-SYRUP.VOLUME_OF(B5, B7))",
        gives: 1.703,
        unit: "per gal",
        within: 0.0005,
        source:
          "hand arithmetic with 11.0759 lb/gal: 67.20 ÷ (40 − 0.5417) gal",
      },
      {
        question: "How many whole batches do the bottles take?",
        cells: [
          ["Bottles", 600],
          ["mL in each", 250],
          ["Good gallons from a batch", 12.4],
        ],
        formula: "=ROUNDUP(B2*B3/3785.411784/B4, 0)",
        gives: 4,
        unit: "batches",
        source: "hand arithmetic: 39.63 gal ÷ 12.4 = 3.2",
      },
    ],
  },
];
