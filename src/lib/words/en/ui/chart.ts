import { capital, lowered } from '$lib/words/by-language';
import type { Contaminant, DepthBand, Finish } from '$lib/answers/questions';
import type { Say } from '$lib/words/types';
import type { FigureId } from '$shared/figures';
import type { MethodId } from '$shared/methods';

/** The figures at which a depth band begins and ends; null where it is open. */
const edges: Readonly<Record<DepthBand, readonly [FigureId | null, FigureId | null]>> = {
  film: [null, 'depth.film'],
  'under-3': ['depth.film', 'depth.thin'],
  '3-to-6': ['depth.thin', 'depth.shallow'],
  '6-to-20': ['depth.shallow', 'depth.spall-small'],
  '20-to-50': ['depth.spall-small', 'depth.deep'],
  'over-50': ['depth.deep', null],
  through: [null, null],
};

/** A run of neighbouring depth bands, from the shallowest to the deepest: "up to 3 mm". */
export function depthRunWords(first: DepthBand, last: DepthBand, say: Say): string {
  if (first === 'through') return 'right through';
  const [from] = edges[first];
  const [, to] = edges[last];
  if (from && to) return say.span(from, to);
  if (to) return `under ${say.figure(to)}`;
  return from ? `over ${say.figure(from)}` : 'any, if not right through';
}

/** A method in a cell on paper, where the whole name would not fit in letters one can read. */
export const briefly: Readonly<Record<MethodId, string>> = {
  'pressure-wash': 'Wash',
  grind: 'Grind',
  'abrasive-blast': 'Abrasive blast',
  scarify: 'Scarify',
  shotblast: 'Shotblast',
  'needle-scale': 'Needle-scale',
  'break-out': 'Break out',
  'water-jet': 'Water-jet',
};

/** What lies on it, in the head of a column on paper. */
export const soilBriefly: Readonly<Record<'clean' | Contaminant, string>> = {
  clean: 'clean',
  oil: 'oil',
  'thin-coating': 'paint',
  'thick-coating': 'thick coat',
  'rubbery-coating': 'rubbery coat',
  'salt-bloom': 'bloom',
  growth: 'moss',
};

/** What goes on next, in the head of a column on paper. */
export const finishBriefly: Readonly<Record<Finish, string>> = {
  sealer: 'Sealer',
  'thin-film': 'Thin paint',
  'build-coat': 'Build coat',
  'self-levelling': 'Self-level',
  'thin-overlay': 'Overlay',
  overlay: 'patch',
  rebuild: 'pour',
  undecided: 'open',
};

/** What stands on and round the field chart. */
export const chartWords = {
  title: 'Field chart',
  description:
    'One page to print: which method for which depth, looseness, texture and dirt, with the stops. Made from the same rules as the advice.',
  lead: 'The gentlest method that leaves sound concrete. Row: how loose and how deep. Column: texture, and what lies on it.',
  print: 'It prints on one page, sideways, on A4 or Letter paper.',
  scroll: 'The table is wide. On a small screen it scrolls sideways.',
  /** On a phone: two taps and the answer. */
  taps: {
    loose: 'How loose is it?',
    deep: 'How deep does it go?',
    prompt: 'Tap how loose, then how deep. The method stands here.',
    under: (texture: string, soils: string) => `${texture}, with ${soils}`,
    without: (texture: string, soils: string) => `${texture}, no ${soils}`,
    after: (name: string) => `Then ${lowered(name)}`,
    places: { slab: 'On a floor', steps: 'Steps and walls' },
    facts: 'Why, and what dangers?',
    whyNot: (gentler: string, why: string) => `${gentler} ${why}`,
    rough: (csp: string, basis: string) => `leaves it at ${csp} (${basis})`,
    asFound: 'leaves it as rough as it was',
    dangers: (list: string) => `Dangers: ${list}.`,
    soiled: 'Oil, paint or a coat on it?',
    always: 'Whatever lies on it',
    /** Kinds of concrete on which the work stops here, and who comes first. */
    stopped: (elements: string, who: string) => `${elements}: ${who} comes first.`,
    /** What goes on next and asks for more. */
    more: (finishes: string, methods: string) => `${capital(finishes)}: ${methods}`,
    moreOn: (method: string, textures: string) => (textures ? `${method} (${textures})` : method),
    asksMore: (parts: readonly string[], upTo: string) =>
      `What goes on next may ask for more${upTo && `, ${upTo} deep`}. ${parts.join('. ')}. Off the floor: grit in place of shot.`,
    onlyOn: (place: string, note: string) => `${place}: ${lowered(note)}`,
    first: 'The stops come first.',
    whole: 'Show the whole chart',
  },
  tableLabel: 'Field chart: method by looseness, depth, texture and dirt',
  places: { slab: 'On a floor', steps: 'Off the floor: steps, walls, soffits' },
  placesBriefly: { slab: 'on a floor', steps: 'off the floor' },
  looseness: 'How loose',
  depth: 'How deep',
  clean: 'clean',
  anyLooseness: 'However loose',
  allBut: (names: string) => `All but ${names}`,
  first: (step: string) => `${lowered(step)} first`,
  /** Work that comes before the chart's own, where the heads of the columns have no room for it. */
  before: (place: string | null, soils: string, step: string) =>
    `${place ? `${place}, ` : ''}${soils}: ${lowered(step)}`,
  beforeAll: (list: string) => `Before it: ${list}.`,
  strength: (strength: number) => `strength ${strength} of 3`,
  then: 'then',
  note: (number: number) => `note ${number}`,
  notes: 'Notes',
  key: 'Strength of method',
  strengths: ['washes', 'skims', 'cuts', 'breaks'],
  stops: 'The stops come before the chart',
  when: { always: 'Before any work', 'breaking-out': 'Before breaking out or cutting' },
  finish: {
    title: 'What goes on next may ask for more',
    lead: 'Where the chart says wash or grind, check here. Any other method is rough enough.',
    where: 'Where',
    says: 'The chart says',
    mirrored: 'Off the floor it is the same, with grit in place of shot.',
    unlisted: 'What is not listed stays as charted, and so it does under a sealer.',
    on: (method: string, texture: string | undefined, looseness: string | false | undefined) =>
      [method, texture, looseness].filter(Boolean).join(', '),
    stays: 'as charted',
    staysBriefly: 'as is',
    hole: (deeper: string) =>
      `A firm hole deeper than ${deeper} to be filled: saw its edge square, scrape off any coating, then blast the old face with grit or wash it at high pressure.`,
  },
  roughness: {
    title: 'How rough each method leaves it',
    scale: 'CSP is the roughness of concrete on a scale by ICRI: 1 nearly smooth, 10 very rough.',
    asFound: 'as it was',
  },
  size: {
    spot: (area: string) =>
      `Smaller than ${area}? Use hand tools. Scrape off a thick or rubbery coating first. In place of scarifying or shotblasting use needles, or blast with grit.`,
    wide: (area: string) =>
      `Off the floor and larger than ${area}? Nobody grinds that by hand: blast with grit.`,
  },
  reading: {
    title: 'How to read it',
    several:
      'More than one thing on it? Read the column furthest to the right, on the same texture.',
    cracks:
      'Open or crumbling cracks, scarifying charted, no thick or rubbery coating? Then shotblast: it cleans the cracks too.',
    assumes: (list: string) => `Taken for granted: ${list}.`,
    more: 'It names the main method only. The advice adds the other steps and the dangers.',
    unsure: 'Not sure which row? Read both, start with the gentler, and sound again.',
  },
  /** One thing taken for granted: its question, and the answer. */
  assumed: (short: string, answer: string) => `${lowered(short)}: ${lowered(answer)}`,
  unknown: 'not measured',
  noWarnings: 'none',
  made: (version: string, day: string) => `Made from the rules of version ${version} on ${day}.`,
  printed: 'Printed on:',
  where: 'Down to Sound, field chart',
} as const;
