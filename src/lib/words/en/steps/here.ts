import type { RuleId } from '$lib/advice/rules';
import type { Step } from '$lib/advice/types';
import type { Say, StepWords } from '$lib/words/types';
import { stepWords } from '$words/steps';
import type { StepId } from '$shared/methods';
import { aroundByCase } from './around';
import { byCase } from './finish';
import { lightLast, saidBySettings } from './methods';
import { anySaw, sawDepthHere } from './saw-depth';

/** A step in a case: the rule that tells the case, what the step is called then, and how it begins. */
interface Case {
  readonly rule: RuleId;
  readonly name?: string;
  readonly lines: readonly string[];
}
interface Cases {
  /** How many lines of the usual text the case takes the place of. */
  readonly instead: number;
  readonly cases: readonly Case[];
}

const chase: Omit<Case, 'rule'> = { lines: [aroundByCase.chase] };
const rout: Omit<Case, 'rule'> = { lines: [aroundByCase.rout] };

const casesOf: Readonly<Partial<Record<StepId, Cases>>> = {
  'make-safe': {
    instead: 1,
    cases: [{ rule: 'nothing-cut', lines: [aroundByCase.nothingCut] }],
  },
  'sound-and-mark': {
    instead: 1,
    cases: [
      { rule: 'sound-whole-slab', lines: [aroundByCase.soundFloor] },
      { rule: 'sound-before-cutting', lines: [aroundByCase.sound] },
    ],
  },
  'pressure-wash': {
    instead: 0,
    cases: [{ rule: 'growth-washed-off', lines: [aroundByCase.growth] }],
  },
  'chase-crack': {
    instead: 1,
    cases: [
      { rule: 'rust-open-to-bar', lines: [aroundByCase.rustyCrack] },
      { rule: 'crumbling-chase', ...chase },
      { rule: 'open-in-frost-chase', ...chase },
    ],
  },
  'route-crack': {
    instead: 1,
    cases: [
      { rule: 'open-rout-or-chase', ...rout },
      { rule: 'hairline-rout-or-bridge', ...rout },
    ],
  },
  'blast-clean': {
    instead: 1,
    cases: [
      { rule: 'skin-by-shotblaster', lines: [byCase.skinByShot] },
      { rule: 'profile-under-coating', lines: [byCase.skinByShot] },
      { rule: 'skin-by-grit-or-water', lines: [byCase.skinByGrit] },
      { rule: 'skin-by-grit', lines: [byCase.skinByGritAlone] },
    ],
  },
  'edge-work': {
    instead: 1,
    cases: [
      { rule: 'border-by-grinder', lines: [byCase.borderByGrinder] },
      { rule: 'border-by-bush-hammer', lines: [byCase.borderRough] },
    ],
  },
  'wet-or-dry': {
    instead: 2,
    cases: [
      { rule: 'damp-not-wet', name: 'Make it damp', lines: [byCase.damp] },
      { rule: 'dry-for-coating', name: 'Let it dry', lines: [byCase.dry] },
    ],
  },
  'last-clean': {
    instead: 2,
    cases: [
      { rule: 'last-vacuum-and-tape', name: 'Last vacuuming', lines: [byCase.lastDry] },
      { rule: 'last-look', name: 'Last look', lines: [byCase.lastDamp] },
      { rule: 'last-look-as-maker-says', name: 'Last look', lines: [byCase.lastOpen] },
    ],
  },
  cure: {
    instead: 1,
    cases: [
      { rule: 'cure-kept-damp', lines: [byCase.cureDamp] },
      { rule: 'cure-as-maker-says', lines: [byCase.cureDry] },
    ],
  },
};

/** What a step is called in this case, where its case has a name of its own. */
export const nameHere = ({ id, why }: Pick<Step, 'id' | 'why'>): string | undefined =>
  casesOf[id]?.cases.find(({ rule }) => why.some((reason) => reason.rule === rule))?.name;

/** A step as it is done in this case, beside its settings: nothing in it is about another case. */
export function stepHere({ id, why }: Step, say: Say): StepWords {
  const usual = stepWords(say)[id];
  const known = casesOf[id];
  const met = known?.cases.filter(({ rule }) => why.some((reason) => reason.rule === rule)) ?? [];
  const light = why.some(({ rule }) => rule === 'light-hammer-here');
  const told = [...saidBySettings(say), ...(light ? [lightLast] : [])];
  const depth = why.find(({ rule }) => rule === 'saw-depth');
  const untold = usual.how
    .filter((line) => !told.includes(line))
    .map((line) =>
      depth ? line.replace(sawDepthHere(anySaw, say), sawDepthHere(depth, say)) : line,
    );
  if (!known || !met.length) return { name: usual.name, how: untold };
  const lines = [...new Set(met.flatMap((each) => each.lines))];
  return {
    name: nameHere({ id, why }) ?? usual.name,
    how: [...lines, ...untold.slice(known.instead)],
  };
}
