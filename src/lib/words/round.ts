/** Rounding for display. Nothing here is ever kept or computed with. */

/** How far a rounded trade value may lie from the true one: 100 mm is 4 in, 14 kg is 30 lb. */
const inchTolerance = 0.02;
const coarseTolerance = 0.03;

/** Below this many inches a fraction says too little, and decimals are used, as on a crack gauge. */
const leastFraction = 1 / 40;
/** Below this many inches the finest step is a thirty-second. */
const fineBelow = 1 / 4;
/** From this many inches on nobody says sixteenths: 20 mm is 3/4 in. Source: common practice, no source. */
const eighthsFrom = 1 / 2;
/** A number that somebody typed as sixteenths stays what it was. */
const typedExactly = 1e-6;

/**
 * Inches as the trade writes them: whole inches and fractions, the coarsest that is within 2 %,
 * at the finest to the sixteenth (below 1/4 in to the thirty-second, from 1/2 in on to the eighth
 * unless the value is a whole number of sixteenths).
 * @param value inches, zero or more
 * @returns whole inches, and numerator over denominator of the rest (0 over 1 when there is none);
 *   null where the value is too small for a fraction
 */
export function inchFraction(
  value: number,
): { whole: number; numerator: number; denominator: number } | null {
  if (value > 0 && value < leastFraction) return null;
  const sixteenths = Math.abs(Math.round(value * 16) - value * 16) < typedExactly;
  const finest = value < fineBelow ? 32 : value < eighthsFrom || sixteenths ? 16 : 8;
  let denominator = 1;
  while (
    denominator < finest &&
    Math.abs(Math.round(value * denominator) / denominator - value) > value * inchTolerance
  )
    denominator *= 2;
  let parts = Math.round(value * denominator);
  while (denominator > 1 && parts % 2 === 0) {
    parts /= 2;
    denominator /= 2;
  }
  const whole = Math.floor(parts / denominator);
  return { whole, numerator: parts - whole * denominator, denominator };
}

const mmPerSixteenth = 25.4 / 16;
/** Figures in mm are kept to the tenth. */
const halfATenth = 0.05;
/** Below this many mm a whole one would say another thing. */
const wholeFrom = 3;

/**
 * A figure of the trade in mm as a ruler shows it: what is a fraction of an inch in truth, and so
 * has tenths of a mm that nobody measures, is told in whole ones. 1/8 in is 3 mm, 1/4 in is 6 mm, as
 * published beside each other (NRMCA CIP 20: "1/8 to 1/4 in. (3 to 6 mm)"). All else stays what it is.
 */
export function onRuler(mm: number): number {
  const off = Math.abs(mm - Math.round(mm / mmPerSixteenth) * mmPerSixteenth);
  return mm < wholeFrom || off > halfATenth + typedExactly ? mm : Math.round(mm);
}

const inchesPerFoot = 12;
/** Below this many feet a tape is read to the quarter inch, below the next to the inch. */
const quarterInchBelow = 10;
const inchBelow = 100;

/**
 * Inches as a tape on a site is read: feet, whole inches and quarters; whole inches from 10 ft, whole
 * feet from 100 ft on. A whole number of sixteenths stays what it was. Source: common practice, no source.
 * @param value inches, zero or more
 */
export function feetAndInches(value: number): {
  feet: number;
  whole: number;
  numerator: number;
  denominator: number;
} {
  const typed = Math.abs(Math.round(value * 16) - value * 16) < typedExactly;
  const size = value / inchesPerFoot;
  const parts = size >= inchBelow ? 1 / inchesPerFoot : size >= quarterInchBelow ? 1 : 4;
  let denominator = typed && size < inchBelow ? 16 : parts;
  let all = Math.round(value * denominator);
  if (denominator < 1) return { feet: all, whole: 0, numerator: 0, denominator: 1 };
  while (denominator > 1 && all % 2 === 0) {
    all /= 2;
    denominator /= 2;
  }
  const inches = Math.floor(all / denominator);
  const feet = Math.floor(inches / inchesPerFoot);
  return {
    feet,
    whole: inches - feet * inchesPerFoot,
    numerator: all - inches * denominator,
    denominator,
  };
}

/**
 * Square feet as they are told: whole from 10 on, tenths below; what was typed in tenths stays.
 * Source: common practice, no source.
 */
export const areaDecimals = (value: number): number =>
  value < 10 || Math.abs(Math.round(value * 10) - value * 10) < typedExactly ? 1 : 0;

/**
 * The roundest number within 3 %: the coarsest multiple of 1, 2, 2.5 or 5 times a power of ten.
 * For figures that came from the other system of units as round numbers.
 */
export function roundest(value: number): number {
  if (value === 0) return 0;
  const start = Math.floor(Math.log10(Math.abs(value))) + 1;
  for (let power = start; power >= start - 4; power--)
    for (const lead of [5, 2.5, 2, 1]) {
      const step = lead * 10 ** power;
      const rounded = Math.round(value / step) * step;
      // Between 1 and 10 a hundredth is more than is known: 6.2 miles, not 6.25.
      if (step === 0.25 && rounded >= 1 && !Number.isInteger(2 * rounded)) continue;
      if (rounded !== 0 && Math.abs(rounded - value) <= Math.abs(value) * coarseTolerance)
        return rounded;
    }
  return value;
}

/** Decimals worth showing: about three figures, never fewer than whole numbers. */
export function decimalsFor(value: number): number {
  const size = Math.abs(value);
  if (size >= 100) return 0;
  if (size >= 10) return 1;
  return size >= 1 ? 2 : 3;
}
