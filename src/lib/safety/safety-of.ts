import type { FigureId, OwnFigures } from '$shared/figures';
import { keepOff, type KeepOff } from './bare-ears';
import { passes } from './bounds';
import { silicaDuties, respiratorsFor, type Duty } from './duties';
import { helpOf, type Help } from './help';
import { beginMask, maskOfDay, type MaskOfDay } from './masks';
import { earsFor, type Ears } from './ears';
import { heardFrom, noiseOfDay, type NoiseOfDay } from './noise';
import { noiseAim } from './noise-limits';
import { usualPart } from './noise-usual';
import { shiftProblems, type ShiftProblem } from './problems';
import { shareOut, type BudgetId, type SharingOut } from './share-out';
import { silicaOfDay, type DustHours, type SilicaOfDay } from './silica';
import { settleTask } from './tasks';
import type { Region, SettledTask, WorkerDay } from './types';
import { vibrationOfDay, type VibrationOfDay } from './vibration';

/** What the crew does in a day, or in the days of a plan. */
export interface ShiftInput {
  readonly region: Region;
  readonly workers: readonly WorkerDay[];
  /** People there are to share with; as many as there are workers when not given. */
  readonly crew?: number;
  /** Which hours the dust table counts; those at the task when not given, the stricter reading. */
  readonly dustHours?: DustHours;
}

/** One person's day in numbers. */
export interface SafetyOfWorker {
  readonly id: string;
  readonly tasks: readonly SettledTask[];
  readonly silica: SilicaOfDay;
  /** What this person breathes through, those near an abrasive nozzle counted. */
  readonly mask: MaskOfDay;
  /** Respirators that do for the whole day; null where exposure has to be assessed first. */
  readonly respirators: ReturnType<typeof respiratorsFor> | null;
  readonly noise: NoiseOfDay;
  /** What the ears need at usual values, the others' machines counted; null where these keep under the limit aimed at. */
  readonly ears: Ears | null;
  readonly vibration: VibrationOfDay;
  /** The change that would help most against vibration and noise, at usual values; null where nothing has to. */
  readonly help: Help | null;
}

export const sharingAims = [
  'vibration-action',
  'vibration-limit',
  'noise-limit',
  'everything',
] as const;
export type SharingAim = (typeof sharingAims)[number];

export interface Safety {
  readonly region: Region;
  readonly workers: readonly SafetyOfWorker[];
  /** All the work, shared out so that nobody passes what is aimed at. No hearing protector is counted in. */
  readonly sharing: Readonly<Record<SharingAim, SharingOut>>;
  /** The same for everything at once, with every tool at its worst for its longest: a warning. */
  readonly worstSharing: SharingOut;
  readonly duties: readonly Duty[];
  /** How far others stay who wear nothing on the ears; null where nothing is loud. */
  readonly keepOff: KeepOff | null;
  /** Every figure that any number here leans on. */
  readonly basis: readonly FigureId[];
}

export type SafetyResult =
  | { readonly ok: true; readonly safety: Safety }
  | { readonly ok: false; readonly problems: readonly ShiftProblem[] };

function budgetsOf(aim: SharingAim, region: Region): readonly BudgetId[] {
  if (aim === 'noise-limit') return [noiseAim[region]];
  return aim === 'everything' ? ['vibration-action', noiseAim[region]] : [aim];
}

function ofWorker(
  worker: WorkerDay,
  others: readonly WorkerDay[],
  region: Region,
  dustHours?: DustHours,
  own?: OwnFigures,
): SafetyOfWorker {
  const tasks = worker.tasks.map(settleTask);
  // Whoever works at all that day is on the site while the others' machines run.
  const theirs = others.map((other) => other.tasks.map(settleTask));
  const beside = heardFrom(tasks, theirs, own);
  const noise = noiseOfDay(tasks, own, beside);
  const limit = noiseAim[region];
  const { part } = noise.limits[limit].typical;
  const silica = silicaOfDay(tasks, own, dustHours);
  return {
    id: worker.id,
    tasks,
    silica,
    mask: maskOfDay(
      silica.tasks,
      theirs.flatMap((each) => silicaOfDay(each, own, dustHours).tasks),
      region,
      own,
    ),
    respirators: silica.protection === null ? null : respiratorsFor(silica.protection, own),
    noise,
    ears: passes(part, 1) ? earsFor(part, limit, own) : null,
    vibration: vibrationOfDay(tasks, own),
    help: helpOf(tasks, limit, own, {
      all: [tasks, ...theirs].flat(),
      crew: theirs.length + 1,
      beside: usualPart([], beside, limit, own),
    }),
  };
}

/** Every figure that the numbers of a result lean on, once. */
function basisOf(
  workers: readonly SafetyOfWorker[],
  sharing: Safety['sharing'],
  duties: readonly Duty[],
): FigureId[] {
  const used = [
    ...workers.flatMap(({ silica, mask, noise, vibration, respirators }) => [
      ...silica.figures,
      ...(mask.by === 'begin' || mask.by === 'country' ? [beginMask] : []),
      ...noise.figures,
      ...Object.values(noise.limits).flatMap((limit) => limit.figures),
      ...vibration.figures,
      ...(respirators ?? []).map(({ figure }) => figure),
    ]),
    ...Object.values(sharing).flatMap((shared) => (shared.can === 'share' ? shared.figures : [])),
    ...duties.flatMap((duty) => duty.figures),
  ];
  return [...new Set(used)];
}

/**
 * Dust, noise and vibration of a crew's day, and how to share the work out.
 * With bad input only the problems come back: the caller keeps what it had.
 */
export function safetyOf(input: ShiftInput, own?: OwnFigures): SafetyResult {
  const problems = shiftProblems(input.workers, input.crew);
  if (problems.length) return { ok: false, problems };
  const { region } = input;
  const workers = input.workers.map((worker) =>
    ofWorker(
      worker,
      input.workers.filter((other) => other !== worker),
      region,
      input.dustHours,
      own,
    ),
  );
  const crew = input.crew ?? Math.max(1, workers.length);
  const work = workers.flatMap(({ tasks }) => tasks);
  const sharing = Object.fromEntries(
    sharingAims.map((aim) => [aim, shareOut(work, budgetsOf(aim, region), crew, own)]),
  ) as Record<SharingAim, SharingOut>;
  const worstSharing = shareOut(work, budgetsOf('everything', region), crew, own, 'worst');
  const duties = silicaDuties(
    region,
    workers.some(({ mask }) => mask.factor > 0),
    workers.some(({ silica }) => silica.protection === null),
  );
  return {
    ok: true,
    safety: {
      region,
      workers,
      sharing,
      worstSharing,
      duties,
      keepOff: keepOff(work, own),
      basis: basisOf(workers, sharing, duties),
    },
  };
}
