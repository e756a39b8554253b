import type { QuestionsWords, Say } from '$lib/words/types';
import type { SiteQuestion } from '$lib/answers/questions';

/** The questions about the place. */
export const siteQuestionWords = (say: Say): Pick<QuestionsWords, SiteQuestion> => ({
  element: {
    ask: 'What are you standing in front of?',
    short: 'Kind of concrete',
    why: 'A machine you walk behind needs a floor that can hold it. And if the concrete holds something up, taking some away can bring it down.',
    find: [
      'Look underneath. If there is a room, a carport or open air below, it is a suspended slab.',
      'If you see only ground at its edges, it is a slab on the ground. Steps are the same: look behind and below them.',
    ],
    choices: {
      slab: { name: 'Slab on the ground', hint: 'A drive, path, patio, garage or shed floor.' },
      steps: {
        name: 'Steps on the ground',
        hint: 'A flight of steps, or a kerb too narrow for a machine.',
      },
      'suspended-steps': {
        name: 'Suspended steps',
        hint: 'A flight with air, a cupboard or a room below it.',
      },
      'suspended-slab': {
        name: 'Suspended slab',
        hint: 'A balcony, deck or upper floor, with air or a room below it.',
      },
      wall: { name: 'Wall', hint: 'Upright: a wall, a column or the side of a plinth.' },
      soffit: { name: 'Soffit', hint: 'The underside: you look up at it.' },
    },
    number: null,
  },
  setting: {
    ask: 'Where is it?',
    short: 'Setting',
    why: 'Dust and engine fumes build up under a roof. Rain and frost reach what is outside.',
    find: ['Stand on the spot. Can rain fall on it? Can wind blow through?'],
    choices: {
      indoors: { name: 'Indoors', hint: 'Walls all round, even with a door open.' },
      sheltered: {
        name: 'Under cover',
        hint: 'A roof but open sides, or a yard with high walls.',
      },
      open: { name: 'In the open', hint: 'Rain falls on it and wind blows across it.' },
    },
    number: null,
  },
  salts: {
    ask: 'Does salt reach it?',
    short: 'Salt',
    why: 'Salt soaks in and makes the steel inside rust. Road salt also makes frost flake the surface.',
    find: [
      'Ask who looks after it whether it is salted in winter. Cars carry road salt in too.',
      'Look for a white crust, and for the sea or a pool close by.',
    ],
    choices: {
      none: { name: 'No salt', hint: 'No salt in winter, no sea and no pool close by.' },
      'de-icing': {
        name: 'De-icing salt',
        hint: 'It is salted in winter, or cars drip salty slush on it.',
      },
      'sea-or-pool': {
        name: 'Sea or pool',
        hint: 'Sea spray, salt air or pool water reaches it.',
      },
    },
    number: null,
  },
  freezeThaw: {
    ask: 'How often does it freeze and thaw?',
    short: 'Frost',
    why: 'Water in concrete swells as it freezes. Each freeze can loosen a little more, along cracks above all. Weak skin that is left under a repair soon lets go.',
    find: [
      'Think of last winter. How many mornings had ice that was gone by noon?',
      'If you have a weather file for the place, the frost page can count for you.',
    ],
    choices: {
      rare: { name: 'Rarely', hint: 'A few frosts a year, or it is always dry and warm.' },
      some: { name: 'Some weeks', hint: 'Frost comes and goes for part of the winter.' },
      often: { name: 'Often', hint: 'Freezing nights and thawing days for most of the winter.' },
    },
    number: null,
  },
  thickness: {
    ask: 'How thick is the concrete?',
    short: 'Thickness',
    why: `If the bad concrete goes through ${say.fraction(say.valueOf('depth.full-limit'))} of it or more, a patch on top will not last. That part then has to be replaced.`,
    find: [
      'Hold a tape against a free edge, a joint or a drain.',
      'No free edge? Ask for the drawings, or leave it as not known.',
    ],
    choices: {},
    number: {
      label: 'Thickness of the concrete',
      unit: say.unitOf('mm'),
      hint: 'From top to bottom, without any gravel or tiles.',
      example: `For example ${say.length(say.valueOf('thickness.usual-slab'))}`,
      unknown: 'I do not know',
    },
  },
  warnings: {
    ask: 'Is any of this true here?',
    short: 'Warning signs',
    why: 'Each of these can make the work unsafe, or make a repair fail. Some mean that someone else has to look first.',
    find: [
      'Walk all round it. Lay a straight board on it and see if it rocks or dips.',
      'Ask the owner about fires, spills, old paint and where the pipes run.',
      'If you are not sure about one, mark it as not sure. Do not guess.',
    ],
    choices: {
      'settled-or-rocking': {
        name: 'It has sunk or it rocks',
        hint: 'One side is lower than it was, or it moves when you step on it.',
      },
      'holds-something-up': {
        name: 'It holds something up',
        hint: 'A post, a wall, a beam or a roof stands on it or hangs from it.',
      },
      'tendons-possible': {
        name: 'It may have tendons in it',
        hint: 'Steel cables under great pull. Look for round patches along the edges, or a stamp that warns of them.',
      },
      'fire-or-chemical': {
        name: 'Fire or chemicals have been at it',
        hint: 'It is pink, grey and crumbly from heat, or acid or something like it was spilled.',
      },
      'map-cracking': {
        name: 'Cracks like a map',
        hint: 'Fine cracks join up all over, like dried mud. There may be a white gel in them.',
      },
      'old-coating-or-adhesive': {
        name: 'Old paint, coating or tile glue',
        hint: 'You do not know how old it is or what is in it. It could hold lead or asbestos.',
      },
      'buried-services': {
        name: 'Cables or pipes may be inside',
        hint: 'There are sockets, lights, drains, heating or a meter close by.',
      },
    },
    number: null,
  },
});
