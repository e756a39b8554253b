import { isSurely } from '$lib/answers/answers';
import { meanDepth } from '$lib/trial/found';
import { goesByPasses, passLearnt } from '$lib/trial/zone-trial';
import { rangeOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import { typicalOf, type Span, type Term } from './amount';
import { depthSpan, type ZoneWork } from './zone-work';

const damageOf = (work: ZoneWork): Span | null =>
  isSurely(work.zone.answers.looseness, 'tight') ? null : depthSpan(work);

/**
 * As deep as one pass of a floor machine is set at the most, as its setting says. The rates are those
 * of one pass, but for the slow end of scarifying, which has several in it: there the hours err long.
 */
const deepestPass: Readonly<Partial<Record<MethodId, FigureId>>> = {
  scarify: 'scarify.pass',
  shotblast: 'shotblast.pass',
};

/**
 * Passes that the setting of a floor machine asks for, whole, where the damage is deeper than one
 * takes; null where one is enough, or nobody has said how deep.
 */
function passesSet(work: ZoneWork, own?: OwnFigures): Term | null {
  const figure = deepestPass[work.method];
  const damage = damageOf(work);
  if (!figure || !damage) return null;
  const [, most] = rangeOf(figure, own);
  // What arithmetic left a hair above a whole pass is that pass.
  const passes = (metres: number) => Math.max(1, Math.ceil((metres * 1000) / most - 1e-6));
  const span = [passes(damage[0]), passes(damage[1])] as const;
  if (span[1] === 1) return null;
  const typical = passes(typicalOf({ span: damage }));
  return { what: 'passes', unit: 'ratio', figure, span, typical };
}

/**
 * Passes the main method of a zone takes; null where it is one, or where a method does not go by
 * passes. Before a test patch as its setting says; then the patch's own number, and where the damage
 * goes deeper than the patch was, as many more as the depth of a pass learnt there asks for.
 * Source: common practice, no published source; a second pass takes as long as the first (figure
 * `rate.shotblast`).
 */
export function passesTerm(work: ZoneWork, own?: OwnFigures): Term | null {
  const [patch] = work.tried;
  if (!goesByPasses(work.method)) return null;
  if (!patch) return passesSet(work, own);
  const term = { what: 'passes', unit: 'ratio', fromPatch: true } as const;
  const made = patch.passes;
  const damage = damageOf(work);
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
