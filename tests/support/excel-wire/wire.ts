import type { Bridge } from "./load-office";
import { Hole, WireError, type WireObject } from "./wire-object";

interface Action {
  readonly Id: number;
  /** 1 brings an object to life, 2 reads, 3 calls, 4 sets, 5 is a mark for the library itself. */
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}

interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly number[];
}

interface ObjectPath {
  /** 1 the workbook, 2 a new object, 3 a method, 4 a property, 5 an indexer, 6 a kept reference. */
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

export interface Batch {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
}

/** What goes wrong with one request. */
export interface Fault {
  readonly code: string;
  /** Fails before this action; without it the whole batch is done and only its answer is lost. */
  readonly beforeAction?: number;
}

/** What was sent for the user to wait on; the library's tidying of its references afterwards is counted apart. */
export interface Sent {
  readonly bytes: number;
  readonly actions: number;
  readonly isTidying: boolean;
}

/** Answers the library's requests from a tree of objects in memory, counts them, and fails them where a test says so. */
export class Wire implements Bridge {
  onMessageFromHost?: (text: string) => void;
  readonly sent: Sent[] = [];
  readonly holes: string[] = [];
  /** Asked before each request that is not mere tidying; its number counts from 1 since `forget`. */
  faultFor: (request: number, batch: Batch) => Fault | undefined = () =>
    undefined;
  /** Something that happens, or time that passes, before a request is answered. */
  meanwhile: (request: number, batch: Batch) => Promise<void> | void = () =>
    undefined;
  readonly #root: () => WireObject;
  readonly #calculate: () => void;
  readonly #kept = new Map<string, WireObject>();
  #references = 0;

  constructor(root: () => WireObject, calculate: () => void = () => undefined) {
    this.#root = root;
    this.#calculate = calculate;
  }

  get requests(): readonly Sent[] {
    return this.sent.filter(({ isTidying }) => !isTidying);
  }

  forget(): void {
    this.sent.length = 0;
  }

  sendMessageToHost(text: string): void {
    const { id, message } = JSON.parse(text) as {
      id: number;
      message: { body: string | Batch };
    };
    const { body } = message;
    const batch = typeof body === "string" ? (JSON.parse(body) as Batch) : body;
    const isTidying =
      batch.Actions.every(
        ({ Name }) => Name === "_RemoveReference" || Name === "",
      ) && batch.Actions.some(({ Name }) => Name === "_RemoveReference");
    this.sent.push({
      bytes: Buffer.byteLength(JSON.stringify(batch)),
      actions: batch.Actions.length,
      isTidying,
    });
    const request = this.requests.length;
    void (async () => {
      if (!isTidying) await this.meanwhile(request, batch);
      await Promise.resolve();
      const fault = isTidying ? undefined : this.faultFor(request, batch);
      const answer = this.#answer(batch, fault);
      this.onMessageFromHost?.(
        JSON.stringify({ id, type: 2, message: answer }),
      );
    })();
  }

  /** Tells the library of an event, as the host does of its own accord. */
  raise(eventType: number, argument: object): void {
    this.onMessageFromHost?.(
      JSON.stringify({
        type: 3,
        message: {
          entries: [
            {
              messageCategory: 65_536,
              messageType: eventType,
              targetId: "Workbook",
              message: JSON.stringify(argument),
            },
          ],
        },
      }),
    );
  }

  #answer(batch: Batch, fault: Fault | undefined): object {
    const body = this.#done(batch, fault);
    this.#calculate();
    return fault && fault.beforeAction === undefined
      ? {
          statusCode: 504,
          headers: {},
          body: JSON.stringify({
            error: { code: fault.code, message: `${fault.code} on the way` },
          }),
        }
      : { statusCode: 200, headers: {}, body };
  }

  #done(batch: Batch, fault: Fault | undefined): object {
    const found = new Map<number, WireObject | null>();
    const Results: object[] = [];
    for (const [index, action] of batch.Actions.entries()) {
      try {
        if (fault?.beforeAction === index)
          throw new WireError(fault.code, `${fault.code} was injected`);
        Results.push({
          ActionId: action.Id,
          Value: this.#act(action, batch, found),
        });
      } catch (problem) {
        if (!(problem instanceof WireError)) throw problem;
        if (problem instanceof Hole) this.holes.push(problem.message);
        return {
          Results,
          Error: {
            Code: problem.code,
            Message: problem.message,
            ActionIndex: index,
            HttpStatusCode: 400,
            Location: action.Name,
          },
        };
      }
    }
    return { Results };
  }

  #act(
    action: Action,
    batch: Batch,
    found: Map<number, WireObject | null>,
  ): unknown {
    if (action.ActionType === 5) return null;
    const object = this.#find(action.ObjectPathId, batch, found);
    const args = this.#args(action.ArgumentInfo, batch, found);
    switch (action.ActionType) {
      case 1:
        return object === null
          ? null
          : object.reference === undefined
            ? {}
            : { _ReferenceId: object.reference };
      case 2:
        return object === null ? null : queried(object, action.QueryInfo);
      case 3:
        return object === null
          ? { _IsNull: true }
          : this.#call(object, action.Name, args);
      case 4:
        if (object === null) throw new WireError("InvalidObjectPath");
        member(object, "set", action.Name)(args[0] as never);
        return {};
      default:
        throw new Hole(`action ${action.ActionType} ${action.Name}`);
    }
  }

  #call(object: WireObject, name: string, args: readonly unknown[]): unknown {
    if (name === "_KeepReference") {
      this.#references += 1;
      object.reference ??= `kept-${this.#references}`;
      this.#kept.set(object.reference, object);
      return null;
    }
    if (name === "_RemoveReference") {
      this.#kept.delete(String(args[0]));
      return null;
    }
    return member(object, "call", name)(...(args as never[])) ?? null;
  }

  #find(
    id: number,
    batch: Batch,
    found: Map<number, WireObject | null>,
  ): WireObject | null {
    const known = found.get(id);
    if (known !== undefined) return known;
    const path = batch.ObjectPaths[id];
    if (!path) throw new WireError("InvalidObjectPath");
    const object = this.#open(path, batch, found);
    found.set(id, object);
    return object;
  }

  #open(
    path: ObjectPath,
    batch: Batch,
    found: Map<number, WireObject | null>,
  ): WireObject | null {
    if (path.ObjectPathType === 1) return this.#root();
    if (path.ObjectPathType === 6) {
      const kept = this.#kept.get(path.Name);
      if (!kept) throw new WireError("InvalidReference");
      return kept;
    }
    const parent = this.#find(path.ParentObjectPathId ?? 0, batch, found);
    // What hangs on an object that is not there is not there either.
    if (parent === null) return null;
    const name = path.ObjectPathType === 5 ? "[]" : path.Name;
    const args = this.#args(path.ArgumentInfo, batch, found);
    return member(parent, "open", name)(...(args as never[]));
  }

  #args(
    info: ArgumentInfo | undefined,
    batch: Batch,
    found: Map<number, WireObject | null>,
  ): readonly unknown[] {
    return (info?.Arguments ?? []).map((argument, i) => {
      const path = info?.ReferencedObjectPathIds?.[i];
      return path ? this.#find(path, batch, found) : argument;
    });
  }
}

function member<Kind extends "get" | "set" | "open" | "call">(
  object: WireObject,
  kind: Kind,
  name: string,
): NonNullable<NonNullable<WireObject[Kind]>[string]> {
  const members = object[kind];
  const found =
    members && Object.hasOwn(members, name) ? members[name] : undefined;
  if (!found) throw new Hole(`${kind} ${object.kind}.${name}`);
  return found as NonNullable<NonNullable<WireObject[Kind]>[string]>;
}

function queried(
  object: WireObject,
  query: Action["QueryInfo"],
): Readonly<Record<string, unknown>> {
  const select = query?.Select ?? [];
  if (select.length === 0)
    throw new Hole(`a load of everything of ${object.kind}`);
  if (object.items)
    return { _Items: object.items().map((item) => values(item, select)) };
  return values(object, select);
}

/** "name" is a value of the object itself, "worksheet/name" one of an object it holds. */
function values(
  object: WireObject,
  select: readonly string[],
): Readonly<Record<string, unknown>> {
  const own: Record<string, unknown> = {};
  const deeper = new Map<string, string[]>();
  for (const path of select) {
    const [first = "", ...rest] = path.split("/");
    if (rest.length === 0)
      own[upper(first)] = member(object, "get", upper(first))();
    else deeper.set(first, [...(deeper.get(first) ?? []), rest.join("/")]);
  }
  for (const [name, paths] of deeper) {
    const inner = member(object, "open", upper(name))();
    own[upper(name)] =
      inner === null ? null : queried(inner, { Select: paths });
  }
  return own;
}

const upper = (name: string): string =>
  name === "_ReferenceId"
    ? name
    : (name[0] ?? "").toUpperCase() + name.slice(1);
