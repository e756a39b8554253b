import { valueOf } from '$shared/figures';
import { ladderOf, type Aim } from './aim';
import type { Found } from './found';
import { graveness, type Outcome, type WhyId } from './outcome';
import { signsOf, type Signs } from './signs';

/** What the patches before have settled about the ladder. */
interface Bracket {
  /** The harshest notch that took off too little at its most passes; -1 while none did. */
  readonly tooLittleAt: number;
  /** The gentlest notch that took off too much; Infinity while none did. */
  readonly tooMuchAt: number;
}

/**
 * What every patch of a zone comes to, in the order they were tried. Each reading stands on the
 * patches before it: a notch that was too much, or too little, is not tried again.
 */
export function readAll(patches: readonly Found[], aim: Aim): Outcome[] {
  let bracket: Bracket = { tooLittleAt: -1, tooMuchAt: Infinity };
  return patches.map((found) => {
    const signs = signsOf(found, aim);
    // A heavy hammer that met a bar is not taken up again here either.
    if (signs.tooMuch.length || heavyAtBar(found, signs, aim, bracket))
      bracket = { ...bracket, tooMuchAt: Math.min(bracket.tooMuchAt, found.notch) };
    const outcome = gravest(candidates(found, signs, aim, bracket));
    if (outcome.kind === 'harsher')
      bracket = { ...bracket, tooLittleAt: Math.max(bracket.tooLittleAt, found.notch) };
    return outcome;
  });
}

/** The notch and passes a first patch is tried with. */
export const firstTry = (aim: Aim): { notch: number; passes: number } => ({
  notch: ladderOf(aim).begin,
  passes: 1,
});

/** The gravest counts; among equals the one named first. */
function gravest(all: readonly Outcome[]): Outcome {
  const most = Math.max(...all.map(({ kind }) => graveness[kind]));
  return all.find(({ kind }) => graveness[kind] === most) as Outcome;
}

/** Everything the signs of a patch call for; the gravest is what is said. */
function candidates(found: Found, signs: Signs, aim: Aim, bracket: Bracket): Outcome[] {
  const { stop, wrong, tooMuch, tooLittle } = signs;
  const all: Outcome[] = [];
  if (isSome(stop)) all.push({ kind: 'stop', why: stop });
  if (isSome(wrong)) all.push({ kind: 'other-method', why: wrong, because: 'too-little' });
  if (isSome(tooMuch) && isSome(tooLittle))
    all.push({ kind: 'other-method', why: [...tooMuch, ...tooLittle], because: 'both' });
  if (isSome(tooMuch)) all.push(gentler(found, tooMuch, bracket));
  const heavy = heavyAtBar(found, signs, aim, bracket);
  if (heavy) all.push(heavy);
  if (isSome(tooLittle)) all.push(more(found, tooLittle, signs, aim, bracket));
  if (all.length) return all;
  if (!signs.rough) return [{ kind: 'go-on', why: ['meets-all'] }];
  const finer = gentler(found, ['too-rough'], bracket);
  return [finer.kind === 'finer' ? finer : { kind: 'go-on', why: ['rough-as-found'] }];
}

const isSome = (why: readonly WhyId[]): why is readonly [WhyId, ...WhyId[]] => why.length > 0;
type Some = readonly [WhyId, ...WhyId[]];

/** One notch finer; where there is none left, another method. */
function gentler({ notch }: Found, why: Some, { tooLittleAt }: Bracket): Outcome {
  const finer = notch - 1;
  // Below the gentlest notch lies -1, where nothing was too little yet.
  return finer <= tooLittleAt
    ? { kind: 'other-method', why, because: 'too-much', ladderEnded: true }
    : { kind: 'finer', why, next: { notch: finer, passes: 1 } };
}

/**
 * What is left comes off with another pass, once, and then with one notch more; a face that is only
 * too smooth wants the notch first, and so does water (common practice, no published source). A bar that was met bars the harsher notch. A break-out that
 * still does not come to sound concrete with its heaviest hammer is not a matter of tools.
 */
function more(found: Found, why: Some, { bar }: Signs, aim: Aim, bracket: Bracket): Outcome {
  const onlySmooth = why.every((each) => each === 'too-smooth');
  const up = found.notch + 1;
  const { notches, begin } = ladderOf(aim);
  const ended = bar || up >= notches.length || up >= bracket.tooMuchAt;
  // A ladder begun at its gentlest is climbed first: going over every notch twice takes too long.
  const climb = onlySmooth || begin === 0;
  if (found.passes < valueOf('trial.passes') && (!climb || ended))
    return {
      kind: 'another-pass',
      why,
      next: { notch: found.notch, passes: found.passes + 1 },
    };
  if (!ended) return { kind: 'harsher', why, next: { notch: up, passes: 1 } };
  return aim.method === 'break-out' && !onlySmooth
    ? { kind: 'stop', why: ['no-sound-base', ...why], ladderEnded: true }
    : { kind: 'other-method', why, because: 'too-little', ladderEnded: true };
}

/**
 * Where a bar was to be met, and the hammer is heavier than what is used around steel. Where the
 * lighter one has not come to sound concrete before, it is no matter of tools.
 */
function heavyAtBar(
  found: Found,
  { bar }: Signs,
  aim: Aim,
  { tooLittleAt }: Bracket,
): Outcome | null {
  const lighter = found.notch - 1;
  if (!bar || aim.ladder !== 'break-out' || lighter < 0) return null;
  if (lighter <= tooLittleAt)
    return { kind: 'stop', why: ['no-sound-base', 'bar-heavy-hammer'], ladderEnded: true };
  return {
    kind: 'finer',
    why: ['bar-heavy-hammer'],
    next: { notch: lighter, passes: found.passes },
  };
}
