import type { FigureId } from '$shared/figures';
import type { HazardId } from '$shared/methods';
import type { SourceId } from '$shared/sources';

/** The figures and the sources that a caution may quote. Whether a hazard is there is for `advice/cautions.ts`. */
export interface HazardFacts {
  readonly figures: readonly FigureId[];
  readonly sources: readonly SourceId[];
}

export const hazardFacts: Readonly<Record<HazardId, HazardFacts>> = {
  silica: {
    figures: ['silica.limit', 'silica.action-level', 'silica.airflow'],
    sources: ['osha-1926.1153'],
  },
  noise: {
    figures: ['noise.osha-criterion', 'noise.niosh-criterion', 'noise.eu-upper', 'noise.eu-limit'],
    sources: ['osha-1910.95', 'osha-1926.52', 'niosh-98-126', 'eu-2003-10'],
  },
  vibration: {
    figures: ['vibration.action', 'vibration.limit', 'vibration.maker-factor'],
    sources: ['eu-2002-44', 'hse-reckoner'],
  },
  eyes: { figures: [], sources: ['osha-1910-i'] },
  'water-injection': { figures: ['hazard.water-injection'], sources: ['yim-2022', 'wjta'] },
  'carbon-monoxide': {
    figures: ['hazard.co-mean', 'hazard.co-ceiling'],
    sources: ['niosh-96-118'],
  },
  electric: { figures: [], sources: ['osha-1926.416'] },
  slips: { figures: [], sources: [] },
  lifting: { figures: [], sources: [] },
  chemicals: { figures: ['hazard.acid-ceiling'], sources: [] },
  'lead-asbestos': { figures: [], sources: ['osha-1926.62', 'cfr-40-61.145'] },
  structure: { figures: [], sources: ['osha-1926.850', 'pta-gn01'] },
  falls: { figures: [], sources: [] },
  overhead: { figures: [], sources: [] },
  'wash-water': { figures: ['hazard.wash-water-ph'], sources: ['cfr-40-261.22'] },
  weather: { figures: [], sources: [] },
};
