import type { Block, Column } from "../model";

const terms = (heading: string): string => `INDEX(Channels[${heading}],{n})`;
/** A book of before this column has none, and then nothing is entered. */
const charged = (hasCharged: boolean): string =>
  hasCharged
    ? `IF(ISNUMBER(${terms("Shipping charged")}),${terms("Shipping charged")},"")`
    : '""';

const forChannel = (text: string): string => `IF({row.channel}="","",${text})`;
const forSold = (text: string): string => `IF({row.sold}="yes",${text},"")`;
const applies = (word: string): string =>
  `IF(ISNUMBER(SEARCH("${word}",${terms("Fee applies to")})),"yes","no")`;

const MONEY = "#,##0.00";

/** What the usual order of each channel leaves, and from which order on it pays. `prices` is the channel list of the costing sheet. */
export const ordersBlock = (
  rows: number,
  prices: string,
  hasCharged: boolean,
): Block => ({
  kind: "table",
  name: "orders",
  title: "The usual order of each channel, on the full cost",
  rows,
  columns: [
    {
      name: "channel",
      label: "Channel",
      content: {
        formula:
          '=IF({n}>ROWS(Channels[Channel]),"",INDEX(Channels[Channel],{n}))',
      },
    },
    column(
      "price",
      "Price",
      forChannel(
        `IFERROR(IF(ISNUMBER(INDEX(${prices},{n},2)),INDEX(${prices},{n},2),""),"")`,
      ),
      MONEY,
    ),
    column(
      "usual",
      "Bottles",
      forChannel(`N(${terms("Bottles per order")})`),
      "#,##0",
    ),
    {
      ...column(
        "charged",
        "Buyer pays for shipping",
        forChannel(charged(hasCharged)),
        MONEY,
      ),
      role: "input",
    },
    column("goods", "Goods", forSold("{row.usual}*{row.price}"), MONEY),
    column(
      "fees",
      "Fees",
      forSold(
        `({row.goods}*(1+IF({row.taxed}="yes",N({tax}),0))+IF({row.shipped}="yes",N({row.charged}),0))*N(${terms("Fee share")})+N(${terms("Fee per order")})`,
      ),
      MONEY,
    ),
    column(
      "shares",
      "Marketing, returns, broker",
      forSold("{row.goods}*{row.goods_share}"),
      MONEY,
    ),
    column(
      "sending",
      "Sending",
      forSold(
        `N(${terms("Outbound freight")})+IF({row.parcels}="yes",({row.usual}-1)*{further}+N({mailer}),0)`,
      ),
      MONEY,
    ),
    column(
      "bottles_cost",
      "Bottles at full cost",
      forSold("{row.usual}*{full}"),
      MONEY,
    ),
    {
      ...column(
        "left",
        "Left",
        forSold(
          "{row.goods}+N({row.charged})-{row.fees}-{row.shares}-{row.sending}-{row.bottles_cost}",
        ),
        MONEY,
      ),
      role: "result",
    },
    column(
      "of_goods",
      "Left of the goods",
      forSold("{row.left}/{row.goods}"),
      "0.0%",
    ),
    column(
      "first",
      "Pays from, bottles",
      forSold(firstThatPays("{row.fixed}", "{row.each}")),
      "#,##0",
    ),
    column(
      "first_direct",
      "Pays from, without overheads",
      forSold(
        `IF(ISNUMBER({direct}),${firstThatPays("{row.fixed}", "({row.each}+{full}-{direct})")},"")`,
      ),
      "#,##0",
    ),
    {
      name: "says",
      label: "Verdict",
      role: "check",
      content: {
        formula: `=${forChannel('IF({row.sold}<>"yes",{row.sold},IF({row.first}="never","never pays",IF({row.left}<0,"loses money at its usual order",IF({row.first}>1,"pays from "&{row.first}&" bottles","pays from a single bottle"))))')}`,
      },
    },
    column(
      "each",
      "Each bottle adds",
      forSold(
        `{row.price}*(1-{row.goods_share}-N(${terms("Fee share")})*(1+IF({row.taxed}="yes",N({tax}),0)))-{full}-IF({row.parcels}="yes",{further},0)`,
      ),
      "0.0000",
    ),
    column(
      "fixed",
      "An order adds",
      forSold(
        `N({row.charged})*(1-IF({row.shipped}="yes",N(${terms("Fee share")}),0))-N(${terms("Fee per order")})-N(${terms("Outbound freight")})+IF({row.parcels}="yes",{further}-N({mailer}),0)`,
      ),
      "0.0000",
    ),
    column(
      "goods_share",
      "Of the goods",
      forChannel(
        `N(${terms("Marketing")})+N(${terms("Promotion and returns")})+N(${terms("Broker")})`,
      ),
      "0.0%",
    ),
    column(
      "parcels",
      "Sent in parcels",
      forChannel(`IF(N(${terms("Outbound freight")})>0,"yes","no")`),
    ),
    column("shipped", "Fee on shipping", forChannel(applies("shipping"))),
    column("taxed", "Fee on sales tax", forChannel(applies("tax"))),
    column(
      "sold",
      "Sold by the bottle",
      forChannel(
        'IF({row.usual}<=0,"sold by the pound",IF(NOT(ISNUMBER({row.price})),"no price yet",IF(ISNUMBER({full}),"yes","cost withheld")))',
      ),
    ),
    column(
      "losing",
      "Loses on one",
      `IF(AND({row.sold}="yes",ISNUMBER({row.fixed})),IF({row.fixed}+{row.each}<-0.0001,{row.channel}&"; ",""),"")`,
    ),
    column(
      "open",
      "Shipping not entered",
      `IF({row.sold}="yes",IF(AND(N(${terms("Outbound freight")})>0,{row.shipped}="yes",NOT(ISNUMBER({row.charged}))),{row.channel}&"; ",""),"")`,
    ),
    // Channels with a shop in them, counted from the top, so that the next table lists only those.
    column(
      "chain_no",
      "Channels with a shop so far",
      `N({row_above.chain_no})+IF({n}>ROWS(Channels[Channel]),0,IF(N(${terms("Buyer margin")})>0,1,0))`,
      "0",
    ),
  ],
});

/** A hundredth of a cent is rounding, not a loss. */
function firstThatPays(fixed: string, each: string): string {
  return `IF(${fixed}+${each}>=-0.0001,1,IF(${each}>0.0001,1+ROUNDUP(ROUND((-${fixed}-${each}-0.0001)/${each},6),0),"never"))`;
}

/** A column whose formula is written without its "=". */
export function column(
  name: string,
  label: string,
  formula: string,
  format?: string,
): Column {
  return {
    name,
    label,
    ...(format === undefined ? {} : { format }),
    content: { formula: `=${formula}` },
  };
}
