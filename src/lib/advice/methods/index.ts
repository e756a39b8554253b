import type { MethodId } from '$shared/methods';
import { abrasiveBlast } from './abrasive-blast';
import { breakOut } from './break-out';
import { grind } from './grind';
import type { MethodRule } from './judge';
import { needleScale } from './needle-scale';
import { pressureWash } from './pressure-wash';
import { scarify } from './scarify';
import { shotblast } from './shotblast';
import { waterJet } from './water-jet';

/** Every method as a rule, by id. */
export const methodRules: Readonly<Record<MethodId, MethodRule>> = {
  'pressure-wash': pressureWash,
  grind,
  'abrasive-blast': abrasiveBlast,
  scarify,
  shotblast,
  'needle-scale': needleScale,
  'break-out': breakOut,
  'water-jet': waterJet,
};
