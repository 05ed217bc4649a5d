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
  const rows = (
    key:
      | "tickets"
      | "contracts"
      | "accounts"
      | "invoices"
      | "lots"
      | "barrels"
      | "money",
  ): readonly (readonly Stored[])[] => {
    const place = places[key];
    if (!place) throw new Error(`no ${key}`);
    return valuesOf(workbook, place).filter(
      ([first]) => typeof first === "string" && first !== "",
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
  const tickets = rows("tickets");
  check("tickets", tickets.length, totes.tickets.length);
  totes.tickets.forEach((ticket, i) => {
    const row = tickets[i] ?? [];
    const { row: written } = ticket;
    check(`${written.ticket} name`, row[0], written.ticket);
    check(`${written.ticket} net`, row[7], lb(ticket.net));
    check(`${written.ticket} gallons`, row[9], ticket.gallons);
    check(`${written.ticket} quantity`, row[12], ticket.quantity);
    check(`${written.ticket} amount`, row[13], ticket.amount);
    check(`${written.ticket} per lb`, row[15], ticket.perPound);
    check(
      `${written.ticket} refused`,
      row[22],
      ticket.gradesRefused.map((g) => `${g}; `).join(""),
    );
    check(`${written.ticket} days out`, row[25], ticket.daysOut);
    check(`${written.ticket} out`, row[26] === "out", ticket.isOut);
    check(
      `${written.ticket} withheld`,
      row[27] !== "" && row[27] !== null,
      ticket.needs.length > 0,
    );
  });
  rows("contracts").forEach((row, i) => {
    const { row: written, progress, amount } = totes.contracts[i] ?? fail();
    check(`${written.contract} left`, row[5], lb(progress.left));
    check(`${written.contract} totes`, row[6], progress.totesLeft);
    check(`${written.contract} over`, row[7], lb(progress.overIfFull));
    check(`${written.contract} share`, row[8], progress.shareShipped);
    check(`${written.contract} time`, row[9], progress.shareOfTime);
    check(`${written.contract} brix`, row[14], progress.meanBrix);
    check(`${written.contract} short`, row[16], progress.brixShortfall);
    check(`${written.contract} amount`, row[18], amount);
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
  for (const row of [...rows("lots"), ...rows("barrels")]) {
    const balance = balances.find(({ name }) => name === row[0]) ?? fail();
    check(`${balance.name} out`, row[9], lb(balance.out));
    check(`${balance.name} left`, row[10], lb(balance.left));
    check(`${balance.name} counted`, row[11], lb(balance.counted));
    check(`${balance.name} unexplained`, row[12], lb(balance.unexplained));
  }
  return wrong;
}

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
