import {
  badArgument,
  notFound,
  WireError,
  type WireObject,
} from "./wire-object";
import type { WireBook } from "./wire-book";

/** The names of the workbook. */
export function nameObjects(book: WireBook): WireObject {
  const { names } = book.state;
  const found = (name: string) =>
    names.find((n) => n.name.toLowerCase() === name.toLowerCase());
  const object = (held: { name: string; formula: string }): WireObject => ({
    kind: "NamedItem",
    get: { Name: () => held.name, Formula: () => held.formula },
    call: { Delete: () => void names.splice(names.indexOf(held), 1) },
  });
  return {
    kind: "NamedItemCollection",
    items: () => names.map(object),
    open: {
      "[]": (name: string) => {
        const held = found(name);
        if (!held) throw notFound(name);
        return object(held);
      },
      GetItemOrNullObject: (name: string) => {
        const held = found(name);
        return held ? object(held) : null;
      },
      Add: (name: string, reference: string) => {
        if (!/^[A-Za-z_\\][\w.\\?]*$/.test(name)) throw badArgument("the name");
        if (typeof reference !== "string" || !reference.startsWith("="))
          throw badArgument("what the name refers to");
        if (found(name))
          throw new WireError("ItemAlreadyExists", "The name is taken");
        const named = /^='?((?:[^'!]|'')+)'?!/.exec(reference)?.[1];
        if (named !== undefined && !book.sheetOrNone(named.replace(/''/g, "'")))
          throw badArgument("the name refers to a sheet that is not there");
        const held = { name, formula: reference };
        names.push(held);
        return object(held);
      },
    },
  };
}
