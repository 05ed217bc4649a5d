import { bookTablesFromCsv } from "../../../src/book/from-csv";
import {
  unitSystemNamed,
  unitSystemOf,
} from "../../../src/sheets/metric/unit-system";
import { run } from "../../apps/cli/array-terminal";
import { demoFolder, demoTables } from "../../book/csv-folder";

test("a book says the units of its copies, else they are the US ones", () => {
  expect(unitSystemOf(demoTables())).toBe("US");
  expect(unitSystemOf([])).toBe("US");
  const metric = bookTablesFromCsv(
    demoFolder({
      "farm_settings.csv": (text) => `${text.trimEnd()}\nUnits,Metric,,\n`,
    }),
  ).tables;
  expect(unitSystemOf(metric)).toBe("metric");
});

test("other units are refused in one sentence, before the book is read", async () => {
  expect(unitSystemNamed(" Metric ", "--units")).toBe("metric");
  const { code, complained } = await run([
    ...["handover", "no such book", "--for", "partner"],
    ...["--sheets", "prices", "--units", "imperial"],
  ]);
  expect(code).toBe(2);
  expect(complained).toEqual(['--units: "imperial" is neither US nor metric.']);
});
