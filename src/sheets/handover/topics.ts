/** What a figure of a sheet tells its reader, in trade words. Audiences are lists of these. */
export const topics = {
  day: "the day of the figures",
  product: "what the product is",
  run: "the run",
  "bottle cost": "what a bottle costs in all",
  "cost parts": "the parts of the cost",
  "bulk price": "today's bulk price",
  "stock average": "what the stock cost on average",
  "lot prices": "what single lots cost",
  lots: "lots and where they came from",
  stock: "what is in stock",
  syrup: "syrup, weight and heat in the bottle",
  lines: "lines and their times",
  wages: "wages",
  materials: "materials and their prices",
  energy: "fuel and power",
  overheads: "overheads",
  price: "prices",
  margin: "margin and markup",
  goal: "goals and the prices for them",
  "channel costs": "what a channel takes",
  tiers: "quantities and their prices",
  terms: "terms",
  account: "invoices and payments",
  checks: "checks",
  "other customers": "other customers' products",
} as const;

export type Topic = keyof typeof topics;

export const sheetKinds = ["costing", "prices", "quote", "totes"] as const;
export type SheetKind = (typeof sheetKinds)[number];

type Listed = readonly (readonly [RegExp, Topic])[];

const costing: Listed = [
  [/^as_of$/, "day"],
  [
    /^(product|description|owner|declared|declared_ml|fill|per_case|kind|organic)$/,
    "product",
  ],
  [/^(bottles|line|cases|pallets)$/, "run"],
  [/^cost\.(direct|full|case|basis)\.replacement$/, "bottle cost"],
  [
    /^cost\.(syrup|purge|materials|freight|labour|heat|overhead)\.replacement$/,
    "cost parts",
  ],
  [/^(cost\.price\.replacement|bulk_price)$/, "bulk price"],
  // The parts that are alike in every column are told once, and only to who sees the parts.
  [
    /^(cost\.(price|direct|full|case|gap)\.average|average_price)$/,
    "stock average",
  ],
  [
    /^(cost\.(price|direct|full|case|gap)\.oldest|oldest_price|lots\.price)$/,
    "lot prices",
  ],
  [/^lots\.(received|left|brix)$/, "stock"],
  [/^lots\./, "lots"],
  [/^channels\.(channel|price)$/, "price"],
  [/^channels\.(margin|markup|kept|direct_margin|verdict)$/, "margin"],
  [/^(channels\.(goal|goal_price)|ending)$/, "goal"],
  [/^channels\.(shares|fixed|by_bottle)$/, "channel costs"],
  [
    /^(brix|loss|lb_per_gal|pack_temperature|shrinkage|hot_fill|lb_per_bottle|purge|need|kettle_bottles|kettle_later|kettles|fill_seconds)$/,
    "syrup",
  ],
  [/^(lines\.crew|crew)$/, "wages"],
  [/^lines\.(?!crossover|says|told)/, "lines"],
  [
    /^(chosen_no|chosen_line|rate|limited_by|setup|clean|hours|fixed|each|line_cost|labour_fixed|labour)$/,
    "lines",
  ],
  [/^materials\.(?!no_freight|row$)/, "materials"],
  [
    /^(fuel|fuel_price|fuel_heat|efficiency|warming|holding|fuel_cost|power_cost|heat)$/,
    "energy",
  ],
  [
    /^(season(_runs|_lots|_gallons|_before)?|before_(runs|lots|gallons)|overheads\.(?!row$).+)$/,
    "overheads",
  ],
  [/^(cross_foots|brix_is_legal|fill_covers_label)$/, "checks"],
];

const prices: Listed = [
  [/^as_of$/, "day"],
  [/^list\.(product|description|declared)$/, "product"],
  [/^list\.(bottles|line)$/, "run"],
  [/^list\.(full|direct)$/, "bottle cost"],
  [/^list\.(average|average_gap|direct_average)$/, "stock average"],
  [/^list\.(oldest|oldest_gap|direct_oldest)$/, "lot prices"],
  [/^(unit_channel|list\.(unit_price|per_oz|per_ml|price_\d+))$/, "price"],
  [/^list\.((margin|markup|kept)_\d+)$/, "margin"],
  [/^list\.(worst|left|goal|short|also|losing|gap_\d+)$/, "goal"],
  [/^bulk_\d+$/, "bulk price"],
];

const quote: Listed = [
  [/^(from|for|what)$/, "product"],
  [/^(dated|until)$/, "day"],
  [/^offer\.(bottles|cases|price|case_price|total|with_fees)\.\w+$/, "tiers"],
  [/^fee$/, "price"],
  [/^(money|delivery|lead|pay|left)$/, "terms"],
];

const totes: Listed = [
  [/^(buyer|money)$/, "product"],
  [/^(owed|not_due|late|credits|unapplied|net|earlier|before)$/, "account"],
  [/^statement\.(?!at$)/, "account"],
];

const listed: Readonly<Record<SheetKind, Listed>> = {
  costing,
  prices,
  quote,
  totes,
};

/** What a figure tells, by its name in its sheet; undefined for one no list names, and nobody else sees that one. */
export const topicOf = (kind: SheetKind, name: string): Topic | undefined =>
  listed[kind].find(([pattern]) => pattern.test(name))?.[1];
