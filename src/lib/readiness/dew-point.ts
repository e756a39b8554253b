/**
 * Temperature at which water begins to form out of air.
 * Source: the Magnus formula over water, with the constants 17.62 and 243.12 °C of the World
 * Meteorological Organization's guide to instruments (from memory). Good to a tenth of a degree
 * from -40 to 50 °C.
 * @param air °C
 * @param humidity relative humidity, percent, above 0
 * @returns °C; minus infinity in air without any water
 */
export function dewPoint(air: number, humidity: number): number {
  if (humidity <= 0) return -Infinity;
  const slope = 17.62;
  const offset = 243.12;
  const share = Math.log(humidity / 100) + (slope * air) / (offset + air);
  return (offset * share) / (slope - share);
}
