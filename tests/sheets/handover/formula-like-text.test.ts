import { strFromU8, unzipSync } from "fflate";
import { writeCopy } from "../../../src/hosts/file/leaks/write-copy";
import { demoTables } from "../../book/csv-folder";
import { demoCopy, pairsOf, valueAt } from "../../support/handed-over";

test.each(["=2+3", "+2+3", "-2+3", "@SUM(A1)"])(
  "a description that reads %s stays text in the copy",
  async (text) => {
    const contents = demoTables().map((table) =>
      table.name === "Products"
        ? {
            ...table,
            rows: table.rows.map((row) =>
              row.map((cell) =>
                cell === "Private label Oatloft 250 mL" ? text : cell,
              ),
            ),
          }
        : table,
    );
    const copy = await demoCopy("customer", "costing:P250-LOFT", {}, contents);
    const pair = pairsOf(copy).find(({ name }) => name === "description");
    expect(pair && valueAt(copy.workbook, pair.sheet, pair.inCopy)).toBe(text);
    const parts = unzipSync(await writeCopy(copy));
    const sheet = strFromU8(
      parts["xl/worksheets/sheet1.xml"] ?? new Uint8Array(),
    );
    expect(
      strFromU8(parts["xl/sharedStrings.xml"] ?? new Uint8Array()),
    ).toContain(`>${text}<`);
    expect(sheet).not.toContain(`<f>${text.replace(/^=/, "")}</f>`);
  },
  120_000,
);
