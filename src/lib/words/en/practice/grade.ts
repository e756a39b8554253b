import type { Hold } from '$lib/advice/types';
import type { CallKind } from '$lib/practice/call';
import type { Sense } from '$lib/practice/case';
import type { Rating } from '$lib/practice/grade';
import type { Level } from '$lib/practice/level';
import type { SpareRule } from '$lib/practice/steps';
import type { Named } from '$lib/words/types';

/** How each fact was found out. */
export const senseNames: Readonly<Record<Sense, string>> = {
  see: 'You see',
  hear: 'You tap it',
  scrape: 'You scrape it',
  drop: 'A drop of water',
  owner: 'You are told',
};

/** A call that is not a method. */
export const waitWords: Readonly<Record<Hold['who'], Named>> = {
  engineer: {
    name: 'Stop: a licensed structural engineer looks first',
    line: 'Something here could bring it down, or the cause has to be found.',
  },
  'concrete-contractor': {
    name: 'Stop: replace this part through its full depth',
    line: 'No repair of the surface would last.',
  },
  laboratory: {
    name: 'Find out first: have a laboratory test a sample',
    line: 'The concrete may be at fault, or what lies on it may hold lead or asbestos.',
  },
  locator: {
    name: 'Find out first: have cables and pipes located',
    line: 'The work would cut where they may run.',
  },
  crew: {
    name: 'Find out first: measure the thickness or the depth',
    line: 'Whether it can be repaired hangs on that.',
  },
};

/** How a call compares with the advice: a heading, and what it comes to. */
export const callWords: Readonly<Record<CallKind, Named>> = {
  right: { name: 'Right', line: 'That is what the rules come to.' },
  'too-gentle': {
    name: 'Too gentle',
    line: 'Your pick would leave something behind that the repair cannot hold on to.',
  },
  'wrong-tool': {
    name: 'The wrong tool here',
    line: 'However hard it works, your pick cannot do this job.',
  },
  harsher: {
    name: 'Harsher than needed',
    line: 'Your pick would get there, and hurt sound concrete on the way.',
  },
  'would-do': {
    name: 'Not the first choice',
    line: 'Your pick could do the work, at a price that is not needed here.',
  },
  'must-wait': {
    name: 'Not safe to start',
    line: 'Something stands before any work here. Whoever starts now may be hurt, or do work that fails.',
  },
  'someone-else': {
    name: 'Somebody else comes first',
    line: 'You are right to wait. But whoever you would call does not clear what stands in the way.',
  },
  'not-yet-enough': {
    name: 'Not enough yet',
    line: 'That belongs to it too. But somebody else has to come before it.',
  },
  'need-not-wait': {
    name: 'Nothing here has to wait',
    line: 'Waiting hurts nobody. But no fact here calls for it, and the work can be done.',
  },
};

/** Why a step is not called for. */
export const spareWords: Readonly<Record<SpareRule, string>> = {
  'no-oil': 'There is no oil here.',
  'no-growth': 'Nothing grows on it.',
  'wash-takes-growth': 'The washing takes the growth off by itself.',
  'no-heavy-coating': 'No thick or rubbery coating lies on it.',
  'machine-lifts-coating': 'The machine lifts this coating. No scraper has to go before it.',
  'nothing-to-sound':
    'Nothing is cut out, no steel shows or stains, and no edge crumbles, so no edge has to be marked.',
  'no-fine-crack-in-frost': 'There is no fine crack where it freezes often.',
  'nothing-broken-out': 'Nothing is broken out here.',
  'no-crack': 'There is no crack.',
  'crack-not-chased': 'Chasing is for crumbling edges, and for open cracks where it freezes often.',
  'crack-not-routed':
    'Routing is for cracks with firm edges, where it does not freeze often. This one asks for something else.',
  'no-bar-shows': 'No bar shows.',
  'no-floor-machine': 'No floor machine is used, so no border is left.',
  'nothing-upright':
    'Nobody has found anything upright at its edge, so the machine reaches all of it.',
  'hardly-bruises': 'The method leaves no bruised skin worth a step of its own.',
  'sealer-forgives': 'A sealer soaks in and does not pull, so the bruised skin may stay.',
  'wash-will-do': 'The spot is small and frost is rare, so a thorough wash takes its place.',
  'no-wash-under-dry': 'What goes on wants it dry, and the tool left nothing that needs water.',
  'damp-finish': 'What goes on wants it damp, so nobody measures how dry it is.',
  'wash-is-enough': 'The washing itself carries everything off, and makes no dust.',
  'not-too-rough': 'What is left is not too rough for what goes on next.',
};

/** How a case went, for lists. */
export const ratingWords: Readonly<Record<Rating, string>> = {
  again: 'missed',
  hard: 'right, but not all of it',
  good: 'right',
};

export const levelWords: Readonly<Record<Level, string>> = {
  1: 'one thing to see',
  2: 'two things to see',
  3: 'several at once',
  4: 'much at once',
};
