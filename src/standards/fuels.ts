/** Heat in a unit of fuel as it is sold, in BTU. Source: fuelHeat (common practice). */
export const fuels = {
  propane: { btu: 91_500, soldBy: "gal" },
  "natural gas": { btu: 100_000, soldBy: "therm" },
  "fuel oil": { btu: 138_500, soldBy: "gal" },
  electricity: { btu: 3_412.14, soldBy: "kWh" },
} as const;

export type Fuel = keyof typeof fuels;
