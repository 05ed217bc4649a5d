import { loadTerms } from "../../terms/book-loads";
import { toteTerms as terms } from "../../terms/book-totes";
import { declareTable } from "../table";

export const toteContracts = declareTable({
  name: "ToteContracts",
  sheet: "Tote contracts",
  about: "Syrup promised in totes, one contract a row.",
  csv: "tote_contracts.csv",
  optional: true,
  key: ["contract"],
  columns: {
    contract: { heading: "Contract", csv: "contract", term: terms.contract },
    customer: {
      heading: "Customer",
      csv: "customer",
      term: terms.customer,
      width: 28,
    },
    season: {
      heading: "Season",
      csv: "season",
      term: terms.season,
      mayBeBlank: true,
      format: "0",
    },
    weight: {
      heading: "Contract lb",
      csv: "contract_lb",
      term: terms.contractWeight,
    },
    basis: {
      heading: "Price basis",
      csv: "price_basis",
      term: terms.basis,
      width: 32,
    },
    price: { heading: "Price", csv: "price", term: terms.price },
    gradesAllowed: {
      heading: "Grades allowed",
      csv: "grades_allowed",
      term: terms.gradesAllowed,
      mayBeBlank: true,
      width: 18,
    },
    minimumBrix: {
      heading: "Minimum Brix",
      csv: "minimum_brix",
      term: terms.minimumBrix,
      mayBeBlank: true,
    },
    start: { heading: "Start", csv: "start", term: terms.start },
    end: { heading: "End", csv: "end", term: terms.end },
    paymentDays: {
      heading: "Payment days",
      csv: "payment_days",
      term: terms.paymentDays,
      mayBeBlank: true,
    },
    delivery: {
      heading: "Dock or delivered",
      csv: "dock_or_delivered",
      term: loadTerms.delivery,
      mayBeBlank: true,
      width: 16,
    },
    freight: {
      heading: "Freight of a load",
      csv: "freight_of_a_load",
      term: loadTerms.freight,
      mayBeBlank: true,
    },
    loadWeight: {
      heading: "Load lb",
      csv: "load_lb",
      term: loadTerms.loadWeight,
      mayBeBlank: true,
    },
  },
});
