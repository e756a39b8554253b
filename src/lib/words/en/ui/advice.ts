import { lowered } from '$lib/words/by-language';
import type { Stand } from '$lib/advice/rejected';
import type { Hold } from '$lib/advice/types';
import type { Formatter, Say } from '$lib/words/types';
import { callSentence } from './keep-away';

const atLeast = (from: string) => `from ${from}`;

/** The page with the advice for a zone. */
export const advicePageWords = {
  invented: (zone: string) => `${zone} (invented example)`,
  title: 'Advice',
  waiting: 'Fetching your answers from this device.',
  noScript:
    'Working out the advice is done in your own browser, and needs JavaScript, which is switched off.',
  nothing: {
    title: 'No advice yet',
    line: 'Answer the questions about your concrete first. Where you cannot tell, “Not sure” is an answer.',
    start: 'Answer the questions',
  },
  missing: (count: number) =>
    count === 1 ? 'One question has no answer yet.' : `${count} questions have no answer yet.`,
  answerThem: 'Answer',
  underneath: (name: string) => `Once that is cleared, the method is ${name}.`,
  /** Where breaking out along a bar leads. */
  alongBar: (rest: string) => `Only along the bars. The rest of the zone: ${rest}.`,
  noSheet: (sentence: string) => `No data sheet. ${sentence}`,
  haveSheet: 'Type in the sheet',
  beyond: 'No way of preparing the surface helps here.',
  mayStop: (who: string, takeOff: string) =>
    `It may come to a stop. ${takeOff} If it stops, call ${who}.`,
  callsNow: (who: string, takeOff: string) => `It may come to a stop. ${takeOff} Call ${who} now.`,
  /** Where a coating may be old; `who` may have to come after that, or nobody. */
  sampleFirst: (who: string) =>
    `First a testing laboratory tests the coating: make no dust until then.${who ? ` If the work then stops, call ${who}.` : ''}`,
  callNobody: 'Call no contractor yet: the test comes first.',
  calls: callSentence,
  asks: (who: string) => `It is found out by ${who}.`,
  holds: { stop: 'Why it stops', 'find-out-first': 'What has to be known first' },
  possible: {
    someStop: 'It stops because of one of these, whichever it turns out to be',
    asks: (count: number) =>
      count === 1 ? 'One more thing to ask first' : `${count} more things to ask first`,
    stop: 'Stop, and call',
    'find-out-first': 'Ask first',
  },
  call: 'Call',
  ask: 'Who finds out',
  checkToo: 'Check this as well',
  /** Of what an owner keeps away from. */
  theirTests: 'What they test there',
  enter: 'Enter the result',
  otherTests: (count: number) =>
    count === 1 ? 'One more test may follow' : `${count} more tests may follow`,
  stepsCommon: 'Steps in any case',
  stepsOnce: 'Steps, once it may start',
  /** Common practice: what laws in many countries ended by then. */
  oldCoating:
    'Paint or glue of unknown age, or from before the 1980s, goes to a laboratory before anybody makes dust.',
  stepsMadeNew: 'What a contractor does',
  /** In the order of the page that tells of it; common practice, no source. */
  madeNew: [
    'Has cables and pipes found, and marks the part out to sound concrete, or to a joint.',
    'Saws it through its full depth and lifts it out.',
    'Fences the hole and mends the base.',
    'Ties new concrete to the old, pours it, and keeps it damp.',
  ],
  madeNewMore: 'How a part is replaced',
  untilMadeNew: 'Until then nobody patches, seals or salts it.',
  stepsAfter: 'Steps, once that is cleared',
  noCommonSteps: 'No step is called for in every case.',
  stepsBetween: 'What takes the damage off comes among these, once it is known which.',
  noSteps: 'Do nothing to the concrete until that has been cleared.',
  whyStep: 'Why, and hazards',
  hazards: 'Look out for',
  reasons: 'Why this way',
  others: 'Why not another way',
  stands: {
    could: 'possible too',
    harsher: 'harsher than needed',
    out: 'ruled out',
  } satisfies Record<Stand, string>,
  answersCount: (count: number) => (count === 1 ? 'one other answer' : `${count} other answers`),
  likeliest: 'in some cases,',
  reason: { likeliest: 'In the likeliest case:' },
  target: 'What you are aiming for',
  targets: {
    profile: 'Roughness it needs',
    leaves: 'Roughness this leaves',
    bySheet: (csp: string) => `${csp}, by the data sheet`,
    byTable: (csp: string) => `${csp}, by the usual table`,
    asFound: (csp: string) => `${csp} at least: a sealer takes the texture as it is`,
    undecided: 'Depends on what goes on next',
    open: 'Depends on what is still open',
    bruisedSkin: 'Bruised skin',
    moisture: 'Moisture',
    behindBar: 'Clear space behind a bar',
    within: 'Cover it within',
    atLeast: (length: string) => `${length} at least, and more where the repair has larger stones`,
  },
  margins: 'What would change it',
  marginsMore: (count: number) => `${count} more`,
  working: 'Working it out …',
  marginsLine: 'The answers most easily misjudged come first.',
  marginsNone: 'No single other answer would change it.',
  marginAt: (question: string, depth: string, deeper: boolean) =>
    deeper ? `${question} ${atLeast(depth)}` : `${question} below ${depth}`,
  marginSheet: (csp: string, gentler: boolean) =>
    `Data sheet asks for ${gentler ? 'no more than' : 'at least'} ${csp}`,
  marginTo: (question: string, to: string) => `${question}: ${to}`,
  without: (name: string) => `without “${name}”`,
  changed: { prepare: 'then', 'find-out-first': 'then find out first', stop: 'then stop' },
  waysOf: (count: number, of: number, verdict: string) => `${count} of ${of}: ${lowered(verdict)}`,
  assumptions: 'Left open',
  matters: 'changes the advice',
  mattersNot: 'makes no difference here',
  sayBorder: 'Say how much stands upright along it',
  borderOpen: 'The strip along walls and posts is not in the plan until you say how long it is.',
  cautions: 'What can hurt you',
  controls: 'What to do about it, best first',
  more: 'Read more',
  numbers: 'Where the numbers come from',
  where: 'Where this number comes from',
  source: 'Source',
  noSource: 'No published source.',
  hazardsLine: 'Tap one for when to stop.',
  toJob: 'To the whole job',
  print: 'Print this',
  site: 'Site',
  zone: 'Zone',
} as const;

/** A hold names who has to come: called, or asked to find out. */
export const callOrAsk = ({ verdict }: Hold): string =>
  verdict === 'stop' ? advicePageWords.call : advicePageWords.ask;

/** A finished hole, mm. */
interface Hole {
  readonly least: number;
  readonly most: number;
  readonly through: boolean;
}

/** How deep the finished hole gets: "70 to 120 mm", "70 mm to right through". */
export const holeDepth = ({ least, most, through }: Hole, say: Formatter): string =>
  !through
    ? say.lengths(least, most)
    : least < most
      ? `${say.length(least)} to right through`
      : 'right through';

/** The same on the cross-section. */
export const sectionHole = (hole: Hole, say: Formatter): string =>
  `finished hole: ${holeDepth(hole, say)}`;

/** The cross-section in words, for those who do not see it. */
export function sectionWords(
  say: Say,
  {
    element,
    thickness,
    depth,
    state,
  }: { element?: string; thickness?: number; depth?: string; state?: string },
): string {
  const of = `Drawing of the concrete cut through${element ? `: ${element}` : ''}`;
  const thick = thickness === undefined ? 'thickness not known' : `${say.length(thickness)} thick`;
  const deep = depth ? `, damage ${depth}` : ', no damage told yet';
  return `${of}, ${thick}${deep}${state ? `, ${state}` : ''}.`;
}
