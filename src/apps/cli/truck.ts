import { readBook } from "../../book/read";
import { TRUCK_CAUTION, truckPlan } from "../../book/truck-plan";
import { truckQuestion } from "../../book/truck-question";
import { unusable } from "../../measures/cannot-answer";
import { onlyPositional, readOptions } from "./options";
import { readBookFiles } from "./read-book-files";
import type { Command } from "./terminal";
import { truckAnswer } from "./truck-answer";
import { truckText } from "./truck-text";

const USAGE =
  'npm run -s truck -- BOOK --limit LB [--axle LB] [--spots N] [--tickets T-043,T-044] [--gross "3049; 3055"] [--json]';

/** How many totes a truck takes by weight and by floor, and whether chosen ones ride on it. */
export const truck: Command = async (args, terminal) => {
  const { values, positionals } = readOptions(
    args,
    {
      limit: { type: "string", default: "" },
      axle: { type: "string", default: "" },
      spots: { type: "string", default: "" },
      tickets: { type: "string", default: "" },
      gross: { type: "string", default: "" },
      json: { type: "boolean", default: false },
    },
    USAGE,
  );
  const place = onlyPositional(
    positionals,
    "a farm book: a folder of CSV files or an .xlsx file",
    USAGE,
  );
  if (values.limit.trim() === "")
    throw unusable(
      `Needs --limit, the most cargo the truck takes: ask the carrier. Usage: ${USAGE}`,
    );
  const question = truckQuestion(values, {
    limit: "--limit",
    axle: "--axle",
    spots: "--spots",
    tickets: "--tickets",
    gross: "--gross",
  });
  const { book } = readBook((await readBookFiles(place)).contents);
  const answer = truckAnswer(truckPlan(book, question), TRUCK_CAUTION);
  if (values.json) terminal.say(JSON.stringify(answer));
  else for (const line of truckText(answer)) terminal.say(line);
  return 0;
};
