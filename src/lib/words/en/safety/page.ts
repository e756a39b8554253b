import type { SharingAim } from '$lib/safety/safety-of';
import type { Setting } from '$lib/answers/questions';
import type { DustHours, Region, Turns } from '$lib/answers/crew-day';
import type { Span } from '$lib/plan/amount';
import type { Say } from '$lib/words/types';

/** Labels and short sentences of the page of the crew's day. */
export const crewPageWords = {
  title: 'The crew’s day',
  description:
    'Dust, noise and vibration that add up over a crew’s day, and what to do about each.',
  wait: 'Your job is being opened.',
  noScript:
    'This page reckons in your browser and needs JavaScript. The cautions under “Learn” do not.',
  defers:
    'This page helps you plan. It does not replace the law, the maker’s data or measurements. A competent person on site decides, and may stop the work.',
  stops: 'A competent person on site decides, and may stop the work.',
  settings: 'How this is reckoned',
  region: 'Whose rules first',
  regions: {
    us: 'United States',
    elsewhere: 'Elsewhere',
  } satisfies Readonly<Record<Region, string>>,
  source: 'Whose day',
  fromPlan: 'Days of your plan',
  fromMix: 'A day I put together',
  noPlan:
    'No zone of your job can be planned yet, so no day can be laid. Put a day together here, or answer the questions first.',
  toAssess: 'To the questions',
  turns: 'Machines there is one of',
  turnsOf: {
    'one-operator': 'One person runs them',
    equal: 'Everybody in equal turns',
  } satisfies Readonly<Record<Turns, string>>,
  dayNav: 'Days of the plan',
  free: (ids: string): string => `Free this day: person ${ids}.`,
  day: ([first, last]: Span): string =>
    first === last ? `Day ${first}` : `Days ${first} to ${last}`,
  taken: {
    setting:
      'The job does not say for sure where it is, so we reckon for the place that holds dust most.',
    element: 'The job does not say for sure what it is, so we reckon with hand-held tools.',
  } as const,
  leftOutLine: (steps: string): string => `Not counted, as their hours are not known: ${steps}.`,
  specialists: (steps: string): string => `A specialist’s own work, not counted: ${steps}.`,
  /** Begun that day with hours that nobody has said: what is placed. */
  untimed: (steps: string): string =>
    `That day too, with tools and hours that are not counted here: ${steps}.`,
  near: 'Who works beside another’s loud machine hears it: that is counted in, by the distance. A compressor close by comes on top.',
  beside: (tools: string) => `From beside also heard, and counted in: ${tools}.`,
  worker: (id: string, worst: boolean): string =>
    worst ? `Person ${id}, worst off` : `Person ${id}`,
  you: 'This day',
  key: {
    sure: 'at least',
    range: 'up to',
    open: 'unknown on top',
  },
  dust: 'Dust',
  dustHours: 'Hours the dust table counts',
  dustHoursOf: { 'at-task': 'At the task', 'tool-running': 'Tool running' } satisfies Readonly<
    Record<DustHours, string>
  >,
  dustChosen:
    'You chose to count only the time the tool runs. The stricter reading counts breaks between cuts and cleaning up too, and the agency’s guide reads it so (from memory). Ask a competent person.',
  dustCounted: {
    'at-task': 'Hours at the task, breaks between cuts and cleaning up counted.',
    'tool-running': 'Only the hours the tool runs are counted, as you chose.',
  } satisfies Readonly<Record<DustHours, string>>,
  dustStrip: (person: string): string => `Hours in dust of the table, ${person}`,
  dustOutside: (tools: string): string =>
    `The lower bar, dashed, is in no row of the table and not counted in that: ${tools}. Nobody has measured its dust.`,
  dustNone: 'No step of this day is in the dust table.',
  columnLine: (say: Say): string => `past ${say.figure('silica.long-shift')}: stricter column`,
  noise: 'Noise',
  vibration: 'Hand-arm vibration',
  chartVibration: 'Vibration of the day, A(8) in m/s²',
  chartNiosh: 'Noise of the day by the recommended rule (NIOSH), dB(A)',
  chartOsha: 'Noise of the day by the legal rule (OSHA), dB(A)',
  chartEu: 'Noise of the day, LEX,8h in dB(A)',
  lineAction: 'action',
  lineLimit: 'limit',
  lineLegal: 'legal limit',
  lineRecommended: 'recommended limit',
  lineLower: 'lower action',
  lineUpper: 'upper action',
  everybody: 'Everybody:',
  stepsOfDay: 'Steps of the day',
  steps: 'Tool by tool',
  tools: (number: number): string => (number === 1 ? '1 step' : `${number} steps`),
  sums: 'Limits and sums',
  whereFold: 'Where, and what to chalk',
  briefing: 'The briefing',
  toBriefing: 'Read it here',
  tooMuch: 'Too much for one person.',
  where: 'Where',
  waits: 'Must wait, not counted',
  allWait: 'Nothing may be begun on this day yet: all of it waits.',
  toolRuns: 'Tool running',
  atTask: 'At the task',
  each: 'for the person who has most of it',
  tool: 'Tool',
  dustOf: 'Dust',
  waysOf: 'Any one of these:',
  maskUpTo: (say: Say): string => `Up to ${say.figure('silica.long-shift')} in the shift`,
  maskOver: (say: Say): string => `Over ${say.figure('silica.long-shift')}`,
  noMask: 'no respirator asked for',
  mask: (factor: number): string => `respirator, factor ${factor} or more`,
  today: 'This day',
  levels: 'Your own tool',
  levelsWhy:
    'Type what the maker’s papers say, or what was measured. It counts for this tool everywhere in the job.',
  ownNoise: 'Level at the ear',
  ownVibration: 'Vibration at the hand',
  ownMeasured: 'The vibration was measured at work',
  ownMeasuredNote: 'If not, it counts for up to double: makers’ figures can understate.',
  ownWheel: 'Wheel or disc, across',
  unknownLevel: 'No published level. Ask the maker.',
  unknownVibration: 'No published vibration. Ask the maker.',
  noLevel: 'no motor',
  still: 'nothing that shakes is held',
  level: 'Level at the ear',
  magnitude: 'Vibration at the hand',
  ownValue: 'your own',
  makerValue: 'the maker’s, counted up to double',
  before: {
    action: 'Trigger time before the action value',
    limit: 'Trigger time before the limit',
  },
  alone: 'with this tool alone in the day',
  kept: 'What is reckoned stays with the last good number.',
  limits: 'Against each limit',
  otherLimits: 'By the other rules',
  left: 'Time left',
  protector: 'Hearing protectors',
  protectorFor: (limit: string): string => `To come down to: ${limit}.`,
  ceiling: {
    over: 'A tool is louder than the US table goes. No time without protectors is allowed at that level.',
    'may-be-over':
      'A tool may be louder than the US table goes. No time without protectors is allowed at that level.',
  } as const,
  noUsLimit:
    'The US has no legal limit for vibration; the values are those of a European directive.',
  sharing: 'Sharing it out',
  sharingLine: (say: Say): string =>
    `Reckoned with every tool as it usually is and its usual time, in turns of ${say.hours(say.valueOf('share.step'))}.`,
  worst: (sentence: string): string =>
    `The last of these with every tool at its worst and its longest time: ${sentence}`,
  aims: {
    'vibration-action': 'Everybody under the vibration action value',
    'vibration-limit': 'Everybody under the vibration limit',
    'noise-limit': 'Everybody under the noise limit aimed at, if nobody wore protectors',
    everything: 'Everybody under the action value and, if nobody wore protectors, the noise limit',
  } satisfies Readonly<Record<SharingAim, string>>,
  fullest: (share: string): string =>
    `The worst-off person then uses up ${share} of what one day allows.`,
  allotments: 'Who does what',
  allotted: (day: number, person: number): string => `Day ${day}, person ${person}`,
  wholeJob: 'The whole job shared out',
  wholeJobLine: (days: number): string =>
    days === 1 ? 'Your plan has one day of work.' : `Your plan has ${days} days of work.`,
  wholeJobLong: 'This job has more days than can be shared out here. Share out day by day.',
  duties: 'What the employer sees to',
  hazards: 'Everything else that can hurt you',
  hazardSteps: (steps: string): string => `In: ${steps}`,
  controls: 'What to do, the best first',
  tableSource: 'The dust table',
  print: 'Print the briefing',
  mix: {
    title: 'A day put together by hand',
    line: 'One person’s day. Add each tool with the minutes it runs.',
    place: 'Where the work is',
    add: 'Add a task',
    step: 'What is done',
    tool: 'With what',
    minutes: 'Minutes running',
    minutesUnit: 'min',
    remove: 'Take out',
    task: (number: number): string => `Task ${number}`,
    empty: 'Add a first task, and the numbers come.',
  },
} as const;

/** One person’s day on a card. */
export const cardWords = {
  person: (ids: readonly string[]): string =>
    ids.length > 1 ? `Persons ${ids.join(', ')}` : `Person ${ids[0] ?? ''}`,
  you: 'Whoever does it',
  about: { hands: 'Hands', ears: 'Ears', lungs: 'Lungs' },
  turns: (tools: string): string => `${tools}, then change over.`,
  /** More is planned for one person than their hands may take. */
  tooLong: (tool: string, planned: string, action: string, limit: string): string =>
    `${tool}, ${planned} planned: action value after ${action}, limit value after ${limit}.`,
  shareIt: 'Take turns.',
  inAll: (tool: string, time: string): string =>
    `${tool}: ${time} a person in all. For more, take another tool.`,
  askMaker: (tools: string): string => `Ask the maker about the ${tools}.`,
  still: 'Nothing that shakes.',
  earsNone: 'Nothing needed at these tools.',
  earsUnknown: 'No level is known: wear protectors.',
  earsBoth: 'Plugs and muffs together.',
  /** One does at usual levels. */
  earsBothAtWorst: 'Plugs and muffs together at the loudest tools.',
  earsTooLittle: 'Plugs and muffs fall short: fewer hours, or a quieter tool.',
  ears: (rating: string): string => `NRR ${rating} or more, for the loudest tools.`,
  earsAtLeast: (rating: string): string => `NRR ${rating} at least: not all levels are known.`,
  /** Until somebody has measured. */
  begin: (tools: string): string =>
    `In no dust table: ${tools}. Begin like this, until a competent person has measured the dust.`,
  hood: 'Behind the nozzle: a blasting hood fed with clean air.',
  besideDust: (tools: string, factor: number) =>
    `Near the ${tools}: mask of factor ${String(factor)}.`,
  besideBlast: 'While somebody blasts, wear it or stay outside the barrier.',
  /** With these tools alone, or all day where none are named. */
  mask: (factor: number, tools = ''): string =>
    `Mask of factor ${factor} or more${tools ? ` at the ${tools}` : ''}.`,
  onlyShared: 'Only what everybody does.',
  noMask: 'No mask asked for.',
} as const;

/** Places as the dust table has them. */
export const settingWords: Readonly<Record<Setting, string>> = {
  indoors: 'Indoors',
  sheltered: 'Under a roof or between walls',
  open: 'Open air',
};
