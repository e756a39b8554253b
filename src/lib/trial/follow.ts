import { adviseZone } from '$lib/advice/advise';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { Answer, SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { bandOf, depthBands } from '$lib/answers/depth';
import { choicesOf, type DepthBand, type Looseness, type Texture } from '$lib/answers/questions';
import type { MethodId } from '$shared/methods';
import { meanDepth, type Found } from './found';
import type { Outcome } from './outcome';

/** Answers that the trial has disproved, with what they become. */
export type Disproved = Pick<
  { [Q in keyof ZoneAnswers]?: ZoneAnswers[Q] },
  'looseness' | 'depth' | 'texture' | 'steel' | 'contamination'
>;

/** What the advice comes to with answers changed that the trial has disproved. */
export interface Following {
  /** The method the advice comes to; null where none would do, or it stops. */
  readonly method: MethodId | null;
  readonly disproved: Disproved;
  readonly verdict: ZoneAdvice['verdict'];
}

const looser: readonly Looseness[] = choicesOf('looseness');

/** Band by band deeper than a depth, all that are still possible. */
function deeperThan(depth: number, answer: Answer<'depth'> | undefined): DepthBand[] {
  const said = typeof answer === 'number' ? bandOf(answer, 'unknown') : (answer?.at(-1) ?? 'film');
  const from = Math.max(depthBands.indexOf(bandOf(depth, 'unknown')), depthBands.indexOf(said));
  return depthBands.slice(from + 1).filter((band) => band !== 'through');
}

const bands = (some: readonly DepthBand[]): Pick<Disproved, 'depth'> =>
  some.length ? { depth: some as unknown as Answer<'depth'> } : {};

/** The looseness above the one that was said, at least as bad as this. */
function worse(answers: ZoneAnswers, least: Looseness): Looseness {
  const said = Math.max(0, ...(answers.looseness ?? []).map((each) => looser.indexOf(each)));
  return looser[Math.max(said, looser.indexOf(least))] as Looseness;
}

/** Ways in which the answers may have been wrong, the smallest change first. */
function suspects({ why, because }: Outcome, found: Found, answers: ZoneAnswers): Disproved[] {
  const mean = meanDepth(found);
  if (why.includes('bar-unexpected')) return [{ steel: ['exposed'] }];
  if (why.includes('hollow-below'))
    return [{ looseness: ['hollow'], ...bands(deeperThan(mean, answers.depth)) }];
  if (why.includes('no-sound-base')) {
    const base: Looseness = why.includes('still-dusts') ? 'powdery' : 'fractured';
    return [{ looseness: [worse(answers, base)], ...bands(deeperThan(mean, answers.depth)) }];
  }
  if (why.includes('past-partial-depth')) return [{ depth: Math.max(...found.depths) }];
  const list: Disproved[] = [];
  const { contamination } = answers;
  if (why.includes('still-loose') && contamination?.yes.includes('thin-coating')) {
    const others = contamination.yes.filter((each) => each !== 'thin-coating');
    list.push({ contamination: { ...contamination, yes: [...others, 'thick-coating'] } });
  }
  if (why.includes('too-smooth') && answers.texture) {
    const textures: readonly Texture[] = choicesOf('texture');
    const smoother = textures.slice(0, textures.indexOf(answers.texture[0]));
    list.push(...smoother.reverse().map((each): Disproved => ({ texture: [each] })));
  }
  const least: Looseness | null = why.includes('stones-pulled-out')
    ? 'fractured'
    : why.includes('still-loose') || because === 'both'
      ? 'flaking'
      : why.includes('still-dusts')
        ? 'powdery'
        : null;
  if (least === null) return list;
  const from = looser.indexOf(worse(answers, least));
  for (const each of looser.slice(from, looser.indexOf('fractured') + 1)) {
    list.push({ looseness: [each] });
    const [next] = deeperThan(mean, answers.depth);
    if (next) list.push({ looseness: [each], depth: [next] });
  }
  return list;
}

/** The method of the likeliest case, held or not: whether advice is another one goes by that. */
const likeliest = ({ outcomes }: ZoneAdvice) => outcomes[0]?.method;

/**
 * What a patch that ended the trial says of the answers: the first of them that may have been wrong
 * and with which changed the advice is another one. That the method itself is out where no setting
 * of it will do is not told here: the advice follows by itself (`chain.ts`).
 * @param answers the answers that advice came from, with what had failed before
 * @param advice the advice the patch was tried by
 */
export function followFrom(
  outcome: Outcome,
  found: Found,
  site: SiteAnswers,
  answers: TriedAnswers,
  advice: ZoneAdvice,
): Following | null {
  for (const disproved of suspects(outcome, found, answers)) {
    const next = adviseZone(site, { ...answers, ...disproved }, { margins: false });
    const same = next.verdict === advice.verdict && likeliest(next) === likeliest(advice);
    if (same && outcome.kind !== 'stop') continue;
    return { method: next.method, disproved, verdict: next.verdict };
  }
  return null;
}
