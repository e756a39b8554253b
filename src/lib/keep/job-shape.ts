import * as v from 'valibot';
import type { Job, Zone } from '$lib/answers/job';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { siteQuestionIds, zoneQuestionIds } from '$lib/answers/questions';
import { figures, rangeOf, type FigureId } from '$shared/figures';
import { methodIds } from '$shared/methods';
import { answerFields } from './answer-shapes';
import { bounds } from './bounds';
import { readinessShape } from './readiness-shape';
import { calendarShape } from './calendar-shape';
import { crewDayShape, toolLevelsShape } from './crew-shape';
import { logShape } from './log-shape';
import { surveyShape } from './survey-shape';
import {
  list,
  measured,
  name,
  object,
  picked,
  says,
  unique,
  whole,
  within,
  zoneId,
} from './shapes';
import { newestVersion } from './tables/tables';
import { trialShape } from './trial-shape';

export const formatName = 'down-to-sound.job';
/** The version that is written. */
export const currentVersion = newestVersion;
const readVersions = Array.from({ length: newestVersion }, (_, index) => index + 1);

/**
 * The range of a reader's own value: never negative, and never zero, where the figure itself
 * is not. The limits of the interview are not the reader's to move.
 */
function ownRange(id: FigureId): readonly [number, number] {
  const { value, range } = figures[id];
  const lowest = Math.min(value ?? Infinity, ...(range ?? []));
  return [
    lowest > 0 ? 1 / bounds.ownFigure : lowest === 0 ? 0 : -bounds.ownFigure,
    bounds.ownFigure,
  ];
}

const ownFields = Object.fromEntries(
  (Object.keys(figures) as FigureId[])
    .filter((id) => !id.startsWith('limit.'))
    .map((id) => {
      const range = ownRange(id);
      return [
        id,
        v.exactOptional(within(range, { id: 'own-number', unit: figures[id].unit, range })),
      ];
    }),
) as unknown as Record<
  FigureId,
  v.ExactOptionalSchema<v.GenericSchema<unknown, number>, undefined>
>;

const machine = picked(methodIds, { id: 'names', choices: methodIds });

/**
 * Fields that are kept in the file as they are in memory. To add a section to the job, write its
 * shape, name it here, and give it a place in `Job` or `Zone`; reading, writing, the link, the
 * store and the published schema follow.
 */
export const siteExtras = {
  machines: v.exactOptional(
    v.pipe(list(machine, methodIds.length), unique<(typeof methodIds)[number]>()),
  ),
  crew: v.exactOptional(whole(rangeOf('limit.crew'))),
  hoursPerDay: v.exactOptional(measured('limit.hours-per-day')),
  totalArea: v.exactOptional(measured('limit.area')),
  rest: v.exactOptional(zoneId),
};
const spot = object({
  x: measured('limit.spot-place'),
  y: measured('limit.spot-place'),
  length: measured('limit.spot-side'),
  width: measured('limit.spot-side'),
});
export const zoneExtras = {
  patches: v.exactOptional(list(spot, rangeOf('limit.spots')[1])),
  readiness: v.exactOptional(readinessShape),
  trial: v.exactOptional(trialShape),
  log: v.exactOptional(logShape),
};
const price = v.exactOptional(measured('limit.price'));
export const jobExtras = {
  prices: v.exactOptional(
    object({ perHour: price, perBag: price, perConcrete: price, perTonne: price }),
  ),
  own: v.exactOptional(object(ownFields)),
  toolLevels: v.exactOptional(toolLevelsShape),
  crewDay: v.exactOptional(crewDayShape),
  calendar: v.exactOptional(calendarShape),
  survey: v.exactOptional(surveyShape),
  log: v.exactOptional(logShape),
};

const siteShape = object({
  name: v.exactOptional(name),
  ...answerFields(siteQuestionIds),
  ...siteExtras,
});

const zoneShape = v.pipe(
  object({
    id: zoneId,
    name: v.exactOptional(name),
    ...answerFields(zoneQuestionIds),
    ...zoneExtras,
  }),
  v.transform((zone): Zone => ({
    id: zone.id,
    name: zone.name ?? '',
    answers: take(zone, zoneQuestionIds) as ZoneAnswers,
    ...take(zone, Object.keys(zoneExtras)),
  })),
);

const zones = v.pipe(
  list(zoneShape, rangeOf('limit.zones')[1]),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    const seen = new Set<string>();
    for (const [index, zone] of dataset.value.entries()) {
      if (seen.has(zone.id)) {
        const input = dataset.value;
        const place = { type: 'array', origin: 'value', input, key: index, value: zone } as const;
        const field = {
          type: 'object',
          origin: 'value',
          input: {},
          key: 'id',
          value: zone.id,
        } as const;
        addIssue({ message: says({ id: 'unique-id' }), path: [place, field] });
        return;
      }
      seen.add(zone.id);
    }
  }),
);

/** The whole job file, read into a job. */
export const jobShape = v.pipe(
  object({
    format: v.literal(formatName),
    // Both were looked at before, and an older version brought to the present one (versions.ts).
    version: v.picklist(readVersions),
    site: siteShape,
    zones,
    ...jobExtras,
  }),
  v.transform(({ site, zones, ...rest }): Job => ({
    name: site.name ?? '',
    site: take(site, siteQuestionIds) as SiteAnswers,
    zones,
    ...take(site, Object.keys(siteExtras)),
    ...take(rest, Object.keys(jobExtras)),
  })),
);

/** The fields of an object that are there, among those named. */
export function take(from: object, keys: readonly string[]): Record<string, unknown> {
  const given = new Map(Object.entries(from));
  return Object.fromEntries(
    keys.filter((key) => given.get(key) !== undefined).map((key) => [key, given.get(key)]),
  );
}
