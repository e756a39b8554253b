import { methods, type MethodId, type StepId } from '$shared/methods';
import type { Redo, VerdictRule } from './rules';

/** What the way back depends on: the method advised, and whether floor machines can stand there. */
export interface RedoContext {
  readonly method: MethodId | null;
  readonly floor: boolean;
}

type Way = (context: RedoContext) => Redo;

const nothing: Redo = { steps: [], ask: [] };
const again =
  (...steps: StepId[]): Way =>
  () => ({ steps, ask: [] });

/** The method that cuts a rougher profile than washing or grinding, where nothing stronger was advised. */
const rougher = ({ method, floor }: RedoContext): StepId =>
  method && methods[method].class >= 2 ? method : floor ? 'shotblast' : 'abrasive-blast';

/** Weak concrete goes with the main method, deeper; a skin the tool itself bruised goes by blasting. */
const removeMore: Way = ({ method, floor }) => {
  const bruised = method !== null && ['yes', 'most'].includes(methods[method].bruises);
  const deeper: StepId = rougher({ method, floor });
  return {
    steps: bruised ? ['blast-clean', deeper, 're-sound'] : [deeper, 're-sound'],
    ask: ['looseness', 'depth'],
  };
};

const ways: Readonly<Partial<Record<VerdictRule, Way>>> = {
  'sounds-dull': () => ({
    steps: ['sound-and-mark', 'saw-cut', 'break-out', 're-sound'],
    ask: ['looseness', 'depth'],
  }),
  'edge-not-square': again('saw-cut'),
  'bar-too-close': again('free-bar', 'clean-bar'),
  'bar-must-be-freed': again('free-bar', 'clean-bar'),
  'bar-rusty': again('clean-bar', 'free-bar'),
  'chloride-high': () => ({ ...nothing, who: 'engineer' }),
  'chloride-between': () => ({ ...nothing, who: 'engineer' }),
  'chloride-tendons': () => ({ ...nothing, who: 'engineer' }),
  'carbonated-to-bar': () => ({ steps: ['free-bar'], ask: ['steel'], who: 'engineer' }),
  'potential-high': () => ({ steps: [], ask: ['steel'], who: 'engineer' }),
  'potential-between': () => ({ ...nothing, who: 'engineer' }),
  'too-smooth': (context) => ({ steps: [rougher(context), 'vacuum'], ask: ['finish', 'texture'] }),
  'too-rough': () => ({ steps: ['fill-level'], ask: ['finish'] }),
  'profile-unknown': () => ({ steps: [], ask: ['finish'], who: 'maker' }),
  'ph-off': again('final-wash'),
  'dust-left': again('last-clean'),
  'drop-beads': () => ({ steps: ['degrease', 'last-clean'], ask: ['contamination'] }),
  'drinks-too-slowly': (context) => ({
    steps: ['degrease', rougher(context), 'last-clean'],
    ask: ['contamination'],
  }),
  'sheet-damp': () => ({ steps: ['wet-or-dry', 'moisture-test'], ask: [], who: 'maker' }),
  'too-humid': () => ({ steps: ['wet-or-dry', 'moisture-test'], ask: [], who: 'maker' }),
  'surface-dry': again('wet-or-dry'),
  'surface-wet': again('wet-or-dry'),
  'fill-young': again('fill-cure'),
  'fill-dull': again('break-out', 'fill-level', 'fill-cure'),
  'fill-closed': again('fill-cure', 'last-clean'),
  'too-near-dew': again('wet-or-dry'),
  'too-cold': () => ({ ...nothing, who: 'maker' }),
  'too-hot': () => ({ ...nothing, who: 'maker' }),
  cool: () => ({ ...nothing, who: 'maker' }),
  'gone-stale': again('last-clean'),
  spoiled: again('last-clean', 'check-ready'),
  'mean-low-base': removeMore,
  'single-low': removeMore,
  'mean-low-mixed': removeMore,
  'mean-low-bond': again('wet-or-dry', 'last-clean'),
  'mean-low-repair': () => ({ ...nothing, who: 'maker' }),
};

/** What to do about a verdict; nothing where nothing is to be redone. */
export const redoFor = (rule: VerdictRule, context: RedoContext): Redo =>
  ways[rule]?.(context) ?? nothing;
