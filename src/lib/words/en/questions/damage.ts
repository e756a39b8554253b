import type { QuestionsWords, Say } from '$lib/words/types';

/** What is wrong with the surface of a zone. */
export const damageQuestionWords = (
  say: Say,
): Pick<QuestionsWords, 'depth' | 'looseness' | 'contamination' | 'texture'> => ({
  depth: {
    ask: 'How deep does the damage go?',
    short: 'Depth',
    why: 'Each way of working reaches only so deep. One that stops too soon leaves weak concrete under your repair. One that goes too deep hurts sound concrete.',
    find: [
      'Lay a straight edge across the worst spot. Measure down from it with a tape or a nail.',
      'Scrape loose bits out first. Measure to the firm bottom.',
      'If it sounds hollow, break one piece out and measure there.',
    ],
    choices: {
      film: {
        name: `Skin only, under ${say.figure('depth.film')}`,
        hint: 'Dust or a weak skin. Nothing you could measure with a tape.',
      },
      'under-3': {
        name: say.span('depth.film', 'depth.thin'),
        hint: 'The top skin is gone. You see sand, but no stones stand out.',
      },
      '3-to-6': {
        name: say.span('depth.thin', 'depth.shallow'),
        hint: 'The tops of stones show. A pencil laid in it lies about level.',
      },
      '6-to-20': {
        name: say.span('depth.shallow', 'depth.spall-small'),
        hint: 'Stones stand out and some are gone. A fingertip sinks in.',
      },
      '20-to-50': {
        name: say.span('depth.spall-small', 'depth.deep'),
        hint: 'A hole a few fingers deep. Steel may show.',
      },
      'over-50': {
        name: `Over ${say.figure('depth.deep')}`,
        hint: 'A deep hole that still has concrete at the bottom.',
      },
      through: { name: 'Right through', hint: 'You reach the ground, or light shows from below.' },
    },
    number: {
      label: 'Depth of the damage',
      unit: say.unitOf('mm'),
      hint: 'At the deepest spot, down to firm concrete.',
      example: `For example ${say.figure('depth.shallow')}`,
      unknown: 'I have not measured it',
    },
  },
  looseness: {
    ask: 'How loose is it?',
    short: 'Looseness',
    why: 'A repair holds only as well as the concrete under it. All that is loose must go, and how it is loose decides which tool can take it off.',
    find: [
      'Tap it with a hammer, or drag a chain over it. A clear ring is good. A dull sound is hollow.',
      'Push a scraper along it. See if flakes lift.',
      'Rub it hard with a stiff brush. See if dust comes up.',
    ],
    choices: {
      tight: {
        name: 'Tight',
        hint: 'It rings clear and the scraper takes nothing. An old hole with a firm bottom counts too.',
      },
      powdery: { name: 'Powdery', hint: 'A stiff brush lifts dust, again and again.' },
      flaking: { name: 'Flaking', hint: 'The scraper lifts thin flakes.' },
      fractured: {
        name: 'Broken on top',
        hint: 'Chips and stones come loose under a light hammer.',
      },
      hollow: { name: 'Hollow', hint: 'It sounds dull, like a box. A layer below has let go.' },
      rotten: {
        name: 'Rotten',
        hint: 'It crumbles or moves as you dig, and you find no firm bottom.',
      },
    },
    number: null,
  },
  contamination: {
    ask: 'What is on it, or in it?',
    short: 'Dirt and coatings',
    why: 'A repair will not stick to oil, paint or moss. The wrong tool spreads them or drives them in.',
    find: [
      'Put a drop of water on it. If it stays a bead, there is oil or a sealer.',
      'Pick at the edge with a knife. A coating lifts, and you can see how thick it is.',
      'Look for a white crust, or for green or black growth.',
    ],
    choices: {
      oil: { name: 'Oil or grease', hint: 'Dark stains. A drop of water stays a bead.' },
      'thin-coating': {
        name: 'Paint or sealer',
        hint: `A thin film, up to about ${say.figure('depth.film')}. It may be clear.`,
      },
      'thick-coating': {
        name: 'Thick coating',
        hint: `A hard layer over ${say.figure('depth.film')}, such as an old overlay.`,
      },
      'rubbery-coating': {
        name: 'Rubbery coating',
        hint: 'It is soft. You can dent it with a nail or peel it.',
      },
      'salt-bloom': { name: 'Salt bloom', hint: 'A white crust or powder that comes back.' },
      growth: { name: 'Moss or algae', hint: 'Green or black, slippery when wet.' },
    },
    number: null,
  },
  texture: {
    ask: 'What does the surface feel like?',
    short: 'Texture',
    why: 'A flat tool rides over hollows and leaves what is in them. And what goes on next needs a surface that is rough enough.',
    find: [
      'Wipe it and lay your palm on it.',
      'Lay a ruler flat on it. Look for light under the edge.',
    ],
    choices: {
      smooth: { name: 'Smooth', hint: 'Trowelled. Your palm slides.' },
      sandy: { name: 'Sandy', hint: 'Like rough sandpaper: broomed, or worn down to sand.' },
      pitted: { name: 'Pitted', hint: 'Hollows, grooves or bare stones. The ruler rocks.' },
    },
    number: null,
  },
});
