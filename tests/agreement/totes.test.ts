import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { totesBook } from "../../src/apps/cli/totes-workbook";
import { gridFunctions } from "../../src/apps/grid-functions";
import type { Contents } from "../../src/book/contents";
import { readBook } from "../../src/book/read";
import { totesOf } from "../../src/book/totes";
import { lotBalances } from "../../src/book/totes-lots";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { writeXlsx } from "../../src/hosts/file/write-xlsx";
import { calculate } from "../../src/hosts/grid/calculate";
import { isoDate } from "../../src/measures/read-date";
import { KG_PER_LB } from "../../src/measures/units";
import { toteNames, toteSheetNames } from "../../src/sheets/totes/names";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { ageBands } from "../../src/trade/totes/ageing";
import type { Matching } from "../../src/trade/totes/matching";
import { demoTables } from "../book/csv-folder";
import { convertWithLibreOffice } from "../support/libre-office";
import { valuesOf } from "../support/price-book";
import { troubledTotes } from "../support/troubled-totes";

const SHEETS: readonly string[] = Object.values(toteSheetNames);

/** Numbers agree to 1e-9 relative; everything else to the letter, where a blank and an empty text are one. */
function agree(a: Stored | undefined, b: Stored | undefined): boolean {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-3);
  const plain = (value: Stored | undefined): string =>
    value === undefined || value === null
      ? ""
      : typeof value === "object"
        ? value.error
        : String(value);
  return plain(a) === plain(b);
}

function differences(live: Workbook, other: Workbook): readonly string[] {
  return live.sheets
    .filter(({ name }) => SHEETS.includes(name))
    .flatMap((sheet) => {
      const theirs = new Map(
        other.sheets
          .find(({ name }) => name === sheet.name)
          ?.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value]),
      );
      return sheet.cells
        .filter((cell) => cell.formula !== undefined)
        .filter(
          (cell) =>
            !agree(cell.value, theirs.get(`${cell.row},${cell.column}`)),
        )
        .map(
          (cell) =>
            `${sheet.name} r${cell.row + 1} c${cell.column + 1}: ${JSON.stringify(cell.value)} against ${JSON.stringify(theirs.get(`${cell.row},${cell.column}`))} for ${cell.formula?.slice(0, 300)}`,
        );
    });
}

/** The book's sheets with another choice of how receipts without an invoice are used. */
function chosen(book: Workbook, matching: Matching): Workbook {
  return {
    ...book,
    sheets: book.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) =>
        cell.value === "by hand" ? { ...cell, value: matching } : cell,
      ),
    })),
  };
}

/** Where sheet and trade say other things, figure by figure. */
function againstTrade(
  contents: readonly Contents[],
  workbook: Workbook,
  matching: Matching,
): readonly string[] {
  const { book } = readBook(contents);
  const totes = totesOf(book, { matching });
  const places = toteNames(workbook.names);
  type Table =
    | "tickets"
    | "disputes"
    | "contracts"
    | "freight"
    | "accounts"
    | "invoices"
    | "lots"
    | "barrels"
    | "money";
  const rows = (key: Table): readonly (readonly Stored[])[] => {
    const place = places[key];
    if (!place) throw new Error(`no ${key}`);
    return valuesOf(workbook, place).filter(
      ([first]) => typeof first === "string" && first !== "",
    );
  };
  /** The rows of a table, each cell under its heading. */
  const byHeading = (
    key: Table,
  ): readonly Readonly<Record<string, Stored>>[] => {
    const place = places[key];
    if (!place) throw new Error(`no ${key}`);
    const [headings = []] = valuesOf(workbook, {
      ...place,
      row: place.row - 1,
      rows: 1,
    });
    return rows(key).map((row) =>
      Object.fromEntries(row.map((cell, c) => [String(headings[c]), cell])),
    );
  };
  const wrong: string[] = [];
  const check = (
    what: string,
    found: Stored | undefined,
    wanted: Stored | undefined,
  ): void => {
    if (!agree(found, wanted))
      wrong.push(
        `${what}: ${JSON.stringify(found)} against ${JSON.stringify(wanted)}`,
      );
  };
  const lb = (weight: number | undefined): number | undefined =>
    weight === undefined ? undefined : weight / KG_PER_LB;
  const tickets = byHeading("tickets");
  check("tickets", tickets.length, totes.tickets.length);
  totes.tickets.forEach((ticket, i) => {
    const row = tickets[i] ?? {};
    const { row: written } = ticket;
    const is = (heading: string, wanted: Stored | undefined): void =>
      check(`${written.ticket} ${heading}`, row[heading], wanted);
    is("Ticket", written.ticket);
    is("Net lb", lb(ticket.net));
    is("Gallons at 68 °F", ticket.gallons);
    is("Quantity billed", ticket.quantity);
    is("Amount", ticket.amount);
    is("Per lb", ticket.perPound);
    is("Grade not agreed", ticket.gradesRefused.map((g) => `${g}; `).join(""));
    is("Days out", ticket.daysOut);
    is("Buyer net lb", lb(written.buyerNet));
    is("Plate limit lb", lb(written.plateLimit));
    const plate = written.plateLimit;
    is(
      "Gross over it, lb",
      plate !== undefined && written.gross > plate
        ? lb(written.gross - plate)
        : undefined,
    );
    check(`${written.ticket} out`, row["Tote is"] === "out", ticket.isOut);
    check(
      `${written.ticket} withheld`,
      row["Needs"] !== "" && row["Needs"] !== null,
      ticket.needs.length > 0,
    );
  });
  const { beyond } = totes.disputes;
  check(
    "weights reported",
    tickets.filter((row) => typeof row["Buyer less us, lb"] === "number")
      .length,
    totes.disputes.reported,
  );
  const disputed = byHeading("disputes");
  check("disputes", disputed.length, beyond.length);
  for (const row of disputed) {
    const { ticket, theirs, difference } =
      beyond.find((one) => one.ticket.row.ticket === row["Ticket"]) ?? fail();
    const is = (heading: string, wanted: Stored | undefined): void =>
      check(`dispute ${ticket.row.ticket} ${heading}`, row[heading], wanted);
    is("Our net lb", lb(ticket.net));
    is("Buyer net lb", lb(theirs));
    is("Buyer less us, lb", lb(difference.weight));
    is("Of our weight", difference.share);
    is("In money", difference.money);
    is("Money", ticket.currency);
  }
  byHeading("contracts").forEach((row, i) => {
    const { row: written, progress, amount } = totes.contracts[i] ?? fail();
    const is = (heading: string, wanted: Stored | undefined): void =>
      check(`${written.contract} ${heading}`, row[heading], wanted);
    is("Left lb", lb(progress.left));
    is("Totes left", progress.totesLeft);
    is("Over if the last is full, lb", lb(progress.overIfFull));
    is("Shipped", progress.shareShipped);
    is("Of its days gone", progress.shareOfTime);
    is("Mean Brix shipped", progress.meanBrix);
    is("Solids short", progress.brixShortfall);
    is("Amount", amount);
  });
  byHeading("freight").forEach((row, i) => {
    const { row: written, freight } = totes.contracts[i] ?? fail();
    const is = (heading: string, wanted: Stored | undefined): void =>
      check(`${written.contract} ${heading}`, row[heading], wanted);
    is("Price per lb", freight.perPound);
    is("Freight per lb", freight.perPoundFreight);
    is("At our dock per lb", freight.bothWays?.dock);
    is("Delivered per lb", freight.bothWays?.delivered);
    is("Needs", freight.needs.map((one) => `${one}; `).join(""));
  });
  const accounts = rows("accounts");
  check("accounts", accounts.length, totes.receivables.accounts.length);
  totes.receivables.accounts.forEach((account, i) => {
    const row = accounts[i] ?? [];
    check(`account ${i}`, row[0], account.buyer);
    check(`${account.buyer} money`, row[1], account.currency);
    check(`${account.buyer} owed`, row[2], account.balance);
    ageBands.forEach((band, b) =>
      check(`${account.buyer} ${band}`, row[3 + b], account.byBand[band]),
    );
    check(`${account.buyer} credits`, row[8], account.credits);
    check(`${account.buyer} unapplied`, row[9], account.unapplied);
    check(
      `${account.buyer} longest`,
      row[10],
      Math.max(0, ...account.late.map(({ daysLate }) => daysLate)),
    );
  });
  rows("invoices").forEach((row, i) => {
    const invoice = totes.receivables.invoices[i] ?? fail();
    check(`${invoice.bill} balance`, row[7], invoice.balance);
    check(`${invoice.bill} late`, row[8], invoice.daysLate);
    check(`${invoice.bill} band`, row[9], invoice.band);
  });
  for (const row of rows("money")) {
    const total = totes.totals.find(({ currency }) => currency === row[0]);
    if (!total) continue;
    const { sold, invoiced, received, balance, late, credits, unapplied } =
      total;
    [
      sold,
      undefined,
      invoiced,
      received,
      balance,
      late,
      credits,
      unapplied,
    ].forEach((figure, c) => {
      if (figure !== undefined)
        check(`${total.currency} ${c}`, row[3 + c], figure);
    });
  }
  const balances = lotBalances(book, totes.asOf);
  const said = overdrawnIn(workbook);
  const overdrawn = balances.filter(
    ({ kind, overdraw }) => kind === "lot" && overdraw,
  );
  check("overdrawn lots", said.length, Math.max(1, overdrawn.length));
  overdrawn.forEach(({ name, overdraw }, i) => {
    if (!overdraw) return;
    const { draw, short } = overdraw;
    const pounds = (weight: number): string =>
      (weight / KG_PER_LB).toLocaleString("en-US", {
        minimumFractionDigits: 1,
        maximumFractionDigits: 1,
      });
    // A CSV file's lines and the sheet's rows are counted alike: the headings are the first.
    const row = /\d+$/.exec(draw.place)?.[0];
    check(
      `${name} first overdraw`,
      said[i],
      `${name}: ${pounds(draw.weight)} lb for ${draw.to ?? draw.what} on ${isoDate(draw.day)}, Lot use row ${row}, ${pounds(short)} lb too many`,
    );
  });
  for (const [key, name] of [
    ["lots", "Lot"],
    ["barrels", "Barrel"],
  ] as const)
    for (const row of byHeading(key)) {
      const balance = balances.find((one) => one.name === row[name]) ?? fail();
      const is = (heading: string, wanted: Stored | undefined): void =>
        check(`${balance.name} ${heading}`, row[heading], wanted);
      is("Out lb", lb(balance.out));
      is("Left lb", lb(balance.left));
      is("Counted lb", lb(balance.counted));
      is("Not explained, lb", lb(balance.unexplained));
    }
  return wrong;
}

/** What the lot balance says of overdrawn lots, line by line. */
const overdrawnIn = (workbook: Workbook): readonly string[] => {
  const cells =
    workbook.sheets.find(({ name }) => name === toteSheetNames.lots)?.cells ??
    [];
  return cells
    .filter(
      ({ column, value }) => column === 0 && /^Overdrawn, /.test(String(value)),
    )
    .map(
      ({ row }) =>
        cells.find((cell) => cell.row === row && cell.column === 1)?.value,
    )
    .filter((value) => typeof value === "string" && value !== "")
    .map(String);
};

const fail = (): never => {
  throw new Error("the sheet has a row the trade has not");
};

describe.each([
  ["the demo farm", demoTables, "by hand" as const],
  ["a farm with troubles", troubledTotes, "oldest first" as const],
])("the tote sheets of %s", (_, tables, matching) => {
  const contents = tables();
  let live: Workbook;
  beforeAll(async () => {
    const book = chosen(totesBook(contents), matching);
    live = (await calculate(book, gridFunctions)).workbook;
  }, 240_000);

  test("hold the figures of the trade", () => {
    expect(againstTrade(contents, live, matching)).toEqual([]);
  });

  test("are the same in LibreOffice, made to recalculate their portable twin", async () => {
    const folder = mkdtempSync(join(tmpdir(), "tare-and-tally-agreement-"));
    const file = join(folder, "totes.xlsx");
    const plain = chosen(totesBook(contents, { plain: true }), matching);
    writeFileSync(file, await writeXlsx(plain));
    const [converted = ""] = convertWithLibreOffice([file], {
      to: "xlsx",
      recalculate: true,
    });
    const { workbook } = await readXlsx(readFileSync(converted), "totes.xlsx");
    expect(differences(live, workbook)).toEqual([]);
  }, 240_000);

  test("are the same when their file is read back", async () => {
    const { workbook } = await readXlsx(await writeXlsx(live), "totes.xlsx");
    expect(differences(live, workbook)).toEqual([]);
  });
});
