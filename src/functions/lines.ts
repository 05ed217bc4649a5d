import { as, type PerHour, type Seconds } from "../measures/quantity";
import { lineTerms as terms } from "../terms/lines";
import { optional } from "../terms/term";
import { crossover } from "../trade/lines/crossover";
import {
  type Heads,
  headsRate,
  lineLimit,
  lineRate,
} from "../trade/lines/line-rate";
import { runHours } from "../trade/lines/run-hours";
import { defineFunction, type Values } from "./define";
import {
  nativeCrossover,
  nativeLineLimit,
  nativeLineRate,
  nativeRunHours,
} from "./native/lines";
import { readNamedStations, readStations } from "./stations";
import { dollars, figure, percent } from "./wording";

const lineArgs = {
  heads: terms.heads,
  fill: terms.fillTime,
  handling: terms.handlingTime,
  running: optional(terms.running, 1),
  stations: optional(terms.stations, undefined),
} as const;
type Line = Values<typeof lineArgs>;

const headsOf = ({ heads, fill, handling, running }: Line): Heads => ({
  count: heads,
  fill,
  handling,
  running,
});

const headsWords = (line: Line): string =>
  `${figure(line.heads)} heads ÷ (${figure(line.fill)} + ${figure(line.handling)}) s × 3,600 × ${percent(line.running)} = ${figure(headsRate(headsOf(line)))} an hour`;

const minutes = (time: Seconds): string => figure(time / 60);

export const lineFunctions = [
  defineFunction({
    name: "LINE_RATE",
    family: "Lines and runs",
    summary:
      "Bottles an hour a line really makes: its heads or its slowest other station.",
    question: "How many bottles an hour does this line really make?",
    args: lineArgs,
    gives: { about: "rate of the line", unit: "per h" },
    basis: ["arithmetic"],
    notes: [
      "Stations are one rate, a column of rates, or two columns: name, rate.",
    ],
    examples: [
      {
        args: [8, 12, 10, 0.78, [["hand cap and invert", 720]]],
        gives: 720,
        source:
          "hand arithmetic: 8 ÷ 22 s × 3,600 × 78 % = 1,021 at the heads, 720 at the caps",
      },
      {
        args: [12, "14 s", "3 s", "85 %"],
        gives: 2160,
        source: "hand arithmetic: 12 ÷ 17 × 3,600 = 2,541.18; × 85 % = 2,160",
      },
      {
        args: [8, 12, 10, 0.78, 720],
        gives: 720,
        source: "hand arithmetic, the other station as one rate",
      },
    ],
    native: nativeLineRate,
    compute: (line) => lineRate(headsOf(line), readStations(line.stations)),
    why: (line, answer) => {
      const slowest = readStations(line.stations).find(
        ({ rate }) => rate === answer,
      );
      const station = slowest?.name || "the slowest other station";
      return slowest && slowest.rate < headsRate(headsOf(line))
        ? `${headsWords(line)}, but ${station} does ${figure(slowest.rate)}: the line makes ${figure(answer)} an hour`
        : `${headsWords(line)}; no other station is slower`;
    },
  }),
  defineFunction({
    name: "LINE_LIMIT",
    family: "Lines and runs",
    summary:
      'What holds a line back: "heads", or the name of its slowest station.',
    question: "Which station holds this line back?",
    args: lineArgs,
    gives: { about: "the limit of the line", unit: "" },
    basis: ["arithmetic"],
    notes: ["Stations are two columns here: name, rate."],
    examples: [
      {
        args: [
          8,
          12,
          10,
          0.78,
          [
            ["labeller", 1500],
            ["hand cap and invert", 720],
          ],
        ],
        gives: "hand cap and invert",
        source: "hand arithmetic: 1,021 at the heads, 720 at the caps",
      },
      {
        args: [12, 14, 3, 0.85, [["labeller", 2400]]],
        gives: "heads",
        source: "hand arithmetic: 2,160 at the heads, 2,400 at the labeller",
      },
    ],
    native: nativeLineLimit,
    compute: (line) =>
      lineLimit(headsOf(line), readNamedStations(line.stations)),
    why: (line, answer) => {
      const slowest = readNamedStations(line.stations).find(
        ({ name }) => name === answer,
      );
      return slowest
        ? `${headsWords(line)}; ${slowest.name} does ${figure(slowest.rate)}, which is the least`
        : `${headsWords(line)}; no other station is slower`;
    },
  }),
  defineFunction({
    name: "RUN_HOURS",
    family: "Lines and runs",
    summary: "Hours of a run with its set-up and clean-down.",
    question: "How long does this run keep the line busy?",
    args: {
      bottles: terms.bottles,
      rate: terms.rate,
      setup: optional(terms.setup, 0),
      clean: optional(terms.clean, 0),
    },
    gives: { about: "hours of the run", unit: "h" },
    basis: ["arithmetic"],
    examples: [
      {
        args: [1200, 720, 25, 30],
        gives: 31 / 12,
        source:
          "hand arithmetic: 1,200 ÷ 720 = 1 h 40 min, + 55 min = 2 h 35 min",
      },
      {
        args: [9000, 2160, "150 min", "1.25 h"],
        gives: 7 + 11 / 12,
        source: "hand arithmetic: 4 h 10 min + 3 h 45 min = 7 h 55 min",
      },
    ],
    native: nativeRunHours,
    compute: ({ bottles, rate, setup, clean }) =>
      runHours(bottles, as<PerHour>(rate), { setup, clean }),
    why: ({ bottles, rate, setup, clean }, answer) =>
      `${figure(bottles)} bottles ÷ ${figure(rate)} an hour + (${minutes(setup)} + ${minutes(clean)}) min = ${figure(answer)} h`,
  }),
  defineFunction({
    name: "LINE_CROSSOVER",
    family: "Lines and runs",
    summary: "Run size in bottles from which line b is cheaper than line a.",
    question: "From how many bottles does the big line pay?",
    args: {
      fixed_a: terms.fixedCost,
      each_a: terms.costEach,
      fixed_b: terms.fixedCost,
      each_b: terms.costEach,
    },
    gives: { about: "run size where the lines cross", unit: "bottles" },
    basis: ["arithmetic"],
    notes: [
      "Count the crew during set-up and clean-down, and the purged syrup, as cost once a run.",
    ],
    examples: [
      {
        args: [117.3, 0.134389, 633.9, 0.059],
        gives: 6853,
        source:
          "worked example, arithmetic: (633.90 − 117.30) ÷ (0.134389 − 0.059) = 6,852.5, rounded up",
      },
      {
        args: [100, 0.15, 600, 0.05],
        gives: 5000,
        source: "hand arithmetic: 500 ÷ 0.10 = 5,000",
      },
    ],
    native: nativeCrossover,
    compute: ({ fixed_a, each_a, fixed_b, each_b }) =>
      crossover(
        { fixed: fixed_a, each: each_a },
        { fixed: fixed_b, each: each_b },
      ),
    why: ({ fixed_a, each_a, fixed_b, each_b }, answer) =>
      `b costs ${dollars(fixed_b - fixed_a)} more once a run and $${figure(each_a - each_b, 6)} less a bottle: ${dollars(fixed_b - fixed_a)} ÷ $${figure(each_a - each_b, 6)}, rounded up = ${figure(answer, 7)} bottles`,
  }),
];
