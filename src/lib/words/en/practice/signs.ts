import type { Choice, Contaminant, OneQuestion, Warning } from '$lib/answers/questions';
import type { Sense } from '$lib/practice/case';

interface Sign {
  readonly by: Sense;
  /** The same fact in a few ways. */
  readonly ways: readonly string[];
}
type SignsOf<Q extends OneQuestion> = { readonly [K in Q]: Readonly<Record<Choice<K>, Sign>> };

const see = (...ways: string[]): Sign => ({ by: 'see', ways });
const hear = (...ways: string[]): Sign => ({ by: 'hear', ways });
const scrape = (...ways: string[]): Sign => ({ by: 'scrape', ways });
const owner = (...ways: string[]): Sign => ({ by: 'owner', ways });

/** The sign each answer shows on the spot. Source: common practice, no published source. */
export const signs: SignsOf<
  'looseness' | 'texture' | 'cracks' | 'steel' | 'barLoss' | 'finish' | 'salts' | 'freezeThaw'
> = {
  looseness: {
    tight: hear(
      'It rings clear everywhere, and the scraper takes nothing.',
      'The hammer rings clear. Push as you like, the scraper brings nothing up.',
    ),
    powdery: scrape(
      'A stiff brush lifts dust, and goes on lifting it.',
      'Rub it with a stiff brush and dust comes up, again and again.',
    ),
    flaking: scrape('The scraper lifts thin flakes.', 'Thin flakes come up on the scraper.'),
    fractured: scrape(
      'Chips and stones come loose under a light hammer.',
      'A light hammer brings loose chips and stones away.',
    ),
    hollow: hear(
      'It sounds dull, like a box. A layer below has let go.',
      'Tapped, it sounds like a lid on a box, and round it the concrete rings.',
    ),
    rotten: scrape(
      'It crumbles as you dig, and there is no firm bottom for a long way.',
      'It moves and crumbles under the scraper; nothing below holds until far down.',
    ),
  },
  texture: {
    smooth: see('It is trowelled smooth: your palm slides.', 'The face is smooth to the palm.'),
    sandy: see('It feels like rough sandpaper.', 'The face is even and sandy.'),
    pitted: see(
      'It is full of hollows and bare stones. A ruler rocks on it.',
      'There are pits all over, and a ruler laid flat rocks.',
    ),
  },
  cracks: {
    none: see('No crack shows, even when it is damp.', 'You find no crack.'),
    hairline: see(
      'A fine crack crosses it. Paper will not go in, and it has not moved.',
      'You see one fine crack, too tight for a sheet of paper.',
    ),
    open: see(
      'An open crack crosses it. A coin goes in, and both edges ring.',
      'There is a crack you can put a coin in. Its edges are firm and ring when tapped.',
    ),
    crumbling: see(
      'A crack crosses it, and its edges break off under your thumb.',
      'The edges of a crack sound dull and fall away in bits.',
    ),
    moving: see(
      'A crack has come back beside its old filling. It opens when it is cold and closes when it is hot.',
      'One side of a crack stands higher than it did, and a pencil line across it no longer meets.',
    ),
  },
  steel: {
    'none-seen': see('No bar shows, and no rust.', 'There is no rust stain and no bar in sight.'),
    'rust-stain': see(
      'A brown stain runs in a straight line. No bar is in sight.',
      'Brown marks have come through, but no bar shows.',
    ),
    exposed: see(
      'A bar shows. Its ribs are whole, and a wire brush takes the light rust off.',
      'A bare bar lies in it, lightly rusted, whole when you brush it.',
    ),
    corroded: see(
      'A bar shows, and rust comes off it in layers.',
      'A bar lies bare, thick with rust that splits off in sheets.',
    ),
  },
  barLoss: {
    'within-limit': see('Cleaned and measured, no bar has lost more than a sliver.'),
    'one-bar': see(
      'Cleaned and measured, one bar has lost a third of its section. Its neighbours are whole.',
    ),
    neighbours: see(
      'Cleaned and measured, three bars side by side have each lost a third of their section.',
    ),
  },
  finish: {
    sealer: owner('A sealer is to go on.', 'The owner wants a sealer.'),
    'thin-film': owner('Thin paint is to go on.', 'It is to be painted, thin as house paint.'),
    'build-coat': owner(
      'A thick paint in several coats is to go on.',
      'A build coat is planned: thick paint, several times over.',
    ),
    'self-levelling': owner('A self-levelling layer is to be poured on it.'),
    'thin-overlay': owner('A thin trowelled overlay is to go on.'),
    overlay: owner(
      'Repair mortar goes on next, as a thick overlay or a patch.',
      'The owner wants it patched or overlaid with repair mortar, not thinly.',
    ),
    rebuild: owner('What is taken away is to be formed and poured anew.'),
    undecided: owner('Nobody has decided what goes on next.'),
  },
  salts: {
    none: owner('No salt reaches it.', 'It is never salted, and there is no sea or pool near.'),
    'de-icing': owner(
      'It is salted in winter.',
      'Road salt gets onto it every winter, on wheels and on boots.',
    ),
    'sea-or-pool': owner('Salt water has reached it for years.'),
  },
  freezeThaw: {
    rare: owner('It hardly ever freezes here.', 'Frost is rare here.'),
    some: owner(
      'Frost comes and goes for some weeks of the winter.',
      'It freezes and thaws for some weeks of the year.',
    ),
    often: owner(
      'Nights freeze and days thaw for most of the winter.',
      'It freezes often, on and off through the whole winter.',
    ),
  },
};

export const contaminantSigns: Readonly<Record<Contaminant, { by: Sense; text: string }>> = {
  oil: { by: 'drop', text: 'On the dark patches a drop of water stays a bead.' },
  'thin-coating': {
    by: 'scrape',
    text: 'A film of paint, thin as a leaf, curls up on the scraper.',
  },
  'thick-coating': {
    by: 'scrape',
    text: 'A hard layer lies on it, thicker than a coin. A chisel lifts its edge.',
  },
  'rubbery-coating': {
    by: 'scrape',
    text: 'A soft skin lies on it. A nail dents it, and it peels in strips.',
  },
  'salt-bloom': {
    by: 'see',
    text: 'A white crust lies on it, and comes back when it is brushed off.',
  },
  growth: { by: 'see', text: 'Moss and green algae grow on it.' },
};

export const warningSigns: Readonly<Record<Warning, { by: Sense; text: string }>> = {
  'settled-or-rocking': {
    by: 'see',
    text: 'One corner is lower than it was, and it moves when you step on it.',
  },
  'holds-something-up': { by: 'see', text: 'A post that carries a roof stands on it.' },
  'tendons-possible': {
    by: 'see',
    text: 'Round patches stand in a row along its edge: there may be stretched cables inside.',
  },
  'fire-or-chemical': {
    by: 'owner',
    text: 'There was a fire here, and the concrete has gone pink.',
  },
  'map-cracking': {
    by: 'see',
    text: 'Fine cracks join up all over, like dried mud, with a white gel in some.',
  },
  'old-coating-or-adhesive': {
    by: 'owner',
    text: 'Nobody knows how old the coating is, or what is in it.',
  },
  'buried-services': {
    by: 'see',
    text: 'A socket and a drain are close by: cables or pipes may run inside.',
  },
};
