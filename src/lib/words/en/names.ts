import type {
  Contaminant,
  DepthBand,
  Element,
  Finish,
  Looseness,
  Salts,
} from '$lib/answers/questions';
import type { MethodId } from '$shared/methods';
import type { Say } from '$lib/words/types';

/** Names as they stand in the middle of a sentence, with the article where the language has one there. */

export const methodNames: Readonly<Record<MethodId, string>> = {
  'pressure-wash': 'pressure washing',
  grind: 'grinding',
  'abrasive-blast': 'abrasive blasting',
  scarify: 'scarifying',
  shotblast: 'shotblasting',
  'needle-scale': 'needle scaling',
  'break-out': 'breaking out',
  'water-jet': 'water jetting',
};

export const looseNames: Readonly<Record<Looseness, string>> = {
  tight: 'sound concrete',
  powdery: 'powdery concrete',
  flaking: 'flaking concrete',
  fractured: 'loose chips and stones',
  hollow: 'the hollow layer',
  rotten: 'rotten concrete',
};

export const contaminantNames: Readonly<Record<Contaminant, string>> = {
  oil: 'oil',
  'thin-coating': 'the thin coating',
  'thick-coating': 'the thick coating',
  'rubbery-coating': 'the rubbery coating',
  'salt-bloom': 'the salt bloom',
  growth: 'the growth',
};

export const elementNames: Readonly<Record<Element, string>> = {
  slab: 'this slab',
  steps: 'these steps',
  'suspended-steps': 'these steps with air below',
  'suspended-slab': 'this suspended slab',
  wall: 'this wall',
  soffit: 'this soffit',
};

export const saltNames: Readonly<Record<Salts, string>> = {
  none: 'no salt',
  'de-icing': 'de-icing salt',
  'sea-or-pool': 'salt from the sea or a pool',
};

export const finishNames: Readonly<Record<Finish, string>> = {
  sealer: 'a sealer',
  'thin-film': 'a thin paint film',
  'build-coat': 'a build coat',
  'self-levelling': 'a self-levelling layer',
  'thin-overlay': 'a thin overlay',
  overlay: 'an overlay',
  rebuild: 'formed and poured concrete',
  undecided: 'a finish not chosen yet',
};

/** How deep the damage goes: "3 to 6 mm deep". */
export const depthNames = (say: Say): Readonly<Record<DepthBand, string>> => ({
  film: `less than ${say.figure('depth.film')} deep`,
  'under-3': `${say.span('depth.film', 'depth.thin')} deep`,
  '3-to-6': `${say.span('depth.thin', 'depth.shallow')} deep`,
  '6-to-20': `${say.span('depth.shallow', 'depth.spall-small')} deep`,
  '20-to-50': `${say.span('depth.spall-small', 'depth.deep')} deep`,
  'over-50': `more than ${say.figure('depth.deep')} deep`,
  through: 'right through',
});

/** How deep a method reaches, by the deepest band it clears: "to 6 mm". */
export const reachNames = (say: Say): Readonly<Record<DepthBand, string>> => ({
  film: say.figure('depth.film'),
  'under-3': say.figure('depth.thin'),
  '3-to-6': say.figure('depth.shallow'),
  '6-to-20': say.figure('depth.spall-small'),
  '20-to-50': say.figure('depth.deep'),
  'over-50': 'any depth',
  through: 'any depth',
});
