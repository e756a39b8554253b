import { untrack } from 'svelte';
import { giveWay } from './in-turn';
import { session } from './session.svelte';

/**
 * For a page that is loaded: what it rests on is reckoned apart from making the page, so that
 * neither keeps a tap waiting long. Within the tab it comes at once.
 * @param reckon reckons it, and what it has found is remembered
 * @returns whether the job is there and that is done
 */
export function reckonedFirst(reckon: () => unknown): { readonly done: boolean } {
  let done = $state(untrack(() => session.ready));
  $effect(() => {
    if (done || !session.ready) return;
    void giveWay()
      .then(reckon)
      // What fails is told where the page asks for it.
      .catch(() => undefined)
      .then(giveWay)
      .then(() => (done = true));
  });
  return {
    get done() {
      return done;
    },
  };
}
