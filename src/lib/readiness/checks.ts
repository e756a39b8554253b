import type { CheckId, GivenId } from '$lib/answers/readiness-record';
import type { FigureId } from '$shared/figures';
import type { SourceId } from '$shared/sources';
import type { Unit } from '$shared/types';

/** How many tests an area calls for. */
export type CountRule =
  /** So many for each piece of area, or part of one. */
  | { readonly kind: 'per-area'; readonly tests: FigureId; readonly area: FigureId }
  /** So many in the first piece of area, one more for each further piece, or part of one. */
  | {
      readonly kind: 'first-then';
      readonly tests: FigureId;
      readonly first: FigureId;
      readonly more: FigureId;
    }
  /** At least so many, whatever the area. */
  | { readonly kind: 'at-least'; readonly tests: FigureId };

/** What is true of a check whatever the zone. */
export interface Check {
  /** How it is entered. A `number` check may also take the choices it lists. */
  readonly kind: 'choice' | 'number' | 'pull-off' | 'clock';
  readonly choices: readonly string[];
  /** Unit of the numbers; absent where there are none. */
  readonly unit?: Unit;
  /** Lowest and highest number taken seriously. */
  readonly limit?: FigureId;
  /** What else has to be known to judge a reading. */
  readonly given: readonly GivenId[];
  readonly where: 'everywhere' | 'random-spots' | 'each-bar' | 'coldest' | 'each-vessel';
  /** Cores, drills or breaks into the concrete: whatever may lie hidden there is located first. */
  readonly cutsIn?: true;
  /** Done beside the covering, for the sake of something else: the covering does not wait for it. */
  readonly beside?: true;
  /** Null where the whole surface, or every bar, is looked at. */
  readonly count: CountRule | null;
  /** Figures a reading is judged by. */
  readonly figures: readonly FigureId[];
  /** Source of the way it is done. Empty: common practice, no published source. */
  readonly sources: readonly SourceId[];
}

const least: CountRule = { kind: 'at-least', tests: 'sampling.least' };
const blank = { choices: [], given: [], count: null, sources: [] } as const;

export const checks: Readonly<Record<CheckId, Check>> = {
  sounding: {
    ...blank,
    kind: 'choice',
    choices: ['clear', 'dull'],
    where: 'everywhere',
    figures: [],
    sources: ['astm-d4580'],
  },
  edges: {
    ...blank,
    kind: 'choice',
    choices: ['square', 'not-square'],
    where: 'everywhere',
    figures: ['patch.min-corner', 'sawcut.depth'],
    sources: ['ufgs-03931'],
  },
  'bars-free': {
    ...blank,
    kind: 'number',
    choices: ['still-bonded'],
    unit: 'mm',
    limit: 'limit.bar-clear',
    given: ['aggregate'],
    where: 'each-bar',
    figures: ['bar.clear', 'bar.clear-over-aggregate', 'bar.bonded-share'],
    sources: ['icri-310.1r', 'aci-364.6'],
  },
  'bars-clean': {
    ...blank,
    kind: 'choice',
    choices: ['clean', 'rusty'],
    where: 'each-bar',
    figures: ['bar.along'],
    sources: ['aci-364.6'],
  },
  chloride: {
    ...blank,
    cutsIn: true,
    kind: 'number',
    unit: 'percent',
    limit: 'limit.chloride',
    where: 'random-spots',
    count: least,
    figures: ['chloride.old-low', 'chloride.high', 'chloride.prestressed'],
    sources: ['aci-364.6t', 'concrete-society-chlorides'],
  },
  carbonation: {
    ...blank,
    cutsIn: true,
    kind: 'number',
    unit: 'mm',
    limit: 'limit.carbonation',
    given: ['cover'],
    where: 'random-spots',
    count: least,
    figures: ['carbonation.ph'],
    sources: ['en-14630'],
  },
  'half-cell': {
    ...blank,
    cutsIn: true,
    kind: 'number',
    unit: 'mV',
    limit: 'limit.halfcell',
    where: 'random-spots',
    count: least,
    figures: ['halfcell.low', 'halfcell.high'],
    sources: ['astm-c876'],
  },
  'slurry-ph': {
    ...blank,
    kind: 'number',
    unit: 'pH',
    limit: 'limit.ph',
    where: 'each-vessel',
    beside: true,
    figures: ['hazard.wash-water-ph'],
    sources: ['cfr-40-261.22'],
  },
  profile: {
    ...blank,
    kind: 'number',
    unit: 'CSP',
    limit: 'csp.scale',
    where: 'random-spots',
    count: least,
    figures: ['csp.scale'],
    sources: ['icri-310.2r', 'astm-d7682'],
  },
  'pull-off': {
    ...blank,
    cutsIn: true,
    kind: 'pull-off',
    unit: 'MPa',
    limit: 'limit.stress',
    where: 'random-spots',
    count: { kind: 'at-least', tests: 'pulloff.least-tests' },
    figures: ['pulloff.least-tests', 'pulloff.glue-void', 'pulloff.confidence'],
    sources: ['astm-c1583', 'as-1012.24'],
  },
  ph: {
    ...blank,
    kind: 'number',
    unit: 'pH',
    limit: 'limit.ph',
    given: ['rinse'],
    where: 'random-spots',
    count: { kind: 'per-area', tests: 'ph.tests', area: 'ph.area' },
    figures: ['ph.from-rinse'],
    sources: ['astm-d4262'],
  },
  'dust-tape': {
    ...blank,
    kind: 'number',
    unit: 'count',
    limit: 'dust.scale',
    where: 'random-spots',
    count: least,
    figures: ['dust.most', 'dust.scale'],
    sources: ['iso-8502-3'],
  },
  'water-drop': {
    ...blank,
    kind: 'choice',
    choices: ['spreads', 'beads'],
    where: 'random-spots',
    count: least,
    figures: [],
  },
  absorption: {
    ...blank,
    kind: 'number',
    unit: 'min',
    limit: 'limit.absorption',
    where: 'random-spots',
    count: {
      kind: 'first-then',
      tests: 'absorption.first-tests',
      first: 'absorption.first-area',
      more: 'absorption.more-area',
    },
    figures: ['absorption.time'],
    sources: ['astm-f3191'],
  },
  'plastic-sheet': {
    ...blank,
    kind: 'choice',
    choices: ['dry', 'damp'],
    where: 'random-spots',
    count: { kind: 'per-area', tests: 'sheet.tests', area: 'sheet.area' },
    figures: ['sheet.side', 'sheet.time'],
    sources: ['astm-d4263'],
  },
  humidity: {
    ...blank,
    cutsIn: true,
    kind: 'number',
    unit: 'percent',
    limit: 'limit.humidity',
    where: 'random-spots',
    count: {
      kind: 'first-then',
      tests: 'humidity.first-tests',
      first: 'humidity.first-area',
      more: 'humidity.more-area',
    },
    figures: ['humidity.most', 'humidity.depth', 'humidity.wait'],
    sources: ['astm-f710', 'astm-f2170'],
  },
  'surface-damp': {
    ...blank,
    kind: 'choice',
    choices: ['damp', 'dry', 'wet'],
    where: 'everywhere',
    figures: [],
  },
  'fill-cured': {
    ...blank,
    kind: 'choice',
    choices: ['cured', 'young', 'dull', 'closed'],
    where: 'everywhere',
    figures: [],
  },
  'dew-point': {
    ...blank,
    kind: 'number',
    unit: 'C',
    limit: 'limit.temperature',
    given: ['air', 'humidity'],
    where: 'coldest',
    figures: ['cover.above-dew', 'place.temperature', 'place.temperature-least'],
    sources: ['iso-8502-4'],
  },
  'open-time': {
    ...blank,
    kind: 'clock',
    where: 'everywhere',
    figures: ['open.limit'],
    sources: ['ufc-3-270-03'],
  },
};
