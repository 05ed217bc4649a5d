/** Shown wherever syrup is hot. */
export const scalds =
  "Syrup at filling temperature scalds at once. Wear gloves, sleeves and eye protection; for temperatures and holding times defer to your local food-safety and process authority.";
