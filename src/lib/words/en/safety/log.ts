import { dateOf, type Moment } from '$lib/answers/day-log';
import type { LogFaultId } from '$lib/plan/spent';
import { shortDay } from '$lib/words/by-language';
import type { Say } from '$lib/words/types';

/** "07:30" */
export const clockWords = (moment: Moment): string => moment.slice(11, 16);

/** "Mon 4 May 07:30" */
export const momentWords = (moment: Moment): string =>
  `${shortDay(dateOf(moment))} ${clockWords(moment)}`;

/** Hours as they were taken: minutes below one, tenths above. */
export const spentWords = (hours: number, say: Say): string =>
  say.hours(hours < 1 ? hours : Math.round(hours * 10) / 10);

const persons = (number: number): string => (number === 1 ? '1 person' : `${number} people`);

/** Words for ticking off the steps of the day. */
export const logWords = {
  start: 'Start',
  stop: 'Stop',
  done: 'Done',
  label: (action: string, step: string) => `${action}: ${step}`,
  more: 'Times and note',
  held: 'Not yet: only once this is cleared',
  mustWait: (zones: string, what: string) => `${zones} must wait. ${what}.`,
  thenThere: (steps: string) => `Then: ${steps}.`,
  /** Of what an engineer has to clear: no button does. */
  notByTap: 'The engineer says in writing how it goes on. No tap here clears it.',
  cleared: 'It is cleared',
  clearedAt: (zones: string) => `It is cleared: ${zones}`,
  since: (time: string) => `since ${time}`,
  persons,
  doneAfter: (hours: string) => `done, ${hours}`,
  doneOnly: 'done',
  zones: (done: number, all: number) => (done ? `${done} of ${all} zones done` : `${all} zones`),
  said: {
    start: (step: string, time: string) => `${step}: started ${time}.`,
    stop: (step: string, time: string) => `${step}: stopped ${time}.`,
    done: (step: string) => `${step}: done.`,
    undone: (step: string) => `${step}: not done yet.`,
    note: (step: string) => `${step}: note saved.`,
    times: (step: string) => `${step}: times saved.`,
    gone: (step: string) => `${step}: time taken out.`,
  },
  undo: 'Undo',
  undoOf: (said: string) => `Undo: ${said}`,
  /** What was said of a change that is taken back: "Saw the edge: started 07:00." */
  undone: (said: string) => `Taken back: ${said}`,
  elsewhere: 'It was changed elsewhere since. Nothing was undone.',
  hint: 'Time between start and stop counts.',
  ask: (since: string) => `Running since ${since}. When did it stop?`,
  stopThen: 'Stop then',
  from: 'Started',
  to: 'Stopped',
  people: 'People',
  note: 'Note',
  save: 'Save',
  saveNote: 'Save the note',
  add: 'Add a time',
  goneButton: 'Take out',
  cancel: 'Leave it',
  byZone: 'Zone by zone',
  together: 'For all zones together; shared out as their hours are reckoned.',
  faults: {
    'stop-first': () => 'Stopped before it was started, so it does not count. Put the times right.',
    'too-long': (say: Say) =>
      `Longer than ${say.figure('log.longest')} without a stop, so it does not count. When did it stop?`,
    overlap: () => 'Two times overlap. The shared part counts once.',
    'left-running': () => 'It is done, but this time was never stopped. It does not count.',
    'to-come': () => 'That time is still to come. Put it right.',
  } satisfies Record<LogFaultId | 'to-come', (say: Say) => string>,
  /** A day put together by hand is no plan: nothing is timed. */
  ticksHere: 'Ticks stay in this tab. Times are kept for the days of a plan.',
  noTime: 'Say when it was started and when it was stopped.',
  fewer: 'One fewer',
  oneMore: 'One more',
  fold: 'Log',
  foldHint: (done: number, all: number) => `${done} of ${all} tasks done`,
  sheet: {
    title: 'Log of the work',
    print: 'Print the log',
    empty: 'Nothing has been told yet.',
    day: 'Date',
    step: 'Step',
    zone: 'Zone',
    from: 'From',
    to: 'To',
    people: 'People',
    hours: 'Hours',
    note: 'Note',
    whole: 'all',
    running: 'goes on',
    notCounted: 'not counted',
    doneAt: (time: string) => `done ${time}`,
    sum: (hours: string) =>
      `Hours times people, as the plan takes them: ${hours}. A machine counts once.`,
    sign: 'Read and right',
    name: 'Name',
    signature: 'Signature',
  },
} as const;
