import type { Host } from "../../hosts/host";
import type { Workbook } from "../../sheets/workbook";
import { deliverFile } from "./download";

/** Fills in the results of a new workbook's formulas, where the page has something to work them out with. */
export type WorkOut = (workbook: Workbook) => Promise<Workbook>;

/** A workbook as a file with its results; where some could not be worked out, the file asks whoever opens it to do so. */
export async function fileOf(
  workbook: Workbook,
  workOut: WorkOut | undefined,
): Promise<Uint8Array> {
  // Writing files is a large part of the program and is fetched only when it is wanted.
  const { writeXlsx } = await import("../../hosts/file/write-xlsx");
  const worked = workOut ? await workOut(workbook) : workbook;
  return writeXlsx(worked, { asksToBeCalculated: lacksResults(worked) });
}

const lacksResults = ({ sheets }: Workbook): boolean =>
  sheets.some(({ cells }) =>
    cells.some(
      ({ formula, value }) =>
        formula !== undefined && (value === undefined || value === null),
    ),
  );

/** Gives the file to the person and says where it is: "is open as a new workbook", "is saved as …". */
export async function handOut(
  host: Pick<Host, "inExcel">,
  bytes: Uint8Array,
  name: string,
): Promise<string> {
  const delivered = await deliverFile(host, bytes, name);
  return delivered.as === "a new workbook"
    ? "is open as a new workbook; save it under a name of its own"
    : `is saved as ${delivered.file}, in your browser's download folder`;
}
