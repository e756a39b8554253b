import { noiseLimitIds, noiseRules, type NoiseLimitId } from '$lib/safety/noise-limits';
import type { Safety, SafetyOfWorker } from '$lib/safety/safety-of';
import { toStep } from '$lib/safety/bounds';
import type { Bounds } from '$lib/safety/types';
import { vibrationLimit } from '$lib/safety/vibration';
import { boundsWords, crewPageWords as words } from '$words/safety';
import type { Formatter } from '$lib/words/types';
import { rangeOf, valueOf, type OwnFigures } from '$shared/figures';

/** A chart of everybody's day against the lines of one rule. */
export interface Chart {
  readonly title: string;
  readonly rows: readonly {
    readonly name: string;
    readonly bounds: Bounds;
    readonly text: string;
  }[];
  readonly lines: readonly {
    readonly at: number;
    readonly label: string;
    readonly kind: 'action' | 'limit';
  }[];
  readonly from: number;
  readonly to: number;
  readonly tick: number;
}

/** The end of a scale: as far as every bar, on a tick. */
const scaleEnd = (least: number, tick: number, all: Chart['rows']): number =>
  Math.ceil(Math.max(least, ...all.map(({ bounds }) => bounds.high)) / tick) * tick;

/** People drawn one by one; more than this and only those who differ are. */
const mostRows = 8;

/** Everybody with a day of their own; people whose day is alike are drawn once, named together. */
function people(safety: Safety, boundsOf: (worker: SafetyOfWorker) => Bounds) {
  const kinds = new Map<string, { ids: string[]; bounds: Bounds }>();
  for (const worker of safety.workers) {
    const bounds = boundsOf(worker);
    const key = [bounds.low.toFixed(6), bounds.high.toFixed(6), String(bounds.open)].join(' ');
    const before = kinds.get(key);
    if (before) before.ids.push(worker.id);
    else kinds.set(key, { ids: [worker.id], bounds });
  }
  return [...kinds.values()]
    .sort((one, other) => other.bounds.high - one.bounds.high)
    .slice(0, mostRows);
}

function rows(
  safety: Safety,
  say: Formatter,
  boundsOf: (worker: SafetyOfWorker) => Bounds,
  [step, unit]: readonly [number, string],
): Chart['rows'] {
  const alone = safety.workers.length === 1;
  return people(safety, boundsOf).map(({ ids, bounds }, place) => ({
    name: alone ? words.you : words.worker(say.ends(ids[0] ?? '', ids.at(-1) ?? ''), place === 0),
    bounds,
    text: boundsWords(say, toStep(bounds, step), unit),
  }));
}

/** Vibration against its two values. */
export function vibrationChart(safety: Safety, say: Formatter, own?: OwnFigures): Chart {
  const limit = vibrationLimit('limit', own);
  const all = rows(safety, say, ({ vibration }) => vibration.daily, [0.1, 'm/s²']);
  return {
    title: words.chartVibration,
    rows: all,
    lines: [
      { at: vibrationLimit('action', own), label: words.lineAction, kind: 'action' },
      { at: limit, label: words.lineLimit, kind: 'limit' },
    ],
    from: 0,
    to: scaleEnd(2 * limit, limit / 2, all),
    tick: limit / 2,
  };
}

const titles = {
  niosh: words.chartNiosh,
  'osha-limit': words.chartOsha,
  'eu-upper': words.chartEu,
} as const;
const lineOf: Readonly<Record<NoiseLimitId, readonly [string, 'action' | 'limit']>> = {
  'osha-action': [words.lineAction, 'action'],
  'osha-limit': [words.lineLegal, 'limit'],
  niosh: [words.lineRecommended, 'limit'],
  'eu-lower': [words.lineLower, 'action'],
  'eu-upper': [words.lineUpper, 'action'],
  'eu-limit': [words.lineLimit, 'limit'],
};

/** Noise by the rules of the region; each rule has a chart of its own, since each means another mean. */
export function noiseCharts(safety: Safety, say: Formatter, own?: OwnFigures): Chart[] {
  const rules =
    safety.region === 'us' ? (['niosh', 'osha-limit'] as const) : (['eu-upper'] as const);
  const tick = 10;
  const quiet = rangeOf('limit.noise-level')[0] + tick;
  return rules.map((rule) => {
    const family = rule.split('-')[0] ?? rule;
    const all = rows(safety, say, ({ noise }) => noise.limits[rule].level, [1, 'dB(A)']);
    return {
      title: titles[rule],
      rows: all,
      lines: noiseLimitIds
        .filter((id) => id.startsWith(family))
        .map((id) => {
          const [label, kind] = lineOf[id];
          return { at: valueOf(noiseRules[id].criterion, own), label, kind };
        }),
      from: quiet,
      to: scaleEnd(quiet + 5 * tick, tick, all),
      tick,
    };
  });
}
