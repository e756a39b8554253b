import { usFactor } from '$lib/answers/units';
import { ownLanguage } from '$words/language';
import type { FigureId } from '$shared/figures';
import type { Unit } from '$shared/types';

/** How a unit is shown: its label, and how many of it one engine unit is. */
export interface Shown {
  readonly label: string;
  readonly factor: number;
}

const cubicFeetPerCubicYard = 27;
const feetPerMile = 5280;
const poundsPerTon = 2000;
/** By definition of the bar: 100,000 Pa. */
const barPerMPa = 10;
/** A US gallon is 231 cubic inches by definition; litres in one. */
const litresPerGallon = (231 * usFactor.mm ** 3) / 1e6;
/** Minutes in longer units of time. */
export const minutesIn = { hour: 60, day: 1440 } as const;

const perUs = {
  foot: 1 / usFactor.m,
  squareFoot: 1 / usFactor.m2,
  cubicFoot: 1 / usFactor.m3,
  cubicYard: 1 / (usFactor.m3 * cubicFeetPerCubicYard),
  pound: 1 / usFactor.kg,
};

const pair = (metric: string, us: string, factor: number): { metric: Shown; us: Shown } => ({
  metric: { label: metric, factor: 1 },
  us: { label: us, factor },
});
const same = (both: string) => pair(both, both, 1);

const label = ownLanguage.units;

/** Units shown as a number and a label. Lengths in mm, temperatures, ratios and CSP have ways of their own. */
export const shown = {
  m: pair('m', label.foot, perUs.foot),
  m2: pair('m²', label.squareFoot, perUs.squareFoot),
  m3: pair('m³', label.cubicYard, perUs.cubicYard),
  'm3/h': pair('m³/h', `${label.cubicYard}/h`, perUs.cubicYard),
  'm2/h': pair('m²/h', `${label.squareFoot}/h`, perUs.squareFoot),
  'm/h': pair('m/h', `${label.foot}/h`, perUs.foot),
  'h/m3': pair('h/m³', `h/${label.cubicYard}`, 1 / perUs.cubicYard),
  kg: pair('kg', label.pound, perUs.pound),
  'kg/m3': pair('kg/m³', `${label.pound}/${label.cubicFoot}`, perUs.pound / perUs.cubicFoot),
  'kg/kg': same('kg/kg'),
  'kgCO2e/m3': pair(
    'kg CO₂e/m³',
    `${label.pound} CO₂e/${label.cubicYard}`,
    perUs.pound / perUs.cubicYard,
  ),
  'kgCO2e/kg': pair(label.per('kg CO₂e', 'kg'), label.per(`${label.pound} CO₂e`, label.pound), 1),
  'kgCO2e/t km': pair(
    label.per('kg CO₂e', label.tonneAndKm),
    label.per(`${label.pound} CO₂e`, label.tonAndMile),
    poundsPerTon / 1000 / ((perUs.foot * 1000) / feetPerMile),
  ),
  t: pair('t', label.usTon, (perUs.pound * 1000) / poundsPerTon),
  km: pair('km', label.mile, (perUs.foot * 1000) / feetPerMile),
  L: pair('L', label.gallon, 1 / litresPerGallon),
  'L/m': pair('L/m', `${label.gallon}/${label.foot}`, 1 / litresPerGallon / perUs.foot),
  'L/m2': pair(
    'L/m²',
    `${label.gallon}/${label.squareFoot}`,
    1 / litresPerGallon / perUs.squareFoot,
  ),
  'L/min': pair('L/min', label.gallonsPerMinute, 1 / litresPerGallon),
  A: same('A'),
  y: same(label.years),
  'dB(A)': same('dB(A)'),
  dB: same('dB'),
  'm/s2': same('m/s²'),
  points: same(label.points),
  MPa: pair('MPa', 'psi', 1 / usFactor.MPa),
  mV: same('mV'),
  ppm: same('ppm'),
  'ug/m3': same('µg/m³'),
  count: same(''),
  'm3/min': pair('m³/min', label.cubicFeetPerMinute, perUs.cubicFoot),
  'm3/min per mm': pair(
    label.per('m³/min', 'mm'),
    label.per(label.cubicFeetPerMinute, label.inch),
    perUs.cubicFoot * usFactor.mm,
  ),
  bar: pair('bar', 'psi', 1 / barPerMPa / usFactor.MPa),
  kN: pair('kN', 'lbf', 1 / usFactor.kN),
  'mm water': pair(label.ofWater('mm'), label.ofWater(label.inch), 1 / usFactor.mm),
  // A difference of temperatures: no offset between the two scales.
  K: pair('°C', '°F', 1.8),
  index: same(''),
  MB: same('MB'),
} satisfies Partial<Record<Unit, { metric: Shown; us: Shown }>>;

export type ShownUnit = keyof typeof shown;

/** Pressures of water and air, of an MPa: what gauges of washers and compressors are marked in. */
export const atNozzle = {
  metric: { label: shown.bar.metric.label, factor: barPerMPa },
  us: shown.MPa.us,
} as const;

const waterAndAir = /^(?:wash|blast|jet|water)\.|^limit\.lance-pressure$/;

/** How a figure in MPa is shown: strength stays in MPa. */
export const shownOf = (id: FigureId): { metric: Shown; us: Shown } =>
  waterAndAir.test(id) ? atNozzle : shown.MPa;
