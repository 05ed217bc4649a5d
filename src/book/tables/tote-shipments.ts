import { loadTerms } from "../../terms/book-loads";
import { toteTerms as terms } from "../../terms/book-totes";
import { declareTable } from "../table";

export const toteShipments = declareTable({
  name: "ToteShipments",
  sheet: "Tote shipments",
  about: "Totes sent out, one ticket a row.",
  csv: "tote_shipments.csv",
  optional: true,
  key: ["ticket"],
  columns: {
    ticket: { heading: "Tote ticket", csv: "tote_ticket", term: terms.ticket },
    shipped: { heading: "Shipped", csv: "shipped", term: terms.shipped },
    contract: {
      heading: "Contract",
      csv: "contract",
      term: terms.contract,
      refersTo: ["ToteContracts.contract"],
    },
    customer: {
      heading: "Customer",
      csv: "customer",
      term: terms.customer,
      mayBeBlank: true,
      width: 28,
    },
    billOfLading: {
      heading: "Bill of lading",
      csv: "bill_of_lading",
      term: terms.billOfLading,
      mayBeBlank: true,
    },
    gross: { heading: "Gross lb", csv: "gross_lb", term: terms.gross },
    tare: { heading: "Tare lb", csv: "tare_lb", term: terms.tare },
    net: { heading: "Net lb", csv: "net_lb", term: terms.net },
    brix: {
      heading: "Brix at 68 °F",
      csv: "brix_at_68F",
      aliases: ["Brix"],
      term: terms.brix,
    },
    poundsPerGallon: {
      heading: "Lb per gal",
      csv: "lb_per_gal_air_68F",
      term: terms.poundsPerGallon,
      formula: (own) => `=SYRUP.POUNDS_PER_GALLON(${own("Brix at 68 °F")})`,
      format: "0.000",
    },
    gallons: {
      heading: "Gallons at 68 °F",
      csv: "gallons_at_68F",
      term: terms.gallons,
      formula: (own) =>
        `=IF(${own("Net lb")}="","",${own("Net lb")}/${own("Lb per gal")})`,
      format: "#,##0.00",
    },
    amount: {
      heading: "Amount",
      csv: "amount",
      term: terms.amount,
      mayBeBlank: true,
    },
    currency: {
      heading: "Currency",
      csv: "currency",
      term: terms.currency,
      mayBeBlank: true,
    },
    toteKind: {
      heading: "Tote kind",
      csv: "tote_kind",
      term: terms.toteKind,
      mayBeBlank: true,
      width: 15,
    },
    deposit: {
      heading: "Tote deposit",
      csv: "tote_deposit_usd",
      term: terms.deposit,
      mayBeBlank: true,
    },
    returnedOn: {
      heading: "Tote returned on",
      csv: "tote_returned_on",
      term: terms.returnedOn,
      mayBeBlank: true,
    },
    sourceLots: {
      heading: "Source lots",
      csv: "source_lots_lb",
      term: terms.sourceLots,
      mayBeBlank: true,
      width: 38,
    },
    plateLimit: {
      heading: "Plate limit lb",
      csv: "plate_limit_lb",
      term: loadTerms.plateLimit,
      mayBeBlank: true,
    },
    buyerNet: {
      heading: "Buyer net lb",
      csv: "buyer_net_lb",
      term: loadTerms.buyerNet,
      mayBeBlank: true,
    },
  },
});
