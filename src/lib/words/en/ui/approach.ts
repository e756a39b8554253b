import type { Approach } from '$lib/advice/approach-asked';

/** How what hangs is tested by those who work on it. */
export const approachWords: Readonly<Record<Exclude<Approach, 'as-usual'>, string>> = {
  'from-beside':
    'Nobody stands under it. Keep off what dips, rocks or sounds hollow. Reach an underside from beside, on a tower or a lift.',
  leave: 'Take nothing off what hangs. This waits for the engineer.',
};

/** How an owner finds out what nobody should stand on or under to see. */
export const ownerFindsOut =
  'Do not go on it or under it for this. Look from firm ground beside it, or ask who knows it. Else choose “Not sure”.';

/** Before anything is known of what hangs, in the open. */
export const fromBeside = 'Look from beside it: nobody goes on it or under it.';
