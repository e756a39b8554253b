/**
 * Quantiles of Student's t for whole degrees of freedom.
 *
 * For whole degrees the distribution has an exact finite sum, so no approximation is needed.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.7.3 and 26.7.4;
 * checked in the tests against the printed table of the NIST handbook and a general library.
 */

/** The middle share A(t), the chance that |T| is below t, at the angle atan(t / sqrt(degrees)). */
function middleShare(angle: number, degrees: number): number {
  const sine = Math.sin(angle);
  const cosine = Math.cos(angle);
  const odd = degrees % 2 === 1;
  let term = odd ? cosine : 1;
  let sum = degrees === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k < degrees; k += 2) {
    term *= ((k - 1) / k) * cosine * cosine;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
}

/**
 * The value that T with `degrees` of freedom stays below with the given probability.
 * @param probability from 0.5 up to, but not including, 1
 * @param degrees whole number, 1 or more
 * @throws RangeError outside those
 */
export function studentQuantile(probability: number, degrees: number): number {
  if (!(probability >= 0.5 && probability < 1))
    throw new RangeError(`probability ${probability}: expected 0.5 or more and below 1`);
  if (!Number.isInteger(degrees) || degrees < 1)
    throw new RangeError(`degrees of freedom ${degrees}: expected a whole number, 1 or more`);
  const share = 2 * probability - 1;
  let low = 0;
  let high = Math.PI / 2;
  // The share rises with the angle; halving the interval this often exhausts a double's precision.
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (middleShare(middle, degrees) < share) low = middle;
    else high = middle;
  }
  return Math.sqrt(degrees) * Math.tan((low + high) / 2);
}
