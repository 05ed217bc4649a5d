import { date, listWithBlanks, money, number, rows, share, text } from "./term";

const priceEach = money({
  label: "Price each",
  about: "price of one piece",
  unit: "each",
  min: 0,
  example: "1.42",
  french: "Prix unitaire",
});

const item = text({
  label: "Item",
  about: "the part or product as the list names it",
  example: "BTL-250",
  french: "Article",
});

const validFrom = date({
  label: "Valid from",
  about: "first day the price holds",
  example: "2026-05-01",
  french: "Valable dès le",
});

const amount = money({
  label: "Amount",
  about: "money for one part of the cost",
  unit: "",
  example: "1,738.08",
  french: "Montant",
});

export const materialTerms = {
  perBottle: number({
    label: "Per bottle",
    about: "pieces of the part in one bottle; 1/12 for a case of 12",
    unit: "pieces",
    above: 0,
    example: "1",
    french: "Par bouteille",
  }),
  spoilage: share({
    label: "Spoilage",
    about: "share of the pieces drawn that is spoiled",
    below: 1,
    example: "1.5 %",
    french: "Pertes",
  }),
  carton: number({
    label: "Carton",
    about: "pieces that come together and are not split",
    unit: "pieces",
    above: 0,
    example: "12",
    french: "Carton",
  }),
  pieces: number({
    label: "Pieces",
    about: "pieces ordered",
    unit: "pieces",
    above: 0,
    example: "1,224",
    french: "Pièces",
  }),
  need: number({
    label: "Need",
    about: "pieces wanted",
    unit: "pieces",
    above: 0,
    example: "619",
    french: "Besoin",
  }),
  breaks: rows(
    {
      from_quantity: number({
        label: "From quantity",
        about: "quantity from which the price holds",
        unit: "pieces",
        min: 0,
        example: "504",
        french: "Dès la quantité",
      }),
      price: priceEach,
    },
    {
      label: "Price breaks",
      about: "quantities and the price each from there on, in any order",
      example: "504 | 1.42",
      french: "Paliers de prix",
    },
  ),
  item,
  priceDay: date({
    label: "Day",
    about: "day the price is wanted for",
    example: "2026-11-25",
    french: "Jour",
  }),
  prices: rows(
    { item, valid_from: validFrom, price: priceEach },
    {
      label: "Price list",
      about: "items, first day of each price, and the price, in any order",
      example: "BTL-250 | 2026-05-01 | 1.42",
      french: "Liste de prix",
    },
  ),
  partNames: listWithBlanks(
    text({
      label: "Part",
      about: "name of one part of the cost",
      example: "caps",
      french: "Poste",
    }),
    {
      label: "Names",
      about: "names of the parts of the cost, one beside each amount",
      example: "syrup, glass, caps",
      french: "Postes de coût",
    },
  ),
  partAmounts: listWithBlanks(amount, {
    label: "Amounts",
    about: "money for each part; a blank withholds the total",
    example: "1.91, 1.45, 0.12",
    french: "Montants",
  }),
  total: amount,
  drivers: listWithBlanks(
    number({
      label: "Driver",
      about: "what one share of the total goes by: runs, lots, gallons",
      unit: "",
      min: 0,
      example: "13",
      french: "Clé",
    }),
    {
      label: "Drivers",
      about: "what the total is shared by, one figure for each share",
      example: "13, 18",
      french: "Clés de répartition",
    },
  ),
} as const;
