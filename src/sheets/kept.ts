import { z } from "zod";

/** What is remembered inside the workbook: the pane's settings and what it takes to take the last writes back. */
export interface Kept {
  readonly settings: Readonly<Record<string, string | number | boolean | null>>;
  /** Newest last. */
  readonly done: readonly WriteRecord[];
  /** A write that was begun; it stays here only when it was cut off. */
  readonly begun?: WriteRecord | undefined;
}

/** One write: what it put in, and a digest of that, to see whether somebody has typed over it since. */
export interface WriteRecord {
  readonly says: string;
  readonly sheets: readonly {
    readonly name: string;
    readonly digest: string;
  }[];
  readonly names: readonly string[];
  readonly growths: readonly {
    readonly table: string;
    readonly offset: number;
    readonly rows: number;
    readonly rowsBefore: number;
    readonly digest: string;
    /** What stood in the one blank row of an empty table, to be entered again. */
    readonly firstRow?: readonly string[] | undefined;
  }[];
  /** Blank rectangles that were filled. */
  readonly fills?:
    | readonly {
        readonly sheet: string;
        readonly row: number;
        readonly column: number;
        readonly rows: number;
        readonly columns: number;
        readonly digest: string;
        /** Whether the cells had no number formats of their own and were given some. */
        readonly isFormatted: boolean;
      }[]
    | undefined;
}

export const keptVersion = 1;

export const nothingKept: Kept = { settings: {}, done: [] };

const text = z.string();
const entered = z.union([z.string(), z.number(), z.boolean()]);

const writeRecord = z.object({
  says: text,
  sheets: z.array(z.object({ name: text, digest: text })),
  names: z.array(text),
  growths: z.array(
    z.object({
      table: text,
      offset: z.number(),
      rows: z.number(),
      rowsBefore: z.number(),
      digest: text,
      firstRow: z.array(text).optional(),
    }),
  ),
  fills: z
    .array(
      z.object({
        sheet: text,
        row: z.number(),
        column: z.number(),
        rows: z.number(),
        columns: z.number(),
        digest: text,
        isFormatted: z.boolean(),
      }),
    )
    .optional(),
});

const keptForm = z.object({
  settings: z.record(text, z.union([entered, z.null()])),
  done: z.array(writeRecord),
  begun: writeRecord.optional(),
});

/** What was kept, or undefined when the text is none of ours or has been damaged. */
export function readKept(json: string): Kept | undefined {
  try {
    const read = keptForm.safeParse(JSON.parse(json));
    return read.success ? read.data : undefined;
  } catch {
    return undefined;
  }
}

/** A short text that differs, as good as surely, when the long one does. */
export function digestOf(long: string): string {
  let a = 0xdeadbeef;
  let b = 0x41c6ce57;
  for (let i = 0; i < long.length; i += 1) {
    const code = long.charCodeAt(i);
    a = Math.imul(a ^ code, 2_654_435_761);
    b = Math.imul(b ^ code, 1_597_334_677);
  }
  a =
    Math.imul(a ^ (a >>> 16), 2_246_822_507) ^
    Math.imul(b ^ (b >>> 13), 3_266_489_909);
  b =
    Math.imul(b ^ (b >>> 16), 2_246_822_507) ^
    Math.imul(a ^ (a >>> 13), 3_266_489_909);
  return `${(b >>> 0).toString(36)}-${(a >>> 0).toString(36)}-${long.length}`;
}
