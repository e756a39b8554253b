import type { KeepOff } from './bare-ears';
import { hazardIds, type HazardId } from '$shared/methods';
import type { CrewHazard } from './crew-hazards';
import type { Help } from './help';
import type { ToolId } from '$shared/tools';
import { noiseAim } from './noise-limits';
import type { Safety, SafetyOfWorker } from './safety-of';

/** One line that the crew is read and can follow. */
export type BriefingLine =
  | { readonly id: 'dust-controls' | 'cleaning' | 'eyes' | 'hands' | 'anyone' }
  /** The highest factor of the day, and what comes on top: a hood behind a nozzle, dust not measured yet. */
  | {
      readonly id: 'mask';
      readonly factor: number;
      readonly hood: boolean;
      /** Somebody works near whose own work asks for no such mask. */
      readonly near: boolean;
      readonly measure: readonly ToolId[];
    }
  | { readonly id: 'ears'; readonly worker: SafetyOfWorker; readonly away: KeepOff | null }
  | { readonly id: 'leave'; readonly zones: readonly string[] }
  | { readonly id: 'stop'; readonly hazard: HazardId };

/** Lines that are read out; nobody keeps more in mind. Source: common practice, no published source. */
export const mostLines = 8;

/** What lines of their own are about. */
const said: readonly HazardId[] = ['silica', 'noise', 'vibration'];
/** What can kill at once goes first. Source: common practice, no published source. */
const gravest: readonly HazardId[] = [
  'structure',
  'falls',
  'electric',
  'carbon-monoxide',
  'water-injection',
  'lead-asbestos',
  'overhead',
  'eyes',
];
const rank = (hazard: HazardId): number => {
  const place = gravest.indexOf(hazard);
  return place < 0 ? gravest.length + hazardIds.indexOf(hazard) : place;
};

/** What somebody stops for, gravest first; dust, noise and vibration have lines of their own. */
export const gravestFirst = (hazards: readonly CrewHazard[]): HazardId[] =>
  hazards
    .map(({ hazard }) => hazard)
    .filter((hazard) => !said.includes(hazard))
    .sort((one, other) => rank(one) - rank(other));

const most = <T>(items: readonly T[], of: (item: T) => number): T | undefined =>
  items.reduce<T | undefined>(
    (best, item) => (best === undefined || of(item) > of(best) ? item : best),
    undefined,
  );

/** The person worst off by each of the three; by the high ends, and what is unknown last. */
export function worstOff({ workers, region }: Safety): {
  readonly dust: SafetyOfWorker | undefined;
  readonly noise: SafetyOfWorker | undefined;
  readonly vibration: SafetyOfWorker | undefined;
} {
  return {
    dust: most(workers, ({ silica }) => silica.hours.high),
    noise: most(workers, ({ noise }) => noise.limits[noiseAim[region]].part.high),
    vibration: most(workers, ({ vibration }) => vibration.points.high),
  };
}

/** Where usual values pass a limit, what helps whoever is worst off; null where nobody is. */
export const worstHelp = ({ workers }: Safety): Help | null =>
  most(
    workers.flatMap(({ help }) => help ?? []),
    ({ now }) => now,
  ) ?? null;

/** What is read out before work: eight lines at most, gravest stops in the room the others leave. */
export function briefingOf(
  safety: Safety,
  hazards: readonly CrewHazard[],
  held: readonly string[],
): BriefingLine[] {
  const { workers } = safety;
  const worst = worstOff(safety);
  const kinds = workers.flatMap(({ silica }) => silica.tasks.map(({ kind }) => kind));
  const dusty = kinds.some((kind) => kind === 'row' || kind === 'not-in-table');
  const factor = Math.max(0, ...workers.map(({ mask }) => mask.factor));
  const hood = workers.some(({ mask }) => mask.hood);
  const near = workers.some(({ mask }) => mask.besideDust !== null);
  const measure = [...new Set(workers.flatMap(({ mask }) => mask.measure))];
  const loud = worst.noise?.noise.limits[noiseAim[safety.region]];
  const shakes = workers.some(
    ({ vibration }) => vibration.points.high > 0 || vibration.points.open,
  );
  const flies = hazards.some(({ hazard }) => hazard === 'eyes');
  const lines: BriefingLine[] = [
    ...(dusty ? [{ id: 'dust-controls' as const }] : []),
    ...(factor > 0 ? [{ id: 'mask' as const, factor, hood, near, measure }] : []),
    ...(!dusty && kinds.some((kind) => kind !== 'not-dusty') ? [{ id: 'cleaning' as const }] : []),
    ...(worst.noise && loud && (loud.part.high > 0 || loud.part.open)
      ? [
          {
            id: 'ears' as const,
            worker: worst.noise,
            away: safety.keepOff,
          },
        ]
      : []),
    ...(flies ? [{ id: 'eyes' as const }] : []),
    ...(shakes ? [{ id: 'hands' as const }] : []),
    ...(held.length ? [{ id: 'leave' as const, zones: held }] : []),
  ];
  const stops = gravestFirst(hazards)
    .filter((hazard) => hazard !== 'eyes')
    .map((hazard) => ({ id: 'stop' as const, hazard }));
  return [...lines, ...stops.slice(0, mostLines - 1 - lines.length), { id: 'anyone' }];
}

/** Rows to sign: one a person, and a few for whoever joins. */
export const rowsToSign = (crew: number): number => Math.max(8, Math.min(14, crew + 4));
