import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import {
  type Leak,
  leaksIn,
  searches,
} from "../../../../src/hosts/file/leaks/leak-check";
import { writeCopy } from "../../../../src/hosts/file/leaks/write-copy";
import type { Workbook } from "../../../../src/sheets/workbook";
import { demoCopy, type DemoCopy } from "../../../support/handed-over";
import { behindThePackage, plantedLeaks, type Put } from "./planted-leaks";

let copy: DemoCopy;
let clean: Record<string, Uint8Array>;

// The demo's grower G01 brought lot 25-01 at 2.3761 landed; a filler operator costs 24.78 an hour (bulk_lots.csv, wages.csv).
beforeAll(async () => {
  copy = await demoCopy("partner", "costing:P250-LOFT");
  clean = unzipSync(await writeCopy(copy));
}, 240_000);

const put: Put = (part, from, to) => {
  const text = strFromU8(clean[part] ?? new Uint8Array());
  const changed = text.replace(from, to);
  if (changed === text) throw new Error(`nothing to change in ${part}`);
  return { [part]: strToU8(changed) };
};

const planted = plantedLeaks(put);

/** The copy's bytes with one leak in them. */
function leaky([name, plant]: (typeof planted)[number]): Uint8Array {
  const bytes = zipSync({ ...clean, ...plant() });
  return name.endsWith("behind the package") ? behindThePackage(bytes) : bytes;
}

test("a copy as it is written holds nothing that was removed", async () => {
  expect(await leaksIn(zipSync(clean), copy.workbook, copy.secrets)).toEqual(
    [],
  );
});

/** Which search found which planted leak, filled in by the tests below. */
const finders = new Map<string, readonly string[]>();

describe.each(planted)("a leak planted in %s", (...leak) => {
  const [name, , says] = leak;
  let bytes: Uint8Array;
  let leaks: readonly Leak[];

  beforeAll(async () => {
    bytes = leaky(leak);
    const found: string[] = [];
    leaks = await leaksIn(
      bytes,
      copy.workbook,
      copy.secrets,
      Object.entries(searches).map(([search, look]) => (finished) => {
        const seen = look(finished);
        if (seen.length > 0) found.push(search);
        return seen;
      }),
    );
    finders.set(name, found);
  });

  const given = (search: typeof leaksIn): Promise<Uint8Array> =>
    writeCopy(copy, { write: () => Promise.resolve(bytes), search });

  test("is found, its part named, and the file not given out", async () => {
    expect(
      leaks
        .map(({ part, says: what }) => `${part} ${what}`)
        .filter((told) => says.test(told)),
    ).not.toEqual([]);
    const [first] = leaks;
    await expect(given(() => Promise.resolve(leaks))).rejects.toThrow(
      `The copy was not written: ${first?.part ?? ""} ${first?.says ?? ""}`,
    );
  });

  test("would be given out if nothing searched for it", async () => {
    expect(await given(() => Promise.resolve([]))).toBe(bytes);
  });
});

test.each(Object.keys(searches))(
  'searching for "%s" finds what no other search does',
  (search) => {
    const alone = [...finders].filter(
      ([, found]) => found.length === 1 && found[0] === search,
    );
    expect(finders.size).toBe(planted.length);
    expect(alone).not.toEqual([]);
  },
);

test("a copy with a leak is not written, and the sentence names the part", async () => {
  const [sheet, ...others] = copy.workbook.sheets;
  if (!sheet) throw new Error("the copy has no sheet");
  const leaky = {
    ...copy.workbook,
    sheets: [
      {
        ...sheet,
        cells: [
          ...sheet.cells,
          { row: 500, column: 0, value: "bought of G02" },
        ],
      },
      ...others,
    ],
  };
  await expect(
    writeCopy({ workbook: leaky, secrets: copy.secrets }),
  ).rejects.toThrow(
    /^The copy was not written: xl\/sharedStrings\.xml holds "g02"/,
  );
});

test("a cost of 6.048 that is shown is not taken for the 6,048 bottles that are not", async () => {
  const with6048 = (value: number | string): Workbook => ({
    title: "",
    names: [],
    sheets: [
      {
        name: "Shown",
        cells: [{ row: 5, column: 0, value }],
        tables: [],
        validations: [],
        merges: [],
        widths: {},
        heights: {},
        frozen: { rows: 0, columns: 0 },
      },
    ],
  });
  const secrets = {
    figures: new Map([[6048, "Parts, On hand"]]),
    names: new Map<string, string>(),
    bare: with6048(""),
  };
  await expect(
    writeCopy({ workbook: with6048(6.048), secrets }),
  ).resolves.toBeDefined();
  await expect(
    writeCopy({ workbook: with6048("6,048 left"), secrets }),
  ).rejects.toThrow("holds the figure 6048 (Parts, On hand)");
});
