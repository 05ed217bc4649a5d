import { SheetsDataValidationValidatorService } from "@univerjs/sheets-data-validation";
import { GridSession } from "../../../src/hosts/grid/grid-session";
import { startHeadless } from "../../../src/hosts/grid/headless-engine";
import type { Workbook } from "../../../src/sheets/workbook";
import { bookOf, standIns } from "./invented-workbook";

const formulas = (values: readonly (number | undefined)[]): Workbook =>
  bookOf([
    { row: 0, column: 0, value: 2 },
    ...values.map((value, i) => ({
      row: i + 1,
      column: 0,
      formula: `=SYRUP.SHARE_LEFT(A${i + 1})+1`,
      ...(value === undefined ? {} : { value }),
    })),
  ]);

test.each([
  ["no", [undefined, undefined, undefined]],
  ["some", [3, undefined, 5]],
  ["some old", [300, undefined, 500]],
  ["all", [3, 4, 5]],
  ["only old", [300, 400, 500]],
])(
  "a workbook that comes with %s results is worked out once in place of another",
  async (_, values) => {
    const session = new GridSession(
      (refusals) => startHeadless(standIns, refusals),
      formulas([1, 1]),
    );
    try {
      await session.settled();
      let runs = 0;
      session.settling.onStart(() => {
        runs += 1;
      });
      await session.replace(formulas(values));
      expect(
        session.currentWorkbook().sheets[0]?.cells.map(({ value }) => value),
      ).toEqual([2, 3, 4, 5]);
      expect(runs).toBe(1);
    } finally {
      session.dispose();
    }
  },
);

test("answers that fill several cells do not shrink when their workbook gives way to another", async () => {
  const session = new GridSession(
    (refusals) => startHeadless(standIns, refusals),
    bookOf([{ row: 0, column: 0, formula: "=SYRUP.LADDER(3)" }]),
  );
  try {
    await session.settled();
    let runs = 0;
    session.settling.onStart(() => {
      runs += 1;
    });
    await session.replace(formulas([3, 4]));
    await session.settled();
    expect(runs).toBe(1);
  } finally {
    session.dispose();
  }
});

test("a late check of what was typed asks nothing of a workbook that has given way to another", async () => {
  const session = new GridSession(
    (refusals) => startHeadless(standIns, refusals),
    formulas([1]),
  );
  try {
    await session.settled();
    const checks = session.engine.univer
      .__getInjector()
      .get(SheetsDataValidationValidatorService);
    const old = session.book.id;
    const cells = [{ startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 }];
    const late = (book: string): Promise<unknown> =>
      checks.validatorRanges(book, "sheet-1", cells);
    await session.replace(formulas([1]));
    await expect(late(old)).resolves.toEqual([]);
    await expect(late(session.book.id)).resolves.toEqual([]);
    // What is no late check of an old workbook is still a fault: this sheet is in no workbook.
    await expect(
      checks.validatorRanges(session.book.id, "sheet-9", cells),
    ).rejects.toThrow(/sheet-9/);
  } finally {
    session.dispose();
  }
});
