import { loadTerms } from "./book-loads";
import { toteTerms as columns } from "./book-totes";
import { choice, date, list, mass, money, rows, text } from "./term";

const movedWeight = mass({
  label: "Moved",
  about: "weight that was moved",
  unit: "lb",
  min: 0,
  example: "521 lb",
  french: "Poids déplacé",
});

const shipped = mass({
  label: "Shipped",
  about: "net weight of one tote",
  unit: "lb",
  min: 0,
  example: "2,912 lb",
  french: "Expédié",
});

const out = mass({
  label: "Out",
  about: "weight that went out once",
  unit: "lb",
  min: 0,
  example: "6,272 lb",
  french: "Sortie",
});

/** Arguments about totes, what is owed for them, and where syrup went. */
export const toteTerms = {
  gross: columns.gross,
  tare: columns.tare,
  plateLimit: loadTerms.plateLimit,
  net: columns.net,
  price: money({
    label: "Price",
    about: "price on the basis named",
    unit: "",
    above: 0,
    example: "2.92",
    french: "Prix",
  }),
  saleBasis: choice({
    label: "Basis",
    about: "what the price is for",
    choices: ["per lb", "per gal", "per lb at 66", "per kg"],
    example: "per lb",
    french: "Base du prix",
  }),
  brix: columns.brix,
  contractWeight: columns.contractWeight,
  shipped: list(shipped, {
    label: "Shipped",
    about: "net weights shipped so far",
    example: "2,912 | 2,914",
    french: "Expédiés",
  }),
  due: date({
    label: "Due",
    about: "day the invoice is due",
    example: "2026-10-29",
    french: "Échéance",
  }),
  paidOrToday: date({
    label: "Paid or today",
    about: "day it was paid, or today while it is open",
    example: "2026-11-20",
    french: "Payé le, ou aujourd'hui",
  }),
  today: date({
    label: "Today",
    about: "day of the list",
    example: "2026-11-20",
    french: "Aujourd'hui",
  }),
  balance: money({
    label: "Balance",
    about: "what is still owed; with nothing owed nothing is late",
    unit: "",
    example: "9,102.79",
    french: "Solde",
  }),
  received: mass({
    label: "In",
    about: "weight that came in",
    unit: "lb",
    min: 0,
    example: "10,251 lb",
    french: "Entrée",
  }),
  out: list(out, {
    label: "Out",
    about: "weights that went out: bottled, sold in totes, into oak, lost",
    example: "6,272 | 3,416",
    french: "Sorties",
  }),
  stock: mass({
    label: "Stock",
    about: "weight still there",
    unit: "lb",
    min: 0,
    example: "540 lb",
    french: "En stock",
  }),
  lot: text({
    label: "Lot",
    about: "the lot, barrel, blend, run or tote to follow",
    example: "25-04",
    french: "Lot",
  }),
  movements: rows(
    {
      date: date({
        label: "Date",
        about: "day it was moved",
        example: "2026-02-24",
        french: "Date",
      }),
      from: text({
        label: "From",
        about: "the lot, barrel or blend it was drawn from",
        example: "OAK-01",
        french: "De",
      }),
      to: text({
        label: "To",
        about: "the barrel, blend, run or tote it went into",
        example: "RUN-17",
        french: "Vers",
      }),
      lb: movedWeight,
    },
    {
      label: "Movements",
      about: "movements of syrup: date, from, to, pounds",
      example: "2026-02-24 | OAK-01 | RUN-17 | 521",
      french: "Mouvements",
    },
  ),
  direction: choice({
    label: "Direction",
    about: "where it went, or where it came from",
    choices: ["forward", "back"],
    example: "forward",
    french: "Sens",
  }),
} as const;
