/**
 * How many spreads above the mean of a normal distribution leaves only this share above it: 1.645 for 0.05. For a share
 * more than 0 and at most 0.5. Worked out from the definition. Source: chance.
 */
export function normalQuantile(shareAbove: number): number {
  // The logarithm of the share beyond bends only one way, so from this side Newton's steps never pass the answer.
  let z = Math.sqrt(-2 * Math.log(2 * shareAbove));
  for (;;) {
    const height = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const beyond = shareBeyond(z, height);
    const next = z + (Math.log(beyond / shareAbove) * beyond) / height;
    if (!(next < z)) return z;
    z = next;
  }
}

/** From here on the continued fraction is quicker, and the difference from a half would cost digits. */
const FAR = 2;
const TERMS = 100;

const shareBeyond = (z: number, height: number): number =>
  z < FAR ? 0.5 - height * series(z) : height / fraction(z);

/** z + z³/3 + z⁵/(3·5) + …: the area from the middle over the height of the curve. */
function series(z: number): number {
  let term = z;
  let sum = z;
  for (let odd = 3; term > sum * Number.EPSILON; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return sum;
}

/** z + 1/(z + 2/(z + 3/(z + …))): the height of the curve over the area beyond. */
function fraction(z: number): number {
  let below = z;
  for (let k = TERMS; k > 0; k -= 1) below = z + k / below;
  return below;
}
