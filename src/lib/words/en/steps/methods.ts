import type { MethodId } from '$shared/methods';
import type { Say, StepWords } from '$lib/words/types';

/** Of no use where the hammer is a light one anyway. */
export const lightLast = 'Near edge and steel, and for the last layer: a light hammer.';

const lines = (say: Say) => ({
  headFlat: 'Keep the head flat, and go in overlapping rows. Then cross them.',
  topDown:
    'Wash from the top down and downwind. Let each pass overlap the last, at the same distance.',
  lightPasses: `Set a shallow cut. Several light passes do less harm than one deep one, and ${say.figure('depth.shallow')} is as deep as it goes.`,
  keepMoving: 'Keep it moving, and do not dwell on one spot.',
  fromMiddle: 'Work from the middle towards the sawn edge.',
  chiselHeld: `Hold the chisel at ${say.figure('chisel.angle')} to the surface, and take small bites.`,
  twoSpots: 'Try it on a sound spot and a bad one, so that the jet takes only the bad.',
});

/** What the settings of a method say too: left out where they stand beside the step. */
export const saidBySettings = (say: Say): readonly string[] => Object.values(lines(say));

/** The main method as a step. */
export const methodSteps = (say: Say): Readonly<Record<MethodId, StepWords>> => {
  const told = lines(say);
  return {
    'pressure-wash': {
      name: 'Wash with pressure',
      how: [
        'Keep the engine outside and people away. Try a hidden spot first with a fan nozzle, at a distance that does not carve.',
        told.topDown,
        'Hold the water back from storm drains.',
        'Done when a dark cloth wiped over it, once dry, stays clean.',
      ],
    },
    grind: {
      name: 'Grind',
      how: [
        'Fit the shroud and switch on the extraction before the grinder. Wear the respirator that the dust table names.',
        told.headFlat,
        'Stop as soon as you see clean, sound concrete with fine sand in it.',
        'Done when a scraper takes nothing and a hard brush lifts no dust.',
      ],
    },
    'abrasive-blast': {
      name: 'Blast with grit',
      how: [
        'Blast only with a valve that shuts when you let go, never tied open, and a hood with clean breathing air of its own.',
        'Put up a tent that holds the dust in. Keep everybody else out; a helper wears a respirator too.',
        'Use grit that holds no silica. Never blast with sand.',
        'Move the nozzle evenly, and look often. Stop at sound concrete.',
        'Done when it is clean and rough all over, in corners and hollows too.',
      ],
    },
    scarify: {
      name: 'Scarify',
      how: [
        'Find bolts, bars and joints first, and mark them.',
        told.lightPasses,
        'Start the extraction, lower the drum while you move, and lift it before you stop. Go in rows, then cross them.',
        'Done when what was loose or coated is gone, and the floor rings clear.',
      ],
    },
    shotblast: {
      name: 'Shotblast',
      how: [
        'See that the floor is dry. Pick up bolts and stones.',
        'Try a small patch. Set the shot size and the speed by what it leaves.',
        'Go in straight rows that just overlap. Shut the shot feed before you stop, and pick up stray shot with a magnet.',
        'Done when the floor is as rough all over as the target asks, and no shiny or coated spot is left.',
      ],
    },
    'needle-scale': {
      name: 'Needle scale',
      how: [
        'Start the hood with its vacuum. Hold the needles nearly square to the surface, and let the tool do the work.',
        told.keepMoving,
        'Change over with someone often: it shakes the hands hard.',
        'Done when no loose chip is left and the surface is dull all over.',
      ],
    },
    'break-out': {
      name: 'Break out',
      how: [
        'Start the water or the hood before the first blow.',
        told.fromMiddle,
        told.chiselHeld,
        lightLast,
        `Go ${say.figure('patch.into-sound')} into sound concrete.`,
        'Done when the bottom is rough, level and firm, and rings clear.',
      ],
    },
    'water-jet': {
      name: 'Jet with water',
      how: [
        'Have a specialist do it. Agree first who holds the water and who treats it.',
        told.twoSpots,
        'Keep everybody outside the screens while the pump is on.',
        'Done when all that is left rings clear, and slurry is rinsed off before it sets.',
      ],
    },
  };
};
