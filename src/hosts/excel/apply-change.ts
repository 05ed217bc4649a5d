import { CannotAnswer, unusable } from "../../measures/cannot-answer";
import { rangeText } from "../../sheets/ledger/ledger-range";
import type { WriteRecord } from "../../sheets/kept";
import type { Change, Work } from "../host";
import { inExcel } from "./in-excel";
import { loadKept } from "./kept-part";
import { loadBefore } from "./load-change";
import { loadIsSettled, settled } from "./settling";
import { runSteps, type Step } from "./step";
import { loadTypedOver, takeOut } from "./take-back";
import { loadAllRowsIn, planChange, type Plan } from "./write-change";

/** Reads what matters, then writes the whole change; a write that fails half way is taken out again. */
export async function applyChange(
  change: Change,
  work: Work | undefined,
): Promise<WriteRecord> {
  const before = await inExcel(async (context) => {
    const take = loadBefore(change)(context);
    await context.sync();
    return take();
  });
  const plan = planChange(before, change);
  try {
    await inExcel(async (context) => {
      let isSettled = (): boolean => true;
      let refuseRowsLeftOut = (): void => undefined;
      const ask: Step = {
        bytes: 1000,
        run: () => {
          refuseRowsLeftOut = loadAllRowsIn(context, plan.record);
          isSettled = loadIsSettled(context);
        },
      };
      await runSteps(context, [...plan.steps, ask], work);
      refuseRowsLeftOut();
      await settled(context, isSettled);
    });
  } catch (problem) {
    throw await afterFailure(plan, problem);
  }
  return plan.record;
}

/** Nothing of the write may stay: what failed is said, and that the workbook is as it was, or what is left in it. */
async function afterFailure(
  { record, before }: Plan,
  problem: unknown,
): Promise<unknown> {
  const { kept, isThere } = before.kept;
  const isOut = await tried(() =>
    inExcel((context) =>
      takeOut(context, record, isThere ? kept : undefined, { hasFailed: true }),
    ),
  );
  if (!(problem instanceof CannotAnswer)) return problem;
  if (isOut && problem.message.endsWith(asItWas)) return problem;
  return unusable(
    isOut
      ? `${problem.message}. Nothing was kept of it: ${asItWas}`
      : `${problem.message}. Part of ${record.says} may be left in the workbook, because Excel did not let it be taken out either: ${leftOver(record)}`,
  );
}

const asItWas = "the workbook is as it was";

/** What to look for by hand after a write that was cut off. */
export function leftOver({
  sheets,
  growths,
  names,
  fills = [],
}: WriteRecord): string {
  const places = [
    ...sheets.map(({ name }) => `the sheet “${name}”`),
    ...growths.map(({ table, rows }) =>
      rows === 1
        ? `one row at the end of ${table}`
        : `${rows} rows at the end of ${table}`,
    ),
    ...fills.map((fill) => `the cells ${rangeText(fill)}`),
    ...(names.length > 0 ? [`names from ${names[0]} on`] : []),
  ];
  return `look for ${places.join(", ")}`;
}

const tries = 3;
const pause = 400;

/** Excel may be busy just when a write has failed, so it is asked again. */
async function tried(how: () => Promise<void>): Promise<boolean> {
  for (let i = 1; i <= tries; i += 1) {
    try {
      await how();
      return true;
    } catch {
      if (i < tries)
        await new Promise((resolve) => setTimeout(resolve, pause * i));
    }
  }
  return false;
}

/** Takes out the last of these writes, or else the last the workbook remembers, and says what it was. */
export function takeBack(
  ofThisSession: readonly WriteRecord[],
): Promise<string | undefined> {
  return inExcel(async (context) => {
    const take = loadKept(context);
    const own = ofThisSession.at(-1);
    const check = own && loadTypedOver(own)(context);
    await context.sync();
    const { kept } = take();
    const record = own ?? kept.done.at(-1);
    if (!record) return undefined;
    await (check ? check() : checked(context, record));
    await takeOut(context, record, {
      ...kept,
      begun: undefined,
      done: kept.done.slice(0, -1),
    });
    return record.says;
  });
}

async function checked(
  context: Excel.RequestContext,
  record: WriteRecord,
): Promise<void> {
  const check = loadTypedOver(record)(context);
  await context.sync();
  check();
}
