/** How long Excel may work something out before we go on without; it goes on by itself. */
const longest = 15_000;
const firstPause = 80;

/** Asks with the next request whether Excel is still calculating. */
export function loadIsSettled({
  application,
}: Excel.RequestContext): () => boolean {
  application.load("calculationState");
  return () => application.calculationState === "Done";
}

/** Waits until Excel has worked out what follows from a write, asking at ever longer intervals. */
export async function settled(
  context: Excel.RequestContext,
  isSettled: () => boolean,
): Promise<void> {
  const from = Date.now();
  let pause = firstPause;
  let done = isSettled();
  while (!done && Date.now() - from < longest) {
    await new Promise((resolve) => setTimeout(resolve, pause));
    pause *= 2;
    const take = loadIsSettled(context);
    // What was written is written; not to hear how far Excel is does not undo it.
    done = await context.sync().then(take, () => true);
  }
}
