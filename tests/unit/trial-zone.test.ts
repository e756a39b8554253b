import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { PatchTried } from '$lib/answers/trial-record';
import { adviseTried } from '$lib/trial/chain';
import { followFrom } from '$lib/trial/follow';
import { trialOf } from '$lib/trial/zone-trial';
import type { MethodId } from '$shared/methods';

/**
 * What a foreman with the patch before him would say, written down before the code was asked.
 * Common practice, no published source, except where a case names one.
 */
const site: SiteAnswers = {
  element: ['slab'],
  setting: ['open'],
  salts: ['none'],
  freezeThaw: ['some'],
  thickness: 120,
  warnings: { yes: [], maybe: [] },
};
const floor: ZoneAnswers = {
  depth: 4,
  looseness: ['fractured'],
  contamination: { yes: [], maybe: [] },
  texture: ['pitted'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['thin-overlay'],
  makerProfile: ['no-sheet'],
  makerMoisture: ['no-sheet'],
  area: 40,
  borderLength: 0,
};
/** A patio with growth on it, to be sealed. */
const mossy: Partial<ZoneAnswers> = {
  depth: ['film'],
  looseness: ['tight'],
  contamination: { yes: ['growth'], maybe: [] },
  texture: ['sandy'],
  finish: ['sealer'],
};
const good = {
  notch: 1,
  passes: 1,
  minutes: 5,
  depths: [3.5, 4, 4, 4.5, 4],
  profile: 6,
  stones: 'cut',
  left: 'nothing',
  bar: 'no',
  sound: 'clear',
} as const;

interface Case {
  readonly says: string;
  readonly answers: Partial<ZoneAnswers>;
  readonly site?: Partial<SiteAnswers>;
  readonly method: MethodId;
  readonly patches: readonly Partial<PatchTried>[];
  readonly kind: string;
  readonly why?: string;
  /** What the advice comes to, where the trial ended with another method or a stop. */
  readonly then?: { readonly method: MethodId | null; readonly changes: readonly string[] };
}

const cases: Case[] = [
  {
    says: 'the middle shot leaves it clean, rough and sound: go on',
    answers: {},
    method: 'shotblast',
    patches: [{}],
    kind: 'go-on',
  },
  {
    says: 'CSP 4 where the thin overlay wants 5: one size or a slower pass, nothing else',
    answers: {},
    method: 'shotblast',
    patches: [{ profile: 4 }],
    kind: 'harsher',
    why: 'too-smooth',
  },
  {
    says: 'loose stone is left after the first pass: go over it again before changing the shot',
    answers: {},
    method: 'shotblast',
    patches: [{ left: 'more', depths: [2, 2, 3, 2, 2] }],
    kind: 'another-pass',
    why: 'still-loose',
  },
  {
    says: 'stones come out whole at the depth it was said to be: no sound base there, measure how deep it goes',
    answers: {},
    method: 'shotblast',
    patches: [{ stones: 'pulled-out', depths: [5, 5, 4, 5, 5] }],
    kind: 'stop',
    why: 'no-sound-base',
    then: { method: null, changes: ['depth', 'looseness'] },
  },
  {
    says: 'it sounds dull below: stop and sound it, how deep the layer lies decides',
    answers: {},
    method: 'shotblast',
    patches: [{ sound: 'dull' }],
    kind: 'stop',
    why: 'hollow-below',
    then: { method: null, changes: ['depth', 'looseness'] },
  },
  {
    says: 'a bar in a floor that showed none: stop, whatever else is well',
    answers: {},
    method: 'shotblast',
    patches: [{ bar: 'yes' }],
    kind: 'stop',
    why: 'bar-unexpected',
    then: { method: 'break-out', changes: ['steel'] },
  },
  {
    says: 'cutters tear the stones: shallower first',
    answers: { texture: ['sandy'] },
    method: 'scarify',
    patches: [{ stones: 'torn' }],
    kind: 'finer',
    why: 'bruised',
  },
  {
    says: 'even star cutters tear them: shot does not, and seals on a floor; no answer was wrong',
    answers: { texture: ['sandy'] },
    method: 'scarify',
    patches: [{ stones: 'torn' }, { stones: 'torn', notch: 0 }],
    kind: 'other-method',
    why: 'bruised',
    then: { method: 'shotblast', changes: [] },
  },
  {
    says: 'a washed broom finish still dusts at the top pressure: it is weak, so grind or blast it',
    answers: {
      depth: ['film'],
      looseness: ['powdery'],
      texture: ['sandy'],
      finish: ['sealer'],
    },
    method: 'pressure-wash',
    patches: [{ left: 'dust', depths: [0, 0, 0, 0, 0], profile: 3, notch: 2, passes: 2 }],
    kind: 'other-method',
    why: 'still-dusts',
    then: { method: 'grind', changes: ['depth', 'looseness'] },
  },
  {
    says: 'washing gouges at the middle pressure: less pressure, nothing else',
    answers: { depth: ['film'], looseness: ['powdery'], texture: ['sandy'], finish: ['sealer'] },
    method: 'pressure-wash',
    patches: [{ depths: [0, 0, 2, 0, 0], profile: 3 }],
    kind: 'finer',
    why: 'too-deep',
  },
  {
    says: 'a patio to be sealed, rougher than the sealer takes at the middle pressure: try it gentler',
    answers: mossy,
    method: 'pressure-wash',
    patches: [{ depths: [0, 0, 0, 0, 0], profile: 5 }],
    kind: 'finer',
    why: 'too-rough',
  },
  {
    says: 'as rough at the gentlest pressure: the texture was there before, and the sealer follows it',
    answers: mossy,
    method: 'pressure-wash',
    patches: [{ depths: [0, 0, 0, 0, 0], profile: 3, notch: 0 }],
    kind: 'go-on',
    why: 'rough-as-found',
  },
  {
    says: 'growth left at the gentlest, clean but rough one notch up: gentler cannot help, the sealer follows',
    answers: mossy,
    method: 'pressure-wash',
    patches: [
      { depths: [0, 0, 0, 0, 0], profile: 5, notch: 0, left: 'more' },
      { depths: [0, 0, 0, 0, 0], profile: 5, notch: 1 },
    ],
    kind: 'go-on',
    why: 'rough-as-found',
  },
  {
    says: 'growth left at the gentlest: more pressure, since a second pass of the same does little',
    answers: mossy,
    method: 'pressure-wash',
    patches: [{ depths: [0, 0, 0, 0, 0], notch: 0, left: 'more' }],
    kind: 'harsher',
    why: 'still-loose',
  },
  {
    says: 'the hammer comes to a clear ring where it was to: go on',
    answers: { depth: 30, area: 6, texture: ['pitted'], finish: ['rebuild'] },
    method: 'break-out',
    patches: [{ depths: [30, 35, 32, 40, 36], profile: 9 }],
    kind: 'go-on',
  },
  {
    says: 'still dull at 20 of 30 mm: go deeper',
    answers: { depth: 30, area: 6, finish: ['rebuild'] },
    method: 'break-out',
    patches: [{ depths: [20, 20, 20, 20, 20], sound: 'dull', left: 'more', profile: 9 }],
    kind: 'another-pass',
    why: 'still-loose',
  },
  {
    says: 'deeper than a third of the slab: stop (FHWA checklist 9)',
    answers: { depth: 25, area: 6, finish: ['rebuild'] },
    method: 'break-out',
    patches: [{ depths: [30, 30, 55, 30, 30], profile: 9 }],
    kind: 'stop',
    why: 'past-partial-depth',
  },
];

const run = ({ answers, method, patches, site: place }: Case) => {
  const here = { ...site, ...place };
  const zone = {
    id: 'a',
    name: '',
    answers: { ...floor, ...answers },
    trial: patches.map((patch): PatchTried => ({ ...good, method, ...patch })),
  };
  const advice = adviseZone(here, zone.answers, { margins: false });
  expect([advice.verdict, advice.method]).toEqual(['prepare', method]);
  const [only] = advice.outcomes;
  const trial = only && trialOf(here, zone, only.example);
  return { here, zone, advice, trial };
};

describe('a square metre read as a foreman reads it', () => {
  it.each(cases.map((each) => [each.says, each] as const))('%s', (_, each) => {
    const { here, zone, advice, trial } = run(each);
    const last = trial?.last;
    expect(last?.outcome.kind).toBe(each.kind);
    expect(trial?.next).toEqual(last?.outcome.next ?? null);
    if (each.why) expect(last?.outcome.why).toContain(each.why);
    if (each.then && last) {
      const follows = followFrom(last.outcome, last.found, here, zone.answers, advice);
      expect(Object.keys(follows?.disproved ?? {}).sort()).toEqual(each.then.changes);
      const { advice: after } = adviseTried(here, zone);
      expect((follows ?? after).method).toBe(each.then.method);
    }
  });
});
