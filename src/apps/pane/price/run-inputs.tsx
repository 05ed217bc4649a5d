import { useState, type ReactNode } from "react";
import { Field, Select } from "@fluentui/react-components";
import { isAgedKind } from "../../../book/aged-syrup";
import type { CellPlace, Host } from "../../../hosts/host";
import { cellAddress } from "../../../sheets/address";
import type { CellValue } from "../../../sheets/workbook";
import { CommitField } from "../commit-field";
import { useAnnounce } from "../last-write";
import { centsApart, count, perBottle } from "../money";
import { sentenceOf, type OpenBook } from "../open-book";
import { Pair } from "../pair";
import { usePaneStyles } from "../styles";
import { tableRows } from "../table-rows";
import { readBottles, readBulkPrice } from "./bottles";
import { newestBulkPrice } from "./bulk-price";
import { readCosting, type Costing, type Figure } from "./costing";
import type { Product } from "./products";

/** The three things people turn: run size, line and today's bulk price. Each writes one cell and says which. */
export function RunInputs(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly product: Product;
  readonly costing: Costing;
}): ReactNode {
  const { host, book, product, costing } = props;
  const pane = usePaneStyles();
  const writeCell = useWriteCell(host, book, costing);
  const { bottles, line } = costing.figure;
  const bulk = newestBulkPrice(book.tables, product.kind);
  return (
    <div className={pane.card}>
      <Pair>
        {bottles && (
          <CommitField
            label="Bottles in this run"
            shown={count(bottles.value)}
            hint={`Writes ${addressOf(bottles.place)}`}
            read={readBottles}
            write={(value) =>
              writeCell(
                bottles,
                value,
                `The run is now ${count(value)} bottles.`,
              )
            }
          />
        )}
        {bulk && (
          <CommitField
            label={`Bulk ${bulk.kind}, per lb`}
            shown={
              bulk.price === undefined
                ? ""
                : bulk.price.toFixed(decimals(bulk.price))
            }
            hint={`Writes ${bulk.where}${bulk.validFrom ? `, valid from ${bulk.validFrom}` : ""}`}
            read={readBulkPrice}
            write={(value) =>
              writeCell(
                { value: bulk.price ?? null, place: bulk.place },
                value,
                `Bulk ${bulk.kind} is now $${value.toFixed(decimals(value))} a pound, for every product.`,
              )
            }
          />
        )}
      </Pair>
      {line && (
        <LineChoice
          lines={tableRows(book.tables, "Lines").map((row) => row.text("Line"))}
          chosen={typeof line.value === "string" ? line.value : ""}
          where={addressOf(line.place)}
          choose={(name) =>
            writeCell(
              line,
              name === "" ? null : name,
              name === "" ? "The cheapest line is taken." : `Run on ${name}.`,
            )
          }
        />
      )}
      {!bulk && (
        <p className={pane.quiet}>
          {isAgedKind(product.kind)
            ? "Aged syrup follows the bulk price of what went into the barrels: change it in the table Bulk prices."
            : `The table Bulk prices has no row for ${product.kind || "this syrup"}, so there is no price to change here.`}
        </p>
      )}
    </div>
  );
}

function LineChoice(props: {
  readonly lines: readonly string[];
  readonly chosen: string;
  readonly where: string;
  readonly choose: (line: string) => Promise<void>;
}): ReactNode {
  const [trouble, setTrouble] = useState<string>();
  return (
    <Field
      label="Line to run on"
      hint={`Writes ${props.where}`}
      validationMessage={trouble ?? null}
    >
      <Select
        select={{ style: { minWidth: 0, width: "100%" } }}
        value={props.chosen}
        onChange={(_, { value }) => {
          setTrouble(undefined);
          props
            .choose(value)
            .catch((problem: unknown) => setTrouble(sentenceOf(problem)));
        }}
      >
        <option value="">The cheapest for this run</option>
        {props.lines.filter(Boolean).map((line) => (
          <option key={line} value={line}>
            {line}
          </option>
        ))}
      </Select>
    </Field>
  );
}

/** Writes one input, says what it did to the cost of a bottle, and offers to put the old value back. */
function useWriteCell(
  host: Host,
  book: OpenBook,
  costing: Costing,
): (cell: Figure, value: CellValue, says: string) => Promise<void> {
  const announce = useAnnounce();
  return async ({ place, value: before }, value, says) => {
    await host.setCell(place, value);
    const after = await readCosting(host, book.names, costing.product);
    const old = asTyped(before);
    announce({
      says: `${says} ${effectOf(costing, after)}`.trim(),
      takeBack: async () => {
        await host.setCell(place, old);
        return `${addressOf(place)} holds ${old === null ? "nothing" : String(old)} again.`;
      },
    });
  };
}

function effectOf(before: Costing, after: Costing | undefined): string {
  const was = before.figure.full_replacement?.value;
  const is = after?.figure.full_replacement?.value;
  if (typeof is !== "number") return "";
  const apart = centsApart(is, was);
  return apart === "–" || apart === "no gap"
    ? `A bottle costs ${perBottle(is)}.`
    : `A bottle costs ${perBottle(is)}, ${apart} than before.`;
}

const asTyped = (before: unknown): CellValue =>
  typeof before === "number" ||
  typeof before === "string" ||
  typeof before === "boolean"
    ? before
    : null;

const addressOf = (at: CellPlace): string =>
  `${at.sheet}, ${cellAddress(at.row, at.column)}`;

/** Prices a pound have cents; a tenth of a cent is kept where someone typed it. */
const decimals = (price: number): number =>
  Math.max(2, Math.min(4, (String(price).split(".")[1] ?? "").length));
