import { possibleReadings } from '$lib/climate/answer';
import { frequencies, wetnesses, type Frequency, type Wetness } from '$lib/climate/types';
import { choicesOf, type FreezeThaw } from '$lib/answers/questions';
import { session } from '$lib/ui/session.svelte';
import { keptReason, type FrostReason } from './frost-reason';
import { WeatherFile } from './weather-file.svelte';

/** An answer on the page: a choice, not sure, or none yet. */
export type Given<Choice> = Choice | 'unsure' | null;

/** The frost page while it is open: two answers, a file, and what follows from them. */
class Frost {
  readonly file = new WeatherFile();
  /** What the reader chose; null while the file, if there is one, answers. */
  chosen = $state<Given<Frequency>>(null);
  wetness = $state<Given<Wetness>>(null);
  /** Why the answer last taken into a job is what it is, to stand beside the question. */
  used = $state.raw<FrostReason | null>(keptReason());

  /** What the file says, where it was counted. */
  readonly counted = $derived<Frequency | null>(this.file.weather?.frequency ?? null);
  readonly frequency = $derived<Given<Frequency>>(this.chosen ?? this.counted);
  readonly overruled = $derived(
    this.counted !== null && this.chosen !== null && this.chosen !== this.counted,
  );

  readonly readings = $derived.by(() => {
    const { frequency, wetness } = this;
    if (frequency === null || wetness === null) return [];
    return possibleReadings(
      frequency === 'unsure' ? frequencies : [frequency],
      wetness === 'unsure' ? wetnesses : [wetness],
      session.job.site.salts ?? choicesOf('salts'),
    );
  });

  /** The answers still possible, in the order of the interview. */
  readonly answers = $derived<readonly FreezeThaw[]>(
    choicesOf('freezeThaw').filter((choice) =>
      this.readings.some(({ answer }) => answer === choice),
    ),
  );
}

export const frost = new Frost();
