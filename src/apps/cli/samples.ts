import path from "node:path";
import { unusable } from "../../measures/cannot-answer";
import { writeXlsx } from "../../hosts/file/write-xlsx";
import { calculate } from "../../hosts/grid/calculate";
import { farmBook } from "../../sheets/farm-book";
import { gridFunctions } from "../grid-functions";
import { costingWorkbook } from "./costing-workbook";
import { readFolder } from "./read-book-files";
import type { Command } from "./terminal";
import { writeWhole } from "./write-files";

const EXAMPLE = { product: "P250-LOFT", bottles: 1200 };

/** Every generated sample workbook: the demo farm's book, and one product's costing with our functions and without. */
export async function sampleWorkbooks(
  root: string,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const { contents } = readFolder(
    path.join(root, "sample-workbooks/fernkettle-hollow"),
  );
  const { workbook } = await calculate(farmBook(contents), gridFunctions);
  return new Map([
    ["fernkettle-hollow.xlsx", await writeXlsx(workbook)],
    ["costing-p250-loft.xlsx", await costingWorkbook(contents, [EXAMPLE])],
    [
      "costing-p250-loft-plain.xlsx",
      await costingWorkbook(contents, [EXAMPLE], true),
    ],
  ]);
}

/** Writes the sample workbooks from the demo farm's CSV files. */
export const samples: Command = async (args, terminal) => {
  if (args.length > 0)
    throw unusable(`"${args[0]}" is not known here. Usage: npm run samples`);
  for (const [name, bytes] of await sampleWorkbooks(terminal.root)) {
    writeWhole(path.join(terminal.root, "sample-workbooks", name), bytes);
    terminal.say(
      `sample-workbooks/${name}: ${bytes.length.toLocaleString("en-US")} bytes.`,
    );
  }
  return 0;
};
