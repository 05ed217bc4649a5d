/** Factor on the spread of a sample, by its size, in the check of the mean. Source: euPrepackages. */
export const euMeanFactors = [
  { sample: 20, factor: 0.64 },
  { sample: 30, factor: 0.503 },
  { sample: 50, factor: 0.379 },
] as const;
