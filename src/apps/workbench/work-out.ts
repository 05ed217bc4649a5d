import type { Workbook } from "../../sheets/workbook";
import { gridFunctions } from "../grid-functions";

/** Works out a workbook in a grid of its own, out of sight; the open one is not touched. */
export async function workOut(workbook: Workbook): Promise<Workbook> {
  const { workedOutUnseen } = await import("../../hosts/grid/work-out-unseen");
  const container = document.createElement("div");
  container.className = "unseen";
  container.setAttribute("aria-hidden", "true");
  container.inert = true;
  document.body.append(container);
  try {
    return await workedOutUnseen({
      container,
      workbook,
      functions: gridFunctions,
    });
  } finally {
    container.remove();
  }
}
