import { readFileSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { sampleWorkbooks } from "../../src/apps/cli/samples";
import { holdsAddInFunctions } from "../../src/hosts/file/add-in-functions";
import { checkPackage } from "../../src/hosts/file/check-package";
import { readXlsx } from "../../src/hosts/file/read-xlsx";
import { cellAddress } from "../../src/sheets/address";
import type { Stored, Workbook } from "../../src/sheets/workbook";
import { root } from "../architecture/project-files";
import { convertWithLibreOffice } from "../support/libre-office";

const LIVE = "costing-p250-loft.xlsx";
const PLAIN = "costing-p250-loft-plain.xlsx";
const names = ["fernkettle-hollow.xlsx", LIVE, PLAIN];
const kept = (name: string): string => join(root, "sample-workbooks", name);

const bytesOf = (file: string): Uint8Array =>
  new Uint8Array(readFileSync(file));
const opened = async (file: string): Promise<Workbook> =>
  (await readXlsx(bytesOf(file), "sample.xlsx")).workbook;

/** Every cell with a value, by "sheet!A1". */
const valuesOf = (
  { sheets }: Workbook,
  formulasOnly = false,
): ReadonlyMap<string, Stored> =>
  new Map(
    sheets.flatMap((sheet) =>
      sheet.cells
        .filter((cell) => !formulasOnly || cell.formula !== undefined)
        .map((cell) => [
          `${sheet.name}!${cellAddress(cell.row, cell.column)}`,
          cell.value ?? null,
        ]),
    ),
  );

const isError = (value: Stored | undefined): boolean =>
  typeof value === "object" && value !== null;

const errorsIn = (workbook: Workbook): readonly string[] =>
  [...valuesOf(workbook)]
    .filter(([, value]) => isError(value))
    .map(([place]) => place)
    .sort();

test("the sample workbooks are, byte for byte, what `npm run samples` makes now", async () => {
  const made = await sampleWorkbooks(root);
  expect([...made.keys()].sort()).toEqual([...names].sort());
  const stale = [...made]
    .filter(([name, bytes]) => !Buffer.from(bytes).equals(bytesOf(kept(name))))
    .map(([name]) => name);
  expect(stale).toEqual([]);
});

test.each(names)("%s is a whole package", (name) => {
  expect(checkPackage(bytesOf(kept(name)))).toEqual([]);
});

test("only the plain copy holds none of our functions", () => {
  expect(names.map((name) => holdsAddInFunctions(bytesOf(kept(name))))).toEqual(
    [true, true, false],
  );
});

test("the plain copy and the one with our functions show the same figures", async () => {
  const [live, plain] = await Promise.all(
    [LIVE, PLAIN].map(async (name) => valuesOf(await opened(kept(name)))),
  );
  const sheet = "Cost P250-LOFT!";
  const figures = [...(live ?? [])].filter(
    ([place, value]) => place.startsWith(sheet) && typeof value === "number",
  );
  expect(figures.length).toBeGreaterThan(50);
  for (const [place, value] of figures)
    expect([place, closeTo(plain?.get(place), value)]).toEqual([place, true]);
});

// LibreOffice had no part in writing these files.
describe("LibreOffice", () => {
  let folders: readonly string[] = [];
  let untouched: readonly Workbook[] = [];
  let recalculated: Workbook;

  beforeAll(async () => {
    const all = convertWithLibreOffice(names.map(kept), { to: "xlsx" });
    const [plain = ""] = convertWithLibreOffice([kept(PLAIN)], {
      to: "xlsx",
      recalculate: true,
    });
    folders = [dirname(all[0] ?? plain), dirname(plain)];
    untouched = await Promise.all(all.map(opened));
    recalculated = await opened(plain);
  }, 240_000);

  afterAll(() => {
    for (const folder of folders)
      rmSync(folder, { recursive: true, force: true });
  });

  test("opens all three and shows no error that is not in the workbook itself", async () => {
    for (const [i, name] of names.entries()) {
      const shown = untouched[i];
      if (!shown) throw new Error(`${name} was not opened`);
      const own = await opened(kept(name));
      expect([name, errorsIn(shown)]).toEqual([name, errorsIn(own)]);
      expect(shown.sheets.map((s) => s.name)).toEqual(
        own.sheets.map((s) => s.name),
      );
    }
  });

  test("works out every formula of the plain copy to the figure stored with it", async () => {
    const stored = valuesOf(await opened(kept(PLAIN)), true);
    const worked = valuesOf(recalculated);
    expect(stored.size).toBeGreaterThan(1000);
    const different = [...stored]
      .filter(([place, value]) => !closeTo(worked.get(place), value))
      .map(([place, value]) => ({ place, value, worked: worked.get(place) }));
    expect(different).toEqual([]);
  });
});

/** A blank result comes back from a file as no cell at all. */
function closeTo(given: Stored | undefined, wanted: Stored): boolean {
  if (typeof wanted === "number" && typeof given === "number")
    return Math.abs(given - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted));
  const text = (value: Stored | undefined): string =>
    value === undefined || value === null ? "" : JSON.stringify(value);
  return text(given) === text(wanted) || (text(given) === "" && wanted === "");
}
