import { KG_PER_LB } from "../../measures/units";
import { BASE_BRIX } from "../../trade/totes/sale-amount";
import { nativePoundsPerGallon } from "./density";
import { decimal, pick } from "./formula";
import { leftOut } from "./lines";

export function nativeToteNet(call: {
  readonly gross: string;
  readonly tare: string;
  readonly plate_limit: string;
}): string {
  const { gross, tare, plate_limit: limit } = call;
  const net = `IF(${tare}>=${gross},VALUE("gross and tare may be swapped"),${exact(`${gross}-${tare}`)})`;
  return limit === leftOut
    ? net
    : `IF(AND(ISNUMBER(${limit}),${gross}>${limit}),NA(),${net})`;
}

/** The inner ROUND brings a product of figures back to the decimals a person would write, so that a half is a half. */
export function nativeSaleAmount(call: {
  readonly net: string;
  readonly price: string;
  readonly basis: string;
  readonly brix: string;
}): string {
  const { net, price, basis, brix } = call;
  const inPounds = `${net}*${price}`;
  const withBrix = (amount: string): string =>
    brix === leftOut ? 'VALUE("needs brix")' : `${inPounds}${amount}`;
  return `ROUND(ROUND(${pick(basis, [
    ["per lb", inPounds],
    ["per gal", withBrix(`/${nativePoundsPerGallon(brix, "68")}`)],
    ["per lb at 66", withBrix(`*${brix}/${BASE_BRIX}`)],
    ["per kg", `${net}*${decimal(KG_PER_LB)}*${price}`],
  ])},9),2)`;
}

export const nativeContractLeft = (call: {
  readonly contract: string;
  readonly shipped: string;
}): string => exact(`${call.contract}-SUM(${call.shipped})`);

export const nativeMassBalance = (call: {
  readonly in: string;
  readonly out: string;
  readonly stock: string;
}): string => exact(`${call.in}-SUM(${call.out})-${call.stock}`);

export function nativeDaysLate(call: {
  readonly due: string;
  readonly paid_or_today: string;
  readonly balance: string;
}): string {
  const days = `MAX(0,${lateBy(call.due, call.paid_or_today)})`;
  return call.balance === leftOut
    ? days
    : `IF(AND(ISNUMBER(${call.balance}),ROUND(${call.balance},2)<=0),0,${days})`;
}

export function nativeAgeBand(call: {
  readonly due: string;
  readonly today: string;
}): string {
  const late = lateBy(call.due, call.today);
  return `IF(${late}<=0,"not due",IF(${late}<=30,"1-30",IF(${late}<=60,"31-60",IF(${late}<=90,"61-90","over 90"))))`;
}

/** A day may carry a time of day, which makes nothing late. */
const lateBy = (due: string, day: string): string => `INT(${day})-INT(${due})`;

/** Without the binary noise of a sum: pounds that balance leave 0. */
const exact = (pounds: string): string => `ROUND(${pounds},10)`;
