import type { Doer, MayId } from '$lib/advice/owner-may';
import { keepWords } from './keep-away';

/** The first screen of advice: what is to be known before anything else. */
export const glanceWords = {
  tool: 'Tool',
  deep: 'How deep',
  who: 'Who',
  call: 'Call',
  first: 'First',
  aim: 'Aim',
  doer: {
    owner: 'A crew, or an owner with care',
    'owner-with-hood': 'A crew, or an owner with hood, vacuum and mask',
    crew: 'A trained crew. Not for owners',
    specialist: 'A specialist crew only',
  } satisfies Record<Doer, string>,
  nobody: 'No specialist for this zone',
  contractor: 'a contractor',
  downTo: (depth: string) => `Down to ${depth}`,
  hole: (depths: string) => `Hole ${depths}`,
  nothingOff: 'Nothing loose to take off',
  coatingOff: 'Only the coating comes off',
  limit: (depth: string, ending: string) => `Damage past ${depth}: ${ending}`,
  noLimit: 'No greater depth changes it',
  asFound: 'texture as it is',
  damp: 'damp',
  dry: 'dry',
  within: (time: string) => `covered within ${time}`,
  /** Where the order of work has nothing but making safe before the method. */
  makeSafe: 'make safe, then this',
  thenThis: (steps: string) => `${steps}, then this`,
} as const;

/** What an owner may do themselves. */
export const mayWords: Readonly<Record<MayId, string>> = {
  ...keepWords,
  measure: 'Measure it and take photos, with a rule beside it.',
  tap: 'Tap it with a small hammer, goggles on, and mark what sounds dull.',
  clear: 'Carry away what stands on it, and show where cables run.',
  growth: 'Scrape thick moss off while it is damp. It comes back where it stays damp and shady.',
  degrease: 'Scrub the oil with detergent, and catch the rinse.',
  wash: 'Wash it with a small machine and a fan nozzle, its engine in the open.',
  'grind-spot': 'Grind a spot, with hood, vacuum, goggles under a face shield, and a fitted mask.',
  'lead-water-away': 'Mend gutters and lead water away from it.',
  'keep-damp': 'Keep the fresh repair damp for the crew.',
  seal: 'Seal it once it is clean and dry. Sealed, it may be slippery when wet.',
};

/** Where nothing is an owner's to do. */
export const nothingUntil = (who: string): string => `Nothing here until ${who} has looked.`;

/** The advised method, among what an owner leaves to others. */
export const methodLeft = (name: string): string => `${name}: it takes a trained crew.`;
