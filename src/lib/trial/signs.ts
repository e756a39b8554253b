import { methodFits } from '$lib/advice/methods/fits';
import { methods } from '$shared/methods';
import type { Aim } from './aim';
import { deepest, meanDepth, type Found } from './found';
import type { WhyId } from './outcome';

/** What a patch shows, by what it calls for. Each list is in the order in which it weighs. */
export interface Signs {
  /** Nobody goes on before it is found out. */
  readonly stop: readonly WhyId[];
  /** The method itself is wrong, whatever is set. */
  readonly wrong: readonly WhyId[];
  readonly tooMuch: readonly WhyId[];
  readonly tooLittle: readonly WhyId[];
  /**
   * Rougher than asked, with a method that leaves the texture as it was found: less of it may keep
   * the face smoother, and no other sign weighs less.
   */
  readonly rough: boolean;
  /** A bar was met: nothing harsher, whatever else there is. */
  readonly bar: boolean;
}

/**
 * Reads the signs of one patch.
 * Sources: stones break across in sound concrete and come out whole in bad concrete (Concrete
 * Construction, "Sawcut or chip first?", read whole); light hammers round steel (UFGS 03931, figure
 * `hammer.at-steel`); partial depth ends at a third (FHWA checklist 9, figure `depth.partial-limit`).
 * The rest is common practice, no published source.
 */
export function signsOf(found: Found, aim: Aim): Signs {
  const { stones, left, bar, sound, profile } = found;
  const breaking = aim.method === 'break-out';
  const mean = meanDepth(found);
  const unsound = left !== 'nothing' || stones === 'pulled-out' || (breaking && sound === 'dull');
  // In a tight surface nothing was to come off: there the measure is what counts as over.
  const asDeepAsSaid = mean >= (aim.damage > 0 ? aim.damage : aim.enough);

  const stop: WhyId[] = [];
  if (bar === 'yes' && !aim.bars) stop.push('bar-unexpected');
  if (sound === 'dull' && !breaking) stop.push('hollow-below');
  if (unsound && asDeepAsSaid) stop.push('no-sound-base');
  if (breaking && deepest(found) > aim.reach) stop.push('past-partial-depth');

  const tooMuch: WhyId[] = [];
  if (stones === 'torn') tooMuch.push('bruised');
  if (!breaking && deepest(found) > aim.reach) tooMuch.push('too-deep');
  if (mean > aim.enough) tooMuch.push('over-deep');
  const rough = aim.profile !== null && profile !== undefined && profile > aim.profile[1];
  const asFound = methods[aim.method].class === 0;
  if (rough && !asFound) tooMuch.push('too-rough');

  const tooLittle: WhyId[] = [];
  const wrong: WhyId[] = [];
  if (stones === 'pulled-out') (reachesLoose(aim) ? tooLittle : wrong).push('stones-pulled-out');
  if (left === 'more' || (breaking && sound === 'dull')) tooLittle.push('still-loose');
  if (left === 'dust') tooLittle.push('still-dusts');
  if (aim.profile && profile !== undefined && profile < aim.profile[0])
    tooLittle.push('too-smooth');

  return { stop, wrong, tooMuch, tooLittle, rough: rough && asFound, bar: bar === 'yes' };
}

/** Whether the method is one for concrete broken up in itself. */
const reachesLoose = ({ method }: Aim): boolean => methodFits[method].removes.fractured !== null;
