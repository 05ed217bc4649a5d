/** The longest number without its check digit: a pallet's. */
const LONGEST = 17;
const PLACES = Array.from({ length: LONGEST }, (_, i) => i + 1);
const ZEROS = "0".repeat(LONGEST);

/** Formula text for the check digit of a text of digits; zeros in front change nothing, so it is filled up with them. */
export const nativeCheckDigit = (digits: string): string =>
  `MOD(-SUMPRODUCT(MID(RIGHT("${ZEROS}"&${digits},${LONGEST}),{${PLACES.join(",")}},1)*{${PLACES.map((place) => (place % 2 === 1 ? 3 : 1)).join(",")}}),10)`;

export const nativeWithCheckDigit = (digits: string): string =>
  `${digits}&${nativeCheckDigit(digits)}`;

export function nativeCaseCode(call: {
  readonly gtin: string;
  readonly indicator: string;
}): string {
  const { gtin, indicator } = call;
  const body = `LEFT(${gtin},LEN(${gtin})-1)`;
  const coded = `(${indicator}&RIGHT("${ZEROS}"&${body},12))`;
  return `IF(RIGHT(${gtin},1)<>${nativeCheckDigit(body)}&"",VALUE("the check digit is wrong"),IF(${indicator}>8,VALUE("take 1 to 8"),${nativeWithCheckDigit(coded)}))`;
}

export function nativePalletCode(call: {
  readonly prefix: string;
  readonly serial: string;
  readonly extension: string;
}): string {
  const { prefix, serial, extension } = call;
  const own = `TEXT(${serial},"0")`;
  const room = `16-LEN(${prefix})`;
  const coded = `(${extension}&${prefix}&RIGHT("${ZEROS}"&${own},${room}))`;
  return `IF(LEN(${own})>${room},VALUE("the serial is too long"),${nativeWithCheckDigit(coded)})`;
}
