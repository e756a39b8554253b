import * as v from 'valibot';
import { choicesOf } from '$lib/answers/questions';
import { frequencies, wetnesses, type FreezeThawReading } from '$lib/climate/types';
import { siteName } from '$lib/ui/site-name';
import type { WeatherSaid } from '$words/climate';

/** Why the frost question was answered as it was, when the answer came from the frost page. */
export interface FrostReason {
  /** Id of the job on this device. */
  readonly job: string;
  readonly reading: Pick<FreezeThawReading, 'answer' | 'frequency' | 'wetness'>;
  /** What the weather file said; null where two questions answered. */
  readonly weather: WeatherSaid | null;
}

const amount = v.nullable(v.pipe(v.number(), v.finite()));
const shape = v.object({
  job: v.string(),
  reading: v.object({
    answer: v.picklist(choicesOf('freezeThaw')),
    frequency: v.picklist(frequencies),
    wetness: v.picklist(wetnesses),
  }),
  weather: v.nullable(
    v.object({
      cycles: v.nullable(v.object({ direct: v.number(), byDifference: v.number() })),
      winterRain: amount,
      index: amount,
      weathering: v.nullable(v.picklist(['negligible', 'moderate', 'severe'])),
      frequency: v.nullable(v.picklist(frequencies)),
    }),
  ),
});

const key = siteName('down-to-sound.frost');

/** Keeps the reason in this browser, so that it stands beside the question after a reload too. */
export function keepReason({ job, reading, weather }: FrostReason): void {
  const { answer, frequency, wetness } = reading;
  const said = weather && {
    cycles: weather.cycles,
    winterRain: weather.winterRain,
    index: weather.index,
    weathering: weather.weathering,
    frequency: weather.frequency,
  };
  try {
    const kept = { job, reading: { answer, frequency, wetness }, weather: said };
    localStorage.setItem(key, JSON.stringify(kept));
  } catch {
    // No storage, or none left: the reason holds for this tab.
  }
}

/** The reason that was kept; null where there is none, or what is there cannot be read. */
export function keptReason(): FrostReason | null {
  try {
    const found = v.safeParse(shape, JSON.parse(localStorage.getItem(key) ?? 'null'));
    return found.success ? found.output : null;
  } catch {
    return null;
  }
}
