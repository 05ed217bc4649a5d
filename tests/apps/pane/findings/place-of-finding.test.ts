import { placeOfFinding } from "../../../../src/apps/pane/findings/place-of-finding";
import { readBook } from "../../../../src/book/read";
import { demoTables } from "../../../book/csv-folder";

const tables = demoTables().map(({ from: _, ...table }) => table);
const at = (where: string): ReturnType<typeof placeOfFinding> =>
  placeOfFinding({ where, found: "", meaning: "", todo: "" }, tables);

test("a finding leads to its cell", () => {
  expect(at("Lots row 7, Net lb")).toEqual({
    sheet: "Lots",
    row: 6,
    column: 10,
  });
  expect(at("Lots row 7")).toEqual({ sheet: "Lots", row: 6, column: 0 });
  expect(at("table Lots")).toEqual({ sheet: "Lots", row: 0, column: 0 });
});

test("what is not in the book leads nowhere", () => {
  expect(at("Lots row 9999")).toBeUndefined();
  expect(at("bulk_lots.csv line 7, net_lb")).toBeUndefined();
});

test("every finding about the demo farm's rows leads to a cell", () => {
  const { findings } = readBook(tables);
  expect(findings.length).toBeGreaterThan(0);
  const nowhere = findings.filter((f) => !placeOfFinding(f, tables));
  expect(nowhere.map((f) => f.where)).toEqual([]);
});
