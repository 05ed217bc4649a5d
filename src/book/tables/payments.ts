import { toteTerms as terms } from "../../terms/book-totes";
import { declareTable } from "../table";

export const payments = declareTable({
  name: "Payments",
  sheet: "Payments",
  about: "Money received for totes, one receipt a row.",
  csv: "tote_payments.csv",
  optional: true,
  key: ["receipt"],
  columns: {
    receipt: { heading: "Receipt", csv: "receipt", term: terms.receipt },
    paidOn: { heading: "Paid on", csv: "paid_on", term: terms.paidOn },
    customer: {
      heading: "Customer",
      csv: "customer",
      term: terms.customer,
      width: 28,
    },
    billOfLading: {
      heading: "Bill of lading",
      csv: "bill_of_lading",
      term: terms.billOfLading,
      mayBeBlank: true,
      refersTo: ["Invoices.billOfLading"],
    },
    amount: { heading: "Amount", csv: "amount", term: terms.amount },
    currency: { heading: "Currency", csv: "currency", term: terms.currency },
    note: {
      heading: "Note",
      csv: "note",
      term: terms.note,
      mayBeBlank: true,
      width: 34,
    },
  },
});
