/** °Bé = modulus − modulus / specific gravity 20/20. Source: baumeScale. */
export const baumeModulus = 145;

/** Cubical expansion of hydrometer glass per K. Source: hydrometerGlass (from memory). */
export const hydrometerGlass = 25e-6;
