import { choicesOf } from '$lib/answers/questions';
import type { Methods } from './choice';
import type { Possibilities } from './completions';
import type { Group } from './groups';
import type { Look } from './open-answers';

type Seen = Readonly<Record<keyof Possibilities, number>>;
/** The possibilities of one question, as bits, in which an answer comes out in one way. */
interface Mask {
  readonly question: keyof Possibilities;
  readonly bits: number;
}

/** What has to be so of a possibility: anything, a surface method stands, or the work goes on. */
export type Need = 'any' | 'surface' | 'goesOn';

const maskOf = <T>(
  question: keyof Possibilities,
  possibilities: readonly { readonly members: readonly T[] }[],
  fits: (member: T) => boolean,
): Mask => ({
  question,
  bits: possibilities.reduce(
    (bits, { members }, at) => (members.some(fits) ? bits | (1 << at) : bits),
    0,
  ),
});

/**
 * Where the survey has been, question by question, so that a search need not go where it cannot have
 * found anything. It may say yes where there is nothing after all, never no where there is something.
 */
export class Reached {
  readonly #groups: readonly Group[];
  readonly #possibilities: Possibilities;
  readonly #masks = new Map<string, Mask | null>();

  constructor(groups: readonly Group[], possibilities: Possibilities) {
    this.#groups = groups;
    this.#possibilities = possibilities;
  }

  /** Whether answers that come out so, worked with these tools, may be among the possibilities. */
  mayBe(looks: readonly Look[], tools: Methods | null, need: Need): boolean {
    const masks = looks.flatMap((look) => this.#maskOf(look) ?? []);
    return this.#groups.some((group) => {
      const { method, rest, spent } = group;
      if (tools && (tools.method !== method || tools.rest !== rest || tools.spent !== spent))
        return false;
      const after = need === 'any' ? null : need === 'surface' ? group.surface : group.going;
      const seen: Partial<Seen> = group.seen;
      if (after && !after.cracks) return false;
      return masks.every(({ question, bits }) => {
        const here = seen[question] ?? (after as Partial<Seen> | null)?.[question];
        return here === undefined || (here & bits) !== 0;
      });
    });
  }

  #maskOf({ name, value }: Look): Mask | null {
    const key = `${name} ${String(value)}`;
    let mask = this.#masks.get(key);
    if (mask === undefined) this.#masks.set(key, (mask = this.#findMask(name, value)));
    return mask;
  }

  #findMask(name: string, value: unknown): Mask | null {
    const possibilities = this.#possibilities;
    switch (name) {
      case 'element':
      case 'texture':
      case 'cracks':
      case 'finish':
      case 'freezeThaw':
      case 'salts':
        return maskOf<unknown>(name, possibilities[name], (member) => member === value);
      case 'depth':
      case 'looseness':
        return maskOf(
          'depthAndLooseness',
          possibilities.depthAndLooseness,
          (one) => one[name] === value,
        );
      case 'steel':
      case 'barLoss':
        return maskOf('steel', possibilities.steel, (one) => one[name] === value);
      default: {
        const dirt = choicesOf('contamination').find((each) => each === name);
        return dirt
          ? maskOf(
              'contamination',
              possibilities.contamination,
              (set) => set.includes(dirt) === value,
            )
          : null;
      }
    }
  }
}
