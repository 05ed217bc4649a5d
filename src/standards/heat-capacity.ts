/**
 * Heat capacity of sucrose solutions in kJ/(kg·K): water − solids·B + warming·B·T, with B in °Bx and T in °C, for
 * pure sucrose: solids = 0.0297 − 4.6e-5 × 100. Range 0-85 °Bx, 0-100 °C; stated ±3 %. Source: heatCapacityForm.
 */
export const sucroseHeatCapacity = {
  water: 4.1868,
  solids: 0.0251,
  warming: 7.5e-5,
} as const;
