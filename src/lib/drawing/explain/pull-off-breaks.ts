import { pullOffBreaks as words } from '$words/explain/tests';

/** Where a core can break, and what that says; the second three only where a repair lies on it. */
export interface Break {
  readonly where: 'slab' | 'skin' | 'glue' | 'joint' | 'repair';
  readonly name: string;
  readonly says: string;
}

/** On bare concrete, before the repair. */
export const bare: readonly Break[] = [
  { where: 'slab', ...words.bare.slab },
  { where: 'skin', ...words.bare.skin },
  { where: 'glue', ...words.bare.glue },
];

/** Through a finished repair. */
export const covered: readonly Break[] = [
  { where: 'slab', ...words.covered.slab },
  { where: 'joint', ...words.covered.joint },
  { where: 'repair', ...words.covered.repair },
];
