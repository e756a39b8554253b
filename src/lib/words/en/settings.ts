import type { FigureId } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import type { SettingBasis, SettingPart } from '$shared/settings';
import type { ToolId } from '$shared/tools';
import type { SurfaceHere } from '$lib/advice/surface-here';
import type { Say } from '$lib/words/types';
import { capital } from '$lib/words/by-language';
import { toolWords } from './safety/tools';

/** What each line of the settings is called. */
export const settingNames: Readonly<Record<SettingPart, string>> = {
  tool: 'Tool',
  setting: 'Setting',
  pass: 'Pass',
  stop: 'Stop',
};

/** What a setting rests on, in a word or three beside it. */
export const settingBases: Readonly<Record<SettingBasis, string>> = {
  published: 'published',
  reported: 'as reported',
  memory: 'from memory',
  practice: 'common practice',
  derived: 'worked out',
  'test-patch': 'by the test square',
};

export const settingsTitle = 'How it is set';

type Lines = Readonly<Record<SettingPart, string>>;

/** Tool, setting, pass and sign to stop of each method, where no case says which tool. */
export const settingWords = (say: Say): Readonly<Record<MethodId, Lines>> => ({
  'pressure-wash': {
    tool: `Pressure washer, ${say.figure('wash.flow')}`,
    // A home washer runs at more: figure `wash.home`.
    setting: `${say.figure('wash.prepare')}, a stronger machine turned down; ${say.figure('wash.fan')} fan, never a pencil jet`,
    pass: `${say.figure('wash.distance')} off, back and forth, rows overlap`,
    stop: 'When sand or stone starts to show',
  },
  grind: {
    tool: 'Grinder with hood and vacuum',
    setting: `Diamonds of grit ${say.figure('grind.grit-remove')}; soft bond on hard concrete`,
    pass: `${say.figure('grind.pass')} a pass, the second crosswise`,
    stop: 'When the disc shines and no longer cuts',
  },
  'abrasive-blast': {
    tool: `Blast nozzle from ${say.figure('blast.nozzle')}, air ${say.figure('blast.air')}`,
    setting: `${say.figure('blast.pressure-least')} at the nozzle, better ${say.figure('blast.pressure')}`,
    pass: `Square to it, ${say.figure('blast.distance')} off, straight lines`,
    stop: 'When sound stones stand out of the paste',
  },
  scarify: {
    tool: 'Scarifier with vacuum',
    setting: 'Sharp cutters, a shallow cut to begin with',
    pass: `${say.figure('scarify.pass')} a pass, the next crosswise`,
    stop: 'When stones tear out instead of breaking',
  },
  shotblast: {
    tool: 'Shotblaster with dust collector',
    setting: `Shot S${say.figure('shotblast.shot')}; larger or slower is rougher`,
    pass: `To ${say.figure('shotblast.pass')}, deeper in more passes, crosswise`,
    stop: 'When dust or shot comes out under the skirt',
  },
  'needle-scale': {
    tool: 'Needle scaler with hood and vacuum',
    setting: 'Air as its label says, needles nearly square to it',
    pass: 'Keep it moving, light passes',
    stop: 'When sound stone turns white under it',
  },
  'break-out': {
    tool: `Hammer to the ${say.figure('hammer.above-steel')} class, ${say.figure('hammer.at-steel')} around steel`,
    setting: `Chisel at ${say.figure('chisel.angle')}, water ${say.figure('water.at-hammer')} at the point`,
    pass: 'From the middle out to the saw cut',
    stop: 'When you meet a pipe, a tube or a cable',
  },
  'water-jet': {
    tool: 'A specialist’s robot or lance',
    setting: `${say.figure('jet.pressure')}, ${say.figure('jet.flow')}`,
    pass: 'Set on a sound spot and a bad one',
    stop: 'When it eats into what rings',
  },
});

/** How a machine passes where nothing weak has to come off: it roughens, or it bares what is coated. */
const firmPasses: Readonly<Partial<Record<MethodId, string>>> = {
  grind: 'One light pass, then once crosswise',
  scarify: 'One shallow pass, then once crosswise',
  shotblast: 'One pass, rows touching, slower where it is still smooth',
};
const baringPass = 'Row by row until it is bare, then once crosswise';

/** The pass of the case in hand; null where the usual line says it. */
export function passHere(method: MethodId, here: SurfaceHere | null): string | null {
  const firm = firmPasses[method];
  if (!firm || !here || here.weak) return null;
  return here.coated ? baringPass : firm;
}

/** Said of a tool beside its name. */
const fitted: Readonly<Partial<Record<ToolId, string>>> = {
  'floor-grinder': 'with hood and vacuum',
  'hand-grinder': 'with hood and vacuum',
  jackhammer: 'with water or a hood',
  'chipping-hammer': 'with water or a hood',
};

/** The tool of a case by its class, where it has one, and what belongs on it. */
export interface ToolSaid {
  readonly name: string;
  readonly with: string;
}

/** The tool of the case in hand; null where the usual line says it all. */
export function toolHere(tool: ToolId, kind: FigureId | undefined, say: Say): ToolSaid | null {
  const beside = fitted[tool];
  if (!beside) return null;
  return {
    name: `${capital(toolWords[tool].name)}${kind ? ` to ${say.figure(kind)}` : ''}`,
    with: beside,
  };
}
