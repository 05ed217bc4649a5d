import { isoDate } from "../measures/read-date";
import { optional } from "../terms/term";
import { toteTerms as terms } from "../terms/totes";
import { ageBand, daysLate } from "../trade/totes/ageing";
import { defineFunction } from "./define";
import { nativeAgeBand, nativeDaysLate } from "./native/totes";
import { dollars } from "./wording";

export const toteLateFunctions = [
  defineFunction({
    name: "DAYS_LATE",
    family: "Totes and codes",
    summary: "Days an invoice is or was late; 0 when it is not.",
    question: "How many days late is this money?",
    args: {
      due: terms.due,
      paid_or_today: terms.paidOrToday,
      balance: optional(terms.balance, undefined),
    },
    gives: { about: "days late", unit: "days" },
    basis: ["arithmetic"],
    notes: [
      "With a balance: when nothing is owed, or the customer has a credit, nothing is late.",
    ],
    examples: [
      {
        args: ["2026-10-29", "2026-11-20"],
        gives: 22,
        source: "counted by hand: 2 days of October and 20 of November",
      },
      {
        args: ["2026-10-29", "2026-11-20", 0],
        gives: 0,
        source: "nothing is owed",
      },
      {
        args: ["2026-11-25", "2026-11-20"],
        gives: 0,
        source: "five days before it is due",
      },
    ],
    native: nativeDaysLate,
    compute: ({ due, paid_or_today, balance }) =>
      daysLate(due, paid_or_today, balance),
    why: ({ due, paid_or_today, balance }, answer) => {
      if (paid_or_today <= due)
        return `due ${isoDate(due)}, ${isoDate(paid_or_today)} is not after it: 0 days late`;
      return answer === 0 && balance !== undefined
        ? `${dollars(balance)} is owed, so nothing is late: 0 days`
        : `${isoDate(due)} to ${isoDate(paid_or_today)} = ${String(answer)} days late`;
    },
  }),
  defineFunction({
    name: "AGE_BAND",
    family: "Totes and codes",
    summary: "How old an open invoice is, in bands of 30 days.",
    question: "Which column of the list of late money does this belong in?",
    args: { due: terms.due, today: terms.today },
    gives: {
      about: '"not due", "1-30", "31-60", "61-90" or "over 90"',
      unit: "",
    },
    basis: ["arithmetic", "commonPractice"],
    notes: [
      "On its due day an invoice is not late. Bands of 30 days are common practice, no source.",
    ],
    examples: [
      {
        args: ["2026-10-29", "2026-11-20"],
        gives: "1-30",
        source: "counted by hand: 22 days late",
      },
      {
        args: ["2026-08-20", "2026-11-20"],
        gives: "over 90",
        source: "counted by hand: 11 + 30 + 31 + 20 = 92 days late",
      },
      {
        args: ["2026-11-20", "2026-11-20"],
        gives: "not due",
        source: "due today",
      },
    ],
    native: nativeAgeBand,
    compute: ({ due, today }) => ageBand(due, today),
    why: ({ due, today }, answer) =>
      `${isoDate(due)} to ${isoDate(today)} = ${daysLate(due, today)} days late: ${String(answer)}`,
  }),
];
