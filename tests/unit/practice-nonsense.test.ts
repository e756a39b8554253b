import { describe, expect, it } from 'vitest';
import { nonsense, nonsenseIn } from '$lib/practice/nonsense';

const site = {
  ...{ element: 'slab', setting: 'open', salts: 'none', freezeThaw: 'some' },
  ...{ thickness: 150, warnings: [] },
};
const zone = {
  ...{ depth: 'under-3', looseness: 'powdery', contamination: [], texture: 'sandy' },
  ...{ cracks: 'none', steel: 'none-seen', finish: 'overlay', area: 10 },
};
type Change = Readonly<Record<string, unknown>>;
const sites = Object.keys(site);
/** The names of what does not go together in a plain case with some answers changed. */
const names = (change: Change): string[] => {
  const all = { ...site, ...zone, ...change };
  const [place, patch] = [true, false].map((of) =>
    Object.fromEntries(Object.entries(all).filter(([key]) => sites.includes(key) === of)),
  );
  return nonsenseIn(place as never, patch as never);
};
const each = (key: string, values: readonly string[], more: Change = {}): Change[] =>
  values.map((value) => ({ [key]: value, ...more }));
const painted = { contamination: ['thin-coating'] };
const sign = (warning: string) => ({ warnings: [warning] });

/** Where each is met, and where it is only nearly met. Common practice, no source. */
const table: Readonly<Record<keyof typeof nonsense, readonly [Change[], Change[]]>> = {
  'a skin that is only a film cannot break up in depth': [
    each('looseness', ['fractured', 'hollow', 'rotten'], { depth: 'film' }),
    [
      ...each('looseness', ['tight', 'powdery', 'flaking'], { depth: 'film' }),
      { depth: 'under-3', looseness: 'fractured' },
    ],
  ],
  'dust and flakes are a thing of the top few millimetres': [
    each('looseness', ['powdery', 'flaking'], { depth: '6-to-20' }),
    [{ depth: '3-to-6' }, { depth: '6-to-20', looseness: 'fractured' }],
  ],
  'a hollow layer has some thickness': [
    each('depth', ['film', 'under-3'], { looseness: 'hollow' }),
    [{ depth: '3-to-6', looseness: 'hollow' }, { looseness: 'fractured' }],
  ],
  'rot goes into the depth': [
    each('depth', ['film', '3-to-6'], { looseness: 'rotten' }),
    [
      { depth: '6-to-20', looseness: 'rotten' },
      { depth: '3-to-6', looseness: 'fractured' },
    ],
  ],
  'what is damaged through is not tight': [
    [{ depth: 'through', looseness: 'tight' }],
    [
      { depth: 'through', looseness: 'hollow' },
      { depth: 'over-50', looseness: 'tight' },
    ],
  ],
  'the bottom of a hole is not smooth': [
    each('depth', ['3-to-6', 'over-50'], { texture: 'smooth', looseness: 'fractured' }),
    [
      { depth: '3-to-6', texture: 'smooth', looseness: 'hollow' },
      { texture: 'smooth' },
      { depth: '3-to-6' },
    ],
  ],
  'a firm hole is a pit': [
    each('texture', ['smooth', 'sandy'], { depth: '3-to-6', looseness: 'tight' }),
    [
      { depth: '3-to-6', looseness: 'tight', texture: 'pitted' },
      { looseness: 'tight' },
      { depth: '3-to-6' },
    ],
  ],
  'a firm face without a hole has no depth': [
    [{ looseness: 'tight' }],
    [{ looseness: 'tight', depth: 'film' }, { looseness: 'tight', depth: '3-to-6' }, {}],
  ],
  'rot leaves no even face': [
    each('texture', ['smooth', 'sandy'], { looseness: 'rotten' }),
    [{ looseness: 'rotten', texture: 'pitted' }, {}],
  ],
  'the damage is no deeper than the concrete is thick': [
    [{ depthMm: 150 }, { depthMm: 200 }],
    [{ depthMm: 149 }, { depthMm: 200, thickness: 'unknown' }, {}],
  ],
  'a bar lies deep enough to need a hole to be seen': [
    [
      ...each('steel', ['exposed', 'corroded'], { depth: '6-to-20', looseness: 'fractured' }),
      { steel: 'exposed', depth: '20-to-50' },
    ],
    [
      { steel: 'exposed', depth: '20-to-50', looseness: 'fractured' },
      ...each('steel', ['none-seen', 'rust-stain']),
    ],
  ],
  'a bar that shows lies in a hole': [
    each('steel', ['exposed', 'corroded'], { texture: 'smooth' }),
    [{ steel: 'exposed' }, ...each('steel', ['none-seen', 'rust-stain'], { texture: 'smooth' })],
  ],
  'a dry room without salt does not eat bars': [
    [{ steel: 'corroded', setting: 'indoors' }],
    [
      { steel: 'corroded', setting: 'indoors', salts: 'sea-or-pool' },
      { steel: 'corroded', setting: 'sheltered' },
      { steel: 'exposed', setting: 'indoors' },
    ],
  ],
  'rust taken from a bar is measured on a rusted bar': [
    each('steel', ['none-seen', 'exposed'], { barLoss: 'one-bar' }),
    [{ steel: 'corroded', barLoss: 'one-bar' }, { steel: 'exposed' }],
  ],
  'one coating at a time': [
    [{ contamination: ['thin-coating', 'rubbery-coating'] }],
    [painted, { contamination: ['thin-coating', 'oil'] }, {}],
  ],
  'a coating lies on a face that is still there': [
    [
      { ...painted, depth: '3-to-6' },
      { contamination: ['thick-coating', 'growth'], depth: 'film' },
    ],
    [painted, { contamination: ['growth'] }, { contamination: ['oil'], depth: '3-to-6' }],
  ],
  'oil lies where something drips': [
    each('element', ['wall', 'steps', 'soffit'], { contamination: ['oil'] }),
    [
      ...each('element', ['slab', 'suspended-slab'], { contamination: ['oil'] }),
      { element: 'wall', contamination: ['growth'] },
    ],
  ],
  'moss does not grow indoors': [
    [{ contamination: ['growth'], setting: 'indoors' }],
    [
      { contamination: ['growth'], setting: 'sheltered' },
      { contamination: ['oil'], setting: 'indoors' },
    ],
  ],
  'hardly any frost indoors': [
    [{ setting: 'indoors', freezeThaw: 'often' }],
    [{ setting: 'indoors' }, { setting: 'sheltered', freezeThaw: 'often' }],
  ],
  'a soffit has something above it': [
    [{ element: 'soffit', salts: 'de-icing' }],
    [
      { element: 'soffit', salts: 'de-icing', setting: 'sheltered' },
      { element: 'soffit', salts: 'sea-or-pool' },
      { element: 'wall', salts: 'de-icing' },
    ],
  ],
  'what finds its own level lies flat': [
    [
      { finish: 'self-levelling' },
      ...each('element', ['steps', 'wall'], { finish: 'self-levelling', setting: 'indoors' }),
    ],
    [
      { finish: 'self-levelling', setting: 'indoors' },
      { element: 'wall', setting: 'indoors' },
    ],
  ],
  'a trowelled layer to walk on lies on a floor or a step': [
    each('element', ['wall', 'soffit'], { finish: 'thin-overlay' }),
    [
      ...each('element', ['slab', 'steps'], { finish: 'thin-overlay' }),
      ...each('element', ['wall', 'soffit']),
    ],
  ],
  'a hole is filled with something that fills it': [
    each('finish', ['sealer', 'thin-film', 'self-levelling', 'thin-overlay'], { depth: '6-to-20' }),
    [
      ...each('finish', ['build-coat', 'overlay', 'rebuild'], { depth: '6-to-20' }),
      { finish: 'sealer', depth: '3-to-6' },
    ],
  ],
  'nor is a deep one coated over': [
    [{ finish: 'build-coat', depth: '20-to-50' }],
    [{ finish: 'build-coat', depth: '6-to-20' }, { depth: '20-to-50' }],
  ],
  'nobody forms and pours a skin': [
    each('depth', ['film', '6-to-20'], { finish: 'rebuild' }),
    [{ finish: 'rebuild', depth: '20-to-50' }, { depth: '6-to-20' }],
  ],
  'what stands on the ground sinks': [
    each('element', ['wall', 'suspended-slab', 'soffit'], sign('settled-or-rocking')),
    [...each('element', ['slab', 'steps'], sign('settled-or-rocking')), { element: 'wall' }],
  ],
  'tendons are in floors': [
    each('element', ['wall', 'steps'], sign('tendons-possible')),
    [...each('element', ['slab', 'suspended-slab'], sign('tendons-possible')), { element: 'wall' }],
  ],
  'a soffit hangs, and nothing stands on it': [
    [{ element: 'soffit', ...sign('holds-something-up') }],
    [...each('element', ['slab', 'steps'], sign('holds-something-up')), { element: 'soffit' }],
  ],
  'an old coating has to be there to be feared': [
    [
      sign('old-coating-or-adhesive'),
      { ...sign('old-coating-or-adhesive'), contamination: ['oil'] },
    ],
    [{ ...sign('old-coating-or-adhesive'), ...painted }, {}],
  ],
  'cracks like a map are cracks': [
    [sign('map-cracking')],
    [{ ...sign('map-cracking'), cracks: 'hairline' }, {}],
  ],
};

describe('what does not go together', () => {
  it.each(Object.entries(table))('%s', (name, [met, near]) => {
    for (const change of met) expect(names(change), JSON.stringify(change)).toContain(name);
    for (const change of near) expect(names(change), JSON.stringify(change)).not.toContain(name);
  });
  it('is nothing in a plain case', () => {
    expect(names({})).toEqual([]);
  });
});
