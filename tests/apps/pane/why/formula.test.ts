import { readFormula } from "../../../../src/apps/pane/why/formula";
import {
  inWords,
  ourCallsOf,
  referencesOf,
} from "../../../../src/apps/pane/why/words";

const kinds = (text: string): string | undefined => readFormula(text)?.kind;

describe("reading a worksheet formula", () => {
  test.each([
    ["=B4", "cells"],
    ["=$B$4:C9", "cells"],
    ["='Cost P250-LOFT'!$B$4", "cells"],
    ["=Lots[Left lb]", "columns"],
    ["=Lots[[#This Row],[Net lb]]", "columns"],
    ["=Lots[[Received]:[Grade]]", "columns"],
    ["=cost_P250_LOFT_bottles", "name"],
    ["=SYRUP.MARGIN(B4,C4)", "call"],
    ["=-2^2", "operation"],
    ["=35%", "sign"],
    ['="say ""hot"""', "value"],
    ["=#N/A", "error"],
  ])("%s", (text, kind) => {
    expect(kinds(text)).toBe(kind);
  });

  test.each(["={1,2;3,4}", "=A1#", "=SUM(A1", "=A1 B1", "=@A1", "="])(
    "%s is left alone rather than misread",
    (text) => {
      expect(readFormula(text)).toBeUndefined();
    },
  );

  test("a sheet's name may hold an apostrophe", () => {
    expect(readFormula("='Grower''s lots'!B2")).toMatchObject({
      kind: "cells",
      sheet: "Grower's lots",
      area: { row: 1, column: 1, rows: 1, columns: 1 },
    });
  });

  test("a range typed backwards is the same range", () => {
    expect(readFormula("=C9:B4")).toMatchObject({
      area: { row: 3, column: 1, rows: 6, columns: 2 },
    });
  });

  test("multiplication binds before addition, and a sign before a power as worksheets do", () => {
    expect(readFormula("=A1+B1*C1")).toMatchObject({
      operator: "+",
      right: { operator: "*" },
    });
    expect(readFormula("=-A1^2")).toMatchObject({
      operator: "^",
      left: { kind: "sign" },
    });
  });

  test("an argument left out keeps its place", () => {
    const read = readFormula("=SYRUP.DENSITY(A1,,B1)");
    expect(read).toMatchObject({
      args: [{ text: "A1" }, undefined, { text: "B1" }],
    });
  });

  test("a column heading may hold a percent sign, a degree sign and a quoted bracket", () => {
    expect(readFormula("=Lots[Light transmission %]")).toMatchObject({
      of: { from: "Light transmission %" },
    });
    expect(readFormula("=T[[#This Row],[Fill mL at 68 °F]]")).toMatchObject({
      of: { from: "Fill mL at 68 °F", rows: "this row" },
    });
    expect(readFormula("=T['[odd']]")).toMatchObject({ of: { from: "[odd]" } });
  });
});

describe("a formula in words", () => {
  test("its references become what the sheet calls them", () => {
    const read = readFormula("=(B4-B5)/C2*100%");
    const labels: Readonly<Record<string, string>> = {
      B4: "Gross",
      B5: "Tare",
      C2: "Drums",
    };
    expect(read && inWords(read, (r) => labels[r.text])).toBe(
      "(“Gross” − “Tare”) ÷ “Drums” × 100 %",
    );
  });

  test("each reference is listed once, and only the outermost of our calls", () => {
    const read = readFormula(
      "=IFERROR(SYRUP.VOLUME_OF(B4,SYRUP.BLEND_BRIX(A1:A3,B1:B3)),B4)",
    );
    expect(read && referencesOf(read).map((r) => r.text)).toEqual([
      "B4",
      "A1:A3",
      "B1:B3",
    ]);
    const calls = read ? ourCallsOf(read).map((c) => c.name) : [];
    expect(calls.length).toBeLessThanOrEqual(1);
  });
});
