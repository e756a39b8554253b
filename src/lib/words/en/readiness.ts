import type { ReadinessWords } from '$lib/words/readiness-types';
import { checkWords } from './readiness/checks';
import { needSentences } from './readiness/needs';
import { problemSentences } from './readiness/problems';
import { verdictSentences } from './readiness/verdicts';

export { readyPage } from './readiness/page';

/** Everything said about readiness, in English. */
export const readinessWords: ReadinessWords = {
  checks: checkWords,
  needs: needSentences,
  verdicts: verdictSentences,
  problems: problemSentences,
  states: {
    ready: { name: 'Ready', line: 'It may be covered.' },
    'not-ready': { name: 'Not ready', line: 'Something has to be done again first.' },
    retest: { name: 'Test again', line: 'What was found does not decide it.' },
    'not-yet-checked': { name: 'Not yet checked', line: 'Checks are still open.' },
  },
  planes: {
    base: 'Base concrete',
    bond: 'Bond line',
    repair: 'Repair',
    glue: 'Glue',
  },
  given: {
    cover: { name: 'Cover', line: 'How deep the bar lies' },
    rinse: { name: 'pH of the rinse water', line: 'Measured before it went on' },
    air: { name: 'Temperature of the air', line: 'In the shade, close to the surface' },
    humidity: { name: 'Relative humidity of the air, %', line: 'At the same place' },
    aggregate: { name: 'Largest stone', line: 'In the repair material; leave empty if not known' },
  },
  spoilers: { rain: 'Rain got on it', dust: 'Dust got on it', traffic: 'Traffic got on it' },
  requirements: (say) => ({
    'overlay-control': {
      name: `Overlay on a deck: mean of ${say.figure('pulloff.overlay-tests')} at least ${say.figure('pulloff.overlay-mean')}`,
      line: `ACI 548.8M-19, on ${say.csp(say.valueOf('pulloff.overlay-profile'))} or rougher. Written for epoxy overlays on bridge and parking decks.`,
    },
    'german-repair': {
      name: `German repair rules: mean at least ${say.figure('pulloff.german-mean')}, no single one below ${say.figure('pulloff.german-least')}`,
      line: `As two test houses report it: ${say.figure('pulloff.german-tests')} tests from ${say.figure('pulloff.german-first-area')} on, and as many again for each further ${say.figure('pulloff.german-more-area')}. Three results say little: single ones scatter by ${say.figure('pulloff.scatter')}.`,
    },
    own: {
      name: 'What our specification asks',
      line: `Often ${say.figure('pulloff.specified')}, as reported. Type yours.`,
    },
    'product-r4': {
      name: `Borrowed from product class R4: ${say.figure('pulloff.product-r4')}`,
      line: 'EN 1504-3 rates repair products, tested on reference concrete. It sets no limit for a site.',
    },
    'product-r3': {
      name: `Borrowed from product class R3: ${say.figure('pulloff.product-r3')}`,
      line: 'EN 1504-3 rates repair products, tested on reference concrete. It sets no limit for a site.',
    },
    'product-r2': {
      name: `Borrowed from product class R2: ${say.figure('pulloff.product-r2')}`,
      line: 'EN 1504-3 rates repair products, tested on reference concrete. It sets no limit for a site.',
    },
  }),
  depends: {
    element: 'what it is',
    setting: 'where it is',
    salts: 'salts',
    steel: 'steel',
    finish: 'what goes on next',
    contamination: 'oil',
    looseness: 'how loose and how deep it is',
  },
};
