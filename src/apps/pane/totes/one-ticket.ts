import type { Offer } from "../../../book/tickets/reason";

/** One ticket as typed into the form. */
export interface TypedTicket {
  readonly ticket: string;
  readonly date: string;
  readonly gross: string;
  readonly tare: string;
  readonly brix: string;
  readonly invoice: string;
  readonly lot: string;
}

export const emptyTicket: TypedTicket = {
  ticket: "",
  date: "",
  gross: "",
  tare: "",
  brix: "",
  invoice: "",
  lot: "",
};

const fields = Object.keys(emptyTicket) as readonly (keyof TypedTicket)[];

/** The form as a paste of one line, so that one tote is held to the same checks as many. */
export const pastedTicket = (typed: TypedTicket): string =>
  [
    fields
      .map(
        (field) =>
          (
            ({ gross: "gross lb", tare: "tare lb" }) as Readonly<
              Record<string, string>
            >
          )[field] ?? field,
      )
      .join("\t"),
    fields.map((field) => typed[field].replace(/[\t\n]/g, " ")).join("\t"),
  ].join("\n");

export const withOffer = (
  typed: TypedTicket,
  { cells }: Offer,
): TypedTicket => ({
  ...typed,
  ...Object.fromEntries(
    Object.entries(cells).flatMap(([column, value]) => {
      const field = fields[Number(column)];
      return field === undefined ? [] : [[field, value]];
    }),
  ),
});
