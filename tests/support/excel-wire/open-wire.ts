import { emptyBook, type BookState } from "./book-state";
import { loadOffice } from "./load-office";
import { WireBook } from "./wire-book";

/** Puts a workbook in memory behind the real client library and says which Excel it is. */
export function openWire(
  state: BookState = emptyBook(),
  excel: { readonly api: string } = { api: "1.20" },
): WireBook {
  const office = loadOffice();
  const book = new WireBook(state);
  office.bridge.init(book.wire);
  office.runsIn({
    requirements: {
      isSetSupported: (set: string, version = "0"): boolean =>
        set === "ExcelApi" && isAtLeast(excel.api, version),
    },
    // A user in another country; nothing we write may depend on it.
    displayLanguage: "de-DE",
    contentLanguage: "de-DE",
  });
  return book;
}

function isAtLeast(held: string, needed: string): boolean {
  const [major = 0, minor = 0] = held.split(".").map(Number);
  const [wantMajor = 0, wantMinor = 0] = needed.split(".").map(Number);
  return major > wantMajor || (major === wantMajor && minor >= wantMinor);
}
