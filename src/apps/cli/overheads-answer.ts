import type { Finding } from "../../book/finding";
import type { OverheadsAnswer } from "../../book/overheads-answer";

type Figure = number | null;

/** The answer of `overheads --json`; a figure that cannot be had is null. Money is in the books' currency. */
export interface OverheadsJson {
  readonly season: number;
  readonly runs: number;
  readonly lotsBought: number;
  readonly bills: readonly {
    readonly item: string;
    readonly perYear: number;
    readonly sharedBy: string;
    readonly toBulk: number;
    readonly toRuns: number;
    readonly toLots: number;
    readonly gap: number;
    readonly carried: number;
  }[];
  readonly addsUp: boolean;
  readonly gap: number;
  readonly compared: {
    readonly bills: string;
    readonly amount: number;
    readonly run: string;
    readonly bottles: number;
    readonly ways: readonly {
      readonly driver: string;
      readonly whole: Figure;
      readonly each: Figure;
      readonly ofRun: Figure;
      readonly perBottle: Figure;
      readonly carriedByRuns: Figure;
      readonly carriedByLots: Figure;
    }[];
    /** How many times as much the dearest way charges the run as the cheapest that charges it at all. */
    readonly timesApart: Figure;
  };
  readonly lines: readonly {
    readonly line: string;
    readonly hours: number;
    readonly bills: number;
    readonly machinePerHour: Figure;
    readonly crewPerHour: number;
    readonly changeOver: {
      readonly crew: number;
      readonly syrup: number;
      readonly cleaning: number;
      readonly total: number;
    } | null;
  }[];
  readonly findings: readonly Finding[];
}

export function overheadsJson(
  answer: OverheadsAnswer,
  findings: readonly Finding[],
): OverheadsJson {
  const { bills, compared, lines, whole, season } = answer;
  const gap = bills.reduce((sum, bill) => sum + bill.gap, 0);
  const total = bills.reduce((sum, { row }) => sum + row.perYear, 0);
  const charged = compared.ways.flatMap(({ ofRun }) =>
    ofRun !== undefined && ofRun > 0 ? [ofRun] : [],
  );
  return {
    season,
    runs: whole.runs.length,
    lotsBought: whole.lotsBought,
    bills: bills.map(({ row, toBulk, toRuns, toLots, gap: open, carried }) => ({
      item: row.item,
      perYear: row.perYear,
      sharedBy: row.sharedBy,
      toBulk,
      toRuns,
      toLots,
      gap: open,
      carried,
    })),
    // A tenth of a percent is rounding (common practice, no source).
    addsUp: Math.abs(gap) <= total * 0.001,
    gap,
    compared: {
      bills: compared.bills,
      amount: compared.amount,
      run: compared.run,
      bottles: compared.bottles,
      ways: compared.ways.map(({ driver, shared, ofRun }) => ({
        driver,
        whole: shared?.whole ?? null,
        each: shared?.rate ?? null,
        ofRun: ofRun ?? null,
        perBottle: ofRun === undefined ? null : ofRun / compared.bottles,
        carriedByRuns: shared
          ? shared.byRun.reduce((sum, part) => sum + part, 0) / compared.amount
          : null,
        carriedByLots: shared ? shared.toLots / compared.amount : null,
      })),
      timesApart:
        charged.length > 0 ? Math.max(...charged) / Math.min(...charged) : null,
    },
    lines: lines.map(({ line, hours, bills: carried, rate, crew, change }) => ({
      line,
      hours,
      bills: carried,
      machinePerHour: rate ?? null,
      crewPerHour: crew,
      changeOver: change ?? null,
    })),
    findings: [
      ...bills
        .filter((bill) => bill.gap > 0)
        .map(({ row, gap: open }) => ({
          where: `${row.place}, Shared by`,
          found: `"${row.sharedBy}" sums to nothing in ${season}`,
          meaning: `${open.toFixed(2)} of ${row.item} is carried by nothing`,
          todo: "share it by runs, lots, lots and runs, gallons packed or the hours of a line",
        })),
      ...findings,
    ],
  };
}
