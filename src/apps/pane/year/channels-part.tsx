import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import type { ChannelsKey } from "../../../sheets/channels/channels-sheet";
import type { Stored } from "../../../sheets/workbook";
import { amount, count, share } from "../money";
import { Pair } from "../pair";
import { LinePicture } from "../pictures/line-picture";
import { Section } from "../section";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { type Figures, isNumber, openChecks, words } from "./figures";
import { InputField } from "./input-field";
import { typedPrice, typedShare } from "./typed";

/** What each channel leaves of a product, read from its sheet. */
export function ChannelsPart(props: {
  readonly host: Host;
  readonly figures: Figures<ChannelsKey>;
  readonly dark: boolean;
}): ReactNode {
  const { host, figures, dark } = props;
  const pane = usePaneStyles();
  const orders = figures.rows("orders").filter(([name]) => words(name) !== "");
  const [, ...sizes] = figures.rows("sizes")[0] ?? [];
  const small = new Map(
    figures.rows("small").map(([name, ...left]) => [words(name), left]),
  );
  const sold = orders.filter((order) => words(order[20]) === "yes");
  const unsold = orders.filter((order) => words(order[20]) !== "yes");
  const chain = figures.rows("chain").filter(([name]) => words(name) !== "");
  return (
    <>
      <div className={pane.card}>
        <Pair>
          <InputField
            host={host}
            label="A shop asks"
            value={figures.value("shelf")}
            place={figures.place("shelf")}
            show={(value) => value.toFixed(2)}
            read={typedPrice}
          />
          <InputField
            host={host}
            label="Mailer, a parcel"
            value={figures.value("mailer")}
            place={figures.place("mailer")}
            show={(value) => value.toFixed(2)}
            read={typedPrice}
          />
          <InputField
            host={host}
            label="Sending, each bottle more"
            value={figures.value("further")}
            place={figures.place("further")}
            show={(value) => value.toFixed(2)}
            read={typedPrice}
          />
          <InputField
            host={host}
            label="Sales tax"
            value={figures.value("tax")}
            place={figures.place("tax")}
            show={(value) => `${Math.round(value * 10_000) / 100} %`}
            read={typedShare}
          />
        </Pair>
      </div>
      <div>
        {openChecks(figures.rows("checks")).map(({ what, says }) => (
          <p key={what} className={pane.quiet}>
            {what}: {says}
          </p>
        ))}
      </div>
      <Section title="What an order leaves">
        <ul className={pane.list}>
          {sold.map((order) => (
            <SoldChannel
              key={words(order[0])}
              order={order}
              sizes={sizes}
              left={small.get(words(order[0])) ?? []}
            />
          ))}
        </ul>
        {unsold.length > 0 && (
          <p className={pane.quiet}>
            {unsold
              .map((order) => `${words(order[0])}: ${words(order[13])}`)
              .join(" · ")}
          </p>
        )}
      </Section>
      <OrderPicture figures={figures} dark={dark} />
      {chain.length > 0 && (
        <Section title="Back from the shelf">
          <ul className={pane.list}>
            {chain.map((row) => (
              <Chain key={words(row[0])} row={row} />
            ))}
          </ul>
        </Section>
      )}
    </>
  );
}

function SoldChannel(props: {
  readonly order: readonly Stored[];
  readonly sizes: readonly Stored[];
  readonly left: readonly Stored[];
}): ReactNode {
  const { order, sizes, left } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const [name, price, usual] = order;
  return (
    <li className={styles.item}>
      <div className={pane.row}>
        <strong>{words(name)}</strong>
        <span className={pane.numeric}>{amount(price)} a bottle</span>
      </div>
      <div className={pane.row}>
        <span>
          An order of {count(usual)} leaves {amount(order[9])}
        </span>
        <span className={pane.numeric}>{share(order[10])}</span>
      </div>
      <p className={pane.quiet}>
        {sizes
          .map((size, i) => `${count(size)}: ${amount(left[i])}`)
          .join(" · ")}
      </p>
      <p className={pane.quiet}>{sentence(words(order[13]))}</p>
    </li>
  );
}

function Chain({ row }: { readonly row: readonly Stored[] }): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  return (
    <li className={styles.item}>
      <div className={pane.row}>
        <strong>{words(row[0])}</strong>
        <span className={pane.numeric}>we invoice {amount(row[3])}</span>
      </div>
      <div className={pane.row}>
        <span>Left after broker, promotion and cost {amount(row[7])}</span>
        <span className={pane.numeric}>{share(row[8])}</span>
      </div>
      {isNumber(row[10]) && (
        <p className={pane.quiet}>
          Our price of {amount(row[9])} leads to {amount(row[10])} on the shelf.
        </p>
      )}
    </li>
  );
}

function OrderPicture(props: {
  readonly figures: Figures<ChannelsKey>;
  readonly dark: boolean;
}): ReactNode {
  const { figures, dark } = props;
  const points = figures
    .rows("picture")
    .flatMap(([bottles, left]) =>
      isNumber(bottles) && isNumber(left) ? [{ x: bottles, y: left }] : [],
    );
  const channel = words(figures.value("drawn"));
  const one = points.find(({ x }) => x === 1);
  if (!one) return null;
  const first = points.find(({ y }) => y >= 0);
  return (
    <Section title={`Orders in ${channel}`}>
      <LinePicture
        title={`What an order leaves in ${channel}`}
        says={`One bottle ${one.y < 0 ? "loses" : "leaves"} ${amount(Math.abs(one.y))}; ${
          first
            ? first.x === 1
              ? "every order pays."
              : `an order pays from ${first.x} bottles.`
            : "no order up to twelve pays."
        }`}
        across="bottles in the order"
        up="left"
        lines={[{ name: "left", points }]}
        level={{ name: "nothing left", y: 0 }}
        showX={(x) => count(x)}
        showY={(y) => `$${Math.round(y)}`}
        dark={dark}
      />
    </Section>
  );
}

const useStyles = makeStyles({
  item: {
    display: "flex",
    flexDirection: "column",
    gap: "2px",
    paddingTop: "8px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
});
