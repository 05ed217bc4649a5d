/** Lots below this are checked pack by pack, and this share of them may be short. Sources: euPrepackages, ukSmallLots. */
export const euSmallLots = { below: 100, allowedShare: 0.05 } as const;
