import { frequencyOfDays } from '$lib/climate/answer';
import { rainWithoutSnow, weatheringClass } from '$lib/climate/rain';
import { countYear } from '$lib/climate/years';
import { figures, valueOf } from '$shared/figures';
import { near, published as p, publishedPart as part, through, type Guard } from './guard';

const c62 = 'ASTM C62, note on the weathering index';
const en206 = 'EN 206-1:2000, Table F.1, as reported';
const vtrc = 'Virginia VTRC 20-R6, 133 decks';
const canada = 'Canadian climate normals 1971-2000, Ottawa';

/** A year of 365 days of which so many are missing: is it kept? */
const kept = (missing: number) =>
  countYear(
    2023,
    Array.from({ length: 365 - missing }, (_, index) => ({
      at: index,
      year: 2023,
      month: 1,
      day: 1,
      min: 1,
      max: 5,
      rain: 0,
      snow: 0,
    })),
    1,
    () => false,
  ).kept;

/** Ottawa, mm: precipitation, snow depth, rain measured apart. January; then November to March. */
const january = { precipitation: 70.2, snow: 552, rain: 25.2 };

/** Frost, exposure, weights, carbon and how long things last. */
export const climateGuards: readonly Guard[] = [
  through(
    'below 50 negligible, 500 and above severe',
    ['weathering.moderate', 'weathering.severe'],
    c62,
    () =>
      [
        [49, 'negligible'],
        [50, 'moderate'],
        [499, 'moderate'],
        [500, 'severe'],
      ].every(([index, name]) => weatheringClass(Number(index)) === name),
  ),
  through(
    '50 and 500 over 10 in of rain: 5 and 50 days',
    ['freeze.days.some', 'freeze.days.many'],
    `${c62}, worked out`,
    () =>
      frequencyOfDays(50 / 10 - 0.1) === 'few' &&
      frequencyOfDays(50 / 10) === 'some' &&
      frequencyOfDays(500 / 10 - 1) === 'some' &&
      frequencyOfDays(500 / 10) === 'many',
  ),
  through(
    'a year with more than 15 days missing is masked',
    ['weather.missing-days'],
    'ETCCDI, documentation of its reference software',
    () => kept(15) && !kept(16),
  ),
  through(
    'the snow rule is low by two fifths in January',
    ['snow.water.january-error'],
    canada,
    () =>
      near(
        100 * (1 - rainWithoutSnow(january.precipitation, january.snow) / january.rain),
        valueOf('snow.water.january-error'),
        0.03,
      ),
  ),
  through('and by 15 percent over the winter', ['snow.water.winter-error'], canada, () => {
    const byRule = 58.2 + 24.3 + 15.0 + 12.9 + 34.1;
    const measured = 59.8 + 31.3 + 25.2 + 17.6 + 36.3;
    return near(100 * (1 - byRule / measured), valueOf('snow.water.winter-error'), 0.03);
  }),
  p('exposure.xf1.water-cement', 0.55, 'as printed', en206),
  p('exposure.xf1.strength', 30, 'as printed', `${en206}: C30/37`),
  p('exposure.xf2.water-cement', 0.55, 'as printed', en206),
  p('exposure.xf2.strength', 25, 'as printed', `${en206}: C25/30`),
  p('exposure.xf2.air', 4, 'as printed', en206),
  p('exposure.xf3.water-cement', 0.5, 'as printed', en206),
  p('exposure.xf3.strength', 30, 'as printed', `${en206}: C30/37`),
  p('exposure.xf3.air', 4, 'as printed', en206),
  p('exposure.xf4.water-cement', 0.45, 'as printed', en206),
  p('exposure.xf4.strength', 30, 'as printed', `${en206}: C30/37`),
  p('exposure.xf4.air', 4, 'as printed', en206),

  p(
    'concrete.density',
    { range: [145, 150], typical: 150 },
    'lb/ft3',
    'AASHTO LRFD Table 3.5.1-1, as reported',
  ),
  through(
    '4,050 lb/yd3 solid, 2,400 broken and loose',
    ['concrete.bulking'],
    'CalRecycle conversion table',
    () => {
      const { range = [0, 0], typical = 0 } = figures['concrete.bulking'];
      return near(range[0], 4050 / 2400, 0.01) && near(typical, 4050 / 2400, 0.01);
    },
  ),
  p(
    'carbon.ready-mix',
    { range: [257, 382], typical: 352 },
    'as printed',
    'US GSA limits: 3,000 psi top 20 %, 4,000 and 5,000 psi better than average',
  ),
  p('carbon.ready-mix-mean', 370, 'as printed', 'Applied Sciences 2019 9(22) 4803: about 370'),
  p('carbon.haulage', [0.12, 0.25], 'as printed', 'UK government factors 2012, as reported'),
  part(
    'carbon.repair-mortar',
    'high',
    737,
    'kg/t',
    'Diaz-Basteris 2022: 737 kg/t, cradle to grave',
  ),
  p('life.epoxy-overlay', { range: [18, 22], typical: 20.9 }, 'as printed', vtrc),
  p('life.concrete-overlay', { range: [21, 32], typical: 25.9 }, 'as printed', vtrc),
  p(
    'life.bonded-overlay',
    [15, 25],
    'as printed',
    'Concrete Construction, Fast-track bonded overlays',
  ),
  p('life.deck-coating', 5, 'as printed', 'trade press: about 5 years'),
  p(
    'life.deck-coating-light',
    [6, 10],
    'as printed',
    'trade press: 6 to 10 years in light traffic',
  ),
];
