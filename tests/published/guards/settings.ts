import { published as p, publishedPart as part, type Guard } from './guard';

const mil = 'MIL-HDBK-1110';
const gsa = 'US GSA procedure 0451004S';
const niosh = 'US NIOSH, engineering controls, grinding concrete';
const doe = 'US DOE at Hanford, 1997';
const blast = 'Concrete Construction, Sandblasting of concrete surfaces';
const nozzles = 'Surface Finishing Guidebook 2011-12';
const hydro = 'Concrete Construction, Hydrodemolition';
const ufc = 'UFC 3-270-03';
const chain = 'Concrete Construction, after California';

/** How machines are set, in the source's own unit. */
export const settingsGuards: readonly Guard[] = [
  p('wash.loose-dirt', 2000, 'psi', `${mil} 6.3.2`),
  p('wash.loose-paint', 5000, 'psi', `${mil} 6.3.2`),
  p('wash.masonry', [500, 1000], 'psi', gsa),
  p('wash.prepare', [1000, 2000], 'psi', gsa),
  p('wash.home', [2500, 3500], 'psi', 'do-it-yourself pages'),
  p('wash.fan', 25, 'as printed', 'do-it-yourself pages: 25 degrees'),
  p('grind.grit-remove', [18, 40], 'as printed', 'texts of the trade'),
  p('grind.grit-smooth', [80, 200], 'as printed', 'texts of the trade'),
  p('grind.segments', [3, 6], 'as printed', 'texts of the trade: three, six'),
  p('vacuum.current', 10, 'as printed', `${niosh}: at least 10 amps`),
  p('vacuum.hose', [1.5, 2], 'in', niosh),
  p('vacuum.hose-length', 15, 'ft', niosh),
  p('scarify.shown-depth', 1 / 8, 'in', doe),
  p('scarify.deepest', 0.5, 'in', doe),
  p('scarify.new-layer', 1 / 8, 'in', 'texts of the trade'),
  p('scarify.leaves', [4, 5], 'as printed', 'texts of the trade'),
  p('shotblast.shot', [280, 550], 'as printed', 'data sheet: S280 to S550'),
  p('shotblast.shot-coarse', 780, 'as printed', 'data sheet: S780'),
  p('blast.pressure-least', 90, 'psi', blast),
  p('blast.pressure', 100, 'psi', blast),
  p('blast.air', 300, 'cfm', blast),
  p('blast.nozzle', 3 / 8, 'in', blast),
  p('blast.hose', 1.5, 'in', blast),
  p('blast.distance', 2, 'ft in mm', blast),
  p('blast.angle', 90, 'as printed', `${blast}: perpendicular`),
  p('blast.deepest', 3 / 4, 'in', blast),
  p('blast.angle-steel', [45, 90], 'as printed', `${mil} 6.7.1.7`),
  p('blast.air.6mm', 97, 'cfm', nozzles),
  p('blast.air.8mm', 152, 'cfm', nozzles),
  p('blast.air.10mm', 220, 'cfm', nozzles),
  p('jet.hand.distance', 3, 'in', `${mil} 6.7.10`),
  p('jet.hand.pressure', 10, 'ksi', `${mil} 6.7.10`),
  p('jet.hand.flow', 10, 'gpm', `${mil} 6.7.10`),
  p('jet.pressure', [10, 40], 'ksi', hydro),
  p('jet.flow', [15, 100], 'gpm', hydro),
  p('jet.depth', [2, 4], 'in', hydro),
  p('hammer.large-patch', 30, 'lb', `${ufc} 14.3`),
  p('hammer.small-patch', [10, 15], 'lb', `${ufc} 14.3`),
  p('hammer.chisel-point', 15, 'lb', "a state's special note on partial-depth patching, 2.5"),
  p('chisel.angle', [45, 90], 'as printed', `${ufc} 15.3`),
  p('saw.blade', [6, 10], 'in', `${ufc} 14.2`),
  p('chain.lengths', [4, 5], 'as printed', `${chain}: four or five`),
  p('chain.length', 18, 'in', chain),
  p('chain.link', 1, 'in', chain),
  p('chain.bar', 2, 'ft in mm', chain),
  p('trial.shot-small', 330, 'as printed', 'data sheet: S330'),
  p('trial.shot-middle', 390, 'as printed', 'data sheet: S390'),
  part('shotblast.pass-span', 'high', 1 / 8, 'in', 'Concrete Construction: depths up to 1/8 inch'),
  p('nozzle.wear-replace', 10, 'as printed', 'do-it-yourself page: a drop of 10% or more'),
  p('water.at-hammer', 350, 'mL/min', 'NIOSH 2008-127'),
];
