/** "$8,503.04", "CAD 11,822.06": an amount with its money; US dollars as the office writes them. */
export const moneyIn = (value: number, currency: string): string => {
  const size = Math.abs(value).toLocaleString("en-US", {
    minimumFractionDigits: 2,
    maximumFractionDigits: 2,
  });
  return `${value < 0 ? "−" : ""}${currency === "USD" ? "$" : `${currency} `}${size}`;
};
