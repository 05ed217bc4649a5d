import type { CellContent } from "../../../src/book/contents";
import type { LedgerRole } from "../../../src/book/ledger/roles";
import type { Cells } from "../../../src/book/ledger/headings";
import { serialOf } from "../../../src/measures/read-date";

/** An invented ledger as an office might keep one, and what is true of it. Columns are counted from 0. */
export interface InventedLedger {
  readonly what: string;
  readonly cells: Cells;
  readonly truth: { readonly [R in LedgerRole]?: number };
  readonly weight: "lb" | "kg";
  readonly basis: string | undefined;
  readonly currency: string | undefined;
  readonly tickets: number;
  /** Of the first ticket. */
  readonly first: { readonly date: string; readonly netLb: number };
}

const buyers = ["Oatloft Bakery", "Pinwhistle Creamery", "Nettlecombe Sauces"];
const buyer = (i: number): string => buyers[i % 3] ?? "";
const gross = (i: number): number => 3030 + ((i * 7) % 40);
const tare = (i: number): number => 128 + ((i * 5) % 16);
const net = (i: number): number => gross(i) - tare(i);
const brix = (i: number): number => 66 + ((i * 3) % 9) / 10;
const day = (i: number): number => serialOf(2026, 3, 2) + i * 3;
const rows = (
  count: number,
  row: (i: number) => readonly CellContent[],
): Cells => Array.from({ length: count }, (_, i) => row(i));
const cents = (value: number): number => Math.round(value * 100) / 100;

/** 1: one heading row, plain English, pounds; two title rows merged over the columns stand above it. */
const mergedTitles: InventedLedger = {
  what: "merged title rows over English headings",
  cells: [
    [
      "Bulk syrup, totes out, 2026",
      null,
      null,
      null,
      null,
      null,
      null,
      null,
      null,
      null,
    ],
    [
      "kept by the office",
      null,
      null,
      null,
      null,
      null,
      null,
      null,
      null,
      null,
    ],
    [],
    [
      "Scale ticket",
      "Date shipped",
      "Customer",
      "Gross lb",
      "Tare lb",
      "Net lb",
      "Brix",
      "Price $/lb",
      "Currency",
      "Lot",
      "Invoice no.",
      "Date paid",
    ],
    ...rows(12, (i) => [
      `K-${101 + i}`,
      day(i),
      buyer(i),
      gross(i),
      tare(i),
      net(i),
      brix(i),
      2.92,
      "USD",
      `26-0${1 + (i % 8)}`,
      `INV-${40 + i}`,
      i % 2 ? day(i) + 30 : null,
    ]),
  ],
  truth: {
    ticket: 0,
    date: 1,
    buyer: 2,
    gross: 3,
    tare: 4,
    net: 5,
    brix: 6,
    price: 7,
    currency: 8,
    lot: 9,
    invoice: 10,
    paid: 11,
  },
  weight: "lb",
  basis: "per lb",
  currency: "USD",
  tickets: 12,
  first: { date: "2026-03-02", netLb: 2902 },
};

/** 2: French, kilograms with decimal commas as text, days as 25/03/2026, Canadian money. */
const french: InventedLedger = {
  what: "French headings, kilograms and decimal commas as text, days as text",
  cells: [
    [
      "No de bon",
      "Date d'expédition",
      "Acheteur",
      "Poids brut (kg)",
      "Tare (kg)",
      "Poids net (kg)",
      "Degré Brix",
      "Prix ($ CA/kg)",
      "Lot",
      "Facture",
      "Payé le",
    ],
    ...rows(14, (i) => [
      `B${2001 + i}`,
      `${String(12 + i).padStart(2, "0")}/03/2026`,
      buyer(i),
      `${String(1375 + i).replace(/^1/, "1 ")},5`,
      `${60 + (i % 4)},0`,
      `${String(1375 + i - 60 - (i % 4)).replace(/^1/, "1 ")},5`,
      `66,${i % 9}`,
      "8,95",
      `26-0${1 + (i % 8)}`,
      `F-${300 + i}`,
      null,
    ]),
  ],
  truth: {
    ticket: 0,
    date: 1,
    buyer: 2,
    gross: 3,
    tare: 4,
    net: 5,
    brix: 6,
    price: 7,
    lot: 8,
    invoice: 9,
    paid: 10,
  },
  weight: "kg",
  basis: "per kg",
  currency: "CAD",
  tickets: 14,
  // Hand arithmetic: (1,375.5 − 60.0) kg ÷ 0.45359237 = 2,900.1811 lb.
  first: { date: "2026-03-12", netLb: 2900.1811 },
};

/** 3: headings split over two rows, the group named once over its columns. */
const splitHeadings: InventedLedger = {
  what: "headings split over two rows",
  cells: [
    [
      "Tote",
      "Out",
      "Sold to",
      "Weights (lb)",
      null,
      null,
      "Syrup",
      null,
      "Money",
      null,
      "Bill",
    ],
    [
      "no.",
      "on",
      null,
      "full",
      "empty",
      "net",
      "Brix",
      "lot",
      "price",
      "amount",
      "no.",
    ],
    ...rows(10, (i) => [
      `${700 + i}`,
      day(i),
      buyer(i),
      gross(i),
      tare(i),
      net(i),
      brix(i),
      `26-0${1 + (i % 8)}`,
      34.1,
      cents((net(i) / 11.04) * 34.1),
      `BL${i + 1}`,
    ]),
  ],
  truth: {
    ticket: 0,
    date: 1,
    buyer: 2,
    gross: 3,
    tare: 4,
    net: 5,
    brix: 6,
    lot: 7,
    price: 8,
    amount: 9,
    invoice: 10,
  },
  weight: "lb",
  basis: "per gal",
  currency: undefined,
  tickets: 10,
  first: { date: "2026-03-02", netLb: 2902 },
};

/** 4: a month's total after every third row, and the headings again after it. */
const headings4 = [
  "Ticket",
  "Shipped",
  "Buyer",
  "Gross",
  "Tare",
  "Net",
  "°Bx",
  "Amount (USD)",
  "Paid?",
];
const totalsBetween: InventedLedger = {
  what: "totals rows and repeated headings in the middle",
  cells: [
    headings4,
    ...rows(12, (i) => [
      `T${i + 1}`,
      day(i),
      buyer(i),
      gross(i),
      tare(i),
      net(i),
      brix(i),
      cents(net(i) * 2.42),
      i % 3 === 0 ? "yes" : null,
    ]).flatMap((row, i) =>
      i % 3 === 2
        ? [
            row,
            ["Total month", null, null, 9100, 400, 8700, null, 21000, null],
            ["March goes on", null, null, null, null, null, null, null, null],
            headings4,
          ]
        : [row],
    ),
    [null, null, null, 36_400, 1600, 34_800, null, null, null],
  ],
  truth: {
    ticket: 0,
    date: 1,
    buyer: 2,
    gross: 3,
    tare: 4,
    net: 5,
    brix: 6,
    amount: 7,
    paid: 8,
  },
  weight: "lb",
  basis: undefined,
  currency: "USD",
  tickets: 12,
  first: { date: "2026-03-02", netLb: 2902 },
};

/** 5: pounds and kilograms in the same columns, a column beside saying which. */
const mixedUnits: InventedLedger = {
  what: "kg and lb mixed, a unit column beside",
  cells: [
    [
      "Tote #",
      "Date",
      "Client",
      "Full",
      "Empty",
      "Unit",
      "Sugar",
      "Price",
      "Per",
      "USD/CAD",
      "Inv",
    ],
    ...rows(12, (i) => {
      const isKg = i % 4 === 3;
      return [
        `X${i}`,
        day(i),
        buyer(i),
        isKg ? 1381 : gross(i),
        isKg ? 60 : tare(i),
        isKg ? "kg" : "lb",
        brix(i),
        isKg ? 8.95 : 2.92,
        isKg ? "kg" : "lb",
        isKg ? "CAD" : "USD",
        `N${i}`,
      ];
    }),
  ],
  truth: {
    ticket: 0,
    date: 1,
    buyer: 2,
    gross: 3,
    tare: 4,
    unit: 5,
    brix: 6,
    price: 7,
    basis: 8,
    currency: 9,
    invoice: 10,
  },
  weight: "lb",
  basis: "per lb",
  currency: undefined,
  tickets: 12,
  first: { date: "2026-03-02", netLb: 2902 },
};

/** 6: days as American text, weights as text with their units, money beside prices. */
const textDates: InventedLedger = {
  what: "text dates and weights with their units",
  cells: [
    [
      "Slip",
      "Went out",
      "Account",
      "Weight full",
      "Weight empty",
      "Brix",
      "Rate",
      "Lots used",
      "Cheque",
    ],
    ...rows(15, (i) => [
      `S-${i + 1}`,
      `${3 + (i % 2)}/${14 + i}/2026`,
      buyer(i),
      `${gross(i).toLocaleString("en-US")} lb`,
      `${tare(i)} lb`,
      `${brix(i)}°`,
      "US$2.92/lb",
      `26-0${1 + (i % 8)}`,
      i % 2 ? `#${500 + i}` : null,
    ]),
  ],
  truth: {
    ticket: 0,
    date: 1,
    buyer: 2,
    gross: 3,
    tare: 4,
    brix: 5,
    price: 6,
    lot: 7,
    paid: 8,
  },
  weight: "lb",
  basis: "per lb",
  currency: "USD",
  tickets: 15,
  first: { date: "2026-03-14", netLb: 2902 },
};

/** 7: columns somebody hid hold the same weights in kilograms and old notes; they come first. */
const hiddenColumns: InventedLedger = {
  what: "hidden columns with the same weights in kilograms",
  cells: [
    [
      "key",
      "Brut kg",
      "Tare kg",
      "Net kg",
      "Billet",
      "Date",
      "Client",
      "Gross lb",
      "Tare lb",
      "Net lb",
      "Brix",
      "Contract",
      "Remarks",
    ],
    ...rows(9, (i) => [
      i + 1,
      Math.round(gross(i) * 0.4536 * 10) / 10,
      Math.round(tare(i) * 0.4536 * 10) / 10,
      Math.round(net(i) * 0.4536 * 10) / 10,
      `H-${i + 1}`,
      day(i),
      buyer(i),
      gross(i),
      tare(i),
      net(i),
      brix(i),
      `C-260${1 + (i % 3)}`,
      i === 4 ? "lid dented" : null,
    ]),
  ],
  truth: {
    ticket: 4,
    date: 5,
    buyer: 6,
    gross: 7,
    tare: 8,
    net: 9,
    brix: 10,
    contract: 11,
  },
  weight: "lb",
  basis: undefined,
  currency: undefined,
  tickets: 9,
  first: { date: "2026-03-02", netLb: 2902 },
};

/** 8: five thousand rows, headings that say little. */
const large: InventedLedger = {
  what: "5,000 rows under short headings",
  cells: [
    ["Tkt", "Day", "Who", "G", "T", "N", "Bx", "Batch", "$/lb", "Bill no"],
    ...rows(5000, (i) => [
      `L${10_000 + i}`,
      serialOf(2020, 1, 1) + Math.floor(i / 3),
      buyer(i),
      gross(i),
      tare(i),
      net(i),
      brix(i),
      `2${i % 7}-0${1 + (i % 8)}`,
      2.4 + (i % 5) / 10,
      `B${Math.floor(i / 2)}`,
    ]),
  ],
  truth: {
    ticket: 0,
    date: 1,
    buyer: 2,
    gross: 3,
    tare: 4,
    net: 5,
    brix: 6,
    lot: 7,
    price: 8,
    invoice: 9,
  },
  weight: "lb",
  basis: "per lb",
  currency: undefined,
  tickets: 5000,
  first: { date: "2020-01-01", netLb: 2902 },
};

export const inventedLedgers: readonly InventedLedger[] = [
  mergedTitles,
  french,
  splitHeadings,
  totalsBetween,
  mixedUnits,
  textDates,
  hiddenColumns,
  large,
];
