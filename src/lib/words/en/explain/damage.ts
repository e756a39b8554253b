/** Drawings of damage: what they show, and the words in them. */

export const bruisedSkin = {
  label:
    'A repair on a slab, cut through. Under the repair lies a thin band of fine cracks, left by an impact tool. Below it the concrete is sound. The crayon line lies below the cracked band.',
  caption:
    'The repair holds to the skin, but the skin no longer holds to the slab. The crayon line shows how far down to clean before you repair. Cracks drawn larger than life.',
  repair: 'repair',
  bruisedSkinAboveLine: 'bruised skin above the line',
  soundConcrete: 'sound concrete',
} as const;

export const crackMarks = {
  label:
    'A crack in a slab, seen from above. Two short crayon lines cross it, and one crayon line stands at each of its tips. Beside each mark stands the date. A card with lines of known width lies over the crack.',
  caption:
    'Two short lines across it, one at each tip, and the date beside them. Look again on a hot day and on a cold one. If a line has parted, or the crack has passed its tip, it moves.',
  tipDate: 'tip, date',
  date: 'date',
  cardForWidth: 'card for width',
  crackMarked: 'crack, marked',
} as const;

export const freezingPore = {
  label:
    'A piece of slab three times. First rain stands on it, and its cracks are full of water. Then the water has turned to ice, and pushes the cracks apart. Then it has thawed: pieces of the top lie loose, and stones show.',
  caption:
    'Water that freezes needs about a tenth more room. A full crack or pore has none to give, so the concrete breaks, and pieces come off. Not to scale.',
  wet: 'wet',
  frozen: 'frozen',
  thawed: 'thawed',
  poresFill: 'water fills it',
  icePushes: 'ice pushes out',
  piecesOff: 'pieces come off',
} as const;

export const netCracks = {
  label:
    'Two nets of cracks side by side, each from above with a coin, and from the side below. Left, crazing: a fine, close net whose cracks are only skin deep. Right, map cracking: meshes much wider than the coin, and cracks that go far down.',
  caption:
    'Crazing is a close net in the skin alone, and mostly harmless. In map cracking the meshes are wider, and the cracks may go deep. The eye cannot be sure which it is: a laboratory can.',
  crazing: 'crazing',
  mapCracking: 'map cracking',
  fromAboveWithCoin: 'from above, with a coin',
  fromSideSkinDeep: 'from the side: skin deep',
  mayGoDeep: 'may go deep',
} as const;

export const scalingGrades = {
  light: 'Light, on a tenth of it',
  medium: 'Medium, on a quarter',
  severe: 'Severe, on half of it',
  label:
    'Three slabs seen from above, a coin on each. On the first a few thin patches of skin are gone and sand shows. On the second more has gone and stones show. On the third half has gone, and stones stand out with shade round them.',
  caption:
    'Scaling from above, to scale beside a coin. Sand shows first, then stones, then the stones stand out by themselves.',
} as const;

export const holeDepth = {
  label:
    'A slab cut through. Earth is dug away at its edge, where a tape shows how thick it is. Lines mark a third and half of that. The damage is shallow. The finished hole goes on round a bar and behind it, and it passes the third.',
  caption:
    'The damage seen is shallow. The hole has to go behind the bar, and that takes it past the third. Count the finished hole, not the damage. Drawn to scale: a slab of 150 mm (6 in), a bar of 12 mm (1/2 in) under 40 mm (1 1/2 in).',
  thickness: 'thickness',
  damage: 'damage',
  finishedHole: 'finished hole',
  third: 'a third',
  half: 'half',
  bar: 'bar',
} as const;
