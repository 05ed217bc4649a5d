/** An object of the workbook as the wire sees it. Whatever is not listed does not exist, and asking for it fails loudly. */
export interface WireObject {
  readonly kind: string;
  /** Where a request may find it again after the answer. */
  reference?: string;
  readonly get?: Readonly<Record<string, () => unknown>>;
  readonly set?: Readonly<Record<string, (value: never) => void>>;
  /** Objects reached from it, by property or method; "[]" is the indexer. Null stands for an object that is not there. */
  readonly open?: Readonly<
    Record<string, (...args: never[]) => WireObject | null>
  >;
  readonly call?: Readonly<Record<string, (...args: never[]) => unknown>>;
  readonly items?: () => readonly WireObject[];
}

/** A refusal Excel itself knows, with its own code. */
export class WireError extends Error {
  constructor(
    readonly code: string,
    message: string = code,
  ) {
    super(message);
  }
}

/** A member this wire does not have. It is a hole in the test double, never an answer. */
export class Hole extends WireError {
  constructor(what: string) {
    super("NotModelled", `The wire does not model ${what}`);
  }
}

/** Excel looks some addresses in text up on the sheet in front, so only ranges are let through. */
export function refuseText(at: unknown): void {
  if (typeof at === "string") throw new Hole(`the address ${at} as text`);
}

export const notFound = (what: string): WireError =>
  new WireError(
    "ItemNotFound",
    `The requested resource doesn't exist: ${what}`,
  );

export const badArgument = (why: string): WireError =>
  new WireError("InvalidArgument", `The argument is invalid: ${why}`);
