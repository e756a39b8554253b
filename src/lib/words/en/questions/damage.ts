import type { QuestionsWords, Say } from '$lib/words/types';

/** What is wrong with the surface of a zone. */
export const damageQuestionWords = (
  say: Say,
): Pick<QuestionsWords, 'depth' | 'looseness' | 'contamination' | 'texture'> => ({
  depth: {
    ask: 'How deep is the damage?',
    short: 'Depth',
    why: 'Depth picks the method.',
    find: [
      'Lay a straight edge across the worst spot. Measure down from it with a tape or a nail.',
      'Measure to the firm bottom. Loose bits in it make it look too shallow.',
      'Hollow? Whoever repairs it breaks a piece out and measures there.',
    ],
    choices: {
      film: {
        name: 'Nothing, or skin only',
        hint: `Under ${say.figure('depth.film')}.`,
      },
      'under-3': {
        name: say.span('depth.film', 'depth.thin'),
        hint: 'Only sand.',
      },
      '3-to-6': {
        name: say.span('depth.thin', 'depth.shallow'),
        hint: 'Stone tops.',
      },
      '6-to-20': {
        name: say.span('depth.shallow', 'depth.spall-small'),
        hint: 'Whole stones.',
      },
      '20-to-50': {
        name: say.span('depth.spall-small', 'depth.deep'),
        hint: 'Fingers deep.',
      },
      'over-50': {
        name: `Over ${say.figure('depth.deep')}`,
        hint: 'Concrete below.',
      },
      through: { name: 'Right through', hint: 'No bottom.' },
    },
    number: {
      label: 'Depth of the damage',
      unit: say.unitOf('mm'),
      hint: 'Firm bottom.',
      example: `For example ${say.figure('depth.shallow')}`,
      unknown: 'Not measured',
    },
  },
  looseness: {
    ask: 'How loose is it?',
    short: 'Looseness',
    why: 'How loose it is decides which tool takes it off.',
    find: [
      'An old hole with a firm bottom counts as tight.',
      'Tap it with a hammer, or drag a chain over it. A clear ring is good. A dull sound is hollow.',
    ],
    scrape: [
      'Push a scraper along it. See if flakes lift.',
      'Rub it hard with a stiff brush. See if dust comes up.',
    ],
    choices: {
      tight: {
        name: 'Tight',
        hint: 'It rings; the scraper takes nothing.',
      },
      powdery: { name: 'Powdery', hint: 'Chalky. Rub it, and dust keeps coming.' },
      flaking: { name: 'Flaking', hint: 'The scraper lifts thin flakes.' },
      fractured: {
        name: 'Broken on top',
        hint: 'A hammer loosens chips and stones.',
      },
      hollow: { name: 'Hollow', hint: 'It sounds dull, like a box.' },
      rotten: {
        name: 'Rotten',
        hint: 'It crumbles; no firm bottom.',
      },
    },
    number: null,
  },
  contamination: {
    ask: 'What is on it, or in it?',
    short: 'Dirt and coatings',
    why: 'No repair sticks to dirt, oil or old paint.',
    find: [
      'Put a drop of water on it. If it stays a bead, there is oil or a sealer.',
      'Look for a white crust, or for green or black growth.',
    ],
    scrape: ['Pick at the edge with a knife. A coating lifts, and you can see how thick it is.'],
    choices: {
      oil: { name: 'Oil or grease', hint: 'Dark, greasy stain.' },
      'thin-coating': {
        name: 'Paint or sealer',
        hint: 'Thin; may be clear.',
      },
      'thick-coating': {
        name: 'Thick coating',
        hint: `Hard, over ${say.figure('depth.film')}.`,
      },
      'rubbery-coating': {
        name: 'Rubbery coating',
        hint: 'A fingernail dents it.',
      },
      'salt-bloom': { name: 'Salt bloom', hint: 'White, chalky crust.' },
      growth: { name: 'Moss or algae', hint: 'Green or black.' },
    },
    number: null,
  },
  texture: {
    ask: 'What does the surface feel like?',
    short: 'Texture',
    why: 'A flat tool rides over hollows, and the finish needs a grip.',
    find: [
      'Wipe it and lay your palm on it.',
      'Lay a ruler flat on it. Look for light under the edge.',
    ],
    choices: {
      smooth: { name: 'Smooth', hint: 'Trowelled. Your palm slides.' },
      sandy: { name: 'Sandy', hint: 'Like rough sandpaper: broomed or worn.' },
      pitted: { name: 'Pitted', hint: 'Hollows, grooves or bare stones.' },
    },
    number: null,
  },
});
