/**
 * Air through a blasting nozzle: what a worn one takes, and what pressure is left where the
 * compressor gives no more. Bores mm, pressures MPa above the air outside, flows m3/min of free air.
 * Source: an ideal gas at the speed of sound in the narrowest place, m = C A p / sqrt(R T) with
 * C = 0.6847 for air (any handbook of gas dynamics, from memory); without loss, and without grit,
 * with which trade tables have a fifth less.
 */

/** MPa, J/(kg K), K, kg/m3: the standard atmosphere, air at 20 C; from memory, as in any handbook. */
const outside = 0.101325;
const gasConstant = 287;
const temperature = 293;
const freeAir = 1.204;
const critical = 0.6847;

/** m3/min of free air for each mm2 and MPa of absolute pressure. */
const eachAreaAndPressure = ((critical / Math.sqrt(gasConstant * temperature)) * 60) / freeAir;

const area = (bore: number): number => (Math.PI / 4) * bore ** 2;

/** Air a nozzle takes at a pressure. */
export const airThrough = (bore: number, pressure: number): number =>
  eachAreaAndPressure * area(bore) * (pressure + outside);

/**
 * Least pressure at which the air reaches the speed of sound: the absolute pressure is 1.893 times
 * the one outside.
 */
export const sonicFrom = 0.893 * outside;

/** The pressure at which a nozzle takes all the air there is; null where it is too wide for it. */
export function pressureFor(bore: number, air: number): number | null {
  const pressure = air / (eachAreaAndPressure * area(bore)) - outside;
  return pressure >= sonicFrom ? pressure : null;
}
