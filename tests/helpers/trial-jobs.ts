/** A job for every method with settings to try; everything in them is invented. */
const plain = {
  id: 'a',
  name: 'By the gate',
  depth: 'film',
  looseness: 'tight',
  contamination: [],
  texture: 'sandy',
  cracks: 'none',
  steel: 'none-seen',
  finish: 'overlay',
  makerProfile: 'no-sheet',
  makerMoisture: 'no-sheet',
  area: 20,
  borderLength: 0,
};
const overlay = { depth: '3-to-6', looseness: 'flaking', finish: 'thin-overlay' };
const cases = {
  'Pressure washing': { looseness: 'powdery', finish: 'sealer' },
  Grinding: { depth: 'under-3', looseness: 'flaking', finish: 'sealer', texture: 'smooth' },
  'Abrasive blasting': { ...overlay, area: 5, element: 'wall' },
  Scarifying: { ...overlay, looseness: 'fractured' },
  Shotblasting: { ...overlay, looseness: 'fractured', texture: 'pitted' },
  'Needle scaling': { ...overlay, finish: 'sealer', area: 0.5, element: 'wall' },
  'Breaking out': { depth: 30, looseness: 'hollow', finish: 'rebuild', area: 6 },
} as const;

export const triedMethods = Object.keys(cases) as readonly (keyof typeof cases)[];

/** The job file of one zone that a method is advised for. */
export function trialFile(method: keyof typeof cases): object {
  const { element = 'slab', ...zone } = cases[method] as Record<string, unknown>;
  return {
    format: 'down-to-sound.job',
    version: 2,
    site: {
      name: 'Slab at 9 Larch Row (invented)',
      element,
      setting: 'open',
      salts: 'none',
      freezeThaw: 'some',
      thickness: 150,
      warnings: [],
    },
    zones: [{ ...plain, ...zone }],
  };
}
