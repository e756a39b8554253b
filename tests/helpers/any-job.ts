import fc from 'fast-check';
import type { Answer } from '$lib/answers/answers';
import { dustHoursIds, regions, turnsIds, type CrewDay } from '$lib/answers/crew-day';
import { weekdays, type Job, type Zone } from '$lib/answers/job';
import {
  choicesOf,
  questions,
  siteQuestionIds,
  zoneQuestionIds,
  type QuestionId,
} from '$lib/answers/questions';
import { afterSounds, barSeen, leftIds, stoneIds } from '$lib/answers/trial-record';
import { isName } from '$lib/keep/names';
import { figures, rangeOf, type FigureId } from '$shared/figures';
import { methodIds, stepIds } from '$shared/methods';
import { toolIds } from '$shared/tools';
import { anyDayLog } from './crew-log';

/** Numbers a reader can give, with the rough edges of real ones: whole, one decimal, any. */
const numberWithin = ([low, high]: readonly [number, number]) =>
  fc.oneof(
    fc.integer({ min: Math.ceil(low), max: Math.floor(high) }),
    fc
      .integer({ min: Math.ceil(low * 10), max: Math.floor(high * 10) })
      .map((tenths) => tenths / 10),
    fc.double({ min: low, max: high, noNaN: true }).map((value) => value + 0),
  );

/** Some choices in the order of the question. */
const some = (id: QuestionId, least: number) =>
  fc.subarray([...choicesOf(id)] as string[], { minLength: least });

/** Any answer a question can have, sure, half sure and not sure. */
export function anyAnswer(id: QuestionId): fc.Arbitrary<Answer<QuestionId>> {
  const question = questions[id];
  if (question.kind === 'number')
    return fc.oneof(numberWithin(rangeOf(question.limit)), fc.constant('unknown' as const));
  // A data sheet says one thing or nothing; an open answer is not kept open.
  if (id === 'makerProfile' || id === 'makerMoisture')
    return fc.constantFrom(...choicesOf(id)).map((choice) => [choice]) as never;
  const open = some(id, 1) as unknown as fc.Arbitrary<Answer<QuestionId>>;
  if (question.kind === 'depth') return fc.oneof(numberWithin(rangeOf(question.limit)), open);
  if (question.kind === 'one') return open;
  return fc
    .array(fc.constantFrom('yes', 'maybe', 'no'), {
      minLength: question.choices.length,
      maxLength: question.choices.length,
    })
    .map((marks) => ({
      yes: question.choices.filter((_, index) => marks[index] === 'yes'),
      maybe: question.choices.filter((_, index) => marks[index] === 'maybe'),
    })) as unknown as fc.Arbitrary<Answer<QuestionId>>;
}

const anyAnswers = (ids: readonly QuestionId[]) =>
  fc.record(Object.fromEntries(ids.map((id) => [id, anyAnswer(id)])), { requiredKeys: [] });

/** Any name the format takes: every script, marks, pictures; nothing that acts on the screen or cannot be seen. */
export const anyName = fc
  .string({ unit: 'binary', maxLength: 40 })
  .map((text) => text.replace(/\p{Cc}|\p{Cs}|[\u2028-\u202e\u2066-\u2069]/gu, ''))
  .map((text) => (isName(text) ? text : ''));

const place = numberWithin(rangeOf('limit.spot-place'));
const side = numberWithin(rangeOf('limit.spot-side'));

const anyEntry = fc.oneof(fc.double({ min: 0, max: 999, noNaN: true }), fc.constant('about 3'));
/** A square metre tried, half typed in or whole. */
const anyPatch = fc.record(
  {
    method: fc.constantFrom(...methodIds),
    notch: fc.integer({ min: 0, max: 2 }),
    passes: fc.integer({ min: 1, max: 3 }),
    area: anyEntry,
    minutes: anyEntry,
    depths: fc.array(anyEntry, { maxLength: 5 }),
    profile: fc.integer({ min: 1, max: 10 }),
    stones: fc.constantFrom(...stoneIds),
    left: fc.constantFrom(...leftIds),
    bar: fc.constantFrom(...barSeen),
    sound: fc.constantFrom(...afterSounds),
  },
  { requiredKeys: ['method', 'notch', 'passes'], noNullPrototype: true },
);

/** A zone with its answers only, or with all else a zone can carry. */
const anyZone = (full: boolean): fc.Arbitrary<Zone> =>
  fc.record(
    {
      id: fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9._-]{0,11}$/).filter((id) => !(id in {})),
      name: anyName,
      answers: anyAnswers(zoneQuestionIds),
      ...(full && {
        patches: fc.array(fc.record({ x: place, y: place, length: side, width: side }), {
          maxLength: 3,
        }),
        readiness: fc.record({
          seed: fc.nat(),
          results: fc.constant({ ph: { readings: [9.5, 'nine'] } }),
          note: anyName,
        }),
        trial: fc.array(anyPatch, { maxLength: 4 }),
        log: anyDayLog(['vacuum', 'break-out', 'grind']),
      }),
    },
    { requiredKeys: ['id', 'name', 'answers'], noNullPrototype: true },
  ) as fc.Arbitrary<Zone>;

const ownIds = (Object.keys(figures) as FigureId[]).filter((id) => !id.startsWith('limit.'));

const anyToolLevel = fc.record(
  {
    noise: numberWithin(rangeOf('limit.noise-level')),
    vibration: numberWithin(rangeOf('limit.vibration')),
    measured: fc.boolean(),
    wheel: numberWithin(rangeOf('limit.wheel')),
  },
  { requiredKeys: [] },
);
const anyCrewDay: fc.Arbitrary<CrewDay> = fc.record(
  {
    region: fc.constantFrom(...regions),
    turns: fc.constantFrom(...turnsIds),
    dustHours: fc.constantFrom(...dustHoursIds),
    tools: fc.dictionary(fc.constantFrom(...stepIds), fc.constantFrom(...toolIds), {
      maxKeys: 2,
      noNullPrototype: true,
    }),
    mix: fc.array(
      fc.record({
        step: fc.constantFrom(...stepIds),
        tool: fc.constantFrom(...toolIds),
        minutes: fc.integer({ min: 0, max: 1440 }),
      }),
      { maxLength: 3 },
    ),
    mixSetting: fc.constantFrom(...choicesOf('setting')),
  },
  { requiredKeys: [] },
);

const anyDate = fc
  .date({
    min: new Date(Date.UTC(2000, 0, 1)),
    max: new Date(Date.UTC(2099, 11, 31)),
    noInvalidDate: true,
  })
  .map((date) => date.toISOString().slice(0, 10));
const anyCalendar = fc.record(
  {
    start: anyDate,
    weekly: fc.subarray([...weekdays], { maxLength: weekdays.length - 1 }),
    off: fc.uniqueArray(anyDate, { maxLength: 4 }),
  },
  { requiredKeys: [] },
);

/** Any job the format can hold, with up to `zones` zones. */
export const anyJob = (zones = 6, least = 0, full = true): fc.Arbitrary<Job> =>
  fc.record(
    {
      name: anyName,
      site: anyAnswers(siteQuestionIds),
      zones: fc.uniqueArray(anyZone(full), {
        minLength: least,
        maxLength: zones,
        selector: ({ id }) => id,
      }),
      machines: fc.subarray([...methodIds] as string[]),
      crew: fc.integer({ min: 1, max: rangeOf('limit.crew')[1] }),
      hoursPerDay: numberWithin(rangeOf('limit.hours-per-day')),
      totalArea: numberWithin(rangeOf('limit.area')),
      rest: fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9._-]{0,11}$/).filter((id) => !(id in {})),
      own: fc.dictionary(fc.constantFrom(...ownIds), fc.integer({ min: 1, max: 9999 }), {
        maxKeys: 3,
        noNullPrototype: true,
      }),
      toolLevels: fc.dictionary(fc.constantFrom(...toolIds), anyToolLevel, {
        maxKeys: 3,
        noNullPrototype: true,
      }),
      crewDay: anyCrewDay,
      calendar: anyCalendar,
      ...(full && { log: anyDayLog(['make-safe', 'vacuum']) }),
    },
    { requiredKeys: ['name', 'site', 'zones'], noNullPrototype: true },
  ) as fc.Arbitrary<Job>;
