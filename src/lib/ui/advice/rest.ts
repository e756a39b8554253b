/** What the advice page shows once it is opened; fetched together, after what stands open. */
export { default as Frames } from '$lib/drawing/Frames.svelte';
export { default as MethodDrawing } from '$lib/drawing/MethodDrawing.svelte';
export { default as GivenAnswers } from '$lib/ui/question/GivenAnswers.svelte';
export { default as FoldedBody } from './FoldedBody.svelte';
export { default as HazardCard } from './HazardCard.svelte';
export { default as StepWhy } from './StepWhy.svelte';
