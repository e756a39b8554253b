import { coatingResult } from './coating-result';
import type { TestId } from '$lib/advice/types';
import type { Say, TestWords } from '$lib/words/types';
import { readyPage } from '$words/readiness/page';
import { takes } from './takes';

type ExpertTest = Extract<
  TestId,
  | 'petrography'
  | 'lead-asbestos-test'
  | 'locate-services'
  | 'ask-engineer'
  | 'ask-owner'
  | 'ask-maker'
  | 'local-weather'
  | 'chloride-test'
  | 'find-water'
>;

/** Tests that need a laboratory, a licensed person, or somebody who knows. */
export const expertTests = (say: Say): Readonly<Record<ExpertTest, TestWords>> => ({
  petrography: {
    name: 'Have a core looked at',
    how: [
      'Ask a concrete testing laboratory to take a core. They say where and how deep.',
      'They look at it under a microscope. They tell you whether the stone is swelling, or frost has ruined it, and how deep that goes.',
    ],
    minutes: takes(say, 'petrography'),
  },
  'lead-asbestos-test': {
    name: 'Have the coating tested',
    how: [
      'A licensed person takes a sample, wet and without dust. Do not scrape it yourself.',
      'A laboratory tests it. Wait for the report before any tool touches it.',
      ...coatingResult,
    ],
    minutes: takes(say, 'lead-asbestos-test'),
  },
  'locate-services': {
    name: 'Have cables and pipes located',
    how: [
      'Find the plans, and call the service that marks buried lines where you live.',
      'For cables inside the concrete, have it scanned. Have what must be dead switched off and checked.',
    ],
    minutes: takes(say, 'locate-services', ' or more, as the law where you are says'),
  },
  'ask-engineer': {
    name: 'Ask an engineer',
    how: [
      'Call a licensed structural engineer. Send photographs and this page, printed or as a link from “Your jobs”.',
      'Ask what may be taken away, what must be propped, and what caused the damage.',
    ],
    minutes: takes(say, 'ask-engineer'),
  },
  'ask-owner': {
    name: 'Ask who knows the place',
    how: [
      'Ask whoever owned or looked after it how old it is, what was spilled or painted on it, and whether it is salted.',
      'Ask for drawings, and for what was repaired before.',
    ],
    minutes: takes(say, 'ask-owner'),
  },
  'ask-maker': {
    name: 'Ask the maker',
    how: [
      'Look in the data sheet of what goes on next, or call its maker.',
      'Ask which CSP it needs, whether the concrete must be damp or dry, and how soon it must be covered.',
    ],
    minutes: takes(say, 'ask-maker'),
  },
  'local-weather': {
    name: 'Count the frosts',
    how: [
      'Ask someone who has lived there for years, or load a weather file on the frost page.',
      'Count days that freeze at night and thaw by day. Long hard frost without a thaw counts once.',
    ],
    minutes: takes(say, 'local-weather'),
  },
  'find-water': {
    name: 'Find where the water comes from',
    how: [
      'Look uphill and behind: gutters, ground higher than the slab, a leaking pipe, no damp-proof layer below.',
      'Brush the bloom off, tape a clear sheet over the place, and look under it after a day and after a week.',
      'If it sweats or the bloom comes back, water still comes through. Stop it first.',
    ],
    minutes: takes(say, 'find-water', ' to look; days to be sure'),
  },
  'chloride-test': {
    name: 'Test for salt in the concrete',
    how: [
      'Have powder drilled out at the depth of the steel, with extraction on the drill.',
      `Type what the laboratory finds in “${readyPage.title}”: less than ${say.figure('chloride.old-low')} of the cement clears this. Ask an engineer about more, or about tendons.`,
    ],
    minutes: takes(say, 'chloride-test', ' with a site kit; a laboratory takes days'),
  },
});
