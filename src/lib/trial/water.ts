/**
 * Water through a nozzle and a hose: what decides how hard a washer hits. Plain mechanics of
 * fluids; lengths mm, pressures MPa, flows L/min, forces N.
 * Sources: Bernoulli and momentum (any handbook, from memory); friction in smooth hose by Darcy and
 * Weisbach with the factor of Blasius (1913), for Reynolds numbers of 4,000 to 100,000.
 */

/** kg/m3 and m2/s, fresh water at 20 C, rounded; from memory, as in any handbook. */
const density = 1000;
const viscosity = 1e-6;

const perSecond = (litresPerMinute: number) => litresPerMinute / 1000 / 60;
const pascals = (megapascals: number) => megapascals * 1e6;

/** Speed of the jet, m/s: v = sqrt(2 p / rho), without loss in the nozzle. */
export const jetSpeed = (pressure: number): number => Math.sqrt((2 * pascals(pressure)) / density);

/**
 * Push back at the lance, N: the momentum that leaves in a second, F = rho Q v.
 * @param flow L/min
 * @param pressure MPa at the nozzle
 */
export const recoil = (flow: number, pressure: number): number =>
  density * perSecond(flow) * jetSpeed(pressure);

/**
 * Share of the pressure left when a nozzle has worn wider and the pump gives the same flow: the same
 * water through a larger hole is slower by the area, and p goes by v squared: (d / d worn)^4.
 * @param wider by which factor the hole is wider than new
 */
export const pressureLeft = (wider: number): number => wider ** -4;

/** Flow through a worn nozzle held at the same pressure, as a share of new: by the area. */
export const flowThrough = (wider: number): number => wider ** 2;

/**
 * Pressure lost in a smooth hose, MPa: dp = f (L / d) rho v^2 / 2, f = 0.316 Re^-0.25; for slow
 * flow (Re under 2,300) f = 64 / Re.
 * @param bore mm inside
 * @param length m
 */
export function lostInHose(flow: number, bore: number, length: number): number {
  const width = bore / 1000;
  const speed = perSecond(flow) / ((Math.PI / 4) * width ** 2);
  if (speed === 0) return 0;
  const reynolds = (speed * width) / viscosity;
  const friction = reynolds < 2300 ? 64 / reynolds : 0.316 * reynolds ** -0.25;
  return (friction * (length / width) * density * speed ** 2) / 2 / 1e6;
}
