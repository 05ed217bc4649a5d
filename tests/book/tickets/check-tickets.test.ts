import { readFileSync } from "node:fs";
import { join } from "node:path";
import { readBook } from "../../../src/book/read";
import { checkTickets } from "../../../src/book/tickets/check-tickets";
import { withCells } from "../../../src/book/tickets/pasted-lines";
import {
  ticketFacts,
  type TicketChoices,
} from "../../../src/book/tickets/ticket-facts";
import {
  as,
  type DaySerial,
  type Kilograms,
} from "../../../src/measures/quantity";
import { KG_PER_LB } from "../../../src/measures/units";
import { serialOf } from "../../../src/measures/read-date";
import { demoTables } from "../csv-folder";

const tables = demoTables();
const { book } = readBook(tables);
const facts = (choices: TicketChoices = {}) =>
  ticketFacts(book, tables, { contract: "C-2604", ...choices });

/** C-2601 is billed at 2.92 a pound here, as the messy paste has it, and open when it was shipped. */
const messyFacts = {
  ...facts({ contract: "C-2601" }),
  contracts: book.toteContracts.map((row) =>
    row.contract === "C-2601"
      ? {
          ...row,
          basis: "USD per lb" as const,
          price: as<typeof row.price>(2.92),
          start: serialOf(2026, 1, 1),
        }
      : row,
  ),
};

const messy = readFileSync(
  join(
    __dirname,
    "../../../sample-workbooks/fernkettle-hollow/messy_paste_test.csv",
  ),
  "utf8",
);
const one = (line: string, choices: TicketChoices = {}) => {
  const checked = checkTickets(
    `ticket,date,contract,gross,tare,brix,price,currency,lot,net\n${line}`,
    facts(choices),
  ).lines[0];
  if (!checked) throw new Error("no line");
  return {
    ...checked,
    says: checked.reasons.map(({ says }) => says).join(" "),
  };
};

describe("the farm's messy paste (messy_paste_test.csv says beside each row what is wrong)", () => {
  const { lines } = checkTickets(messy, messyFacts);

  // Verdicts: the worked job list, bonus D.
  test.each([
    [
      1,
      "T-901",
      "asked",
      "can be 2026-03-04 or 2026-04-03",
      '"3,044 lb" is read as 3,044 lb',
    ],
    [2, "T-902", "refused", "look swapped", ""],
    [3, "T-903", "refused", "Tare is blank. A blank is never zero", ""],
    [
      4,
      "T-904",
      "refused",
      "looks like 66.6 with its decimal point slipped",
      "",
    ],
    [
      5,
      "T-905",
      "asked",
      '°Brix: "66,4" has a decimal comma; read as 66.4',
      'Price: "2,92" has a decimal comma; read as 2.92',
    ],
    [6, "T-905", "refused", "stands in line 6 of this paste already", ""],
    [7, "T-906", "refused", 'there is no day "2027-13-01"', ""],
    [
      8,
      "T-907",
      "asked",
      '"1384 kg" is in kg in a column of lb; read as 3,051.2 lb',
      '"60 kg"',
    ],
    [9, "T-908", "asked", "Net 3,665 lb is more than a 275 gal tote holds", ""],
    [10, "T-909", "asked", "°Brix 64.9 is below the 66 of contract C-2601", ""],
    [
      11,
      "T-910",
      "asked",
      "times what is usual and looks like a price per gal",
      "",
    ],
    [12, "T-911", "refused", "Gross: -3046 is not above 0", ""],
  ])("row %i, ticket %s, is %s", (row, name, verdict, says, also) => {
    const line = lines[row - 1];
    expect(line).toMatchObject({ name, verdict });
    const text = line?.reasons.map((reason) => reason.says).join("; ") ?? "";
    expect(text).toContain(says);
    expect(text).toContain(also);
  });

  test("no row posts silently, none is lost", () => {
    expect(lines).toHaveLength(12);
    expect(lines.filter(({ verdict }) => verdict === "fine")).toEqual([]);
  });

  test("what was asked for nothing but its own fault is fine once the fault is gone", () => {
    const mended = messy
      .replace('03/04/2026,"3,044 lb"', "2026-03-04,3044")
      .replace("2026-03-08,3046,134,64.9", "2026-03-08,3046,134,66.4");
    const after = checkTickets(mended, messyFacts).lines;
    expect(after[0]).toMatchObject({ verdict: "fine", reasons: [] });
    expect(after[9]).toMatchObject({ verdict: "fine", reasons: [] });
  });

  test.each([
    [2, "Swap gross and tare"],
    [4, "Use 66.6"],
  ])("row %i is fine after its offer is taken", (row, label) => {
    const line = lines[row - 1];
    const offer = line?.reasons
      .flatMap(({ offers }) => offers)
      .find((o) => o.label === label);
    const after = checkTickets(
      withCells(messy, line?.line ?? 0, offer?.cells ?? {}),
      messyFacts,
    );
    expect(after.lines[row - 1]).toMatchObject({ verdict: "fine" });
    expect(after.lines).toHaveLength(12);
  });

  test("a day that can be two days cannot be posted before one is chosen", () => {
    expect(lines[0]?.ready).toBeUndefined();
    const offers = lines[0]?.reasons.flatMap(({ offers: all }) => all) ?? [];
    expect(offers.map(({ label }) => label)).toEqual([
      "2026-03-04",
      "2026-04-03",
    ]);
    const after = checkTickets(
      withCells(messy, 1, offers[1]?.cells ?? {}),
      messyFacts,
    );
    expect(after.lines[0]?.ready?.shipped).toBe(serialOf(2026, 4, 3));
  });
});

describe("one ticket", () => {
  const good = "T-950,2026-10-01,C-2604,3044,132,66.6,2.42,USD,,2912";

  test("a good one is fine, and its net and amount are worked out", () => {
    const { verdict, ready } = one(good);
    expect(verdict).toBe("fine");
    // Arithmetic: 3,044 − 132 = 2,912; 2,912 × 2.42 = 7,047.04.
    expect((ready?.net ?? 0) / KG_PER_LB).toBeCloseTo(2912, 9);
    expect(ready).toMatchObject({ amount: 7047.04, currency: "USD" });
  });

  test.each([
    [
      "T-001 is in the book",
      good.replace("T-950", "t-001"),
      "refused",
      "posted already, in Tote shipments row 2",
    ],
    [
      "an unknown contract",
      good.replace("C-2604", "C-9999"),
      "refused",
      "Contract C-9999 is not in Tote contracts",
    ],
    [
      "no currency",
      good.replace("USD", ""),
      "asked",
      "Currency is missing; C-2604 is in USD",
    ],
    [
      "another money",
      good.replace("USD", "CAD"),
      "refused",
      "two moneys are never mixed",
    ],
    [
      "a net beside that does not fit",
      good.replace("2912", "2192"),
      "asked",
      "gross less tare 2,912 lb; the latter is posted",
    ],
    [
      "a day after the contract",
      good.replace("2026-10-01", "2027-01-02"),
      "asked",
      "outside contract C-2604",
    ],
    [
      "a lot that is not there",
      good.replace(",,2912", ",99-99,2912"),
      "refused",
      "Lot 99-99 is not in the book",
    ],
    [
      "lots that do not add up",
      good.replace(",,2912", ",26-04:1000,2912"),
      "asked",
      "The lots add up to 1,000 lb",
    ],
    [
      "a unit nobody knows",
      good.replace("3044", "3044 stone"),
      "refused",
      "is not a unit of weight known here",
    ],
    ["Brix far off", good.replace("66.6", "12"), "refused", "outside 60 to 75"],
    [
      "no ticket number",
      good.replace("T-950", ""),
      "refused",
      "The ticket's number is blank",
    ],
  ])("%s", (_what, line, verdict, says) => {
    const checked = one(line);
    expect(checked.verdict).toBe(verdict);
    expect(checked.says).toContain(says);
  });

  test("gross above the plate limit may not move", () => {
    const { verdict, says } = one(good, {
      plateLimit: as<Kilograms>(3000 * KG_PER_LB),
    });
    expect(verdict).toBe("refused");
    expect(says).toContain("do not lift or ship it");
  });

  test("a larger tote may hold what a usual one cannot", () => {
    const heavy = "T-951,2026-10-01,C-2604,3400,132,66.6,2.42,USD,,";
    expect(one(heavy).verdict).toBe("asked");
    expect(one(heavy, { toteGallons: 330 }).verdict).toBe("fine");
  });

  test("one lot without pounds gave the whole tote", () => {
    const { ready } = one(good.replace(",,2912", ",26-04,2912"));
    expect(ready?.lots).toHaveLength(1);
    expect(ready?.lots[0]?.weight).toBeCloseTo(2912 * KG_PER_LB, 9);
  });
});

test("lots must hold what the tickets of a paste draw together", () => {
  // By stock_count.csv, lot 26-05 holds 6,726 lb by the book: two totes of 2,912 lb, and 902 lb of a third.
  const lines = ["T-980", "T-981", "T-982"].map(
    (name) => `${name},2026-10-01,3044,132,66.6,26-05`,
  );
  const checked = checkTickets(
    ["ticket,date,gross,tare,brix,lot", ...lines].join("\n"),
    facts(),
  ).lines;
  expect(checked.map(({ verdict }) => verdict)).toEqual([
    "fine",
    "fine",
    "asked",
  ]);
  expect(checked[2]?.reasons[0]?.says).toBe(
    "Lot 26-05 holds 902 lb by the book, and this draws 2,912 lb",
  );
});

describe("however it was pasted", () => {
  const says = (text: string): unknown[] =>
    checkTickets(text, facts()).lines.map(({ name, verdict, ready }) => [
      name,
      verdict,
      ready && isoDay(ready.shipped),
    ]);
  const two = [
    ["T-960", "fine", "2026-09-15"],
    ["T-961", "fine", "2026-09-16"],
  ];

  test.each([
    [
      "tabs, as from a sheet",
      "Ticket\tDate\tGross lb\tTare lb\tBrix\nT-960\t2026-09-15\t3044\t132\t66.6\nT-961\t2026-09-16\t3046\t133\t66.5",
    ],
    [
      "a forwarded e-mail",
      "> | Ticket | Date | Gross | Tare | Brix |\n> |---|---|---|---|---|\n> | T-960 | 2026-09-15 | 3044 | 132 | 66.6 |\n> | T-961 | 2026-09-16 | 3046 | 133 | 66.5 |",
    ],
    [
      "columns lined up with spaces",
      "Ticket   Date        Gross  Tare  Brix\nT-960    2026-09-15  3044   132   66.6\nT-961    2026-09-16  3046   133   66.5",
    ],
    [
      "French headings and semicolons",
      "No de bon;Date d'expédition;Poids brut (lb);Tare;Brix\nT-960;15 sept. 2026;3044;132;66.6\nT-961;16 sept. 2026;3046;133;66.5",
    ],
    [
      "with a total below",
      "Ticket,Date,Gross,Tare,Brix\nT-960,2026-09-15,3044,132,66.6\nT-961,2026-09-16,3046,133,66.5\nTotal,,6090,265,",
    ],
  ])("%s", (_how, text) => {
    expect(says(text)).toEqual(two);
  });

  test("a column that is missing is named", () => {
    const [line] = checkTickets(
      "Ticket,Date,Gross,Brix\nT-960,2026-09-15,3044,66.6",
      facts(),
    ).lines;
    expect(line?.verdict).toBe("refused");
    expect(line?.reasons.map((r) => r.says)).toContain(
      'No column is the tare; head one "tare"',
    );
  });

  test("days written one way show how the doubtful ones are meant, and it is still asked", () => {
    const lines = checkTickets(
      "Ticket,Date,Gross,Tare,Brix\nT-960,15/09/2026,3044,132,66.6\nT-961,08/09/2026,3046,133,66.5",
      facts(),
    ).lines;
    expect(lines.map(({ verdict }) => verdict)).toEqual(["fine", "asked"]);
    expect(lines[1]?.reasons[0]?.says).toContain(
      "read as 2026-09-08, as the other dates are written day first",
    );
  });
});

const isoDay = (day: DaySerial): string =>
  new Date((day - 25_569) * 86_400_000).toISOString().slice(0, 10);
