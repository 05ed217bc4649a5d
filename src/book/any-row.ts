/** A row with its values by key, before its type is put on. */
export type AnyRow = Readonly<Record<string, unknown>> & {
  readonly place: string;
};
