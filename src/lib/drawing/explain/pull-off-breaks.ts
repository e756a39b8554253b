/** Where a core can break, and what that says; the second three only where a repair lies on it. */
export interface Break {
  readonly where: 'slab' | 'skin' | 'glue' | 'joint' | 'repair';
  readonly name: string;
  readonly says: string;
}

/** On bare concrete, before the repair. */
export const bare: readonly Break[] = [
  { where: 'slab', name: 'deep', says: 'it is ready' },
  { where: 'skin', name: 'top skin', says: 'take more off' },
  { where: 'glue', name: 'glue', says: 'does not count' },
];

/** Through a finished repair. */
export const covered: readonly Break[] = [
  { where: 'slab', name: 'old slab', says: 'it holds' },
  { where: 'joint', name: 'joint', says: 'it let go' },
  { where: 'repair', name: 'repair', says: 'weak repair' },
];
