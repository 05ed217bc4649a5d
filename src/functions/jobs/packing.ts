import type { JobGroup } from "./job";

export const packingJobs: readonly JobGroup[] = [
  {
    title: "Planning a run",
    jobs: [
      { question: "How fast is a line really?", by: "LINE_RATE" },
      { question: "What holds the line back?", by: "LINE_LIMIT" },
      {
        question: "From how many bottles is the other line cheaper?",
        by: "LINE_CROSSOVER",
      },
      {
        question: "The same, from crews, change-over times and purged syrup?",
        cells: [
          ["", "Small line", "Big line"],
          ["Crew per hour", 72, 150],
          ["Set-up and clean-down, min", 60, 225],
          ["Purged, lb", 12, 60],
          ["Syrup per lb", 2.4, 2.4],
          ["Bottles an hour", 720, 2160],
        ],
        formula:
          "=SYRUP.LINE_CROSSOVER(B3*B4/60+B5*B6, B3/B7, C3*C4/60+C5*C6, C3/C7)",
        gives: 19_823,
        unit: "bottles",
        source:
          "hand arithmetic: (706.50 − 100.80) ÷ (0.1 − 0.069444) = 19,822.9",
      },
      {
        question: "How many bottles does a kettle fill?",
        by: "KETTLE_BOTTLES",
      },
      {
        question: "How many kettles does a run take?",
        cells: [
          ["Bottles", 4000],
          ["Hot syrup in a kettle, gal", 120],
          ["Brix", 66.9],
          ["Filling temperature, °F", 185],
          ["mL in each", 252],
          ["Left behind, gal", 6],
        ],
        formula: "=ROUNDUP(B2/SYRUP.KETTLE_BOTTLES(B3, B4, B5, B6, B7), 0)",
        gives: 3,
        unit: "kettles",
        source:
          "hand arithmetic: 114 gal ÷ 1.02982 × 3,785.41 ÷ 252 = 1,662 bottles a kettle",
      },
      {
        question: "How many of a part must still be ordered?",
        cells: [
          ["Bottles", 1200],
          ["Pieces per bottle", 1],
          ["Spoiled", 0.02],
          ["Pieces in a carton", 12],
          ["On hand", 400],
          ["On order", 300],
        ],
        formula:
          "=SYRUP.PIECES_TO_DRAW(MAX(0, SYRUP.PIECES_TO_DRAW(B2, B3, B4)-B6-B7), 1, 0, B5)",
        gives: 528,
        unit: "pieces",
        source:
          "hand arithmetic: 1,200 ÷ 98 % is 1,225; 525 are missing, 44 cartons",
      },
      { question: "How long does the run take?", by: "RUN_HOURS" },
      {
        question: "At what time is the run done?",
        cells: [
          ["Bottles", 1440],
          ["Bottles an hour", 720],
          ["Set-up, min", 30],
          ["Clean-down, min", 45],
        ],
        formula:
          '=TEXT(TIME(8, 0, 0)+SYRUP.RUN_HOURS(B2, B3, B4, B5)/24, "h:mm")',
        gives: "11:15",
        unit: "",
        source: "hand arithmetic: 2 h and 75 minutes from 8:00",
      },
      {
        question: "How much do I take from each lot, the oldest first?",
        cells: [
          ["Needed, lb", 1620],
          ["Lot", "In stock, lb"],
          ["L-03", 900],
          ["L-07", 1200],
        ],
        formula: "=MAX(0, MIN(B5, B$2-SUM(B$3:B4)))",
        gives: 720,
        unit: "lb from L-07",
        source: "hand arithmetic: 1,620 − 900; filled down, every lot's pounds",
      },
      { question: "What goes into the coder?", by: "LOT_CODE" },
      { question: "What best-by date goes on?", by: "BEST_BY" },
    ],
  },
  {
    title: "Filling and net contents",
    jobs: [
      {
        question: "How many mL do I set the filler to, hot?",
        by: "HOT_VOLUME",
      },
      { question: "How much is it once it is cold?", by: "COLD_VOLUME" },
      { question: "How much does syrup shrink?", by: "SHRINKAGE" },
      {
        question: "How many grams of syrup is a full bottle?",
        cells: [
          ["mL at 68 °F", 252],
          ["Brix", 66.9],
        ],
        formula: '=SYRUP.WEIGHT_OF(B2&" mL", B3, , "g")',
        gives: 334.45,
        unit: "g on the scale",
        within: 0.02,
        source:
          "hand arithmetic with 11.0759 lb/gal: 252 ÷ 3,785.41 × 11.0759 × 453.592",
      },
      {
        question: "How far does the level drop in the neck?",
        by: "LEVEL_DROP",
      },
      {
        question: "What room is left when the bottle is hot?",
        by: "HEADSPACE",
      },
      {
        question: "How far below the rim do I set the level?",
        cells: [
          ["Brimful, mL", 265],
          ["mL at 68 °F", 250],
          ["Brix", 66.9],
          ["Filling temperature, °F", 185],
          ["Bore of the neck, mm", 22],
        ],
        formula: "=SYRUP.HEADSPACE(B2, B3, B4, B5)*1000/(PI()*B6^2/4)",
        gives: 19.85,
        unit: "mm",
        within: 0.7,
        source:
          "hand arithmetic: (265 − 250 × 1.02982) mL over 380.13 mm²; ±0.1 % of the volume is 0.7 mm: measure your own bottle",
      },
      {
        question: "How many mL are in this bottle, from its weight?",
        by: "NET_VOLUME",
      },
      {
        question: "What does my label declare, when it says it twice?",
        by: "DECLARED_VOLUME",
      },
      { question: "How many bottles would be weighed?", by: "SAMPLE_SIZE" },
      { question: "How much is the average let off?", by: "SAMPLE_FACTOR" },
      { question: "How short may one bottle be?", by: "ALLOWED_SHORT" },
      {
        question: "Does this lot pass, the inspector's way and mine?",
        by: "LOT_VERDICT",
      },
      { question: "What do I give away by overfilling?", by: "OVERFILL_COST" },
      { question: "What should I aim the filler at?", by: "FILL_TARGET" },
      {
        question: "Which head fills apart from the others?",
        by: "HEAD_SPREAD",
      },
      { question: "How tall must the statement be?", by: "TYPE_HEIGHT" },
    ],
  },
  {
    title: "In the sugarhouse and on the bench",
    jobs: [
      { question: "How dense is syrup?", by: "DENSITY" },
      { question: "What does a gallon weigh?", by: "POUNDS_PER_GALLON" },
      { question: "What does a volume weigh?", by: "WEIGHT_OF" },
      { question: "What is its specific gravity?", by: "SPECIFIC_GRAVITY" },
      { question: "What Brix has syrup so dense?", by: "BRIX_FROM_DENSITY" },
      { question: "What is this Brix in Baumé?", by: "BAUME" },
      { question: "What is this Baumé in Brix?", by: "BRIX_FROM_BAUME" },
      { question: "What index belongs to a Brix?", by: "REFRACTIVE_INDEX" },
      { question: "What Brix belongs to an index?", by: "BRIX_FROM_INDEX" },
      { question: "What must the float read hot?", by: "HYDROMETER_READING" },
      { question: "How well does it flow?", by: "VISCOSITY" },
      { question: "How much heat does a pound hold?", by: "HEAT_CAPACITY" },
      { question: "When do I draw off today?", by: "BOILING_POINT" },
    ],
  },
  {
    title: "Cases, pallets and codes",
    jobs: [
      { question: "How many pallets is an order?", by: "PALLETS" },
      {
        question: "What does a full case weigh?",
        cells: [
          ["Bottles in it", 12],
          ["Empty bottle with cap, g", 210],
          ["mL in each", 252],
          ["Brix", 66.9],
          ["Empty case, g", 320],
        ],
        formula: '=(B2*(B3+SYRUP.WEIGHT_OF(B4&" mL", B5, , "g"))+B6)/453.59237',
        gives: 15.11,
        unit: "lb",
        within: 0.005,
        source: "hand arithmetic: (12 × (210 + 334.45) + 320) g ÷ 453.592",
      },
      { question: "What is the last digit of a code?", by: "CHECK_DIGIT" },
      { question: "What is the whole code?", by: "WITH_CHECK_DIGIT" },
      { question: "What code goes on the case?", by: "CASE_CODE" },
      { question: "What code goes on the pallet?", by: "PALLET_CODE" },
    ],
  },
];
