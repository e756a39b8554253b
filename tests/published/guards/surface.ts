import { published as p, publishedPart as part, type Guard } from './guard';

const icri = 'ICRI 310.2R-2013, as reported';
const aci224 = 'ACI 224R Table 4.1, as reported: inches';
const aci201 = 'ACI 201.1R, as reported';

/** Profile, depth, cracks, rates and what a surface looks like, as the sources print it. */
export const surfaceGuards: readonly Guard[] = [
  p('csp.abrasive-blast', [2, 7], 'as printed', icri),
  part('csp.needs.build-coat', 'high', 5, 'as printed', icri),
  part('csp.needs.self-levelling', 'high', 6, 'as printed', icri),
  part('csp.needs.thin-overlay', 'high', 9, 'as printed', icri),
  p('csp.needs.overlay', [5, 10], 'as printed', icri),
  p('csp.needs.rebuild', [5, 10], 'as printed', icri),
  p(
    'csp.scale',
    [1, 10],
    'as printed',
    'ICRI 310.2R-2013: ten chips, as a maker of gauges lists them',
  ),
  p('csp.10-amplitude', 1 / 4, 'in', 'ICRI 310.2R-2013, as reported: over 1/4 in'),

  // Table 4.1 is printed in inches: 0.016, 0.012, 0.007, 0.006 and 0.004.
  p('crack.width.dry-air', 0.016, 'in', aci224),
  p('crack.width.humid', 0.012, 'in', aci224),
  p('crack.width.de-icing', 0.007, 'in', aci224),
  p('crack.width.sea', 0.006, 'in', aci224),
  p('crack.width.water-retaining', 0.004, 'in', aci224),
  p('crack.fine', 1, 'as printed', aci201),
  p('crack.wide', 2, 'as printed', aci201),
  p('depth.scaling-medium', [5, 10], 'as printed', aci201),
  p('depth.scaling-severe', [10, 20], 'as printed', aci201),
  p('rout.width', 6, 'as printed', 'UFGS 03931 3.8: at least 6 mm'),
  p('rout.depth', [6, 25], 'as printed', 'a reprint of the usual guide on cracks: 6 to 25 mm'),
  p('seal.temperature', 50, '°F', 'UFGS 03931: 50 F or warmer'),
  p('rout.sealant-below', [3, 6], 'as printed', 'UFC 3-270-03 2.1-2.7: 3 to 6 mm'),
  p('rout.silicone-below', [6, 9], 'as printed', 'UFC 3-270-03 2.1-2.7: 6 to 9 mm for silicone'),
  p('rout.backer', 25, 'as printed', 'UFC 3-270-03 2.1-2.7: 25 percent thicker'),

  p('depth.partial-limit', 100 / 3, 'percent as ratio', 'FHWA checklist 9: the top third'),
  p(
    'depth.partial-limit-wide',
    50,
    'percent as ratio',
    'Iowa State University 2012: the top one-half',
  ),
  p('depth.full-limit', 50, 'percent as ratio', 'UFC 3-270-04 4.2.6: to half the slab'),
  p('depth.bruise', 1 / 8, 'in', 'ACI 364.7T-02(11): about 1/8 in'),
  p('hollow.skin', 1 / 4, 'in', 'NRMCA CIP 20: the top 1/8 to 1/4 in'),
  p('hollow.skin-usual', [1 / 8, 1 / 4], 'in', 'NRMCA CIP 20: the top 1/8 to 1/4 in'),
  p(
    'shotblast.pass',
    1 / 8,
    'in',
    'Concrete Construction, equipment for cleaning: depths up to 1/8 inch',
  ),
  p('hammer.virginia', [30, 90], 'lb', 'Virginia 01-TAR1: 30 and 90 lb hammers'),
  p('strength.example-concrete', 4000, 'psi', 'trade article on shotblasting, as reported'),
  p('strength.untreated', 75, 'psi', 'trade article on shotblasting, as reported'),
  p('strength.blasted', 275, 'psi', 'trade article on shotblasting, as reported'),

  part('rate.scarify', 'typical', 128, 'ft2/h', 'US DOE at Hanford, 1997: 128 ft2/hr'),
  part(
    'rate.scarify',
    'high',
    350,
    'ft2/h',
    'data sheet quoted by CPWR, solution 800: 350 ft2/h at most',
  ),
  p('rate.shaving', 128, 'ft2/h', 'US DOE at Hanford, 1997: 128 ft2/hr over 816 ft2'),
  p('rate.scarify-most', [350, 500], 'ft2/h', 'data sheet quoted by CPWR, solution 800: 8 in drum'),
  p(
    'rate.scarify-most-wide',
    [500, 700],
    'ft2/h',
    'data sheet quoted by CPWR, solution 800: 10 in drum',
  ),
  p(
    'rate.shotblast-any',
    [200, 3000],
    'ft2/h',
    'trade text: about 200 to over 3,000 square feet per hour',
  ),
  p('rate.water-jet-robot', [25, 35], 'ft3/h', 'data sheet of a robot: 25 to 35 ft3/h'),
  p('rate.break-out', [1.9, 3.2], 'as printed', "estimators' tables, plain slab"),
  p('rate.break-out-reinforced', [3.9, 5.2], 'as printed', "estimators' tables, with bars"),
  p('rate.demolish', [1.9, 3.2], 'as printed', "estimators' tables, plain slab"),
  p('jet.hammers', [30, 50], 'as printed', 'FHWA 1989, TRID 1279402'),
];
