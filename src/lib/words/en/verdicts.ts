import type { VerdictWords } from '$lib/words/types';
import { frameWords } from './ui/frame';

/** Verdicts, who to call, and the short explanations that stand beside advice, in English. */
export const verdictWords: VerdictWords = {
  verdicts: {
    prepare: {
      name: 'Prepare it',
      line: 'This surface can be prepared for a repair.',
    },
    'find-out-first': {
      name: 'Find out first',
      line: 'Something has to be known before work starts. A test settles it.',
    },
    stop: {
      name: 'Stop',
      line: 'Do not start. Someone who is qualified has to look at this first.',
    },
  },
  who: {
    engineer: {
      name: 'a licensed structural engineer',
      line: 'They judge what the concrete carries, why it failed, and what must be propped or replaced.',
    },
    laboratory: {
      name: 'a testing laboratory',
      line: 'They say what is wrong with a piece of the concrete, or whether a coating holds lead or asbestos. A licensed person takes the sample.',
    },
    locator: {
      name: 'a service that locates cables and pipes',
      line: 'They mark what is hidden, and tell you what must be switched off.',
    },
    'concrete-contractor': {
      name: 'a concrete contractor',
      line: 'They can replace that part through its full depth.',
    },
    'jetting-crew': {
      name: 'a water-jetting crew',
      line: 'They come with their own people, pump and cover for the water they use.',
    },
    crew: {
      name: 'whoever will do the work',
      line: 'They can measure it on the spot.',
    },
  },
  moisture: {
    'saturated-surface-dry': {
      name: 'Saturated surface-dry',
      line: 'The concrete has drunk its fill, but no water stands or shines on it.',
    },
    dry: {
      name: 'Dry',
      line: 'Dry through, not just on top. The maker of the finish says how dry.',
    },
    'ask-maker': {
      name: 'Ask the maker',
      line: 'Some want it dry and some want it damp. The data sheet of the product says which.',
    },
  },
  bruisedSkin: {
    'must-go': {
      name: 'The bruised skin must go',
      line: 'It freezes often here, and a bruised skin under a repair soon lets go.',
    },
    'should-go': {
      name: 'The bruised skin should go',
      line: 'What is bonded to a bruised skin comes off with it.',
    },
    'may-stay': {
      name: 'A bruised skin may stay',
      line: 'A sealer soaks in. It does not pull on the surface.',
    },
  },
  finishes: {
    sealer: { name: 'Sealer', line: 'It soaks in and leaves almost nothing on top.' },
    'thin-film': { name: 'Thin paint', line: 'A coat as thin as house paint.' },
    'build-coat': { name: 'Build coat', line: 'A thick paint in several coats.' },
    'self-levelling': {
      name: 'Self-levelling layer',
      line: 'It is poured, and finds its own level.',
    },
    'thin-overlay': { name: 'Thin overlay', line: 'A thin layer, spread with a trowel.' },
    overlay: { name: 'Overlay or patch', line: 'A thicker layer of concrete or repair mortar.' },
    rebuild: { name: 'Form and pour', line: 'A part is formed and poured anew.' },
    undecided: { name: 'Not decided', line: 'Until it is, no roughness can be aimed for.' },
  },
  bases: {
    published: {
      name: 'published',
      line: 'Read in the text of the source that is named.',
    },
    reported: {
      name: 'as reported',
      line: 'Read in another text that quotes the source. Look at the source before you rely on it.',
    },
    memory: {
      name: 'from memory, check a copy',
      line: 'Written down from memory. Check a copy of the source before you rely on it.',
    },
    practice: {
      name: 'common practice, no published source',
      line: 'What careful crews do. No published source was found. You can put in your own value.',
    },
    derived: {
      name: 'worked out',
      line: 'Worked out from other figures. The sum is shown with it.',
    },
  },
  seen: {
    whole: { name: 'read in full', line: 'The whole passage or table was read.' },
    excerpt: { name: 'read in part', line: 'Only a part with the value in it was read.' },
    'second-hand': { name: 'second hand', line: 'Seen only as another text quotes it.' },
  },
  deferral: frameWords.deferral,
  ownerLimits: {
    edges: 'Edges and ladders: a short fall can kill.',
    overhead: 'Work above your head: what comes loose falls on you.',
    electricity: 'Work near cables, sockets, lights or a meter.',
    steel: 'Cutting or hammering near steel: it may hold the concrete up.',
    'break-out': 'Breaking out: it throws stones, and hits what you cannot see.',
    blasting: 'Shotblasting and abrasive blasting: the dust ruins lungs.',
    'old-coating':
      'Sanding, scraping, sweeping or grinding an old coating before a laboratory has tested it.',
    cleaners: 'Acid, or two cleaners mixed: acid eats concrete, and the gas can kill.',
  },
};
