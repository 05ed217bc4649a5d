import { date, number } from "./term";

/** What the two moneys were worth, day by day. */
export const rateTerms = {
  from: date({
    label: "From",
    about: "first day the rate holds; it holds until the next row's day",
    example: "2026-07-02",
    french: "À partir du",
  }),
  rate: number({
    label: "Canadian dollars per US dollar",
    about: "rate from that day on; blank where none is known",
    unit: "CAD per USD",
    above: 0,
    example: "1.37",
    french: "Dollars canadiens pour un dollar américain",
  }),
} as const;
