import { totesBook } from "../../../src/apps/cli/totes-workbook";
import { gridFunctions } from "../../../src/apps/grid-functions";
import { calculate } from "../../../src/hosts/grid/calculate";
import { place } from "../../../src/sheets/place";
import { farmBook } from "../../../src/sheets/farm-book";
import { describeReceived } from "../../../src/sheets/totes/received-sheet";
import { demoTables } from "../../book/csv-folder";

test("the receiving of lot 25-01 comes to 24,192.36, landed 2.3761, usable 2.4157", async () => {
  const contents = demoTables();
  const { sheet, places } = place(describeReceived(contents, "25-01"), {
    portable: false,
  });
  const book = farmBook(contents);
  const { workbook } = await calculate(
    {
      ...book,
      sheets: [
        sheet,
        ...book.sheets.filter(
          ({ name }) => name === "Lots" || name === "Lot use",
        ),
      ],
    },
    gridFunctions,
  );
  const at = (name: string): unknown => {
    const area = places.get(name);
    return workbook.sheets[0]?.cells.find(
      ({ row, column }) => row === area?.row && column === area.column,
    )?.value;
  };
  // Source: worked scenario 3 of the demo farm, arithmetic.
  expect(at("net")).toBe(10_251);
  expect(at("pay")).toBe(24_192.36);
  expect(at("landed")).toBeCloseTo(24_357.36 / 10_251, 9);
  expect(at("usable")).toBeCloseTo(2.4157, 4);
  expect(at("deposits")).toBe(840);
  expect(at("check_net")).toBe("the same");
}, 120_000);

test("a lot that is not in the book is refused", () => {
  expect(() => totesBook(demoTables(), { received: "27-99" })).toThrow(
    'There is no lot "27-99" in Lots; enter it there first, then receive it',
  );
});
