import { lotTerms as terms } from "../../terms/book-lots";
import { declareTable } from "../table";

export const lots = declareTable({
  name: "Lots",
  sheet: "Lots",
  about: "Syrup bought in drums, one lot a row; weight is the book of record.",
  csv: "bulk_lots.csv",
  key: ["lot"],
  columns: {
    lot: { heading: "Lot", csv: "lot", term: terms.lot },
    received: { heading: "Received", csv: "received", term: terms.received },
    cropYear: {
      heading: "Crop year",
      csv: "crop_year",
      term: terms.cropYear,
      mayBeBlank: true,
      format: "0",
    },
    grower: {
      heading: "Grower",
      csv: "grower",
      term: terms.grower,
      mayBeBlank: true,
    },
    grade: { heading: "Grade", csv: "grade", term: terms.grade, width: 12 },
    organic: {
      heading: "Organic",
      csv: "organic",
      term: terms.organic,
      blankIs: "no",
      sayBlank: true,
    },
    drums: {
      heading: "Drums",
      csv: "drums",
      term: terms.drums,
      mayBeBlank: true,
    },
    drumSize: {
      heading: "Drum size gal",
      csv: "drum_size_gal",
      term: terms.drumSize,
      mayBeBlank: true,
    },
    gross: {
      heading: "Gross lb",
      csv: "gross_lb",
      term: terms.gross,
      mayBeBlank: true,
    },
    tareEach: {
      heading: "Tare lb each",
      csv: "tare_lb_each",
      term: terms.tareEach,
      mayBeBlank: true,
    },
    net: { heading: "Net lb", csv: "net_lb", term: terms.net },
    brix: {
      heading: "Brix at 68 °F",
      csv: "brix_at_68F",
      aliases: ["Brix"],
      term: terms.brix,
    },
    transmission: {
      heading: "Light transmission %",
      csv: "light_transmission_pct",
      term: terms.transmission,
      mayBeBlank: true,
      format: "0.0",
    },
    poundsPerGallon: {
      heading: "Lb per gal",
      csv: "lb_per_gal_air_68F",
      term: terms.derivedDensity,
      formula: (own) => `=SYRUP.POUNDS_PER_GALLON(${own("Brix at 68 °F")})`,
      format: "0.000",
    },
    gallons: {
      heading: "Gallons at 68 °F",
      csv: "gallons_at_68F",
      term: terms.derivedVolume,
      formula: (own) =>
        `=IF(${own("Net lb")}="","",${own("Net lb")}/${own("Lb per gal")})`,
      format: "#,##0.00",
    },
    pricePerPound: {
      heading: "Price per lb",
      csv: "price_per_lb_usd",
      term: terms.pricePerPound,
      usual: [0.5, 10],
    },
    syrupCost: {
      heading: "Syrup cost",
      csv: "syrup_cost_usd",
      term: terms.derivedMoney,
      formula: (own) =>
        `=IF(OR(${own("Net lb")}="",${own("Price per lb")}=""),"",${own("Net lb")}*${own("Price per lb")})`,
    },
    inboundFreight: {
      heading: "Inbound freight",
      csv: "inbound_freight_usd",
      term: terms.inboundFreight,
      mayBeBlank: true,
    },
    landedPerPound: {
      heading: "Landed per lb",
      csv: "landed_per_lb_usd",
      term: terms.landed,
      formula: (own) =>
        `=SYRUP.LANDED_PRICE(${own("Net lb")},${own("Syrup cost")},${own("Inbound freight")})`,
      format: "#,##0.0000",
    },
    depositEach: {
      heading: "Drum deposit each",
      csv: "drum_deposit_usd_each",
      term: terms.depositEach,
      mayBeBlank: true,
    },
    drumsBack: {
      heading: "Drums back",
      csv: "drums_back",
      term: terms.drumsBack,
      mayBeBlank: true,
    },
    used: {
      heading: "Used lb",
      term: terms.derivedWeight,
      formula: (own) => `=SUMIFS(LotUse[Pounds],LotUse[From],${own("Lot")})`,
    },
    left: {
      heading: "Left lb",
      term: terms.derivedWeight,
      formula: (own) =>
        `=IF(${own("Net lb")}="","",${own("Net lb")}-${own("Used lb")})`,
    },
  },
});
