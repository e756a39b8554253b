import { allowedHours, partOf, type NoiseLimitId } from '$lib/safety/noise-limits';
import { noiseOfDay } from '$lib/safety/noise';
import { protectorFor, ratingFor } from '$lib/safety/protector';
import { levelOf, settleTask } from '$lib/safety/tasks';
import { valueOf, type FigureId } from '$shared/figures';
import type { ToolId } from '$shared/tools';
import { near, published as p, through, type Guard } from './guard';

const ontario = 'Ontario, guide to the noise regulation, Appendix D';
const ak2009 = 'Akbar-Khanzadeh 2009, NIOSHTIC 20040715';
const list = 'National Hearing Conservation Association 1997, as quoted';
const lowell = 'University of Massachusetts Lowell, quoting others';

const break_out = { step: 'break-out', setting: 'open', hours: [1, 1] } as const;

/** The level the crew's day reckons with for a tool, against the list. */
const level = (tool: ToolId, id: FigureId, low: number, high: number, source: string): Guard =>
  through(`${tool} has ${low} to ${high} dB(A)`, [id], source, () => {
    const found = levelOf(settleTask({ ...break_out, tool }));
    return typeof found === 'object' && found.range[0] === low && found.range[1] === high;
  });

/** Rows of a table of hours, each within one in the last digit printed. */
const hours = (limit: NoiseLimitId, rows: readonly (readonly [number, number])[]) =>
  rows.every(([decibels, printed]) => near(allowedHours(limit, decibels), printed, 0.02));

const ceilingAt = (ownLevel: number) =>
  noiseOfDay([settleTask({ ...break_out, ownLevel })]).ceiling;
const beyondAt = (over: number) =>
  protectorFor({ low: 85 + over, high: 85 + over, open: false }, 85).beyondOne;

/** Noise: the laws' own tables and examples through the reckoning, and levels as listed. */
export const noiseGuards: readonly Guard[] = [
  through(
    'Table G-16a',
    ['noise.day', 'noise.osha-criterion', 'noise.osha-exchange'],
    '29 CFR 1910.95, Appendix A',
    () =>
      hours('osha-limit', [
        [80, 32],
        [85, 16],
        [90, 8],
        [95, 4],
        [100, 2],
        [105, 1],
        [110, 0.5],
        [115, 0.25],
      ]),
  ),
  through(
    'the table starts at 80 dBA',
    ['noise.osha-threshold'],
    '29 CFR 1910.95, Table G-16a',
    () => partOf('osha-limit', 79.9, 8) === 0 && near(partOf('osha-limit', 80, 32), 1, 0.001),
  ),
  through(
    'the action level is a dose of 50 percent',
    ['noise.osha-action'],
    '29 CFR 1910.95(c)',
    () =>
      near(partOf('osha-action', 90, 4), 1, 0.001) && near(partOf('osha-limit', 90, 4), 0.5, 0.001),
  ),
  through(
    'Table D-2 ends at 115 dBA',
    ['noise.osha-ceiling'],
    '29 CFR 1926.52, Table D-2',
    () => ceilingAt(114) !== 'over' && ceilingAt(116) === 'over',
  ),
  through(
    '85 dBA 8 h, 88 4 h, 91 2 h, 94 1 h, 97 30 min, 100 15 min',
    ['noise.niosh-criterion', 'noise.niosh-exchange', 'noise.day'],
    'NIOSH 98-126, Table 1-1, as reported',
    () =>
      hours('niosh', [
        [85, 8],
        [88, 4],
        [91, 2],
        [94, 1],
        [97, 0.5],
        [100, 0.25],
      ]),
  ),
  through(
    '80, 85 and 87 dB(A) for 8 h',
    ['noise.eu-lower', 'noise.eu-upper', 'noise.eu-limit'],
    'Directive 2003/10/EC, as reported',
    () =>
      hours('eu-lower', [[80, 8]]) && hours('eu-upper', [[85, 8]]) && hours('eu-limit', [[87, 8]]),
  ),
  through(
    'an NRR of 33, less 7, halved, takes off 13 dB',
    ['noise.rating-a-weighted', 'noise.rating-derating'],
    '29 CFR 1910.95, Appendix B, with the OSHA Technical Manual',
    () => near(ratingFor(13), 33, 0.001) && near(ratingFor(5), 17, 0.001),
  ),
  through(
    'no protector above NRR 33',
    ['noise.rating-highest'],
    'Industrial Safety and Hygiene News, as reported',
    () => !beyondAt(13) && beyondAt(13.5),
  ),

  level('jackhammer', 'noise.jackhammer', 100, 115, ontario),
  level('hand-saw', 'noise.concrete-saw', 97, 103, ontario),
  level('blast-nozzle', 'noise.blast-nozzle', 111, 117, ontario),
  level('compressor', 'noise.compressor', 85, 104, ontario),
  level('chipping-hammer', 'noise.chipping-hammer', 103, 113, 'OSHA talk 2003, as reported'),
  level('needle-scaler', 'noise.needle-scaler', 112, 112, `${list}: needle gun, up to 112`),
  p(
    'noise.hand-grinder',
    { range: [87.9, 113], typical: 97.0 },
    'as printed',
    'Akbar-Khanzadeh 2013',
  ),
  p('noise.blast-nozzle-other', [105, 110], 'as printed', list),
  p('noise.joint-cutter', [99, 102], 'as printed', list),
  p('noise.cut-off-saw', [98, 102], 'as printed', lowell),
  p('noise.concrete-cutter', 105, 'as printed', lowell),
  p('noise.masonry-saw', 106.9, 'as printed', 'Barbosa and Bertoli 2017: at the ear'),
  p('noise.masonry-saw-beside', 99.1, 'as printed', 'Barbosa and Bertoli 2017: at 2 m'),
  p('noise.hand-grinder.4in', 91.8, 'as printed', ak2009),
  p('noise.hand-grinder.4.5in', 93.9, 'as printed', ak2009),
  p('noise.hand-grinder.5in', 95.6, 'as printed', ak2009),
  p('noise.hand-grinder.7in', 97.9, 'as printed', ak2009),
  p('noise.hand-grinder.peak', [104, 153], 'as printed', 'NIOSH, stacks.cdc.gov/view/cdc/217014'),
  p('noise.walk-behind-saw', 85, 'as printed', 'CPWR solution 681: over 85'),
  through(
    'a city lists 92, 86, 80 and 76 dBA at 50, 100, 200 and 300 ft',
    ['noise.per-doubling'],
    'Renton, Washington, exhibit 16',
    () =>
      [
        [100, 86],
        [200, 80],
        [300, 76],
      ].every(
        ([feet = 0, listed = 0]) =>
          Math.abs(92 - valueOf('noise.per-doubling') * Math.log2(feet / 50) - listed) < 0.6,
      ),
  ),
  through(
    'a grader: 94 dBA at 10 ft, 82 at 70 ft',
    ['noise.grader-doubling'],
    'a list of road machines, as reported',
    () => near(valueOf('noise.grader-doubling') * Math.log2(70 / 10), 94 - 82, 0.02),
  ),
  p('noise.indoors-near', [3, 5], 'as printed', 'texts on rooms, as reported'),
  p('noise.indoors-far', [1, 2], 'as printed', 'texts on rooms, as reported'),
];
