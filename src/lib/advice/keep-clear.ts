import { carriesLoad, hasAirBelow } from '$lib/answers/elements';
import type { SiteAnswers } from '$lib/answers/answers';
import type { RuleId } from './rules';
import type { Hold, TestId } from './types';
import type { ZoneAdvice } from './zone-advice';

/** What says that concrete which carries may not carry any more, or lets pieces fall. Rust bursts it. */
export const mayFail: readonly RuleId[] = [
  'structure-before-removal',
  'bar-section-loss',
  'fire-or-chemical',
  'settled-or-rocking',
  'full-depth',
  'through',
  'hollow-unmeasured',
  'same-part-in-doubt',
  'rust-with-salts',
  'rust-at-crack',
  'nothing-over-rust',
];

/** From where people are kept away. */
export type KeptClear = 'keep-off' | 'keep-from-under';

/** Away from it; where there may be air below, from under it too. */
export const clearOf = ({ element }: SiteAnswers): KeptClear =>
  !element || element.some(hasAirBelow) ? 'keep-from-under' : 'keep-off';

/**
 * From where people are kept before anybody tests or calls: concrete that carries, or may, and that
 * something says, or may say, is failing. Null where nothing that carries is in doubt.
 * Source: common practice, no published source.
 */
export function keepClear(
  site: SiteAnswers,
  { holds, possibleHolds }: Pick<ZoneAdvice, 'holds' | 'possibleHolds'>,
): KeptClear | null {
  const { element, warnings } = site;
  // That something may rest on a slab on the ground is looked for; it is no reason to keep off.
  const carries =
    (element ? element.some(carriesLoad) : warnings?.maybe.includes('holds-something-up')) ||
    warnings?.yes.includes('holds-something-up');
  const clear = clearOf(site);
  const fails = [...holds, ...possibleHolds].some(
    ({ rule }) =>
      mayFail.includes(rule) || (rule === 'moving-crack' && clear === 'keep-from-under'),
  );
  return carries && fails ? clear : null;
}

/**
 * Who is called at once about what people are kept away from: the engineer, where a hold or what may
 * hold it names one; null where nobody is kept away, or none is named.
 * Source: common practice, no published source.
 */
export function calledAtOnce(
  site: SiteAnswers,
  advice: Pick<ZoneAdvice, 'holds' | 'possibleHolds'>,
): Hold['who'] | null {
  const named = [...advice.holds, ...advice.possibleHolds].some(({ who }) => who === 'engineer');
  return named && keepClear(site, advice) ? 'engineer' : null;
}

/** Tests for which nobody goes near. */
const fromAfar: readonly TestId[] = ['ask-engineer', 'ask-owner', 'ask-maker', 'local-weather'];

/** Whether a test is done at the place itself. */
export const isDoneThere = (test: TestId): boolean => !fromAfar.includes(test);
