/** Drawings of machines, and of what goes on next: what they show, and the words in them. */

export const blastAim = {
  label:
    'A wall cut through on the left, with two blast nozzles. The upper one points square at the face from about 0.6 m (2 ft) off, and its grit spreads in a cone. The lower one comes at a slant. An arrow under the upper one marks the distance. On the right a sheet hangs to catch dust.',
  caption:
    'Hold the same distance all the way, square to the face for pits and a little slanted for dirt. The valve shuts when you let go. A sheet hangs behind you, and nobody stands inside it without a hood.',
  squarePits: 'square: pits',
  sameDistance: 'same distance',
  slantedDirt: 'slanted: dirt',
  valve: 'valve',
  sheet: 'sheet',
  wall: 'wall',
} as const;

export const shotWheel = {
  label:
    'Inside a shotblaster, from the side. A spinning wheel throws steel shot down at the floor. Shot and dust bounce up to the left. The shot falls back to the wheel, and a hose takes the dust to a filter. A skirt closes the gap to the floor, and the machine stands on its wheels.',
  caption:
    'Shut the feed before you stop, or the stream digs a hole. The skirt must lie close to the floor on all sides: where it does not, shot and dust come out. Start the dust collector first.',
  wheel: 'wheel',
  dustFilter: 'dust to filter',
  feedShut: 'feed shut',
  beforeYouStop: 'before you stop',
  walk: 'walk',
  shot: 'shot',
  comesBack: 'comes back',
  skirt: 'skirt',
  done: 'done',
} as const;

export const washAim = {
  label:
    'A pressure washer’s lance over a floor, from the side. One hand is at the trigger, the other on the lance. The fan of water meets the floor at a slant and pushes the dirt away from the clean side. A dashed lance further off shows where to begin. An arrow marks the wind from behind.',
  caption:
    'Begin at arm’s length and come closer until the dirt goes and no stripe shows. Both hands hold the lance, the wind comes from behind, and one angle and one distance stay the same.',
  beginArmsLength: 'begin at arm’s length',
  wind: 'wind',
  oneAngle: 'one angle',
  dirtGoesOff: 'dirt goes off',
  clean: 'clean',
  notYetClean: 'not yet clean',
} as const;

export const finishScale = {
  label:
    'Six finishes on concrete, all to one scale and all larger than life: a sealer, paint, a build coat, a self-levelling layer, a thin overlay and an overlay. The first two are thinner than a pencil line; the overlay is taller than the drawing.',
  caption:
    'All drawn to one scale, larger than life: the mark on the left is 1 mm (1/25 in). The thinner the finish, the smoother it wants the concrete, because what stands out of it shows or wears through.',
  oneScaleForAll: 'one scale for all',
  names: {
    sealer: 'sealer',
    'thin-film': 'paint',
    'build-coat': 'build coat',
    'self-levelling': 'self-levelling',
    'thin-overlay': 'thin overlay',
    overlay: 'overlay',
  },
} as const;
