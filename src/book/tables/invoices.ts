import { toteTerms as terms } from "../../terms/book-totes";
import { declareTable } from "../table";

export const invoices = declareTable({
  name: "Invoices",
  sheet: "Invoices",
  about: "Invoices for totes, one bill of lading a row.",
  csv: "tote_invoices.csv",
  optional: true,
  key: ["billOfLading"],
  columns: {
    billOfLading: {
      heading: "Bill of lading",
      csv: "bill_of_lading",
      term: terms.billOfLading,
    },
    date: {
      heading: "Invoice date",
      csv: "invoice_date",
      term: terms.invoiceDate,
    },
    contract: {
      heading: "Contract",
      csv: "contract",
      term: terms.contract,
      mayBeBlank: true,
      refersTo: ["ToteContracts.contract"],
    },
    customer: {
      heading: "Customer",
      csv: "customer",
      term: terms.customer,
      width: 28,
    },
    amount: { heading: "Amount", csv: "amount", term: terms.amount },
    currency: { heading: "Currency", csv: "currency", term: terms.currency },
    due: { heading: "Due date", csv: "due_date", term: terms.dueDate },
  },
});
