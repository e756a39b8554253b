import type { MethodId } from '$shared/methods';
import type { MethodWords, Say } from '$lib/words/types';

/** The methods in English, gentlest first. */
export const methodWords = (say: Say): Readonly<Record<MethodId, MethodWords>> => ({
  'pressure-wash': {
    name: 'Pressure washing',
    doing: 'Wash the surface with pressure',
    what: 'A jet of water carries off dust, growth and a powdery skin. It takes nothing that holds.',
    leaves: 'The texture that is there, clean and wet.',
    costs: 'Dirty water to catch, and drying time before any dry work.',
  },
  grind: {
    name: 'Grinding',
    doing: 'Grind the surface',
    what: `Turning diamond segments plane off up to ${say.figure('depth.thin')}. On floors it is a machine you walk behind; elsewhere it is held in the hand.`,
    leaves: `A nearly smooth surface, ${say.figure('csp.grind')}.`,
    costs: 'Fine dust, so it needs extraction or water. It rides over hollows.',
  },
  'abrasive-blast': {
    name: 'Abrasive blasting',
    doing: 'Blast the surface with grit',
    what: `Grit thrown by air follows any shape, and takes off up to about ${say.figure('depth.thin')}.`,
    leaves: `A clean, open surface, ${say.figure('csp.abrasive-blast')}, with no bruised skin.`,
    costs: 'Open dust, a tent to hold it, much noise, and grit to clear away.',
  },
  scarify: {
    name: 'Scarifying',
    doing: 'Scarify the surface',
    what: `Toothed wheels on a drum chip at a floor, down to ${say.figure('depth.shallow')}.`,
    leaves: `A grooved surface, ${say.figure('csp.scarify')}, with a bruised skin.`,
    costs:
      'Dust, noise, shaking, and a second pass with another tool to take the bruised skin off.',
  },
  shotblast: {
    name: 'Shotblasting',
    doing: 'Shotblast the surface',
    what: `Steel shot is thrown at a dry floor and sucked up again. It gets into pits and grooves, and takes off up to ${say.figure('depth.shallow')} in several passes.`,
    leaves: `An even, open surface, ${say.figure('csp.shotblast')}, hardly bruised.`,
    costs:
      'A heavy machine and its dust collector. It needs a dry floor, and leaves a border along walls.',
  },
  'needle-scale': {
    name: 'Needle scaling',
    doing: 'Needle scale the surface',
    what: `A bundle of steel needles hammers thin loose concrete off edges and small spots, up to about ${say.figure('depth.thin')}.`,
    leaves: `A finely pecked surface, ${say.figure('csp.needle-scale')}, with a bruised skin.`,
    costs: 'Slow work, with dust, noise and strong shaking of the hands.',
  },
  'break-out': {
    name: 'Breaking out',
    doing: 'Break out the concrete',
    what: 'A hammer takes the concrete off down to sound, at any depth. It is the only one of the common methods for hollow and rotten concrete.',
    leaves: `A rough surface with stones showing, ${say.figure('csp.break-out')}, and the most bruised skin of all.`,
    costs:
      'Noise, dust, shaking, rubble to carry away, and a second pass with another tool to take the bruised skin off.',
  },
  'water-jet': {
    name: 'Water jetting',
    doing: 'Have the concrete jetted with water',
    what: 'A jet of very high pressure cuts away weak concrete and leaves what is sound. A specialist does it.',
    leaves: `A rough, clean surface, ${say.figure('csp.water-jet')}, with no bruised skin.`,
    costs: 'A specialist crew, a closed-off site, and a lot of dirty water to hold and treat.',
  },
});
