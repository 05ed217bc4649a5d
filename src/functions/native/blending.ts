/** Rows where only one of two figures stands are no blend: half a row is never counted as 0. */
const unlessHalfFilled = (a: string, b: string, formula: string): string =>
  `IF(SUMPRODUCT(--(ISNUMBER(${a})<>ISNUMBER(${b})))>0,VALUE("half a row"),${formula})`;

/** Mean of one range by the weights in another. */
export const nativeMeanByWeight = (weights: string, figures: string): string =>
  unlessHalfFilled(
    weights,
    figures,
    `SUMPRODUCT(${weights},${figures})/SUM(${weights})`,
  );

/** A blank row adds 0 lb of anything; its figure is read as 1, whose logarithm there is. */
export const nativeBlendColor = (weights: string, figures: string): string =>
  unlessHalfFilled(
    weights,
    figures,
    `EXP(SUMPRODUCT(${weights},LN(${figures}+(${figures}="")))/SUM(${weights}))`,
  );

export const nativeBlendPartner = (call: {
  readonly weight_a: string;
  readonly brix_a: string;
  readonly brix_b: string;
  readonly target: string;
}): string => {
  const { weight_a: weight, brix_a: a, brix_b: b, target } = call;
  return `IF(OR(${b}=${target},(${target}-${a})*(${b}-${target})<0),NA(),${weight}*(${target}-${a})/(${b}-${target}))`;
};
