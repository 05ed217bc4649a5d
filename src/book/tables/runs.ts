import { lineTerms } from "../../terms/book-lines";
import { packingTerms } from "../../terms/book-packing";
import { runTerms as terms } from "../../terms/book-runs";
import { declareTable } from "../table";

export const runs = declareTable({
  name: "Runs",
  sheet: "Runs",
  about: "Every bottling run, one a row.",
  csv: "bottling_runs.csv",
  key: ["run"],
  columns: {
    run: { heading: "Run", csv: "run", term: terms.run },
    date: { heading: "Date", csv: "date", term: terms.runDate },
    product: {
      heading: "Product",
      csv: "sku",
      term: packingTerms.product,
      refersTo: ["Products.product"],
      width: 12,
    },
    line: {
      heading: "Line",
      csv: "line",
      term: lineTerms.line,
      refersTo: ["Lines.line"],
    },
    goodBottles: {
      heading: "Good bottles",
      csv: "good_bottles",
      term: terms.goodBottles,
    },
    broken: {
      heading: "Broken",
      csv: "broken_or_rejected",
      term: terms.broken,
      mayBeBlank: true,
    },
    averageFill: {
      heading: "Average fill mL",
      csv: "average_fill_ml_at_68F",
      term: terms.averageFill,
      format: "#,##0.0",
    },
    drawn: {
      heading: "Syrup drawn lb",
      csv: "syrup_drawn_lb",
      term: terms.drawn,
    },
    purge: {
      heading: "Purge lb",
      csv: "start_and_purge_loss_lb",
      term: lineTerms.purge,
      mayBeBlank: true,
    },
    brix: { heading: "Brix", csv: "brix", term: terms.brix },
    setup: {
      heading: "Setup minutes",
      csv: "setup_minutes",
      term: lineTerms.setup,
    },
    cleanDown: {
      heading: "Clean down minutes",
      csv: "cleandown_minutes",
      term: lineTerms.cleanDown,
    },
    runningTime: {
      heading: "Running hours",
      csv: "running_hours",
      term: terms.runningTime,
      format: "0.00",
    },
    crew: {
      heading: "Crew",
      csv: "crew",
      term: lineTerms.crew,
      mayBeBlank: true,
    },
    fillTemperature: {
      heading: "Fill temperature °F",
      csv: "fill_temperature_F",
      term: terms.fillTemperature,
      mayBeBlank: true,
      format: "0.0",
    },
    sourceLots: {
      heading: "Source lots",
      csv: "source_lots_lb",
      term: terms.sourceLots,
      mayBeBlank: true,
      width: 30,
    },
    season: {
      heading: "Season",
      term: terms.season,
      formula: (own) => `=IF(${own("Date")}="","",YEAR(${own("Date")}))`,
      format: "0",
    },
    gallons: {
      heading: "Gallons",
      term: terms.gallons,
      formula: (own) =>
        `=${own("Good bottles")}*${own("Average fill mL")}/3785.411784`,
      format: "#,##0.00",
    },
    hours: {
      heading: "Hours",
      term: terms.hours,
      formula: (own) =>
        `=${own("Running hours")}+(${own("Setup minutes")}+${own("Clean down minutes")})/60`,
      format: "0.00",
    },
  },
});
