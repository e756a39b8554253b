/** The parts of a job that are printed each on its own. */
export const sheets = ['plan', 'zones', 'quantities', 'cautions'] as const;
export type Sheet = (typeof sheets)[number];
