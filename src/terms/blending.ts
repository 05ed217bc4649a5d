import { syrupTerms } from "./syrup";
import {
  brix,
  listWithBlanks,
  mass,
  mayBeBlank,
  money,
  number,
  rows,
  text,
  yesNo,
} from "./term";

const brixLimits = {
  unit: "°Bx",
  min: 0,
  max: 85,
  beyondIsUnanswerable: true,
} as const;

const transmission = number({
  label: "Transmission",
  about: "light let through at 560 nm and 10 mm, glycerol = 100",
  unit: "%",
  above: 0,
  max: 100,
  example: "62",
  french: "Transmission",
});

const pricePerPound = money({
  label: "Price",
  about: "price of the lot by weight",
  unit: "per lb",
  min: 0,
  example: "2.60",
  french: "Prix",
});

export const blendingTerms = {
  weights: listWithBlanks(
    mass({
      label: "Weight",
      about: "weight that goes into the blend",
      unit: "lb",
      min: 0,
      example: "1,200 lb",
      french: "Poids",
    }),
    {
      label: "Weights",
      about: "weights that go into the blend, lot by lot",
      example: "1,200 lb",
      french: "Poids",
    },
  ),
  brixes: listWithBlanks(syrupTerms.brix, {
    label: "Brix",
    about: "Brix of the lots, beside their weights",
    example: "66.5",
    french: "Brix",
  }),
  prices: listWithBlanks(pricePerPound, {
    label: "Prices",
    about: "prices of the lots, beside their weights",
    example: "2.60",
    french: "Prix",
  }),
  transmittances: listWithBlanks(transmission, {
    label: "Transmission",
    about: "transmission of the lots, beside their weights",
    example: "62",
    french: "Transmission",
  }),
  weightA: mass({
    label: "Weight of A",
    about: "weight of lot A, all of which goes in",
    unit: "lb",
    min: 0,
    example: "1,200 lb",
    french: "Poids de A",
  }),
  brixA: brix({
    label: "Brix of A",
    about: "Brix of lot A",
    ...brixLimits,
    example: "65.9",
    french: "Brix de A",
  }),
  brixB: brix({
    label: "Brix of B",
    about: "Brix of lot B",
    ...brixLimits,
    example: "67.1",
    french: "Brix de B",
  }),
  target: brix({
    label: "Target Brix",
    about: "Brix that the mix is to have",
    ...brixLimits,
    example: "66.5",
    french: "Brix visé",
  }),
  lots: rows(
    {
      name: text({
        label: "Lot",
        about: "what the lot is called",
        example: "26-04",
        french: "Lot",
      }),
      lb_available: mass({
        label: "Available",
        about: "weight that may be drawn; 0 when used up",
        unit: "lb",
        min: 0,
        example: "6,120 lb",
        french: "Disponible",
      }),
      brix: syrupTerms.brix,
      price_per_lb: pricePerPound,
      transmission: mayBeBlank(transmission),
      organic: mayBeBlank(
        yesNo({
          label: "Organic",
          about: "whether the lot is organic; blank counts as not organic",
          example: "no",
          french: "Biologique",
        }),
      ),
    },
    {
      label: "Lots",
      about:
        "lots: name, pounds available, Brix, price per lb, % transmission, organic",
      example: "26-04 | 6,120 | 65.9 | 2.50 | 30.9 | no",
      french: "Lots",
    },
  ),
  weightWanted: mass({
    label: "Weight",
    about: "weight of the blend wanted",
    unit: "lb",
    above: 0,
    example: "5,000 lb",
    french: "Poids",
  }),
  brixMin: brix({
    label: "Least Brix",
    about: "the blend has at least this",
    ...brixLimits,
    example: "66.4",
    french: "Brix minimal",
  }),
  brixMax: brix({
    label: "Most Brix",
    about: "the blend has at most this",
    ...brixLimits,
    example: "67",
    french: "Brix maximal",
  }),
  transmittanceMin: number({
    label: "Least transmission",
    about: "the blend lets at least this much light through, as estimated",
    unit: "%",
    above: 0,
    max: 100,
    example: "50",
    french: "Transmission minimale",
  }),
  organicOnly: yesNo({
    label: "Organic only",
    about: "draws on organic lots only",
    example: "TRUE",
    french: "Biologique seulement",
  }),
} as const;
