import { whereReaches } from "../../measures/root";

/**
 * The value that Student's t with so many whole degrees of freedom exceeds on either side with this chance in all: 2.201
 * for 0.05 and 11. Worked out from the finite sums that the definition comes to. Source: chance.
 */
export function tQuantile(twoSidedChance: number, degrees: number): number {
  const angle = whereReaches(
    (at) => chanceWithin(at, degrees),
    1 - twoSidedChance,
    0,
    Math.PI / 2,
  );
  return Math.sqrt(degrees) * Math.tan(angle);
}

/** The chance that t stays within √degrees × tan(angle) on both sides: the integral of cos^(degrees−1), over its whole. */
function chanceWithin(angle: number, degrees: number): number {
  const isEven = degrees % 2 === 0;
  if (degrees === 1) return (2 * angle) / Math.PI;
  const cos2 = Math.cos(angle) ** 2;
  // Integrating by parts takes two off the power each time, down to cos itself or to nothing.
  let term = isEven ? 1 : Math.cos(angle);
  let sum = term;
  for (let k = isEven ? 2 : 3; k < degrees; k += 2) {
    term *= ((k - 1) / k) * cos2;
    sum += term;
  }
  return isEven
    ? Math.sin(angle) * sum
    : (2 / Math.PI) * (angle + Math.sin(angle) * sum);
}
