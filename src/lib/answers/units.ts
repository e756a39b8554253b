/**
 * The only place where US units turn into engine units and back.
 * Inside the engine: mm, m, m2, m3, kg, MPa. The factors are exact by definition
 * (international yard and pound agreement of 1959), except psi, which follows from them.
 */
/** Which system a reader sees. Changes the wording of a number, never the number kept. */
export type UnitSystem = 'metric' | 'us';

const mmPerInch = 25.4;
const metresPerFoot = 0.3048;
const kgPerPound = 0.45359237;
const standardGravity = 9.80665;

/** Factors from one US unit to one engine unit. */
export const usFactor = {
  /** inch to mm */
  mm: mmPerInch,
  /** foot to m */
  m: metresPerFoot,
  /** square foot to m2 */
  m2: metresPerFoot ** 2,
  /** cubic foot to m3 (trade volumes are then shown in cubic yards, 27 of these) */
  m3: metresPerFoot ** 3,
  /** pound to kg */
  kg: kgPerPound,
  /** psi to MPa: pound-force over square inch, N/mm2 */
  MPa: (kgPerPound * standardGravity) / mmPerInch ** 2,
  /** pound-force to kN */
  kN: (kgPerPound * standardGravity) / 1000,
} as const;

/** How much of an engine unit the unit is that US prices are given for: a cubic yard of a m3, a short ton of a tonne. */
export const usPricedUnit = {
  m3: 27 * metresPerFoot ** 3,
  t: (2000 * kgPerPound) / 1000,
} as const;

export type Convertible = keyof typeof usFactor;

/** A number in a US unit (inch, foot, square foot, cubic foot, pound, psi, pound-force) as the matching engine unit. */
export const fromUs = (kind: Convertible, value: number): number => value * usFactor[kind];

/** Degrees Fahrenheit as degrees Celsius, by definition of the two scales, and back. */
export const fromFahrenheit = (value: number): number => (value - 32) / 1.8;
export const toFahrenheit = (value: number): number => value * 1.8 + 32;

/** A number in an engine unit as the matching US unit. */
export const toUs = (kind: Convertible, value: number): number => value / usFactor[kind];
