import { CannotAnswer } from "../../measures/cannot-answer";
import { measuredItem } from "../../trade/codes/measured-item";
import { palletCode } from "../../trade/codes/pallet-code";
import type { Book } from "../book";
import type { Finding } from "../finding";
import { isSameName } from "../keys";
import { setting, type SettingName } from "../setting";

/** Numbers for bar codes that cannot be right; what is not entered is no trouble until a label is asked for. */
export const codeChecks = (book: Book): readonly Finding[] => [
  ...checked(book, "Company prefix", (prefix) => {
    palletCode(prefix, 0, 0);
  }),
  ...checked(book, "Tote item number", (item) => {
    measuredItem(item);
  }),
];

function checked(
  book: Book,
  name: SettingName & ("Company prefix" | "Tote item number"),
  check: (written: string) => void,
): readonly Finding[] {
  const written = setting(book, name);
  const row = book.settings.find((one) => isSameName(one.setting, name));
  if (written === undefined || !row) return [];
  try {
    check(written);
    return [];
  } catch (problem) {
    if (!(problem instanceof CannotAnswer)) throw problem;
    return [
      {
        where: `${row.place}, Value`,
        found: `${name} ${written}: ${problem.message}`,
        meaning: "no label with this number can be printed",
        todo: "type the number as the certificate of the numbering body has it",
      },
    ];
  }
}
