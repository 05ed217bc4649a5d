import { snapshotOf } from "../../../src/hosts/grid/snapshot";
import { workbookOf } from "../../../src/hosts/grid/workbook-of";
import { richWorkbook } from "./invented-workbook";

test("a workbook written for the grid reads back as the same workbook", () => {
  expect(workbookOf(snapshotOf(richWorkbook))).toEqual(richWorkbook);
});

test("a cell's colours come back as six digits however the grid wrote them", () => {
  const snapshot = snapshotOf(richWorkbook);
  const [sheet] = Object.values(snapshot.sheets);
  if (!sheet?.cellData) throw new Error("the first sheet has cells");
  sheet.cellData[1] = {
    0: { s: { cl: { rgb: "rgb(74, 44, 23)" }, bg: { rgb: "#FFF" } } },
  };
  expect(workbookOf(snapshot).sheets[0]?.cells[1]).toEqual({
    row: 1,
    column: 0,
    style: { color: "#4a2c17", fill: "#ffffff" },
  });
});

test("choices written with commas by the grid's own dialog are read as choices", () => {
  const snapshot = snapshotOf(richWorkbook);
  const rules = snapshot.resources?.find(
    (r) => r.name === "SHEET_DATA_VALIDATION_PLUGIN",
  );
  if (!rules) throw new Error("the snapshot holds validations");
  rules.data = rules.data.replace(
    /"formula1":"\[.*?\]"/,
    '"formula1":"Amber,Dark"',
  );
  expect(workbookOf(snapshot).sheets[0]?.validations[1]?.rule).toEqual({
    kind: "list",
    choices: ["Amber", "Dark"],
  });
});
