import type { CheckId } from '$lib/answers/readiness-record';
import { checkDrawings } from '$lib/drawing/check';
import type { Drawing } from '$lib/drawing/mark';
import { methodDrawings } from '$lib/drawing/method';
import type { StepId } from '$shared/methods';
import { insideEnds } from './inside';
import { methodEnds } from './methods';
import type { Ends } from './motif';
import { afterEnds } from './steps-after';
import { beforeEnds } from './steps-before';
import { surfaceEnds } from './surface';

const ofSteps: Readonly<Record<StepId, Ends>> = { ...methodEnds, ...beforeEnds, ...afterEnds };
const ofChecks: Readonly<Record<CheckId, Ends>> = { ...surfaceEnds, ...insideEnds };

/** Before, at work, done. */
type Three = readonly [begin: Drawing, middle: Drawing, done: Drawing];
const between = ([begin, done]: ReturnType<Ends>, middle: Drawing): Three => [begin, middle, done];

/** A method, or a step around it. */
export const methodFrames = (id: StepId): Three => between(ofSteps[id](), methodDrawings[id]());

/** A check; its last picture is what it can come to. */
export const checkFrames = (id: CheckId): Three => between(ofChecks[id](), checkDrawings[id]());
