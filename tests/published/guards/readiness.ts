import type { CheckId, CheckResult, RequirementId } from '$lib/answers/readiness-record';
import { openTime } from '$lib/readiness/clock';
import { judgeReadings, type ReadingContext } from '$lib/readiness/judge-readings';
import { askedBy } from '$lib/readiness/requirement';
import { countFor } from '$lib/readiness/sampling';
import { published as p, through, type Guard } from './guard';

const d4262 = 'ASTM D4262-05(2012) 6.2';
const f3191 = 'ASTM F3191, as reported';
const f2170 = 'ASTM F2170, as two checklists report it';
const c876 = 'ASTM C876, as reported';
const aci364 = 'ACI 364.6T-02(11)';
const acip = 'ACI PRC-364.6-22';
const german = 'DAfStb repair guideline, as two test houses report it';
const aci548 = 'ACI 548.8M-19';
const en1504 = 'EN 1504-3, as reported';
const dew = 'ISO 8502-4, as reported';

const ft2 = 0.09290304;
/** Tests asked for on areas in square feet, against the standard's numbers. */
const tests = (check: CheckId, rows: readonly (readonly [number, number])[]) =>
  rows.every(([feet, count]) => countFor(check, feet * ft2, undefined, [])?.tests === count);

/** Whether a reading passes, fails or decides nothing. */
const verdict = (
  check: Parameters<typeof judgeReadings>[0],
  value: number,
  given: CheckResult['given'] = {},
  around: Partial<ReadingContext> = {},
) =>
  judgeReadings(
    check,
    { readings: [value], given },
    1,
    { profile: null, corroded: true, ...around },
    [],
  ).state;

const asked = (id: RequirementId) => askedBy({ id, mean: 1 }, []);

const openFor = (hours: number) =>
  openTime(
    { prepared: '2026-05-04T00:00:00Z', spoiled: [] },
    new Date(Date.UTC(2026, 4, 4) + hours * 3_600_000).toISOString(),
    [],
  ).state;

/** Tests before covering: how many, how long, what passes. */
export const readinessGuards: readonly Guard[] = [
  through('two readings for each 500 ft2', ['ph.tests', 'ph.area'], d4262, () =>
    tests('ph', [
      [500, 2],
      [501, 4],
      [1000, 4],
      [1001, 6],
    ]),
  ),
  through(
    'three in the first 2,000 ft2, one more for each 3,000',
    ['absorption.first-tests', 'absorption.first-area', 'absorption.more-area'],
    f3191,
    () =>
      tests('absorption', [
        [2000, 3],
        [2001, 4],
        [5000, 4],
        [5001, 5],
      ]),
  ),
  through(
    'three in the first 1,000 ft2, one more for each 1,000',
    ['humidity.first-tests', 'humidity.first-area', 'humidity.more-area'],
    f2170,
    () =>
      tests('humidity', [
        [1000, 3],
        [1001, 4],
        [2000, 4],
        [2001, 5],
      ]),
  ),
  through(
    'under a minute',
    ['absorption.time'],
    f3191,
    () => verdict('absorption', 0.95) === 'ready' && verdict('absorption', 1.05) === 'not-ready',
  ),
  through(
    '75 percent',
    ['humidity.most'],
    'ASTM F710, as reported',
    () => verdict('humidity', 75) === 'ready' && verdict('humidity', 76) === 'not-ready',
  ),
  through(
    'above -200 mV low, below -350 mV high',
    ['halfcell.low', 'halfcell.high'],
    c876,
    () =>
      verdict('half-cell', -190) === 'ready' &&
      verdict('half-cell', -210) === 'retest' &&
      verdict('half-cell', -340) === 'retest' &&
      verdict('half-cell', -360) === 'not-ready',
  ),
  through(
    'old concrete: low under 0.4 percent, medium to 1, high above',
    ['chloride.old-low', 'chloride.high'],
    'The Concrete Society, chlorides and concrete; BRE Digest 444, as it reports it',
    () =>
      verdict('chloride', 0.39) === 'ready' &&
      verdict('chloride', 0.4) === 'retest' &&
      verdict('chloride', 1) === 'retest' &&
      verdict('chloride', 1.01) === 'not-ready',
  ),
  through(
    'with tendons no more than 0.06 percent passes unasked',
    ['chloride.prestressed'],
    'ACI 318-19, as a ready-mix association prints the table',
    () =>
      verdict('chloride', 0.06, {}, { tendons: true }) === 'ready' &&
      verdict('chloride', 0.065, {}, { tendons: true }) === 'retest',
  ),
  through(
    'the slab 3 C above the dew point, which at 20 C and 50 percent is 9.3 C',
    ['cover.above-dew'],
    `${dew}; psychrometric tables, from memory`,
    () =>
      verdict('dew-point', 12.4, { air: 20, humidity: 50 }) === 'ready' &&
      verdict('dew-point', 12.2, { air: 20, humidity: 50 }) === 'not-ready',
  ),
  through(
    'cement on a slab from 55 to 90 F, never under 40 F',
    ['place.temperature', 'place.temperature-least'],
    'UFC 3-270-03 16.4',
    () => {
      const cement = { wantsDry: false, cement: true };
      const at = (fahrenheit: number) =>
        verdict('dew-point', ((fahrenheit - 32) * 5) / 9, {}, cement);
      return (
        at(39) === 'not-ready' &&
        at(41) === 'retest' &&
        at(54) === 'retest' &&
        at(56) === 'ready' &&
        at(89) === 'ready' &&
        at(91) === 'not-ready'
      );
    },
  ),
  through(
    'pH 12.5 is corrosive waste',
    ['hazard.wash-water-ph'],
    '40 CFR 261.22',
    () => verdict('slurry-ph', 12.4) === 'ready' && verdict('slurry-ph', 12.5) === 'not-ready',
  ),
  through(
    'a mean of 1.5 N/mm2, the least single 1.0, three tests',
    [
      'pulloff.german-mean',
      'pulloff.german-least',
      'pulloff.german-tests',
      'pulloff.german-first-area',
      'pulloff.german-more-area',
    ],
    german,
    () => {
      const on = (area: number) => askedBy({ id: 'german-repair' }, [], undefined, area)?.onArea;
      const rule = asked('german-repair');
      return (
        rule?.mean === 1.5 &&
        rule.least === 1 &&
        rule.tests === 3 &&
        on(50) === 3 &&
        on(51) === 6 &&
        on(300) === 6 &&
        on(301) === 9
      );
    },
  ),
  through(
    'behind a bar 3/4 in, or the aggregate + 1/4 in',
    ['bar.clear', 'bar.clear-over-aggregate'],
    acip,
    () =>
      verdict('bars-free', 18.5) === 'not-ready' &&
      verdict('bars-free', 19.1) === 'ready' &&
      verdict('bars-free', 25.4 + 6, { aggregate: 25.4 }) === 'not-ready' &&
      verdict('bars-free', 25.4 + 6.7, { aggregate: 25.4 }) === 'ready',
  ),
  through(
    'the mean of three at least 1.7 MPa, CSP 5',
    ['pulloff.overlay-mean', 'pulloff.overlay-tests', 'pulloff.overlay-profile'],
    `${aci548}, 3.1.2 and 3.2.1`,
    () => {
      const overlay = asked('overlay-control');
      return overlay?.mean === 1.7 && overlay.tests === 3 && overlay.profile === 5;
    },
  ),
  through(
    'R4 2.0, R3 1.5, R2 0.8 MPa',
    ['pulloff.product-r4', 'pulloff.product-r3', 'pulloff.product-r2'],
    en1504,
    () =>
      asked('product-r4')?.mean === 2 &&
      asked('product-r3')?.mean === 1.5 &&
      asked('product-r2')?.mean === 0.8,
  ),
  through(
    'a minimum of three normal results',
    ['pulloff.least-tests'],
    'AS 1012.24:2015, 6.6',
    () => asked('own')?.tests === 3,
  ),
  through(
    'left open 24 h, cleaned again',
    ['open.limit'],
    'UFC 3-270-03 3.1',
    () => openFor(23.5) === 'fresh' && openFor(24.5) === 'gone-stale',
  ),

  p('seal.within', 24, 'as printed', 'UFC 3-270-03 2.6: within 24 h'),
  p('pulloff.specified', [100, 250], 'psi', 'Concrete Construction, Bond security'),
  p('pulloff.scatter', [20, 25], 'as printed', german),
  p('pulloff.ring-depth', [5, 10], 'as printed', german),
  p('pulloff.weak-plane', 8, 'as printed', 'FHWA, I-90 Sturgis, 1999: within 8 mm'),
  p('sheet.side', 18, 'in', 'ASTM D4263, as reported'),
  p('sheet.time', 16, 'as printed', 'ASTM D4263, as reported: 16 h'),
  p('humidity.depth', 40, 'as printed', f2170),
  p('humidity.depth-both', 20, 'as printed', f2170),
  p('humidity.conditioned', 48, 'as printed', f2170),
  p('humidity.wait', 24, 'as printed', 'ASTM F2170-18, as a maker of meters tells of its revision'),
  p('humidity.wait-before', 72, 'as printed', 'ASTM F2170-09, as a maker of meters prints it'),
  p('chloride.new-concrete', 0.15, 'as printed', aci364),
  p('carbonation.ph', 9, 'as printed', 'The Concrete Society, depth of carbonation: about pH 9'),
  p('ph.from-rinse-military', 1, 'as printed', 'MIL-HDBK-1110 6.7.2.1: one pH unit'),
  p('cover.humidity', 85, 'as printed', `${dew}: 85 %`),
];
