import type { ReactNode } from "react";
import { Field, Select } from "@fluentui/react-components";
import { readNumber } from "../../../measures/read-number";
import { unusable } from "../../../measures/cannot-answer";
import type { CellValue } from "../../../sheets/workbook";
import { cellAddress } from "../../../sheets/address";
import { CommitField } from "../commit-field";
import type { OpenBook } from "../open-book";
import { Pair } from "../pair";
import { usePaneStyles } from "../styles";
import { tableRows } from "../table-rows";
import type { Turned, WhatIf } from "./what-if";

/** What moves, each one cell of the what-if sheet; the book itself stays as it is. */
export function WhatMoves(props: {
  readonly book: OpenBook;
  readonly whatIf: WhatIf;
  readonly write: (
    key: Turned,
    value: CellValue,
    says: string,
  ) => Promise<void>;
}): ReactNode {
  const { book, whatIf, write } = props;
  const pane = usePaneStyles();
  const { inputs } = whatIf;
  const where = (key: Turned): string =>
    `Writes ${whatIf.sheet}, ${cellAddress(inputs[key].place.row, inputs[key].place.column)}`;
  const channels = tableRows(book.tables, "Channels")
    .filter((row) => (row.number("Bottles per order") ?? 0) > 0)
    .map((row) => row.text("Channel"));
  return (
    <div className={pane.card}>
      <CommitField
        label="Bulk moves by, per lb"
        hint={where("bulk")}
        shown={signed(inputs.bulk.value, 1, 2)}
        read={(typed) => readMove(typed, "the move of bulk", 50)}
        write={(value) =>
          write("bulk", value, `Bulk moves by ${signed(value, 1, 2)} a pound.`)
        }
      />
      <Pair>
        <CommitField
          label="Wages move by"
          hint={where("wages")}
          unit="%"
          shown={signed(inputs.wages.value, 100, 1)}
          read={(typed) => readMove(typed, "the move of wages", 500) / 100}
          write={(value) =>
            write("wages", value, `Wages move by ${signed(value, 100, 1)} %.`)
          }
        />
        <CommitField
          label="Glass and jugs"
          hint={where("containers")}
          unit="%"
          shown={signed(inputs.containers.value, 100, 1)}
          read={(typed) => readMove(typed, "the move of glass", 500) / 100}
          write={(value) =>
            write(
              "containers",
              value,
              `Glass and jugs move by ${signed(value, 100, 1)} %.`,
            )
          }
        />
      </Pair>
      <Field label="Channel" hint={where("channel")}>
        <Select
          select={{ style: { minWidth: 0, width: "100%" } }}
          value={String(inputs.channel.value ?? "")}
          onChange={(_, { value }) =>
            void write(
              "channel",
              value === "" ? null : value,
              value === ""
                ? "Each product is looked at where it stands worst."
                : `Prices of ${value}.`,
            )
          }
        >
          <option value="">Where each product stands worst</option>
          {channels.map((channel) => (
            <option key={channel} value={channel}>
              {channel}
            </option>
          ))}
        </Select>
      </Field>
    </div>
  );
}

function readMove(typed: string, name: string, most: number): number {
  if (typed.trim() === "") throw unusable("Type a number; 0 for no move.");
  const plain = typed.trim().replace(/^[+]/, "").replace(/^−/, "-");
  const value = readNumber(plain.replace(/\s*%$/, ""), name);
  if (Math.abs(value) > most)
    throw unusable(`${name}: between −${most} and ${most}`);
  return value;
}

const signed = (value: unknown, times: number, digits: number): string => {
  if (typeof value !== "number") return "";
  const shown = (Math.abs(value) * times).toFixed(digits);
  return `${value < 0 ? "−" : value > 0 ? "+" : ""}${shown}`;
};
