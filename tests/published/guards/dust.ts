import { respiratorsFor, type RespiratorId } from '$lib/safety/duties';
import { airflowFor, silicaOfDay } from '$lib/safety/silica';
import { settleTask } from '$lib/safety/tasks';
import { valueOf } from '$shared/figures';
import { near, published as p, through, type Guard } from './guard';

const table1 = '29 CFR 1926.1153 Table 1, as reported';
const apf = '29 CFR 1910.134 Table 1, as reported';
const ak = 'Akbar-Khanzadeh 2010, J Occup Environ Hyg 7:700';
const bridge = 'NIOSH 1996, blasting a bridge deck';

/** The column of Table 1 for so many hours of breaking with a jackhammer. */
const column = (hours: number) =>
  silicaOfDay([settleTask({ step: 'break-out', setting: 'open', hours: [hours, hours] })]).column;

/** The lightest respirator for a factor. */
const lightest = (factor: number): RespiratorId | undefined => respiratorsFor(factor)[0]?.id;

/** Dust and what the law says of it. Levels are printed in mg/m3. */
export const dustGuards: readonly Guard[] = [
  p('silica.limit', 0.05, 'mg/m3', '29 CFR 1926.1153(d)(1): 50 ug/m3, which is 0.05 mg/m3'),
  p('silica.action-level', 0.025, 'mg/m3', '29 CFR 1926.1153(b): 25 ug/m3, which is 0.025 mg/m3'),
  p('silica.limit-eu', 0.1, 'mg/m3', 'Directive (EU) 2017/2398, Annex III: 0.1 mg/m3'),
  through(
    'a quarter of an hour at 800 ug/m3 is the action level of a day',
    ['silica.quarter-hour', 'silica.action-level'],
    'OSHA, silica questions of 2018, citing 81 FR 16706',
    () => near((valueOf('silica.quarter-hour') * 15) / 480, 25, 0.001),
  ),
  through(
    'up to 4 hours, and over 4 hours',
    ['silica.long-shift'],
    table1,
    () => column(3.9) === 'up-to-4' && column(4) === 'up-to-4' && column(4.1) === 'over-4',
  ),
  through('a 5 in wheel wants 125 cfm, a 7 in wheel 175', ['silica.airflow'], table1, () =>
    [
      [5, 125],
      [7, 175],
    ].every(([wheel = 0, cfm = 0]) => near(airflowFor(wheel * 25.4), cfm * 0.3048 ** 3, 0.001)),
  ),
  p('silica.filter', 99, 'as printed', `${table1}: 99 percent`),
  p('silica.exam-days', 30, 'as printed', '29 CFR 1926.1153(h): 30 days a year'),
  through(
    'a half mask has 10, a loose hood 25, a full face 50',
    ['silica.apf.half-mask', 'silica.apf.loose-hood', 'silica.apf.full-face'],
    apf,
    () =>
      lightest(10) === 'half-mask' &&
      lightest(11) === 'loose-hood' &&
      lightest(25) === 'loose-hood' &&
      lightest(26) === 'full-face' &&
      lightest(50) === 'full-face' &&
      lightest(51) === undefined &&
      respiratorsFor(10)
        .map(({ factor }) => factor)
        .join() === '10,25,50',
  ),

  p('dust.hand-grinder', [6.8, 23.1], 'mg/m3', ak),
  p('dust.hand-grinder.hepa', [0.09, 0.17], 'mg/m3', ak),
  p('dust.hand-grinder.shop-vacuum', [0.13, 0.57], 'mg/m3', ak),
  p('dust.hand-grinder.wet', [0.44, 1.11], 'mg/m3', ak),
  p('dust.cut.hepa', 99.0, 'as printed', ak),
  p('dust.cut.shop-vacuum', 98.1, 'as printed', ak),
  p('dust.cut.wet-grinding', 94.4, 'as printed', ak),
  p(
    'dust.hand-grinder.sites',
    { range: [0.02, 7.1], typical: 1.16 },
    'mg/m3',
    'Akbar-Khanzadeh and Brillhart 2002',
  ),
  p('dust.hand-grinder.stadium', [0.056, 0.83], 'mg/m3', 'NIOSH EPHB 247-21: 56 to 830 microg/m3'),
  through(
    'jackhammer: 53 and 124 times 0.025 mg/m3',
    ['dust.jackhammer'],
    'New Jersey health department 2006',
    () => p('dust.jackhammer', [53 * 0.025, 124 * 0.025], 'mg/m3', '').holds(),
  ),
  through('jackhammer: about 6 times 0.05 mg/m3', ['dust.jackhammer.other'], 'NIOSH 2008-127', () =>
    p('dust.jackhammer.other', 6 * 0.05, 'mg/m3', '').holds(),
  ),
  p('dust.cut.hammer-water', [70, 90], 'as printed', 'NIOSH 2008-127'),
  p('dust.scabbler', 3.88, 'mg/m3', 'NIOSH EPHB 247-15d: from 3.88 mg/m3'),
  p('dust.scabbler.wet', 0.64, 'mg/m3', 'NIOSH EPHB 247-15d: to 0.64 mg/m3'),
  p('dust.cut.scabbler-water', 80, 'as printed', 'NIOSH EPHB 247-15d: an 80% reduction'),
  p('dust.saw-pipe', 14.4, 'mg/m3', 'Shepherd and Woskie 2013'),
  p('dust.cut.saw-pipe', 85, 'as printed', 'Shepherd and Woskie 2013'),
  p('dust.cut.walk-behind-saw', [50, 95], 'as printed', 'CPWR solution 681'),
  p('dust.blast.operator', [0.02, 0.2], 'mg/m3', bridge),
  p('dust.blast.loader', [0.04, 0.35], 'mg/m3', bridge),
  p('dust.blast.bystander', [0.05, 0.53], 'mg/m3', bridge),
  p('dust.blast.most', 14.0, 'mg/m3', 'Linch 2002'),
  p('dust.blast.wet', [0.06, 0.2], 'mg/m3', 'J Occup Environ Hyg 2004;1:D26'),
  p('dust.construction', 0.13, 'mg/m3', 'Flanagan 2006'),
  p('dust.cut.on-tool', 90, 'as printed', 'HSE RR926: 90 percent or more'),
  p('dust.mask-gb', 20, 'as printed', 'HSE, scabbling or grinding: factor 20'),

  p('hazard.water-injection', 100, 'psi in bar', 'Yim 2022: about 100 psi'),
  p('hazard.co-mean', 35, 'as printed', 'NIOSH 96-118: 35 ppm'),
  p('hazard.co-ceiling', 200, 'as printed', 'NIOSH 96-118: 200 ppm'),
  p('hazard.wash-water-ph', 12.5, 'as printed', '40 CFR 261.22: 12.5'),
];
