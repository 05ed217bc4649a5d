import {
  atRightChange,
  ownSheetChange,
  rangeIn,
  readingOf,
} from "../../../../src/apps/pane/totes/adopt";
import { leftOver, postable } from "../../../../src/apps/pane/totes/paste";
import {
  nextReceipt,
  plannedPayment,
} from "../../../../src/apps/pane/totes/payment";
import { postTickets } from "../../../../src/apps/pane/totes/post";
import {
  pastedTicket,
  withOffer,
  emptyTicket,
} from "../../../../src/apps/pane/totes/one-ticket";
import type { OpenBook } from "../../../../src/apps/pane/open-book";
import { proposeLedger } from "../../../../src/book/ledger/propose";
import { readBook } from "../../../../src/book/read";
import { checkTickets } from "../../../../src/book/tickets/check-tickets";
import { ticketFacts } from "../../../../src/book/tickets/ticket-facts";
import { totesOf } from "../../../../src/book/totes";
import type { Host } from "../../../../src/hosts/host";
import { farmBook } from "../../../../src/sheets/farm-book";
import { remembered } from "../../../../src/sheets/ledger/remembered";
import type { Cell, Workbook } from "../../../../src/sheets/workbook";
import { demoTables } from "../../../book/csv-folder";
import { inventedLedgers } from "../../../book/ledgers/ledgers";
import { fakeHost } from "../../../support/fake-host";

const demo = farmBook(demoTables());
const paste = [
  "ticket,date,gross,tare,brix,lot",
  "T-960,2026-11-20,3044,132,66.6,26-06",
  "T-961,2026-11-20,132,3044,66.6,26-06",
  'T-962,2026-11-20,"3,046",133,66.5,26-06',
].join("\n");

async function opened(host: Host): Promise<OpenBook> {
  return {
    tables: await host.readTables(),
    names: await host.readNames(),
    sheets: await host.sheetNames(),
    reading: 1,
  };
}
async function checked(host: Host, text = paste) {
  const tables = await host.readTables();
  const { book } = readBook(tables);
  return checkTickets(text, ticketFacts(book, tables, { contract: "C-2604" }));
}
const tickets = async (host: Host): Promise<readonly string[]> =>
  readBook(await host.readTables()).book.toteShipments.map(
    ({ ticket }) => ticket,
  );

describe("posting", () => {
  test("what is fine is posted with its draw from the lot; the rest stays in the box", async () => {
    const host = fakeHost(demo);
    const found = await checked(host);
    const ready = postable(found, new Set());
    await postTickets(
      host,
      ready.map((line) => line.ready),
    );
    expect((await tickets(host)).slice(-2)).toEqual(["T-044", "T-960"]);
    const { book } = readBook(await host.readTables());
    expect(book.lotUse.at(-1)).toMatchObject({
      from: "26-06",
      to: "T-960",
      what: "tote sale",
    });
    // Hand arithmetic: 2,912 lb × 2.42 a pound.
    expect(book.toteShipments.at(-1)?.amount).toBe(7047.04);
    expect(leftOver(paste, found, ready).split("\n")).toEqual([
      "ticket,date,gross,tare,brix,lot",
      "T-961,2026-11-20,132,3044,66.6,26-06",
      'T-962,2026-11-20,"3,046",133,66.5,26-06',
    ]);
  });

  test("a questioned ticket is posted once its reading was said to be right, a refused one never", async () => {
    const found = await checked(fakeHost(demo));
    const all = new Set(paste.split("\n"));
    expect(postable(found, all).map(({ name }) => name)).toEqual([
      "T-960",
      "T-962",
    ]);
  });

  test("of two posts of the same tickets at once the second is refused and writes nothing", async () => {
    const host = fakeHost(demo);
    const ready = postable(await checked(host), new Set()).map(
      (line) => line.ready,
    );
    const both = await Promise.allSettled([
      postTickets(host, ready),
      postTickets(host, ready),
    ]);
    expect(both.map(({ status }) => status)).toEqual(["fulfilled", "rejected"]);
    expect(String((both[1] as PromiseRejectedResult).reason)).toContain(
      "T-960 was posted meanwhile, so nothing was written",
    );
    expect(
      (await tickets(host)).filter((name) => name === "T-960"),
    ).toHaveLength(1);
  });

  test.each(["ToteShipments", "LotUse"])(
    "a table %s deleted behind our back is said, and nothing is half-written",
    async (name) => {
      const ready = postable(await checked(fakeHost(demo)), new Set()).map(
        (line) => line.ready,
      );
      const without: Workbook = {
        ...demo,
        sheets: demo.sheets.map((sheet) => ({
          ...sheet,
          tables: sheet.tables.filter((table) => table.name !== name),
        })),
      };
      const host = fakeHost(without);
      await expect(postTickets(host, ready)).rejects.toThrow(
        `The table ${name} is no longer in this workbook, so nothing was written`,
      );
      expect(host.workbook()).toBe(without);
    },
  );

  test("the form holds one tote to the same checks, and takes the swap it offers", async () => {
    const typed = {
      ...emptyTicket,
      ticket: "T-970",
      date: "2026-11-20",
      gross: "132",
      tare: "3044",
      brix: "66.6",
    };
    const host = fakeHost(demo);
    const [line] = (await checked(host, pastedTicket(typed))).lines;
    expect(line?.verdict).toBe("refused");
    const offer = line?.reasons.flatMap(({ offers }) => offers)[0];
    const swapped = withOffer(typed, offer ?? { label: "", cells: {} });
    expect(swapped).toMatchObject({ gross: "3044", tare: "132" });
    expect((await checked(host, pastedTicket(swapped))).lines[0]?.verdict).toBe(
      "fine",
    );
  });
});

describe("taking a payment", () => {
  const { book } = readBook(demoTables());
  const totes = totesOf(book);
  const open = totes.receivables.invoices.find(({ balance }) => balance > 0);
  const typed = {
    account: `${open?.buyer ?? ""} · ${open?.currency ?? ""}`,
    bill: open?.bill ?? "",
    amount: String(open?.balance ?? 0),
    paidOn: "2026-11-20",
    note: "",
  };

  test("it lowers what the buyer owes by just that, in its own money", async () => {
    const host = fakeHost(demo);
    await host.apply(
      plannedPayment(typed, book, totes, await host.readTables()).change,
    );
    const after = totesOf(readBook(await host.readTables()).book);
    const balance = (of: typeof totes, currency: string): number | undefined =>
      of.totals.find((one) => one.currency === currency)?.balance;
    for (const { currency } of totes.totals)
      expect(balance(after, currency)).toBeCloseTo(
        (balance(totes, currency) ?? 0) -
          (currency === open?.currency ? open.balance : 0),
        6,
      );
    expect(
      after.receivables.invoices.find(({ bill }) => bill === open?.bill)
        ?.balance,
    ).toBe(0);
  });

  test.each([
    ["more than is owed", { amount: "999999" }, "the rest becomes a credit"],
    ["no invoice", { bill: "" }, "it stays unapplied"],
    ["a decimal comma", { amount: "100,50" }, "The amount is read as $100.50"],
  ])("%s is said before it is written", (_what, change, says) => {
    const { notes } = plannedPayment(
      { ...typed, ...change },
      book,
      totes,
      demoTables(),
    );
    expect(notes.join(" ")).toContain(says);
  });

  test.each([
    ["no amount", { amount: "" }, "Type the amount"],
    ["a negative amount", { amount: "-5" }, "is not an amount"],
    [
      "a day that can be two",
      { paidOn: "03/04/2026" },
      "can be 2026-03-04 or 2026-04-03",
    ],
    ["nobody", { account: "" }, "Choose who paid"],
  ])("%s is refused", (_what, change, says) => {
    expect(() =>
      plannedPayment(
        { ...typed, ...change },
        book,
        totes,
        demoTables() as never,
      ),
    ).toThrow(says);
  });

  test("receipts go on with the book's own numbers", () => {
    const last = book.payments.at(-1);
    if (!last) throw new Error("no payment");
    expect(nextReceipt(book)).toBe("PAY-024");
    expect(nextReceipt({ payments: [] })).toBe("PAY-001");
    expect(nextReceipt({ payments: [{ ...last, receipt: "cash" }] })).toBe(
      "cash-1",
    );
  });
});

describe("adopting a ledger", () => {
  const ledger = inventedLedgers[0];
  if (!ledger) throw new Error("no ledger");
  const cells: readonly Cell[] = ledger.cells.flatMap((row, r) =>
    row.flatMap((value, c) =>
      value === null ? [] : [{ row: r, column: c, value }],
    ),
  );
  const own: Workbook = {
    title: "",
    names: [],
    sheets: [
      {
        name: "My sales",
        cells,
        tables: [],
        validations: [],
        merges: [],
        widths: {},
        heights: {},
        frozen: { rows: 0, columns: 0 },
      },
    ],
  };
  const asked = "'My sales'!A1:L16";
  async function adoption(host: Host) {
    const open = await opened(host);
    const range = rangeIn(asked, open);
    const read = await host.readArea(
      range.sheet,
      range.row,
      range.column,
      range.rows,
      range.columns,
    );
    const proposal = proposeLedger(read);
    return {
      open,
      adoption: {
        range,
        cells: read,
        rows: proposal.rows,
        how: readingOf(proposal),
      },
    };
  }

  test("ours go onto a sheet of their own; the ledger stays as it was, and how it is read is remembered", async () => {
    const host = fakeHost(own);
    const { open, adoption: adopted } = await adoption(host);
    await host.apply(ownSheetChange(adopted, open));
    expect(host.workbook().sheets[0]).toEqual(own.sheets[0]);
    expect(await host.sheetNames()).toEqual([
      "My sales",
      "Totes of My sales",
      "Ledger columns",
    ]);
    expect(remembered(await host.readTables(), asked)).toEqual(adopted.how);
    // A second time, corrected: the later word counts, and no name is taken twice.
    const again = await adoption(host);
    const how = { ...again.adoption.how, weight: "kg" as const };
    await host.apply(ownSheetChange({ ...again.adoption, how }, again.open));
    expect(remembered(await host.readTables(), asked)).toEqual(how);
    expect(await host.sheetNames()).toContain("Totes of My sales 2");
  });

  test("ours go right of the ledger into blank cells, and can be taken back", async () => {
    const host = fakeHost(own);
    const { open, adoption: adopted } = await adoption(host);
    await host.apply(atRightChange(adopted, open));
    expect(
      (await host.readCell({ sheet: "My sales", row: 3, column: 12 })).value,
    ).toBe("Net lb (worked out)");
    expect(
      (await host.readCell({ sheet: "My sales", row: 4, column: 12 })).formula,
    ).toBe("=SYRUP.TOTE_NET(D5,E5)");
    expect(remembered(await host.readTables(), asked)).toEqual(adopted.how);
    await host.undo();
    expect(host.workbook()).toBe(own);
  });

  test("beside a worksheet table one column stays blank, so that no program takes ours into it", async () => {
    const [sheet] = own.sheets;
    if (!sheet) throw new Error("no sheet");
    const host = fakeHost({
      ...own,
      sheets: [
        {
          ...sheet,
          tables: [
            {
              name: "Sales",
              area: { row: 3, column: 0, rows: 13, columns: 12 },
              columns: (ledger.cells[3] ?? []).map((heading) => ({
                heading: String(heading),
              })),
            },
          ],
        },
      ],
    });
    const { open, adoption: adopted } = await adoption(host);
    const [fill] = atRightChange(adopted, open).fill ?? [];
    expect(Math.min(...(fill?.cells ?? []).map(({ column }) => column))).toBe(
      13,
    );
  });

  test("cells in use right of it are left alone", async () => {
    const host = fakeHost(own);
    await host.setCell({ sheet: "My sales", row: 7, column: 13 }, "mine");
    const before = host.workbook();
    const { open, adoption: adopted } = await adoption(host);
    await expect(host.apply(atRightChange(adopted, open))).rejects.toThrow(
      "'My sales'!N8 is in use, so nothing was put into 'My sales'!M4:O16",
    );
    expect(host.workbook()).toBe(before);
  });

  test.each([
    ["Sales", "is no table and no range"],
    ["Nowhere!A1:C9", 'there is no sheet "Nowhere"'],
    ["'My sales'!A1", "is no range of several rows"],
  ])("%s is refused with what to write", async (text, says) => {
    const open = await opened(fakeHost(own));
    expect(() => rangeIn(text, open)).toThrow(says);
  });
});
