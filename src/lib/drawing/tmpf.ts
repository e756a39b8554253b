import { methodFrames, checkFrames } from './frames';
import { stepIds } from '$shared/methods';
import { checkIds } from '$lib/answers/readiness-record';
export const m = Object.fromEntries(stepIds.map((id) => [id, () => methodFrames(id)]));
export const c = Object.fromEntries(checkIds.map((id) => [id, () => checkFrames(id)]));
