import { rangeOfBand } from '$lib/answers/depth';
import type { ZoneAnswers } from '$lib/answers/answers';
import { choicesOf, type Cracks, type Looseness } from '$lib/answers/questions';
import type { BarMark, CrackKind, CrackMark, Place, SpotMark } from '$lib/answers/survey';
import { tidy } from './geometry';
import { lengthByZone, zoneAt, zoneOf, type ZoneGround } from './zones';

/** What a drawing shows of the damage in one zone. */
export interface DrawnDamage {
  /** The deepest spot whose depth is known, mm. */
  readonly deepest?: number;
  /** Which mark that is. */
  readonly deepestMark?: number;
  /** A spot whose depth nobody has given. */
  readonly unmeasured: boolean;
  readonly cracks: readonly (CrackKind | 'not-sure')[];
  /** A bar shows. */
  readonly bar: boolean;
}

/** What a drawing shows of the damage, by zone; a mark that says its zone belongs there. */
export function damageByZone(
  {
    spots,
    cracks,
    bars,
    dull,
  }: Readonly<{
    spots: readonly (SpotMark & { readonly index: number })[];
    cracks: readonly CrackMark[];
    bars: readonly BarMark[];
    /** Taps that sound dull and are in no spot yet, and are no mishearing. */
    dull: readonly Place[];
  }>,
  zones: readonly ZoneGround[],
): Readonly<Record<string, DrawnDamage>> {
  const found: Record<string, DrawnDamage> = {};
  const note = (id: string | undefined, more: (before: DrawnDamage) => DrawnDamage) => {
    if (id !== undefined)
      found[id] = more(found[id] ?? { unmeasured: false, cracks: [], bar: false });
  };
  const crossed = ({ zone, line }: { zone?: string; line: readonly Place[] }) =>
    zone === undefined ? [...lengthByZone(line, zones).keys()] : [zone];
  for (const { zone, corners, depth, index } of spots)
    note(zone ?? zoneOf(tidy(corners), zones), (before) =>
      depth === undefined
        ? { ...before, unmeasured: true }
        : {
            ...before,
            ...(depth > (before.deepest ?? -1) && { deepest: depth, deepestMark: index }),
          },
    );
  // Nobody has outlined it yet: a spot of which only the place is known.
  for (const at of dull) note(zoneAt(at, zones), (before) => ({ ...before, unmeasured: true }));
  for (const mark of cracks)
    for (const id of crossed(mark))
      note(id, (before) => ({
        ...before,
        cracks: [...new Set<CrackKind | 'not-sure'>([...before.cracks, mark.crack ?? 'not-sure'])],
      }));
  for (const mark of bars)
    for (const id of crossed(mark)) note(id, (before) => ({ ...before, bar: true }));
  return found;
}

/** The worse of two, by the order of the choices. */
const worse = (one: Cracks, other: Cracks): Cracks => {
  const all = choicesOf('cracks');
  return all.indexOf(one) >= all.indexOf(other) ? one : other;
};

/** What cracks may be there: the worst answered or drawn; all that a crack of unknown kind may be. */
function cracksWith(
  answered: readonly Cracks[],
  drawn: DrawnDamage['cracks'],
): readonly Cracks[] | undefined {
  const known = drawn.filter((each) => each !== 'not-sure');
  const unknown = drawn.includes('not-sure') ? choicesOf('cracks').slice(1) : [];
  const least = answered.map((each) => known.reduce<Cracks>(worse, each));
  const all = unknown.length
    ? least.flatMap((each) => unknown.map((kind) => worse(each, kind)))
    : least;
  return choicesOf('cracks').filter((each) => all.includes(each));
}

/**
 * How deep it is: the deepest spot where it is deeper than what was answered, or where nobody could
 * say and every spot was measured. Of depths that were left open, those that the deepest still leaves.
 */
function depthWith(
  answered: ZoneAnswers['depth'],
  { deepest, unmeasured }: DrawnDamage,
  thickness: number | 'unknown',
): ZoneAnswers['depth'] {
  if (deepest === undefined) return answered;
  if (typeof answered === 'number') return Math.max(answered, deepest);
  const open = answered ?? choicesOf('depth');
  const [first, ...others] = open.filter((band) => rangeOfBand(band, thickness)[1] >= deepest);
  const nobodyCouldSay = open.length === choicesOf('depth').length;
  if (first === undefined || (nobodyCouldSay && !unmeasured)) return deepest;
  return others.length + 1 === answered?.length ? answered : [first, ...others];
}

/**
 * The answers about a zone with the damage that is drawn there, where it is worse: whoever drew it
 * has seen it. What else was not answered stays so.
 */
export function withDamage<A extends ZoneAnswers>(
  answers: A,
  damage: DrawnDamage | undefined,
  thickness: number | 'unknown',
): A {
  if (!damage) return answers;
  const { cracks, steel } = answers;
  const depth = depthWith(answers.depth, damage, thickness);
  const hidden = damage.bar && steel?.some((each) => each === 'none-seen' || each === 'rust-stain');
  return {
    ...answers,
    ...(depth !== undefined && { depth }),
    ...(cracks && damage.cracks.length && { cracks: cracksWith(cracks, damage.cracks) }),
    ...(hidden && { steel: ['exposed', 'corroded'] as const }),
  };
}

/** What says already that something has let go in depth. */
const letGo: readonly Looseness[] = ['fractured', 'hollow', 'rotten'];

/**
 * The answers about a zone of concrete that carries, in which spots are drawn: what sounds dull is
 * drawn so, too, and may be hollow whatever the zone was answered; how deep, nobody knows of a spot
 * that was not measured. Source: common practice, no published source.
 */
export function withDullSpots<A extends ZoneAnswers>(
  answers: A,
  { deepest, unmeasured }: DrawnDamage,
): A {
  const { looseness, depth, ...rest } = answers;
  if (!looseness || (deepest === undefined && !unmeasured)) return answers;
  const hollow = looseness.some((each) => letGo.includes(each));
  return {
    ...rest,
    looseness: hollow ? looseness : [...looseness, 'hollow'],
    ...(depth !== undefined && !(unmeasured && typeof depth === 'number') && { depth }),
  } as unknown as A;
}
