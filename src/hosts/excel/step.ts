import { unusable } from "../../measures/cannot-answer";
import type { Work } from "../host";

/** One part of a write. `bytes` is about what it takes on the wire. */
export interface Step {
  readonly bytes: number;
  readonly run: (context: Excel.RequestContext) => void;
}

/** A web request holds 5 MB; steps are sent together up to this. */
const mostBytes = 3_000_000;

/** Runs the steps in order with as few requests as their size allows, telling how far they are and stopping when asked. */
export async function runSteps(
  context: Excel.RequestContext,
  steps: readonly Step[],
  work: Work = {},
): Promise<void> {
  const all = steps.reduce((sum, { bytes }) => sum + bytes, 0);
  let sent = 0;
  let waiting = 0;
  holdBack(context);
  for (const step of steps) {
    if (waiting > 0 && waiting + step.bytes > mostBytes) {
      await context.sync();
      sent += waiting;
      waiting = 0;
      work.tell?.(sent / all);
      refuseStopped(work);
      holdBack(context);
    }
    step.run(context);
    waiting += step.bytes;
  }
  refuseStopped(work);
  await context.sync();
  work.tell?.(1);
}

/** Until the next request: no formula is worked out and nothing is drawn between the single writes. */
function holdBack({ application }: Excel.RequestContext): void {
  application.suspendApiCalculationUntilNextSync();
  application.suspendScreenUpdatingUntilNextSync();
}

export function refuseStopped({ signal }: Work): void {
  if (signal?.aborted)
    throw unusable("You stopped it, and the workbook is as it was");
}
