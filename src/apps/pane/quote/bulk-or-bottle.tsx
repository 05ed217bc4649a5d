import { useMemo, type ReactNode } from "react";
import { Button } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import { CommitField } from "../commit-field";
import { useGoTo } from "../go-to";
import { amount, count, perBottle } from "../money";
import type { OpenBook } from "../open-book";
import { Pair } from "../pair";
import { usePaneStyles } from "../styles";
import { plannedBulkOrBottle } from "./build";
import { BuildButton, planOrTrouble } from "./build-button";
import { readBulk, type ReadBulk } from "./read-bulk";
import { readHours, readPerPound, readPounds } from "./typed";
import { useReading } from "./use-reading";
import { useWrite } from "./use-write";

/** What the next pounds earn bottled in each channel, against selling them in bulk. */
export function BulkOrBottle(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly product: string;
}): ReactNode {
  const { host, book, product } = props;
  const pane = usePaneStyles();
  const { read, trouble, isReading } = useReading(
    host,
    book,
    product,
    readBulk,
  );
  if (isReading) return null;
  if (trouble !== undefined) return <p role="alert">{trouble}</p>;
  return read ? (
    <BulkFigures host={host} book={book} product={product} bulk={read} />
  ) : (
    <div className={pane.card}>
      <p className={pane.plain}>
        What do the next pounds earn in bottles, as far as labour reaches, and
        what in bulk? This is a sheet of its own.
      </p>
      <BuildBulk host={host} book={book} product={product} />
    </div>
  );
}

function BuildBulk(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly product: string;
}): ReactNode {
  const { host, book, product } = props;
  const plan = useMemo(
    () =>
      planOrTrouble(() =>
        plannedBulkOrBottle({
          tables: book.tables,
          sheets: book.sheets,
          product,
        }),
      ),
    [book, product],
  );
  return <BuildButton host={host} text="Compare with bulk" plan={plan} />;
}

function BulkFigures(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly product: string;
  readonly bulk: ReadBulk;
}): ReactNode {
  const { host, book, product, bulk } = props;
  const pane = usePaneStyles();
  const goTo = useGoTo();
  const write = useWrite(host, async () => {
    const after = await readBulk(host, book.names, product);
    return after ? `Earns most: ${said(after, "best")}.` : "";
  });
  const { pounds, labour, tote_price: tote, best } = bulk.cell;
  const more = bulk.cell.best_more?.value;
  return (
    <>
      <p className={pane.plain}>
        <strong>{said(bulk, "best")}</strong>
        {typeof more === "number" &&
          more > 0 &&
          `: ${amount(more)} more than all of it in bulk`}
        .
      </p>
      <div className={pane.card}>
        <Pair>
          {pounds && (
            <CommitField
              label="Syrup free, lb"
              shown={count(pounds.value)}
              read={readPounds}
              write={(value) =>
                write(pounds, value, `Free: ${count(value)} lb.`)
              }
            />
          )}
          {labour && (
            <CommitField
              label="Labour, hours"
              hint="Blank: all it takes"
              shown={
                typeof labour.value === "number" ? count(labour.value) : ""
              }
              read={readHours}
              write={(value) =>
                write(labour, value, `Labour: ${count(value)} h.`)
              }
            />
          )}
          {tote && (
            <CommitField
              label="Bulk brings, per lb"
              shown={
                typeof tote.value === "number" ? tote.value.toFixed(4) : ""
              }
              read={readPerPound}
              write={(value) =>
                write(tote, value, `A pound in bulk: ${perBottle(value)}.`)
              }
            />
          )}
        </Pair>
      </div>
      {bulk.ways.length > 0 && (
        <ul className={pane.list}>
          <li>
            <div className={pane.row}>
              <span>In bulk</span>
              <span className={pane.numeric}>
                {perBottle(bulk.cell.bulk_per_lb?.value)} a lb
              </span>
            </div>
          </li>
          {bulk.ways.map(
            ({ channel, perPound, bottles, more: gain, limit }) => (
              <li key={channel}>
                <div className={pane.row}>
                  <span>{channel}</span>
                  <span className={pane.numeric}>
                    {perBottle(perPound)} a lb
                  </span>
                </div>
                <p className={pane.quiet}>
                  {typeof bottles === "number" && bottles > 0
                    ? `${count(bottles)} bottles, ${amount(gain)} more in all; ${limit} is the limit`
                    : "bulk earns more"}
                </p>
              </li>
            ),
          )}
        </ul>
      )}
      <p className={pane.quiet}>
        Earned over syrup at today's price and direct cost. Shipping to the
        buyer is not counted.
      </p>
      {best && (
        <div className={pane.buttons}>
          <Button onClick={() => goTo(best.place)}>
            Go to the sheet “{best.place.sheet}”
          </Button>
        </div>
      )}
    </>
  );
}

/** The sheet's own words, without the mark it puts behind each. */
const said = ({ cell }: ReadBulk, key: "best"): string => {
  const value = cell[key]?.value;
  return typeof value === "string"
    ? value.replace(/[;\s]+$/, "")
    : "The sheet has no answer";
};
