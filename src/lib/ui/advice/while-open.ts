/** What the advice page shows only while an answer is open; fetched as soon as one is seen to be. */
export { default as Begin } from './Begin.svelte';
export { default as FindOut } from './FindOut.svelte';
export { default as PossibleHolds } from './PossibleHolds.svelte';
