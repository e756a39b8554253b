/** Everything that is asked of a patio, so that a job below says only what is otherwise. */
const site = {
  element: 'slab',
  setting: 'open',
  salts: 'none',
  freezeThaw: 'some',
  thickness: 150,
  warnings: [],
};
const zone = {
  id: 'a',
  name: 'Whole surface',
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
const bar = {
  barCover: 30,
  barDiameter: 12,
  barSpacing: 150,
  barLength: 2,
  barLoss: 'within-limit',
};

interface Six {
  readonly site?: object;
  readonly zones: readonly object[];
  /** The three answers of its first zone that a reader may well leave open. */
  readonly open: readonly string[];
}

/** Six jobs as people have them, all invented. What stands open on a page is counted on these. */
const six = {
  'mossy patio': {
    zones: [{ contamination: ['growth'], finish: 'sealer' }],
    open: ['looseness', 'texture', 'cracks'],
  },
  'salted scaled driveway': {
    site: { salts: 'de-icing', freezeThaw: 'often' },
    zones: [
      { name: 'Ramp', depth: '3-to-6', looseness: 'fractured', texture: 'pitted' },
      {
        id: 'b',
        name: 'Edge by the road',
        depth: '20-to-50',
        looseness: 'rotten',
        texture: 'pitted',
        area: 4,
      },
      {
        id: 'c',
        name: 'Cracked bay',
        depth: 'under-3',
        looseness: 'flaking',
        cracks: 'crumbling',
        crackLength: 3,
        area: 9,
      },
      { id: 'd', name: 'The rest', area: 41 },
    ],
    open: ['depth', 'looseness', 'cracks'],
  },
  'rotten apron': {
    site: { salts: 'de-icing', freezeThaw: 'often' },
    zones: [{ depth: '20-to-50', looseness: 'rotten', texture: 'pitted', area: 6 }],
    open: ['depth', 'steel', 'cracks'],
  },
  'painted garage': {
    site: { setting: 'indoors', freezeThaw: 'rare' },
    zones: [{ contamination: ['thin-coating'], texture: 'smooth', finish: 'thin-film', area: 36 }],
    open: ['contamination', 'looseness', 'texture'],
  },
  'steps with a rusty bar': {
    site: { element: 'steps', thickness: 300 },
    zones: [{ depth: '20-to-50', looseness: 'fractured', steel: 'corroded', ...bar, area: 0.5 }],
    open: ['depth', 'looseness', 'barLoss'],
  },
  'hollow balcony': {
    site: { element: 'suspended-slab', setting: 'sheltered', thickness: 160 },
    zones: [{ depth: '20-to-50', looseness: 'hollow', steel: 'rust-stain', area: 3 }],
    open: ['depth', 'steel', 'looseness'],
  },
} as const satisfies Record<string, Six>;

export type SixName = keyof typeof six;
export const sixNames = Object.keys(six) as SixName[];

/** The file of one of the six, settled or with three answers of its first zone left open. */
export function sixFile(name: SixName, open = false): object {
  const entry: Six = six[name];
  return {
    format: 'down-to-sound.job',
    version: 1,
    site: { ...site, ...entry.site, name: `${name} (invented)` },
    zones: entry.zones.map((answers, index) => ({
      ...zone,
      ...answers,
      ...(open && index === 0 && Object.fromEntries(entry.open.map((id) => [id, undefined]))),
    })),
  };
}
