import { published as p, type Guard } from './guard';

const mil = 'MIL-HDBK-1110 6.7.1.7, for steel';
const niosh = 'NIOSH 98-126, Table 1-1';

/** Figures that only the explainers tell. */
export const pagesGuards: readonly Guard[] = [
  p('blast.angle.pits', [80, 90], 'as printed', `${mil}: 80 to 90 degrees for pits`),
  p('blast.angle.dirt', [60, 70], 'as printed', `${mil}: 60 to 70 degrees for other dirt`),
  p('sounding.range-z', 1.96, 'as printed', 'NIST/SEMATECH e-Handbook 1.3.6.7.1: 0.975'),
  p('air.co-most', 10, 'as printed', '29 CFR 1910.134(i), Grade D: 10 ppm, as reported'),
  p('co.distance', 20, 'ft', 'US safety pages on generators: 20 ft'),
  p('overlay.joint-below', 0.5, 'in', 'Harrington and Fick 2014, transverse joints'),
  p('dew.humidity', 85, 'as printed', 'ISO 8502-4, as reported: below 85 %'),
  p('lead.heat-gun', 1100, '°F', 'EPA and HUD, as reprinted'),
  p('vibration.tingle', 10, 'as printed', 'HSE, questions and answers: 10 minutes'),
  p('noise.hour', 94, 'as printed', `${niosh}: 94 dBA, 1 h`),
  p('noise.quarter-hour', 100, 'as printed', `${niosh}: 100 dBA, 15 min`),
  p('noise.four-minutes', 106, 'as printed', `${niosh}: 106 dBA, 3 min 45 s`),
  p('noise.double', 100, 'as printed', 'NIOSH, as reprinted: plugs and muffs from 100 dBA'),
  p('pulloff.into-base', 10, 'as printed', 'ASTM C1583, as a test-kit sheet reprints it'),
  p('lift.gb-men', 25, 'as printed', 'HSE guide weight, from memory'),
  p('lift.gb-women', 16, 'as printed', 'HSE guide weight, from memory'),
  p('lift.us', 51, 'lb', 'NIOSH lifting equation, from memory'),
];
