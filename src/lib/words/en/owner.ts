import type { LimitId } from '$lib/advice/owner-limits';
import type { MeasureId } from '$lib/plan/courses';
import type { ConditionId } from '$lib/plan/conditions';
import type { Point, PointId, ReadingId } from '$lib/plan/reading';
import type { Prices } from '$lib/answers/job';
import type { Named, Say } from '$lib/words/types';

/** The states a part of the area can be in. */
export const conditionWords: Readonly<Record<ConditionId, Named>> = {
  sound: {
    name: 'Sound',
    line: 'Firm, and stays. It is cleaned, or roughened for what goes on it.',
  },
  surface: { name: 'Weak skin', line: 'Only the top is weak. A machine takes it off.' },
  'break-out': { name: 'Break out', line: 'Loose or hollow. It is broken out and filled again.' },
  replace: { name: 'Replace', line: 'Gone through, or to half the slab. That part is made new.' },
  engineer: { name: 'Engineer first', line: 'Nobody should cut it before an engineer has looked.' },
  'not-known': { name: 'Not known yet', line: 'An answer is missing that decides.' },
  'not-entered': { name: 'Not entered', line: 'Nobody has said what state this part is in.' },
};

/** What an owner is told first. */
export const readingWords: Readonly<Record<ReadingId, Named>> = {
  restore: {
    name: 'This concrete can be restored',
    line: 'No part you entered is too deep or too rotten for a repair down to sound concrete. What speaks for and against stands below.',
  },
  'parts-only': {
    name: 'Only parts are known',
    line: 'The parts you entered can be prepared for a repair. What state the rest is in nobody has said yet.',
  },
  doubtful: {
    name: 'A repair is doubtful here',
    line: 'A part goes past the top third of the slab, or may go so far. Compare with making that part new.',
  },
  'restore-part': {
    name: 'Restore most of it, replace a part',
    line: 'A part has gone too deep for a repair and should be made new. The rest can be restored.',
  },
  replace: {
    name: 'Replacing is the better course',
    line: 'Most of it is rotten or gone through the slab. A repair would have little sound concrete to hold on to.',
  },
  'engineer-first': {
    name: 'A licensed engineer first',
    line: 'Something here is not a surface problem. Ask for a look before anybody prices either course.',
  },
  'not-known-yet': {
    name: 'Not known yet',
    line: 'Answers are missing that decide. Find those out before you choose.',
  },
};

const measureNames: Readonly<Record<MeasureId, string>> = {
  debris: 'debris',
  material: 'new material',
  water: 'water',
  hours: 'hours of work',
  'days-closed': 'days closed',
  carbon: 'carbon',
  cost: 'cost at your prices',
};

export const measureWords: Readonly<Record<MeasureId, Named>> = {
  debris: { name: 'Debris to take away', line: 'Concrete broken out, by weight.' },
  material: { name: 'New material', line: 'Repair mortar, or concrete.' },
  water: {
    name: 'Wash water to collect',
    line: 'It is alkaline and must not reach a storm drain. No figure is given for replacing.',
  },
  hours: { name: 'Hours of work', line: 'Hands and machines, drying not counted.' },
  'days-closed': {
    name: 'Days closed to cars',
    line: 'Work, drying, and the days before traffic. Heavy vehicles wait longer.',
  },
  carbon: {
    name: 'Embodied carbon',
    line: 'Making the material and hauling it and the debris, in kilograms of CO2 equivalent.',
  },
  cost: { name: 'Cost at your prices', line: 'Only from the prices you type in. We know none.' },
};

const places = (zones: readonly string[] | undefined, say: Say) =>
  zones?.length ? ` (${say.list(zones)})` : '';

/** One point for or against. `zones` in the point are names by then. */
export const pointSentences: Readonly<Record<PointId, (point: Point, say: Say) => string>> = {
  'mostly-sound': ({ share = 0 }, say) => `${say.share(share)} of the whole surface is sound.`,
  'surface-only': () => 'All that is wrong is at the surface. Nothing has to be broken out.',
  lighter: ({ measure }) =>
    `It takes less ${measure ? measureNames[measure] : ''}.`.replace('  ', ' '),
  'full-depth-parts': ({ zones }, say) =>
    `A part is damaged through, or to half the slab or deeper${places(zones, say)}. That is not a surface repair.`,
  'mostly-gone': ({ share = 0 }, say) =>
    `${say.share(share)} of the whole surface is rotten or gone to full depth.`,
  'depth-past-third': ({ zones }, say) =>
    `The damage goes past the top third of the slab, or may go so far${places(zones, say)}. A repair of only a part of the depth is doubtful there.`,
  settled: () =>
    'It has settled or rocks. A repair on a slab that moves will crack again, so the cause comes first.',
  'fire-or-chemical': () =>
    'Fire or chemicals may have changed the concrete deeper than can be seen.',
  structure: ({ zones }, say) =>
    `Concrete that holds something up would have to be cut${places(zones, say)}. An engineer says how, and what to prop.`,
  'map-cracking': () =>
    'Cracks like a map can mean that the concrete itself is failing. Then it will not hold a patch. A laboratory can tell.',
  'moving-crack': ({ zones }, say) =>
    `A crack still moves${places(zones, say)}. Whatever moves it comes first.`,
  'bar-loss': ({ zones }, say) =>
    `Rust has taken too much of a bar${places(zones, say)}. An engineer decides.`,
  'open-answers': ({ zones }, say) =>
    `What decides has not been found out yet${places(zones, say)}.`,
  unmeasured: ({ zones }, say) =>
    `These have no area yet, so they are in no share${places(zones, say)}.`,
  'whole-unknown': () =>
    'How large the whole surface is. Without it no share can be given, and replacing cannot be worked out.',
  'not-entered': ({ share = 0 }, say) =>
    `${say.share(share)} of the surface has not been entered. Nobody has said what state it is in.`,
  'thickness-unknown': () =>
    'The thickness of the slab, without which replacing cannot be worked out.',
  'patch-life': ({ figures = [] }, say) =>
    figures.includes('patch.life-poor')
      ? `Patches do fail: in one published survey only ${say.figure('patch.life-poor')} were good after about 3 years.`
      : `Well built patches last: published surveys found ${say.figure('patch.life-good')} good at 3 to 10 years.`,
  'no-one-percentage': () =>
    'At what share of damage replacing pays. Published sidewalk rules disagree widely, so no one number decides here.',
};

/** What to ask, and what an honest offer contains. */
export const contractorQuestions: readonly string[] = [
  'How will you find out where the concrete is loose or hollow?',
  'How far past the damage will you go, and how will you know you have reached sound concrete?',
  'Which method for which part, and why not a gentler one?',
  'How will you take off the bruised skin before the new material goes on?',
  'How will you keep dust, noise and wash water from me and my neighbours?',
  'Which tests will you do before you cover it, and may I see the results?',
  'What would make you stop and call an engineer?',
  'How long must it stay closed, and what will you stand behind?',
];
/** What to ask as well, by what an owner leaves to others in this case. */
const questionsAlso: Readonly<Partial<Record<LimitId, string>>> = {
  edges: 'How will you keep people from falling while you work near the edge?',
  overhead: 'How will you keep people out from under the work?',
  electricity: 'Who finds the cables and pipes, and who switches them off?',
  steel: 'How far will you follow a rusted bar, and how much space will you leave behind it?',
  'old-coating': 'Which laboratory tests the old coating, and may I see its report first?',
};
export const contractorAlso = (limits: readonly LimitId[]): readonly string[] =>
  limits.flatMap((id) => questionsAlso[id] ?? []);

export const soundQuote: readonly string[] = [
  'A drawing or photo with the areas marked, and their size.',
  'The method for each area and the depth allowed for, with a price for going deeper.',
  'The repair material by its data sheet, and the surface its maker asks for.',
  'What is tested before covering, how often, and what passes.',
  'Where debris and wash water go.',
  'What is left out: hidden damage, steel, pipes and cables, engineer, permits.',
];

export const priceLabels: Readonly<Record<keyof Prices, string>> = {
  perHour: 'One person, an hour',
  perBag: 'A bag of repair material',
  perConcrete: 'Concrete delivered, a cubic metre',
  perTonne: 'Debris taken away, a tonne',
};

export const ownerPageWords = {
  title: 'Restore or replace',
  terms: 'Words on this sheet',
  waiting: 'Opening your job.',
  noScript:
    'This page is worked out from your answers on your own device, and that needs JavaScript.',
  empty:
    'There is nothing to weigh yet. Answer the questions about one part of the concrete first.',
  start: 'Start with the questions',
  restoring: 'Restoring',
  replacing: 'Replacing',
  conditions: 'What state it is in',
  ofArea: (area: string) => `Of ${area} in all.`,
  courses: 'What each course takes',
  coursesLine:
    'Both drawn to one scale. A bar runs from the least to the most it may be. What goes on top afterwards, such as an overlay or a coating, is counted in neither.',
  leftOut: (zones: string) => `Restoring counts only what can be planned. Left out: ${zones}.`,
  forRestoring: 'What speaks for restoring',
  forReplacing: 'What speaks for replacing',
  notKnown: 'What is not known yet',
  nothing: 'Nothing we were told.',
  prices: 'Your own prices',
  pricesLine:
    'Leave out what you do not know. The cost appears when every price it needs is there. It stays on this device, and goes along where you share the job.',
  countedWith: 'Counted with',
  yours: 'your own',
  pricesWrong: (most: string) => `Type a price from 0 to ${most}, for example 45 or 45.50.`,
  needsAnswers: 'Needs an answer first',
  needsPrices: 'Needs your prices',
  notFigured: 'No figure',
  notPlanned: 'Not known yet',
  ask: 'Ask a contractor',
  quote: 'What a sound offer contains',
  numbers: 'Where the numbers come from',
  evidence: 'Shares at which published rules replace',
  print: 'Print this sheet',
  printed: (date: string) => `Worked out ${date} from the answers given.`,
  deepest: (share: string) => `Deepest damage measured: ${share} of the thickness.`,
  chartLabel: (measure: string, restore: string, replace: string) =>
    `${measure}: restoring ${restore}, replacing ${replace}`,
  barLabel: (parts: string) => `The area by condition: ${parts}`,
};
