import { as, type DaySerial } from "../measures/quantity";
import { isoDate } from "../measures/read-date";
import { lineTerms as terms } from "../terms/lines";
import { optional } from "../terms/term";
import { bestBy } from "../trade/codes/best-by";
import { dayOfYear, lotCode } from "../trade/codes/lot-code";
import { palletise } from "../trade/codes/pallets";
import { readClockTime } from "./clock-time";
import { defineFunction } from "./define";
import { figure } from "./wording";

export const lineCodeFunctions = [
  defineFunction({
    name: "LOT_CODE",
    family: "Lines and runs",
    summary: "Code for the coder: year, day of the year, line and time.",
    question: "What do I key into the coder today?",
    args: {
      date: terms.day,
      line: terms.line,
      time: optional(terms.clock, undefined),
      pattern: optional(terms.pattern, "YYDDD-L-hhmm"),
    },
    gives: { about: "lot code", unit: "" },
    basis: ["arithmetic", "commonPractice"],
    notes: [
      "In the pattern, YY or YYYY is the year, DDD the day of the year, L the line and hhmm the time; anything else stands as it is.",
      "Without a time, hhmm and the dash before it are left out.",
    ],
    examples: [
      {
        args: ["2026-11-25", "2", "14:30"],
        gives: "26329-2-1430",
        source: "counted by hand: 304 days to the end of October, + 25",
      },
      {
        args: ["2028-12-31", "B"],
        gives: "28366-B",
        source: "31 December of a leap year is day 366",
      },
    ],
    noNative:
      "the marks in a pattern are told from the letters of the line's own name piece by piece, which takes more than a plain formula of a sensible length",
    compute: ({ date, line, time, pattern }) =>
      lotCode(
        date,
        line,
        pattern,
        time === undefined ? undefined : readClockTime(time),
      ),
    why: ({ date, line }, answer) =>
      `${isoDate(date)} is day ${dayOfYear(date)} of its year; line ${line}: ${String(answer)}`,
  }),
  defineFunction({
    name: "BEST_BY",
    family: "Lines and runs",
    summary:
      "Day so many months on; the last of the month where it is shorter.",
    question: "Which best-by date goes on the bottle?",
    args: { date: terms.day, months: terms.months },
    gives: { about: "best-by day", unit: "date" },
    basis: ["arithmetic"],
    examples: [
      {
        args: ["2026-11-25", 24],
        gives: 47082,
        source:
          "25 November 2028: serial 46,753 is 1 January 2028, and 329 days follow",
      },
      {
        args: ["2027-08-31", 6],
        gives: 46812,
        source:
          "29 February 2028, the last of that month: serial 46,753 and 59 days",
      },
    ],
    native: ({ date, months }) => `EDATE(${date},${months})`,
    compute: ({ date, months }) => bestBy(date, months),
    why: ({ date, months }, answer) =>
      `${isoDate(date)} and ${figure(months)} months: ${isoDate(as<DaySerial>(Number(answer)))}`,
  }),
  defineFunction({
    name: "PALLETS",
    family: "Totes and codes",
    summary:
      "Full pallets, cases on the last one, and bottles that fill no case.",
    question: "How many pallets is that, and what is left over?",
    args: {
      bottles: terms.bottlesPacked,
      per_case: terms.perCase,
      cases_per_layer: terms.casesPerLayer,
      layers: terms.layers,
    },
    gives: {
      about: "pallets",
      unit: "",
      spills: ["Full pallets", "Cases on the last", "Loose bottles"],
    },
    basis: ["arithmetic"],
    examples: [
      {
        args: [1500, 12, 14, 6],
        gives: [[1, 41, 0]],
        source:
          "worked example, arithmetic: 125 cases, 84 a pallet: one full, 41 on the second",
      },
      {
        args: [1015, 12, 14, 6],
        gives: [[1, 0, 7]],
        source: "hand arithmetic: 84 cases are 1,008 bottles, 7 are left",
      },
    ],
    noNative:
      "the answer fills three cells, which one plain formula from before 2019 cannot do",
    compute: ({ bottles, per_case, cases_per_layer, layers }) => {
      const { fullPallets, casesOnLast, looseBottles } = palletise(bottles, {
        perCase: per_case,
        casesPerLayer: cases_per_layer,
        layers,
      });
      return [[fullPallets, casesOnLast, looseBottles]];
    },
    why: ({ bottles, per_case, cases_per_layer, layers }) => {
      const cases = Math.floor(bottles / per_case);
      return `${figure(bottles, 8)} bottles ÷ ${per_case} = ${figure(cases, 8)} full cases and ${bottles % per_case} bottles loose; ${cases_per_layer} × ${layers} = ${cases_per_layer * layers} cases a pallet`;
    },
  }),
];
