import type { OwnerOptionId, MeasureId } from '$lib/plan/options';
import type { ConditionId } from '$lib/plan/conditions';
import type { ConclusionId } from '$lib/plan/conclusion';
import type { Named } from '$lib/words/types';
import { count } from '$words/count';

/** The states a part of the area can be in. */
export const conditionWords: Readonly<Record<ConditionId, Named>> = {
  sound: {
    name: 'Sound',
    line: 'Firm, and stays. It is cleaned, or roughened for what goes on it.',
  },
  surface: {
    name: 'Surface only',
    line: 'Only the top is weak or dirty. It is washed off, or a machine takes it off.',
  },
  'break-out': { name: 'Break out', line: 'Loose or hollow. It is broken out and filled again.' },
  replace: { name: 'Replace', line: 'Gone through, or the finished hole reaches half. Made new.' },
  engineer: { name: 'Engineer first', line: 'Nobody should cut it before an engineer has looked.' },
  'not-sounded': {
    name: 'Not sounded',
    line: 'Between the spots that were given. Nobody has noted how it sounds.',
  },
  'not-known': { name: 'Not known yet', line: 'An answer is missing that decides.' },
  'not-entered': { name: 'Not entered', line: 'Nobody has said what state this part is in.' },
};

/** What an owner is told first. */
export const conclusionWords: Readonly<Record<ConclusionId, Named>> = {
  restore: {
    name: 'This concrete can be restored',
    line: 'No part you entered is too deep or too rotten for a repair down to sound concrete.',
  },
  'parts-only': {
    name: 'Only parts are known',
    line: 'The parts you entered can be prepared for a repair. What state the rest is in nobody has said yet.',
  },
  doubtful: {
    name: 'A repair is doubtful here',
    line: 'The finished hole passes, or may pass, the top third of the slab. Compare with making that part new.',
  },
  'part-doubtful': {
    name: 'Most can be restored; a part is doubtful',
    line: 'There the finished hole passes, or may pass, the top third of the slab. Compare with making that part new.',
  },
  'restore-part': {
    name: 'A part has to be made new',
    line: 'A part has gone too deep for a repair down to sound concrete.',
  },
  replace: {
    name: 'Replacing is the better option',
    line: 'Most of it is rotten or gone through the slab. A repair would have little sound concrete to hold on to.',
  },
  'laboratory-first': {
    name: 'A laboratory first',
    line: 'Cracks like a map can mean that the concrete itself fails. Have a core looked at before anybody prices anything.',
  },
  'engineer-first': {
    name: 'A licensed engineer first',
    line: 'Something here is not a surface problem. Ask for a look before anybody prices anything.',
  },
  'not-known-yet': {
    name: 'Not known yet',
    line: 'Answers are missing that decide. Find those out before you choose.',
  },
};

export const measureWords: Readonly<Record<MeasureId, Named>> = {
  debris: { name: 'Debris to take away', line: 'Concrete broken out, by weight.' },
  material: { name: 'New material', line: 'Repair mortar, or concrete.' },
  water: {
    name: 'Wash water to collect',
    line: 'It is alkaline and must not reach a storm drain. No figure is given for replacing.',
  },
  hours: { name: 'Hours of work', line: 'Hands and machines, drying and waiting not counted.' },
  'days-closed': {
    name: 'Days closed',
    line: 'Work and drying; on a floor the days before cars too, should any drive there. Heavy vehicles wait longer.',
  },
  'noise-days': {
    name: 'Days with noise',
    line: 'Days with a machine that may reach 85 dB(A) at the ear of whoever runs it.',
  },
  'dust-days': { name: 'Days with dust', line: 'Days with a tool that throws concrete dust.' },
  'hire-days': {
    name: 'Days of hire',
    line: 'The days of each machine, added up. For replacing, a breaker only.',
  },
  carbon: {
    name: 'Embodied carbon',
    line: 'Making the material, hauling it and the debris: weight of CO2 or the like of it.',
  },
  cost: {
    name: 'Cost at your prices',
    line: 'Only from the prices you type in: work, bags, new concrete, debris.',
  },
};

export { pointSentences } from './owner-points';
export { askWords, contractorAlso, soundQuote } from './owner-asks';

export const ownerPageWords = {
  title: 'Restore or replace',
  terms: 'Words on this sheet',
  waiting: 'Opening your job.',
  noScript:
    'This page is worked out from your answers on your own device, and that needs JavaScript.',
  empty:
    'There is nothing to weigh yet. Answer the questions about one part of the concrete first.',
  start: 'Start with the questions',
  option: {
    restore: 'Restore',
    parts: 'Replace the broken parts, restore the rest',
    replace: 'Replace all',
  } satisfies Readonly<Record<OwnerOptionId, string>>,
  optionShort: {
    restore: 'Restore',
    parts: 'Replace parts',
    replace: 'Replace all',
  } satisfies Readonly<Record<OwnerOptionId, string>>,
  rings: 'of the area is not hollow',
  ringsOpen: 'how much is not hollow',
  comesOff: 'of the concrete comes off',
  comesOffOpen: 'how much of the concrete comes off',
  /** How many for sure, and how many at the most. */
  madeNewCount: (parts: number, perhaps: number) =>
    perhaps === 0
      ? String(parts)
      : parts === 0
        ? `Up to ${perhaps}`
        : `${parts}, up to ${parts + perhaps}`,
  madeNew: (of: number) => `of ${count(of, 'part', 'parts')} made new`,
  percent: (span: string) => `${span}%`,
  sizeFirst: 'Not known',
  drives: 'What drives the price',
  weigh: 'For and against',
  allPoints: 'All that speaks for and against',
  allMeasures: 'What else each option takes',
  conditions: 'What state it is in',
  parts: 'Part by part',
  partsMore: (count: number) => (count === 1 ? 'And one part more.' : `And ${count} parts more.`),
  ofArea: (area: string) => `Of ${area} in all.`,
  options: 'What each option takes',
  /** Where somebody has to look before anybody prices anything. */
  optionsAfter: 'After that look: what each option may take',
  optionsLine:
    'Breaking, hauling, placing and curing are in each option. What goes on top afterwards is in none; a slab made new may need nothing on top.',
  leftOut: (zones: string) => `Not counted, as it cannot be planned yet: ${zones}.`,
  overlap: (where: string) => `Ranges overlap, so none of these surely takes less: ${where}.`,
  overlapIn: (options: string, measures: string) => `${options} in ${measures}`,
  allOptions: 'all options',
  pair: (one: string, other: string) => `${one} and ${other}`,
  noParts: 'No part is broken out or gone through, so there is no part to replace on its own.',
  wholeLine: 'Give the size of the whole surface, and this sheet can speak about all of it.',
  speaksFor: 'For',
  against: 'Against',
  notKnown: 'What is not known yet',
  nothing: 'Nothing that we were told.',
  prices: 'Your own prices, and how large it is',
  pricesLine:
    'Leave out what you do not know. The cost of work, material and debris appears when every price it needs is there. It stays on this device, and goes along where you share the job.',
  costLeaves: (hire: string | null) =>
    `The cost counts work, bags, new concrete and debris. Not in it: ${hire ? `hire (${hire} machine days to restore), ` : ''}bringing things, and what goes on top.`,
  countedWith: 'Counted with',
  yours: 'your own',
  pricesWrong: (most: string) => `Type a price from 0 to ${most}, for example 45 or 45.50.`,
  needsAnswers: 'Not known',
  needsPrices: 'Needs your prices',
  notFigured: 'No figure',
  onlyOnTop: 'Not counted: what goes on top',
  onlyDust: 'Not counted: dust, coating',
  notPlanned: 'Not known yet',
  ask: 'Ask a contractor',
  quote: 'What a sound offer contains',
  numbers: 'Where the numbers come from',
  evidence: 'Shares at which published rules replace',
  crewTooSmall: 'More people or days are needed to keep hands and ears safe: see the plan',
  sign: ['Name', 'Place', 'Date'],
  print: 'Print this sheet',
  printed: (date: string) => `Worked out ${date} from the answers given.`,
  deepest: (share: string) => `Deepest damage measured: ${share} of the thickness.`,
  hole: (depths: string, share: string) =>
    `The hole goes on into sound concrete: ${depths} in all, ${share} of the thickness at most.`,
  chartLabel: (measure: string, options: string) => `${measure}: ${options}`,
  barLabel: (parts: string) => `The area by condition: ${parts}`,
};
