/** NIST Handbook 44 (2014) Appendix C, units of liquid volume in mL as printed. */
export const liquidVolumes = [
  { unit: "pt", printed: 473.176473, decimals: 6 },
  { unit: "qt", printed: 946.352946, decimals: 6 },
  { unit: "gal", printed: 3785.411784, decimals: 6 },
  { unit: "fl oz", printed: 29.5735295625, decimals: 10 },
] as const;
