import type { Book } from "../book";
import type { Finding } from "../finding";
import { codeChecks } from "./code-checks";
import { estimateChecks } from "./estimate-checks";
import { overheadChecks } from "./overhead-checks";
import { packingChecks } from "./packing-checks";
import { paymentChecks } from "./payment-checks";
import { runChecks } from "./run-checks";
import { stockChecks } from "./stock-checks";
import { toteChecks } from "./tote-checks";

/** What only shows when tables are laid side by side; one finding a kind of trouble, what touches the cost first. */
export const crossChecks = (book: Book): readonly Finding[] =>
  [
    packingChecks,
    overheadChecks,
    estimateChecks,
    stockChecks,
    runChecks,
    toteChecks,
    paymentChecks,
    codeChecks,
  ].flatMap((check) => check(book));
