import { lineTerms as terms } from "../../terms/book-lines";
import { declareTable } from "../table";

export const lines = declareTable({
  name: "Lines",
  sheet: "Lines",
  about: "The filling lines, one a row.",
  csv: "lines.csv",
  key: ["line"],
  columns: {
    line: { heading: "Line", csv: "line", term: terms.line },
    whatItIs: {
      heading: "What it is",
      csv: "what_it_is",
      term: terms.whatItIs,
      mayBeBlank: true,
      width: 40,
    },
    heads: { heading: "Heads", csv: "heads", term: terms.heads },
    fillTime: {
      heading: "Fill seconds 250 mL",
      csv: "fill_seconds_250ml",
      term: terms.fillTime,
    },
    handlingTime: {
      heading: "Load and unload seconds",
      csv: "load_unload_seconds",
      term: terms.handlingTime,
    },
    running: {
      heading: "Running",
      csv: "running_share_pct",
      csvPercent: true,
      term: terms.running,
      usual: [0.3, 1],
    },
    station: {
      heading: "Slowest other station",
      csv: "slowest_other_station",
      term: terms.station,
      mayBeBlank: true,
    },
    stationRate: {
      heading: "Other station per hour",
      csv: "other_station_bottles_per_hour",
      term: terms.stationRate,
      mayBeBlank: true,
    },
    setup: {
      heading: "Setup minutes",
      csv: "setup_minutes",
      term: terms.setup,
    },
    cleanDown: {
      heading: "Clean down minutes",
      csv: "cleandown_minutes",
      term: terms.cleanDown,
    },
    crew: { heading: "Crew", csv: "crew", term: terms.crew, mayBeBlank: true },
    purge: {
      heading: "Purge lb",
      csv: "start_and_purge_loss_lb",
      term: terms.purge,
    },
    note: {
      heading: "Note",
      csv: "note",
      term: terms.note,
      mayBeBlank: true,
    },
  },
});
