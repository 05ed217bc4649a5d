import type { Binder, BinderLot } from "../../book/binder-contents";
import { balancePounds } from "../../book/totes-lots";
import { type PrintedPage, weight } from "./printed-page";

/** What becomes of syrup, in the words of Lot use, and what oak took. */
const uses = [
  ["bottled", "Bottled"],
  ["tote sale", "Totes"],
  ["into oak barrel", "Into oak"],
  ["sold otherwise", "Sold otherwise"],
  ["lost or adjusted", "Lost"],
  ["used before the season", "Used before"],
  ["taken by oak", "Taken by oak"],
] as const;

const LEFT = `{${uses.length + 3}}`;
const COUNTED = `{${uses.length + 4}}`;
const OFF = `{1}+{2}-SUM({3}:{${uses.length + 2}})-${LEFT}`;

/** The mass balance of every lot and barrel over the season. */
export const lotsPage = ({ season, lots }: Binder): PrintedPage => ({
  name: "Binder lots",
  title: `Lots and barrels over season ${season}, pounds`,
  asides: [
    "At the start, in, out and left; a count stands beside what the book says.",
  ],
  tables: (["lot", "barrel"] as const).map((kind) => ({
    title: kind === "lot" ? "Lots" : "Oak barrels",
    columns: [
      { label: kind === "lot" ? "Lot" : "Barrel" },
      { label: "At the start", format: weight, summed: true as const },
      { label: "In", format: weight, summed: true as const },
      ...uses.map(([, label]) => ({
        label,
        format: weight,
        summed: true as const,
      })),
      { label: "Left", format: weight, summed: true as const },
      { label: "Counted", format: weight },
      { label: "Count less book", format: weight },
      { label: "Closes" },
    ],
    rows: lots.filter((lot) => lot.kind === kind).map(row),
  })),
  widths: [14, 11, 11, 11, 11, 11, 13, 10, 11, 11, 11, 11, 12, 11],
  landscape: true,
  foot: `Lots, season ${season}`,
});

const row = ({ name, opening, received, byUse, left, counted }: BinderLot) =>
  [
    name,
    balancePounds(opening),
    balancePounds(received),
    ...uses.map(([what]) => {
      const used = byUse.get(what);
      return used === undefined ? undefined : balancePounds(used);
    }),
    balancePounds(left),
    counted === undefined ? undefined : balancePounds(counted),
    { formula: `=IF(ISNUMBER(${COUNTED}),ROUND(${COUNTED}-${LEFT},6),"")` },
    {
      formula: `=IF(ABS(${OFF})<0.00001,"yes","off by "&TEXT(${OFF},"#,##0.00"))`,
    },
  ] as const;
