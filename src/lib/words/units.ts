import { usFactor } from '$lib/answers/units';
import type { Unit } from '$shared/types';

/** How a unit is shown: its label, and how many of it one engine unit is. */
export interface Shown {
  readonly label: string;
  readonly factor: number;
}

const cubicFeetPerCubicYard = 27;
const feetPerMile = 5280;
const poundsPerTon = 2000;
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

const same = (label: string): { metric: Shown; us: Shown } => ({
  metric: { label, factor: 1 },
  us: { label, factor: 1 },
});
const pair = (label: string, us: string, factor: number): { metric: Shown; us: Shown } => ({
  metric: { label, factor: 1 },
  us: { label: us, factor },
});

/** Units shown as a number and a label. Lengths in mm, temperatures, ratios and CSP have ways of their own. */
export const shown = {
  m: pair('m', 'ft', perUs.foot),
  m2: pair('m²', 'sq ft', perUs.squareFoot),
  m3: pair('m³', 'cu yd', perUs.cubicYard),
  'm3/h': pair('m³/h', 'cu yd/h', perUs.cubicYard),
  'm2/h': pair('m²/h', 'sq ft/h', perUs.squareFoot),
  'm/h': pair('m/h', 'ft/h', perUs.foot),
  'h/m3': pair('h/m³', 'h/cu yd', 1 / perUs.cubicYard),
  kg: pair('kg', 'lb', perUs.pound),
  'kg/m3': pair('kg/m³', 'lb/cu ft', perUs.pound / perUs.cubicFoot),
  'kg/kg': same('kg/kg'),
  'kgCO2e/m3': pair('kg CO₂e/m³', 'lb CO₂e/cu yd', perUs.pound / perUs.cubicYard),
  'kgCO2e/kg': same('kg CO₂e per kg'),
  'kgCO2e/t km': same('kg CO₂e per tonne and km'),
  t: pair('t', 'US tons', (perUs.pound * 1000) / poundsPerTon),
  km: pair('km', 'miles', (perUs.foot * 1000) / feetPerMile),
  L: pair('L', 'gal', 1 / litresPerGallon),
  'L/m': pair('L/m', 'gal/ft', 1 / litresPerGallon / perUs.foot),
  'L/m2': pair('L/m²', 'gal/sq ft', 1 / litresPerGallon / perUs.squareFoot),
  'L/min': pair('L/min', 'gpm', 1 / litresPerGallon),
  A: same('A'),
  y: same('years'),
  'dB(A)': same('dB(A)'),
  dB: same('dB'),
  'm/s2': same('m/s²'),
  points: same('points'),
  MPa: pair('MPa', 'psi', 1 / usFactor.MPa),
  mV: same('mV'),
  ppm: same('ppm'),
  'ug/m3': same('µg/m³'),
  count: same(''),
  'm3/min': pair('m³/min', 'cfm', perUs.cubicFoot),
  'm3/min per mm': pair('m³/min per mm', 'cfm per in', perUs.cubicFoot * usFactor.mm),
  bar: pair('bar', 'psi', 0.1 / usFactor.MPa),
  kN: pair('kN', 'lbf', 1 / usFactor.kN),
  'mm water': pair('mm of water', 'in of water', 1 / usFactor.mm),
  // A difference of temperatures: no offset between the two scales.
  K: pair('°C', '°F', 1.8),
  index: same(''),
  MB: same('MB'),
} satisfies Partial<Record<Unit, { metric: Shown; us: Shown }>>;

export type ShownUnit = keyof typeof shown;
