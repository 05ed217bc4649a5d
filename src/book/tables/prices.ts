import { packingTerms } from "../../terms/book-packing";
import { sellingTerms as terms } from "../../terms/book-selling";
import { declareTable } from "../table";

export const prices = declareTable({
  name: "Prices",
  sheet: "Prices",
  about: "What we charge for each product in each channel, and since when.",
  csv: "current_prices.csv",
  key: ["product", "channel", "validFrom"],
  columns: {
    product: {
      heading: "Product",
      csv: "sku",
      term: packingTerms.product,
      refersTo: ["Products.product"],
      width: 12,
    },
    channel: {
      heading: "Channel",
      csv: "channel",
      term: terms.channel,
      refersTo: ["Channels.channel"],
      width: 26,
    },
    price: { heading: "Price", csv: "price_usd", term: terms.price },
    validFrom: {
      heading: "Valid from",
      csv: "valid_from",
      term: terms.validFrom,
    },
  },
});
