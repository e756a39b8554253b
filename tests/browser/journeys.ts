/** Answers by question: a choice, several, or `#` and a number to type. Questions left out must not be asked. */
export type Journey = Readonly<Record<string, string>>;

export const journeys: Readonly<
  Record<string, { answers: Journey; verdict: RegExp; says: RegExp[] }>
> = {
  'a sound dirty walkway': {
    answers: {
      element: 'slab',
      setting: 'open',
      salts: 'none',
      freezeThaw: 'some',
      thickness: '#100',
      warnings: 'none',
      depth: 'film',
      looseness: 'tight',
      contamination: 'growth',
      texture: 'sandy',
      cracks: 'none',
      steel: 'none-seen',
      finish: 'sealer',
      makerProfile: 'no-sheet',
      area: '#12,5',
      borderLength: '#0',
    },
    // Common practice, no source: sound concrete that is only dirty is washed.
    verdict: /Prepare it: Pressure washing/,
    says: [/never to a storm drain|storm drain/i],
  },
  'a scaled driveway in a frost climate with crumbling cracks': {
    answers: {
      element: 'slab',
      setting: 'open',
      salts: 'de-icing',
      freezeThaw: 'often',
      thickness: '#100',
      warnings: 'none',
      depth: '#5',
      looseness: 'fractured',
      contamination: 'none',
      texture: 'sandy',
      cracks: 'crumbling',
      crackLength: '#6',
      steel: 'none-seen',
      finish: 'overlay',
      makerProfile: 'csp-5',
      makerMoisture: 'damp',
      area: '#40',
      borderLength: '#0',
    },
    // Common practice, no source: 3.2 to 6.4 mm with open cracks is shotblast, cracks chased by light hammer.
    verdict: /Prepare it: Shotblasting/,
    says: [/chase the crack/i, /silica/i],
  },
  'a step with an exposed rusty bar': {
    answers: {
      element: 'steps',
      setting: 'open',
      salts: 'none',
      freezeThaw: 'some',
      thickness: 'unsure',
      warnings: 'none',
      depth: '20-to-50',
      looseness: 'fractured',
      contamination: 'none',
      cracks: 'none',
      steel: 'corroded',
      barLoss: 'within-limit',
      barCover: '#30',
      barDiameter: '#12',
      barSpacing: '#150',
      barLength: '#2',
      finish: 'overlay',
      makerProfile: 'no-sheet',
      area: '#0.5',
    },
    verdict: /Prepare it: Breaking out/,
    // Source: ICRI 310.1R and ACI PRC-364.6: 19 mm clear behind the bar.
    says: [/19\smm/, /free the bar/i],
  },
};

/** The questions a journey is the first to meet: each is looked at once in each look. */
export const firstMet = (name: string): Set<string> => {
  const all = Object.entries(journeys);
  const before = all.slice(
    0,
    all.findIndex(([other]) => other === name),
  );
  const met = new Set(before.flatMap(([, { answers }]) => Object.keys(answers)));
  return new Set(Object.keys(journeys[name]?.answers ?? {}).filter((id) => !met.has(id)));
};
