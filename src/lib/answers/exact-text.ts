import { fromUs, toUs, type UnitSystem } from './units';

export type ExactUnit = 'mm' | 'm' | 'm2';

/** The shortest digits that come back as exactly this number; in metric where no others do. */
export function exactText(value: number, unit: ExactUnit, units: UnitSystem): string {
  if (units === 'metric') return plain(value);
  for (let digits = 1; digits <= 17; digits++) {
    const text = plain(Number(toUs(unit, value).toPrecision(digits)));
    if (fromUs(unit, Number(text)) === value) return text;
  }
  return `${plain(value)} ${unit}`;
}
/** All digits, never "1e-7" nor "1.234", which could be a thousand and more. */
function plain(value: number): string {
  const [digits = '', power] = String(value).split('e-');
  if (power !== undefined) return `0.${'0'.repeat(Number(power) - 1)}${digits.replace('.', '')}`;
  return /^[1-9]\d{0,2}\.\d{3}$/.test(digits) ? `${digits}0` : digits;
}
