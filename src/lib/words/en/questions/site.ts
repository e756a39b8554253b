import { coatingResult } from '$words/tests/coating-result';
import { elementTitles } from '$words/ui/frame';
import type { QuestionsWords, Say } from '$lib/words/types';
import type { SiteQuestion } from '$lib/answers/questions';

/** The questions about the place. */
export const siteQuestionWords = (say: Say): Pick<QuestionsWords, SiteQuestion> => ({
  element: {
    ask: 'What are you standing in front of?',
    short: 'Kind of concrete',
    why: 'Machines need a floor. What carries a load may fall.',
    find: [
      'Look from the side, not from under it. If there is a room, a carport or open air below, it is a suspended slab.',
      'If you see only ground at its edges, it is a slab on the ground. Steps are the same.',
    ],
    choices: {
      slab: { name: elementTitles.slab, hint: 'Drive, path, patio, garage.' },
      steps: {
        name: elementTitles.steps,
        hint: 'Or a narrow kerb.',
      },
      'suspended-steps': {
        name: elementTitles['suspended-steps'],
        hint: 'Air or a room below.',
      },
      'suspended-slab': {
        name: elementTitles['suspended-slab'],
        hint: 'Balcony, deck, upper floor.',
      },
      wall: { name: elementTitles.wall, hint: 'Column or plinth too.' },
      soffit: { name: elementTitles.soffit, hint: 'You look up at it.' },
    },
    number: null,
  },
  setting: {
    ask: 'Where is it?',
    short: 'Setting',
    why: 'Dust and fumes build up under a roof; frost works outside.',
    find: ['Stand on the spot. Can rain fall on it? Can wind blow through?'],
    choices: {
      indoors: { name: 'Indoors', hint: 'Walls all round, door open or not.' },
      sheltered: {
        name: 'Under cover',
        hint: 'A roof with open sides, or a yard with high walls.',
      },
      open: { name: 'In the open', hint: 'Rain and wind reach it.' },
    },
    number: null,
  },
  salts: {
    ask: 'Does salt reach it?',
    short: 'Salt',
    why: 'Salt rusts the steel inside and lets frost flake the surface.',
    find: [
      'Ask who looks after it whether it is salted in winter. Cars carry road salt in too.',
      'Look for a white crust, and for the sea or a pool close by.',
    ],
    choices: {
      none: { name: 'No salt', hint: 'Not in winter, no sea, no pool.' },
      'de-icing': {
        name: 'De-icing salt',
        hint: 'Salted in winter, or cars drip slush on it.',
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
    why: 'Each freeze loosens a little more, along cracks above all.',
    find: [
      'Think of last winter. How many mornings had ice that was gone by noon?',
      'If you have a weather file for the place, the frost page can count for you.',
    ],
    choices: {
      rare: { name: 'Rarely', hint: 'A few frosts a year, or always dry.' },
      some: { name: 'Some weeks', hint: 'Frost comes and goes for weeks.' },
      often: { name: 'Often', hint: 'Most of the winter.' },
    },
    number: null,
  },
  thickness: {
    ask: 'How thick is the concrete?',
    short: 'Thickness',
    why: `Damage through ${say.fraction(say.valueOf('depth.full-limit'))} of it or more means replacing that part.`,
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
    ask: 'Is any of this true?',
    short: 'Warning signs',
    why: 'Each may stop work.',
    onIt: ['Walk all round it. Lay a straight board on it and see if it rocks or dips.'],
    beside: [
      'Look from firm ground beside it, not from on it or under it. Does it lean, dip, or sit lower on one side?',
    ],
    find: [
      'Ask whoever owned or looked after it about fires, spills, old paint and where the pipes run.',
      'If you are not sure about one, mark it as not sure. Do not guess.',
      ...coatingResult,
    ],
    choices: {
      'settled-or-rocking': {
        name: 'Sunk or rocking',
        hint: 'One side lower.',
      },
      'holds-something-up': {
        name: 'Holds something up',
        hint: 'Post, wall, roof.',
      },
      'tendons-possible': {
        name: 'Possible tendons',
        hint: 'Round plugs; stamp.',
      },
      'fire-or-chemical': {
        name: 'Fire or chemicals',
        hint: 'Pink, crumbly; acid.',
      },
      'map-cracking': {
        name: 'Cracks like a map',
        hint: 'Like dried mud.',
      },
      'old-coating-or-adhesive': {
        name: 'Lead or asbestos',
        hint: 'Old paint or glue.',
      },
      'buried-services': {
        name: 'Cables or pipes',
        hint: 'Sockets, drains, heating.',
      },
    },
    number: null,
  },
});
