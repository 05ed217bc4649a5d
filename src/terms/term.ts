import type {
  Brix,
  Celsius,
  DaySerial,
  Kilojoules,
  Kilograms,
  Kilopascals,
  KgPerLitre,
  Millimetres,
  Money,
  Quantity,
  Seconds,
  Share,
} from "../measures/quantity";
import type { Dimension } from "../measures/units";

/** What every argument and column says of itself, once: its label, its meaning, an example, its limits. */
interface Said {
  /** Trade word for a label, without unit: "Fill temperature". */
  readonly label: string;
  /** One plain phrase: what it is. */
  readonly about: string;
  /** An example as a person types it. */
  readonly example: string;
  /** French label for bilingual books. */
  readonly french?: string;
}

interface Limits {
  /** Inclusive limits in the stated unit; `above` and `below` are exclusive. */
  readonly min?: number;
  readonly max?: number;
  readonly above?: number;
  readonly below?: number;
  /** Outside the limits is a fair question without an answer (#N/A), not a mistake. */
  readonly beyondIsUnanswerable?: boolean;
}

/** A number in a stated unit, or text with its unit. `Q` is the house brand that a reader makes of it. */
export interface QuantityTerm<Q extends Quantity<string>> extends Said, Limits {
  readonly kind: "quantity";
  readonly dimension: Dimension;
  readonly unit: string;
  /** Only in the type: which brand the value gets. */
  readonly brand?: Q;
}

export interface ShareTerm extends Said, Limits {
  readonly kind: "share";
}

/** A plain count or rate; `unit` is for people. */
export interface NumberTerm extends Said, Limits {
  readonly kind: "number";
  readonly unit: string;
  readonly whole?: boolean;
}

/** An amount or price in the books' money; `unit` is "per lb", "each", … or "". */
export interface MoneyTerm extends Said, Limits {
  readonly kind: "money";
  readonly unit: string;
}

export interface DateTerm extends Said {
  readonly kind: "date";
}

export interface TextTerm extends Said {
  readonly kind: "text";
  readonly keepsZeros?: true; // a number has lost its zeros and is refused
}

export interface ChoiceTerm<C extends string> extends Said {
  readonly kind: "choice";
  readonly choices: readonly C[];
}

export interface YesNoTerm extends Said {
  readonly kind: "yes or no";
}

export type CellTerm =
  | QuantityTerm<Quantity<string>>
  | ShareTerm
  | NumberTerm
  | MoneyTerm
  | DateTerm
  | TextTerm
  | ChoiceTerm<string>
  | YesNoTerm;

/** One column or one row of values; wholly blank cells are skipped. */
export interface ListTerm<T extends CellTerm> extends Said {
  readonly kind: "list";
  readonly of: T;
  /** Blank cells are kept as undefined instead of skipped. */
  readonly keepBlanks?: boolean;
}

/** Rows of columns in the order named, with or without a heading row; wholly blank rows are skipped. */
export interface RowsTerm<
  C extends Readonly<Record<string, CellTerm | OptionalCell>>,
> extends Said {
  readonly kind: "rows";
  readonly columns: C;
}

/** A column of a `rows` term that may be blank. */
export type OptionalCell = CellTerm & { readonly mayBeBlank: true };

// The columns of a rows term are described by the term itself, so its own type parameter may stay open here.
export type Term =
  | CellTerm
  | ListTerm<CellTerm>
  | RowsTerm<Readonly<Record<string, CellTerm | OptionalCell>>>;

/** An argument that may be left out; `otherwise` is what it then counts as, typed as a person would. */
export type Optional<T extends Term> = T & {
  readonly otherwise: number | string | undefined;
};

type ValueOfCell<T> =
  T extends QuantityTerm<infer Q>
    ? Q
    : T extends ShareTerm
      ? Share
      : T extends MoneyTerm
        ? Money
        : T extends DateTerm
          ? DaySerial
          : T extends ChoiceTerm<infer C>
            ? C
            : T extends YesNoTerm
              ? boolean
              : T extends TextTerm
                ? string
                : number;

type ValueOfColumn<T> = T extends { readonly mayBeBlank: true }
  ? ValueOfCell<T> | undefined
  : ValueOfCell<T>;

type ValueOfTerm<T> =
  T extends RowsTerm<infer C>
    ? readonly { readonly [K in keyof C]: ValueOfColumn<C[K]> }[]
    : T extends ListTerm<infer I>
      ? T extends { readonly keepBlanks: true }
        ? readonly (ValueOfCell<I> | undefined)[]
        : readonly ValueOfCell<I>[]
      : ValueOfCell<T>;

/** The value that reading this term gives to a computation. */
export type ValueOf<T> = T extends { readonly otherwise: undefined }
  ? ValueOfTerm<T> | undefined
  : ValueOfTerm<T>;

export const optional = <
  T extends Term,
  const O extends number | string | undefined,
>(
  term: T,
  otherwise: O,
): T & { readonly otherwise: O } => ({ ...term, otherwise });

export const mayBeBlank = <T extends CellTerm>(
  term: T,
): T & { readonly mayBeBlank: true } => ({
  ...term,
  mayBeBlank: true,
});

const quantity =
  <Q extends Quantity<string>>(dimension: Dimension) =>
  (
    said: Said &
      Limits & {
        readonly unit: string;
      },
  ): QuantityTerm<Q> => ({
    kind: "quantity",
    dimension,
    ...said,
  });

export const mass = quantity<Kilograms>("mass");
/** Volumes take their brand where they are declared: cold and hot litres are different things. */
export const volume = <Q extends Quantity<string>>(
  said: Parameters<ReturnType<typeof quantity<Q>>>[0],
): QuantityTerm<Q> => quantity<Q>("volume")(said);
export const temperature = quantity<Celsius>("temperature");
export const brix = quantity<Brix>("brix");
export const density = quantity<KgPerLitre>("density");
export const length = quantity<Millimetres>("length");
export const time = quantity<Seconds>("time");
export const energy = quantity<Kilojoules>("energy");
export const pressure = quantity<Kilopascals>("pressure");

export const share = (said: Said & Limits): ShareTerm => ({
  kind: "share",
  min: 0,
  max: 1,
  ...said,
});
export const number = (
  said: Said &
    Limits & {
      readonly unit: string;
      readonly whole?: boolean;
    },
): NumberTerm => ({
  kind: "number",
  ...said,
});
export const money = (
  said: Said & Limits & { readonly unit: string },
): MoneyTerm => ({ kind: "money", ...said });
export const date = (said: Said): DateTerm => ({ kind: "date", ...said });
export const text = (said: Said): TextTerm => ({ kind: "text", ...said });
export const choice = <const C extends string>(
  said: Said & { readonly choices: readonly C[] },
): ChoiceTerm<C> => ({
  kind: "choice",
  ...said,
});
export const yesNo = (said: Said): YesNoTerm => ({
  kind: "yes or no",
  ...said,
});
export const list = <T extends CellTerm>(of: T, said: Said): ListTerm<T> => ({
  kind: "list",
  of,
  ...said,
});
/** A list that keeps its blank cells, for functions that must name what is missing. */
export const listWithBlanks = <T extends CellTerm>(
  of: T,
  said: Said,
): ListTerm<T> & { readonly keepBlanks: true } => ({
  kind: "list",
  of,
  keepBlanks: true,
  ...said,
});
export const rows = <
  C extends Readonly<Record<string, CellTerm | OptionalCell>>,
>(
  columns: C,
  said: Said,
): RowsTerm<C> => ({ kind: "rows", columns, ...said });
