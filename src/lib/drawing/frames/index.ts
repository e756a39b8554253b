import type { SurfaceHere } from '$lib/advice/surface-here';
import type { CheckId } from '$lib/answers/readiness-record';
import { checkDrawings } from '$lib/drawing/check';
import type { Drawing } from '$lib/drawing/mark';
import { methodDrawings } from '$lib/drawing/method';
import type { StepId } from '$shared/methods';
import { insideEnds } from './inside';
import { framesHere, methodEnds } from './methods';
import type { Ends } from './motif';
import { afterEnds } from './steps-after';
import { beforeEnds } from './steps-before';
import { surfaceEnds } from './surface';

const ofSteps: Readonly<Record<StepId, Ends>> = { ...methodEnds, ...beforeEnds, ...afterEnds };
const ofChecks: Readonly<Record<CheckId, Ends>> = { ...surfaceEnds, ...insideEnds };

/** Before, at work, done. */
type Three = readonly [begin: Drawing, middle: Drawing, done: Drawing];
const between = ([begin, done]: ReturnType<Ends>, middle: Drawing): Three => [begin, middle, done];

/** A method, or a step around it; as it is in the case in hand, where one is. */
export function methodFrames(id: StepId, here: SurfaceHere | null = null): Three {
  const usual = between(ofSteps[id](), methodDrawings[id]());
  return here ? framesHere(id, usual, here) : usual;
}

/** A check; its last picture is what it can come to. */
export const checkFrames = (id: CheckId): Three => between(ofChecks[id](), checkDrawings[id]());
