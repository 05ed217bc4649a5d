import { CommandType, ICommandService } from "@univerjs/core";
import type { Engine } from "./engine";

/** Calls back after anything in the workbook was changed, by a person or by us; results of formulas do not count. */
export function watchEdits(
  engine: Engine,
  bookId: () => string,
  listener: () => void,
): () => void {
  let telling = false;
  const watch = engine.univer
    .__getInjector()
    .get(ICommandService)
    .onCommandExecuted((command, options) => {
      if (command.type !== CommandType.MUTATION) return;
      if (options?.onlyLocal === true || options?.fromCollab === true) return;
      if (command.id.startsWith("formula.")) return;
      // The editor of a cell is a document of its own, and no change until it is entered.
      const params: { readonly unitId?: string } | undefined = command.params;
      if (params?.unitId !== bookId()) return;
      if (telling) return;
      telling = true;
      queueMicrotask(() => {
        telling = false;
        listener();
      });
    });
  return () => watch.dispose();
}
