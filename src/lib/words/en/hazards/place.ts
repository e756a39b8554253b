import type { HazardId } from '$shared/methods';
import type { HazardWords, Say } from '$lib/words/types';

type PlaceHazard = Extract<
  HazardId,
  'chemicals' | 'lead-asbestos' | 'structure' | 'overhead' | 'falls' | 'wash-water' | 'weather'
>;

/** Hazards that come from the place or from what is used there. Controls stand in order: the best first. */
export const placeHazards = (say: Say): Readonly<Record<PlaceHazard, HazardWords>> => ({
  chemicals: {
    name: 'Cleaners and cement',
    harm: 'Strong cleaners and wet cement burn skin and eyes. With cement you may feel it only hours later.',
    controls: [
      'Use the mildest cleaner that works. Do not use acid or solvents here.',
      'Mix outdoors or with good air. Never mix two cleaners: bleach with acid or ammonia gives off gas that kills.',
      'Keep clean water close by, and wash off splashes at once.',
      'Wear the gloves and goggles that the label names, and long sleeves.',
    ],
    stop: 'Stop when skin or eyes burn. Rinse with plenty of water for a quarter of an hour or more while somebody calls, and see a doctor about eyes.',
  },
  'lead-asbestos': {
    name: 'Lead and asbestos',
    harm: 'Old paint can hold lead, and old coatings and tile glue can hold asbestos. Their dust poisons and causes cancer, for you and for those at home.',
    controls: [
      'Have a laboratory test it before anybody brushes, scrapes, grinds, blasts or jets it. Looking cannot settle it.',
      'If it holds either, leave it alone. A licensed crew takes it off.',
      'Keep everybody out until the result is there.',
      'A dust mask from the shop is not enough. What protects you is set by law.',
    ],
    stop: 'Stop when you come upon an old coating, glue or board that nobody has tested. Leave the dust where it is, and keep people out.',
  },
  structure: {
    name: 'Collapse and stretched cables',
    harm: 'Taking concrete away can bring down what it holds up. A stretched steel cable that is cut lets go with deadly force.',
    controls: [
      'Have a licensed structural engineer say what may go, before anything goes.',
      'Put up the props they ask for first, and leave them until they say so.',
      'Have cables located and marked. Until then nobody makes a hole, a cut or a blow; after that, stay clear of them.',
      'Keep everybody out from below and beside the work.',
    ],
    stop: 'Stop when it cracks, creaks or sags. Stop when you meet a cable or a tube, or more damage than you were told of. Get out, and call the engineer.',
  },
  falls: {
    name: 'Falls from height',
    harm: 'A fall from a few steps breaks bones, and from a balcony or a ladder it kills. A hammer or a lance pushes you backwards.',
    controls: [
      'Work from the ground or from a platform with rails wherever you can.',
      'Close off edges and openings with rails before anybody works near them. Never take a rail down to get at the concrete.',
      'Do not use a power tool or a lance from a ladder.',
      'Where no rail can stand, a trained person sets up the harness and its anchor. A rail in bad concrete is no anchor.',
    ],
    stop: 'Stop when a rail is missing or moves, when the edge itself crumbles, or when wind pushes you.',
  },
  overhead: {
    name: 'Falling pieces',
    harm: 'What you loosen on a wall or above your head falls on you, often in one large piece.',
    controls: [
      'Bring down what is loose from the side, from a safe stand, before you work or wash under it.',
      'Put up a deck or a net, and close off the ground below.',
      'Work from a scaffold or a lift, not from a ladder. Never stand right under the tool.',
      'Wear a helmet with a chin strap, and goggles with a face shield over them.',
    ],
    stop: 'Stop when pieces come down that you did not aim at, or when someone walks below.',
  },
  'wash-water': {
    name: 'Wash water and slurry',
    harm: `Water that has run over fresh-cut concrete is strongly alkaline. It burns skin, kills fish, and sets hard in drains. From ${say.figure('hazard.wash-water-ph')} up it counts as hazardous waste in the US.`,
    controls: [
      'Use less water, or a vacuum that takes it up.',
      'Cover drains, and dam the water in. It must never reach a storm drain, a ditch or a stream.',
      'Let it settle, and have it taken away as local rules ask.',
      'Wear waterproof gloves and boots, and wash it off skin.',
    ],
    stop: 'Stop when water gets past the dam, or towards a drain or a garden.',
  },
  weather: {
    name: 'Frost and heat',
    harm: 'Wet surfaces freeze and trip you, and frost ruins a wet surface before it is covered. In heat, heavy work in full gear can make you collapse.',
    controls: [
      'Choose the day. Do no wet work when frost may come before it dries, the coming night included.',
      'Put up shade or a shelter.',
      'Start early, drink often, rest in the shade, and look out for each other.',
      'Dress for it, in layers you can take off.',
    ],
    stop: 'Stop when water freezes on the ground, in a thunderstorm, or when someone is confused, unsteady or burning hot, sweating or not. Call an ambulance, cool them with water and shade, and stay with them.',
  },
});
