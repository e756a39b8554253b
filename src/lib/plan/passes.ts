import { isSurely } from '$lib/answers/answers';
import { meanDepth } from '$lib/trial/found';
import { goesByPasses, passLearnt } from '$lib/trial/zone-trial';
import type { OwnFigures } from '$shared/figures';
import type { Term } from './amount';
import { depthSpan, type ZoneWork } from './zone-work';

/**
 * Passes the main method of a zone takes, once its own test patches have shown it; null before, and
 * where a method does not go by passes. The patch's own number, and where the damage goes deeper
 * than the patch was, as many more as the depth of a pass learnt there asks for.
 * Source: common practice, no published source; a second pass takes as long as the first (figure
 * `rate.shotblast`).
 */
export function passesTerm(work: ZoneWork, own?: OwnFigures): Term | null {
  const [patch] = work.tried;
  if (!patch || !goesByPasses(work.method)) return null;
  const term = { what: 'passes', unit: 'ratio', fromPatch: true } as const;
  const made = patch.passes;
  const damage = isSurely(work.zone.answers.looseness, 'tight') ? null : depthSpan(work);
  const pass = passLearnt(work.tried, work.method, own);
  const reached = Math.max(...work.tried.map(meanDepth)) / 1000;
  if (!damage || !pass || damage[1] <= reached) return { ...term, span: [made, made] };
  const passes = (metres: number, mm: number) => Math.max(made, (metres * 1000) / mm);
  return {
    ...term,
    span: [passes(damage[0], pass.high), passes(damage[1], pass.low)],
    typical: passes((damage[0] + damage[1]) / 2, pass.typical),
  };
}
