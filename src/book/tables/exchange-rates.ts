import { rateTerms as terms } from "../../terms/book-rates";
import { declareTable } from "../table";

export const exchangeRates = declareTable({
  name: "ExchangeRates",
  sheet: "Exchange rates",
  about:
    "What a US dollar was worth in Canadian dollars and since when, one rate a row; every amount goes by the rate of its own day.",
  csv: "exchange_rates.csv",
  optional: true,
  onlyWhereKept: true,
  key: ["from"],
  columns: {
    from: { heading: "From", csv: "from", term: terms.from },
    rate: {
      heading: "CAD per USD",
      csv: "cad_per_usd",
      term: terms.rate,
      mayBeBlank: true,
      usual: [0.9, 2],
      format: "0.0000",
    },
  },
});
