import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { Region } from './types';

export const dutyIds = [
  'written-plan',
  'competent-person',
  'training',
  'no-dry-sweeping',
  'no-compressed-air',
  'medical-exam',
  'fit-test',
  'assess-exposure',
  'ask-your-country',
] as const;
export type DutyId = (typeof dutyIds)[number];

/** What an employer has to see to, whatever the step. */
export interface Duty {
  readonly id: DutyId;
  /** Figures the sentence names. */
  readonly figures: readonly FigureId[];
}

const duty = (id: DutyId, ...figures: FigureId[]): Duty => ({ id, figures });

const always = [
  duty('written-plan'),
  duty('competent-person'),
  duty('training'),
  duty('no-dry-sweeping'),
  duty('no-compressed-air'),
];

const limitsOf: Readonly<Record<Region, readonly FigureId[]>> = {
  us: ['silica.limit', 'silica.action-level'],
  elsewhere: ['silica.limit-eu'],
};

/**
 * The duties of whoever employs people in silica dust. In the US from 29 CFR 1926.1153 (c), (f), (g), (h), (i);
 * elsewhere the same measures are good practice and the country's own rule decides.
 * @param respirator whether any task asks for a respirator
 * @param assess whether any task is outside Table 1
 */
export function silicaDuties(region: Region, respirator: boolean, assess: boolean): Duty[] {
  return [
    ...(region === 'elsewhere' ? [duty('ask-your-country', ...limitsOf[region])] : []),
    ...(assess ? [duty('assess-exposure', ...limitsOf[region])] : []),
    ...always,
    ...(respirator ? [duty('fit-test'), duty('medical-exam', 'silica.exam-days')] : []),
  ];
}

export const respiratorIds = ['half-mask', 'loose-hood', 'full-face'] as const;
export type RespiratorId = (typeof respiratorIds)[number];

const factorFigure: Readonly<Record<RespiratorId, FigureId>> = {
  'half-mask': 'silica.apf.half-mask',
  'loose-hood': 'silica.apf.loose-hood',
  'full-face': 'silica.apf.full-face',
};

/**
 * The kinds of respirator whose assigned protection factor is enough, the lightest first;
 * empty where none is asked for. Source: 29 CFR 1910.134 Table 1.
 */
export function respiratorsFor(
  factor: number,
  own?: OwnFigures,
): { id: RespiratorId; factor: number; figure: FigureId }[] {
  if (factor <= 0) return [];
  return respiratorIds
    .map((id) => ({ id, factor: valueOf(factorFigure[id], own), figure: factorFigure[id] }))
    .filter((respirator) => respirator.factor >= factor);
}
