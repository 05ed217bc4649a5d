/** Molar masses in g/mol of sucrose and water, as the activity formula takes them. Source: starzakPeacock. */
export const molarMass = { sucrose: 342.3, water: 18.016 } as const;

/** ln γ = q / (R·T) · x² · (1 + a·x + b·x²), x the mole fraction of sucrose. Source: starzakPeacock. */
export const waterActivity = {
  q: -17_638,
  gas: 8.314,
  a: -1.0038,
  b: -0.24653,
} as const;

/** ln(p/pc) = (Tc/T) · Σ aᵢ·τ^powerᵢ with τ = 1 − T/Tc, T in K and p in kPa. Source: steamPressure (from memory). */
export const steamPressure = {
  criticalKelvin: 647.096,
  criticalKilopascals: 22_064,
  terms: [
    [-7.85951783, 1],
    [1.84408259, 1.5],
    [-11.7866497, 3],
    [22.6807411, 3.5],
    [-15.9618719, 4],
    [1.80122502, 7.5],
  ],
} as const;
