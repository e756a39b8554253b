import { formatter } from '$lib/words/format';
import { preferences } from './preferences.svelte';

const say = $derived(formatter(preferences.units));

/** The formatter in the reader's units; read it inside markup or a derived value, so that a switch is followed. */
export const speech = {
  get say() {
    return say;
  },
};
