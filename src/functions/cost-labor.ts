import { as, type MoneyPerHour, type PerHour } from "../measures/quantity";
import { costTerms as terms } from "../terms/cost";
import { lineTerms } from "../terms/lines";
import { optional } from "../terms/term";
import { laborPerBottle, loadedWage } from "../trade/costing/labor";
import { defineFunction } from "./define";
import { dollars, figure, percent } from "./wording";

export const costLaborFunctions = [
  defineFunction({
    name: "LOADED_WAGE",
    family: "Cost",
    summary:
      "Wage per hour worked, with payroll add-ons and hours paid but not worked.",
    question: "What does an hour at the line really cost me?",
    args: {
      wage: terms.wage,
      add_ons: optional(terms.addOns, 0),
      idle: optional(terms.idle, 0),
    },
    gives: { about: "loaded wage", unit: "money per h" },
    basis: ["arithmetic", "commonPractice"],
    examples: [
      {
        args: [82, 0.18],
        gives: 96.76,
        source:
          "worked example, arithmetic: (24 + 21 + 2 × 18.50) × 1.18 = 96.76",
      },
      {
        args: [20, "20 %", "4 %"],
        gives: 25,
        source: "hand arithmetic: 20 × 1.2 ÷ 0.96",
      },
    ],
    native: ({ wage, add_ons, idle }) => `(${wage}*(1+${add_ons})/(1-${idle}))`,
    compute: ({ wage, add_ons, idle }) =>
      loadedWage(as<MoneyPerHour>(wage), add_ons, idle),
    why: ({ wage, add_ons, idle }, answer) =>
      `${dollars(wage)} × (1 + ${percent(add_ons)}) ÷ (1 − ${percent(idle)}) = ${dollars(answer)} an hour`,
  }),
  defineFunction({
    name: "LABOR_PER_BOTTLE",
    family: "Cost",
    summary:
      "Crew cost of one bottle: its share of set-up and clean-down, and the running line.",
    question: "What does the crew cost me a bottle in a run of this size?",
    args: {
      crew: terms.crew,
      bottles: lineTerms.bottles,
      rate: lineTerms.rate,
      setup: optional(lineTerms.setup, 0),
      clean: optional(lineTerms.clean, 0),
    },
    gives: { about: "labour per bottle", unit: "money each" },
    basis: ["arithmetic"],
    examples: [
      {
        args: [96.76, 1200, 720, 25, 30],
        gives: 249.9633 / 1200,
        within: 0.0000001,
        source:
          "worked example, arithmetic: 96.76 × (55/60 + 1,200/720) = 249.96 for 1,200",
      },
      {
        args: [120, 600, 600, 30, 30],
        gives: 0.4,
        source: "hand arithmetic: 120 × (1 h + 1 h) ÷ 600",
      },
    ],
    native: ({ crew, bottles, rate, setup, clean }) =>
      `(${crew}*((${setup}+${clean})/60/${bottles}+1/${rate}))`,
    compute: ({ crew, bottles, rate, setup, clean }) => {
      const labor = laborPerBottle(as<MoneyPerHour>(crew), {
        bottles,
        rate: as<PerHour>(rate),
        setup,
        clean,
      });
      return labor.change + labor.running;
    },
    why: ({ crew, bottles, rate, setup, clean }, answer) => {
      const { change, running } = laborPerBottle(as<MoneyPerHour>(crew), {
        bottles,
        rate: as<PerHour>(rate),
        setup,
        clean,
      });
      return `set-up and clean-down ${dollars(crew)} × ${figure((setup + clean) / 60)} min ÷ 60 ÷ ${figure(bottles)} = ${dollars(change)}; running ${dollars(crew)} ÷ ${figure(rate)} an hour = ${dollars(running)}; together ${dollars(answer)} a bottle`;
    },
  }),
];
