export const nativePriceForMargin = (call: {
  readonly cost: string;
  readonly margin: string;
  readonly fee_share: string;
  readonly fixed_fee: string;
}): string =>
  `IF(ROUND(${call.margin}+${call.fee_share},12)>=1,NA(),(${call.cost}+${call.fixed_fee})/(1-${call.margin}-${call.fee_share}))`;

export function nativeRoundPrice(call: {
  readonly price: string;
  readonly ending: string;
  readonly direction: string;
}): string {
  const { price, ending, direction } = call;
  const steps = `ROUND(${price}-${ending},6)`;
  const whole =
    `IF(${direction}="up",-INT(-${steps}),` +
    `IF(${direction}="nearest",MAX(0,INT(${steps}+0.5)),` +
    `IF(${steps}<0,NA(),INT(${steps}))))`;
  return `ROUND(${whole}+${ending},6)`;
}
