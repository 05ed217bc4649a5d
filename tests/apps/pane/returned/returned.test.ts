import {
  offersFor,
  type Offer,
} from "../../../../src/apps/pane/returned/offers";
import { shownAs } from "../../../../src/apps/pane/returned/shown-as";
import { takeOver } from "../../../../src/apps/pane/returned/take-over";
import type { CopyChange } from "../../../../src/sheets/compare/compare-workbooks";
import type { Workbook } from "../../../../src/sheets/workbook";
import { demoWorkbook } from "../../../support/demo-workbook";
import { fakeHost, type FakeHost } from "../../../support/fake-host";

const COSTING = "Cost P250-LOFT";
const live = demoWorkbook(["P250-LOFT"], 1200);
const cell = (row: number, column: number, value: string | number) => ({
  row,
  column,
  value,
});
/** A copy with the few rows these tests change, as it was sent. */
const sent: Workbook = {
  title: "",
  names: [],
  sheets: [
    {
      name: COSTING,
      tables: [],
      validations: [],
      merges: [],
      frozen: { rows: 0, columns: 0 },
      widths: {},
      heights: {},
      cells: [
        cell(0, 0, "What you can change"),
        cell(1, 0, "Bottles in this run"),
        cell(1, 1, 1200),
        cell(1, 2, "bottles"),
        cell(2, 0, "Prices as of"),
        cell(2, 1, 46_000),
        cell(4, 0, "The product"),
        cell(5, 0, "Filled volume at 68 °F"),
        cell(5, 1, 252),
        cell(5, 2, "mL"),
      ],
    },
  ],
};

const changed = (row: number, was: number, now: number): CopyChange => ({
  sheet: COSTING,
  row,
  column: 1,
  what: "",
  kind: "changed",
  was,
  now,
});

async function offerOn(host: FakeHost, change: CopyChange): Promise<Offer> {
  const book = {
    tables: await host.readTables(),
    names: await host.readNames(),
  };
  const [offer] = await offersFor(host, book, [change], sent);
  if (!offer) throw new Error("no offer");
  return offer;
}

async function accepted(host: FakeHost, change: CopyChange) {
  const offer = await offerOn(host, change);
  if (offer.can !== "take over") throw new Error(offer.why);
  return { offer, write: await takeOver(host, offer, "#,##0") };
}

test("an accepted fill goes into Products, is then in the book, and Undo puts the old one back", async () => {
  const host = fakeHost(live);
  const change = changed(5, 252, 253.5);
  const { offer, write } = await accepted(host, change);
  expect(offer.where).toMatch(/^Products, [A-Z]+\d+: Fill mL at 68 °F$/);
  expect(offer.holds).toBe(252);
  expect(await host.readCell(offer.place)).toMatchObject({ value: 253.5 });
  expect(await offerOn(host, change)).toMatchObject({ isDone: true });
  expect(write.says).toContain("is now 253.5; it was 252.");
  expect(await write.takeBack?.()).toContain("is 252 again");
  expect(await host.readCell(offer.place)).toMatchObject({ value: 252 });
});

test("an input is found on the open costing sheet by its label, wherever it stands", async () => {
  const moved: Workbook = {
    ...live,
    sheets: live.sheets.map((sheet) =>
      sheet.name === COSTING
        ? {
            ...sheet,
            cells: sheet.cells.map((one) => ({ ...one, row: one.row + 3 })),
          }
        : sheet,
    ),
  };
  const host = fakeHost(moved);
  const { offer } = await accepted(host, changed(1, 1200, 2400));
  const label = moved.sheets
    .find(({ name }) => name === COSTING)
    ?.cells.find(({ value }) => value === "Bottles in this run");
  expect(offer.place).toEqual({ sheet: COSTING, row: label?.row, column: 1 });
  expect(await host.readCell(offer.place)).toMatchObject({ value: 2400 });
});

test("a cell with a formula is left alone, and a missing costing sheet is named", async () => {
  expect(
    await offerOn(fakeHost(live), changed(2, 46_000, 46_100)),
  ).toMatchObject({
    can: "nothing",
    why: expect.stringContaining("holds a formula") as string,
  });
  const book = demoWorkbook([], 1200);
  expect(await offerOn(fakeHost(book), changed(1, 1200, 2400))).toEqual({
    can: "nothing",
    why: "it is typed on the costing sheet of P250-LOFT, which this workbook does not have; build it first",
  });
});

test("what somebody has changed since the offer was made stays, and so it does when taking back", async () => {
  const host = fakeHost(live);
  const offer = await offerOn(host, changed(5, 252, 253.5));
  if (offer.can !== "take over") throw new Error(offer.why);
  await host.setCell(offer.place, 260);
  await expect(takeOver(host, offer, undefined)).rejects.toThrow(
    "has been changed since",
  );
  const fresh = await accepted(host, changed(5, 252, 253.5));
  expect(fresh.offer.isMoved).toBe(true);
  await host.setCell(offer.place, 261);
  await expect(fresh.write.takeBack?.()).rejects.toThrow(
    "has been changed since",
  );
  expect(await host.readCell(offer.place)).toMatchObject({ value: 261 });
});

test("values are shown by their number formats, with every digit somebody typed", () => {
  expect(shownAs(7.2, "#,##0.00")).toBe("7.20");
  expect(shownAs(7.2049, "#,##0.00")).toBe("7.2049");
  expect(shownAs(0.41, "0%")).toBe("41 %");
  expect(shownAs(46_000, "yyyy-mm-dd")).toBe("2025-12-09");
  expect(shownAs(null)).toBe("nothing");
  expect(shownAs("7.20")).toBe("“7.20”");
  expect(shownAs({ error: "#N/A" })).toBe("#N/A");
});
