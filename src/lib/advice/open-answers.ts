import type { SiteAnswers } from '$lib/answers/answers';
import { bandOf } from '$lib/answers/depth';
import type { Contaminant, Warning } from '$lib/answers/questions';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { fixedOf, openMany, possible, possibleDepths, subsets } from './completions';
import { showsBar } from './demands';
import type { SettledSite, SettledZone } from './types';

/** One thing that is still open, and how it comes out in the possibility looked at. */
export interface Look {
  readonly name: string;
  place: number;
  value: unknown;
  readonly among: readonly unknown[];
}

/**
 * Answers of which some are open, as one site and one zone that rules can look at. Which of the
 * possibilities they see is decided when they look: an answer that no rule looks at is never gone
 * through, and all that one looks at are. So what is found of all possibilities is found by the
 * rules themselves, and none is left out.
 */
export class OpenAnswers {
  readonly site: SettledSite;
  readonly zone: SettledZone;
  readonly #looks: Look[] = [];
  readonly #known = new Map<string, Look>();

  constructor(site: SiteAnswers, zone: TriedAnswers) {
    this.site = this.#siteOf(site);
    this.zone = this.#zoneOf(zone, site.thickness ?? 'unknown');
  }

  /** Whether something holds in any possibility. */
  some(holds: () => boolean): boolean {
    this.#looks.length = 0;
    this.#known.clear();
    do if (holds()) return true;
    while (this.#goOn());
    return false;
  }

  /** The one of several that is the case in the possibility looked at. */
  look<T>(name: string, among: readonly T[]): T {
    if (among.length === 1) return among[0] as T;
    let look = this.#known.get(name);
    if (!look) {
      look = { name, place: 0, value: among[0], among };
      this.#known.set(name, look);
      this.#looks.push(look);
    }
    return look.value as T;
  }

  /** What has been looked at. */
  get looks(): readonly Look[] {
    return this.#looks;
  }

  /** Whether it has been looked at in this possibility. */
  isSeen = (name: string): boolean => this.#known.has(name);

  /** Turns to the next possibility that differs in something looked at. */
  #goOn(): boolean {
    for (let look = this.#looks.at(-1); look; look = this.#looks.at(-1)) {
      if (look.place < look.among.length - 1) {
        look.place += 1;
        look.value = look.among[look.place];
        return true;
      }
      this.#looks.pop();
      this.#known.delete(look.name);
    }
    return false;
  }

  #siteOf(answers: SiteAnswers): SettledSite {
    const one = (name: 'element' | 'setting' | 'salts' | 'freezeThaw') => {
      const among = possible(name, answers[name]);
      return { enumerable: true, get: () => this.look(name, among as readonly string[]) };
    };
    // The fewest come first.
    const warnings: readonly (readonly Warning[])[] = subsets(
      openMany('warnings', answers.warnings),
    );
    return Object.defineProperties({ thickness: answers.thickness ?? 'unknown' } as SettledSite, {
      element: one('element'),
      setting: one('setting'),
      salts: one('salts'),
      freezeThaw: one('freezeThaw'),
      warnings: { enumerable: true, get: () => this.look('warnings', warnings) },
    });
  }

  #zoneOf(answers: TriedAnswers, thickness: SettledSite['thickness']): SettledZone {
    const one = (name: 'looseness' | 'texture' | 'cracks' | 'steel' | 'finish') => {
      const among = possible(name, answers[name]);
      return { enumerable: true, get: () => this.look(name, among as readonly string[]) };
    };
    // A depth is measured, or one of several bands.
    const measured = typeof answers.depth === 'number' ? answers.depth : undefined;
    const bands = possibleDepths(answers).map((depth) =>
      typeof depth === 'number' ? bandOf(depth, thickness) : depth,
    );
    const { barLoss } = answers;
    const dirt = new OpenDirt(this, openMany('contamination', answers.contamination));
    const zone = { ...fixedOf(answers), contamination: dirt } as unknown as SettledZone;
    return Object.defineProperties(zone, {
      looseness: one('looseness'),
      texture: one('texture'),
      cracks: one('cracks'),
      steel: one('steel'),
      finish: one('finish'),
      depth: { get: () => this.look('depth', bands) },
      depthMm: { value: measured },
      barLoss: {
        get: () => (barLoss && showsBar(zone) ? this.look('barLoss', barLoss) : undefined),
      },
    });
  }
}

/** What is on the surface, each looked at by itself: what rules ask of a list, and no more. */
class OpenDirt {
  readonly #answers: OpenAnswers;
  readonly #yes: readonly Contaminant[];
  readonly #maybe: readonly Contaminant[];

  constructor(
    answers: OpenAnswers,
    {
      yes,
      maybe,
    }: { readonly yes: readonly Contaminant[]; readonly maybe: readonly Contaminant[] },
  ) {
    this.#answers = answers;
    this.#yes = yes;
    this.#maybe = maybe.filter((each) => !yes.includes(each));
  }

  #isThere = (each: Contaminant): boolean => this.#answers.look(each, [false, true]);

  includes = (each: Contaminant): boolean =>
    this.#yes.includes(each) || (this.#maybe.includes(each) && this.#isThere(each));

  some = (counts: (each: Contaminant) => boolean): boolean =>
    this.#yes.some(counts) || this.#maybe.some((each) => counts(each) && this.#isThere(each));

  filter = (counts: (each: Contaminant) => boolean): OpenDirt =>
    new OpenDirt(this.#answers, {
      yes: this.#yes.filter(counts),
      maybe: this.#maybe.filter(counts),
    });

  toJSON = (): readonly Contaminant[] => [
    ...this.#yes,
    ...this.#maybe.filter((each) => this.#isThere(each)),
  ];

  get length(): number {
    return this.toJSON().length;
  }
}
