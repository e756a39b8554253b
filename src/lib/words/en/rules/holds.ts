import type { holdRules } from '$lib/advice/rules';
import type { Reason } from '$lib/advice/types';
import { elementNames, methodNames, saltNames } from '$words/names';
import { trialSentences } from './trial';
import type { RuleSentence } from '$lib/words/types';
import { amount, named, namedAll, saw } from './facts';

/** Who has a part made new: of what carries, nobody alone. */
const madeNewBy = (reason: Reason): string =>
  saw(reason, 'who', 'engineer')
    ? 'It carries load: call a licensed structural engineer, who says how this part is replaced.'
    : 'Call a concrete contractor to replace this part through its full depth.';

/** Why the work must wait: what is wrong, who to call, and what happens next. */
export const holdSentences: Readonly<Record<(typeof holdRules)[number], RuleSentence>> = {
  'structure-before-removal': (reason) => {
    const element = named(reason, 'element', elementNames);
    const carries = saw(reason, 'told', 'yes')
      ? 'Something rests on this concrete, and the work would take some of the concrete away.'
      : `The work would take concrete out of ${element || 'this part'}, and that concrete carries load.`;
    return `${carries} Call a licensed structural engineer. Work starts only when they have said what may go, and what must be propped first.`;
  },
  'tendons-before-depth': (_, say) =>
    `There may be stretched steel cables inside. Cut one, and it can let go with deadly force along its whole length. No sawing, no drilling, and no work that may reach ${say.figure('tendon.depth')} deep until a licensed structural engineer has had them located and marked.`,
  'hollow-unmeasured': () =>
    'It sounds hollow, and it hangs free. How deep the layer has let go cannot be seen: it may be down to the steel. A licensed structural engineer has it measured before anything is taken off.',
  'same-part-in-doubt': (reason) => {
    const other = `Another zone of ${named(reason, 'element', elementNames) || 'this part'} may be failing, and all of it carries together.`;
    return saw(reason, 'sure', 'perhaps')
      ? `${other} Nobody has settled that yet: go by the advice for that zone first. Nobody works here before it is settled, or a licensed structural engineer has said what carries.`
      : `${other} Nobody works here either until a licensed structural engineer has said what carries.`;
  },
  'settled-or-rocking': () =>
    'The concrete has sunk or rocks, so the ground or what carries it has failed. Call a licensed structural engineer to find the cause. A repair on top would crack again until that is put right.',
  'moving-crack': () =>
    'This crack moves, and a stiff filling would only break beside it. Call a licensed structural engineer to find out why it moves. It may have to become a joint.',
  'rust-with-salts': (reason) =>
    `Rust shows, and ${named(reason, 'salts', saltNames) || 'salt'} reaches this concrete. Salt keeps steel rusting under any finish, so nothing goes over it yet. ${
      saw(reason, 'who', 'engineer')
        ? 'Sound round the stain. This concrete carries load: a licensed structural engineer says where one spot is opened, and has the depth of the bar and the chloride measured.'
        : 'Sound round the stain, open one spot, measure how deep the bar lies there, and have the chloride measured.'
    }`,
  'rust-at-crack': (reason) =>
    saw(reason, 'who', 'engineer')
      ? 'Rust comes out of a crack, so water reaches a bar through it. A seal over the top would hide it while it goes on. This concrete carries load: call a licensed structural engineer.'
      : 'Rust comes out of a crack, so water reaches a bar through it. A seal over the top would hide it while it goes on. Open the crack to the bar, or ask an engineer.',
  'nothing-over-rust': (reason) =>
    saw(reason, 'who', 'engineer')
      ? 'Nothing goes over a rust stain yet. Sound round it. This concrete carries load: a licensed structural engineer says where one spot is opened to see what rusts.'
      : 'Nothing goes over a rust stain yet. Sound round it and open one spot first. A nail or a wire in the surface is cut out; a bar is freed.',
  'bloom-under-dry-finish': () =>
    'Salt bloom is carried out by water, and it pushes off a finish that wants the concrete dry. Find where the water comes from, and stop it, before you coat.',
  'fire-or-chemical': () =>
    'Fire or chemicals weaken concrete further in than you can see. Call a licensed structural engineer. They decide from tests how much is still good.',
  'map-cracking': () =>
    'Cracks like a map can mean that the concrete itself is swelling, or that frost has ruined it. Neither will hold a patch. Send a piece to a concrete testing laboratory, and wait for what they find.',
  'old-coating': () =>
    'The old coating or glue may hold lead or asbestos, and any tool would put it into the air. Looking cannot settle it. Have a licensed person take a sample, and a testing laboratory test it. Make no dust before the result is there.',
  'buried-services': () =>
    'There may be cables or pipes where you would cut or break. Call a service that locates them. Start when they are marked, and what must be dead is switched off and checked.',
  'full-depth': (reason, say) => {
    const half = amount(reason, 'half');
    const limit = half === null ? '' : `, which is ${say.length(half)} here`;
    return `The finished hole would go through ${say.fraction(say.valueOf('depth.full-limit'))} of the thickness or more${limit}. A repair of the surface would not last. ${madeNewBy(reason)}`;
  },
  through: (reason) =>
    `The damage goes right through, so there is nothing left to repair onto. ${madeNewBy(reason)}`,
  'thickness-decides': (reason, say) => {
    const half = amount(reason, 'half');
    return half === null
      ? `Where the finished hole reaches ${say.fraction(say.valueOf('depth.full-limit'))} of the thickness, the part must be replaced. Past ${say.fraction(say.valueOf('depth.partial-limit'))} a patch is doubtful. Measure the thickness first.`
      : `Whether this can be repaired depends on how deep the finished hole gets. From ${say.length(half)}, which is ${say.fraction(say.valueOf('depth.full-limit'))} of the thickness, this part must be replaced. Measure the depth first, and count ${say.figure('patch.into-sound')} into sound concrete.`;
  },
  'bar-section-loss': (reason, say) =>
    reason.figures?.includes('bar.loss-neighbours')
      ? `Rust has taken more than ${say.figure('bar.loss-neighbours')} of bars that lie side by side. Call a licensed structural engineer. They decide what must be propped, and where new steel goes in.`
      : `Rust has taken more than ${say.figure('bar.loss-one')} of a bar. Call a licensed structural engineer. They decide what must be propped, and where new steel goes in.`,
  'answers-differ': (reason, say) => {
    const methods = namedAll(reason, 'methods', methodNames);
    const open =
      methods.length > 1
        ? `Your answers leave more than one outcome open. It may come to ${say.either(methods)}.`
        : 'Your answers leave more than one outcome open.';
    return `${open} Do the first test named here, then answer again.`;
  },
};

/** What stands before the work, and what a test patch put there. */
const before = { ...holdSentences, ...trialSentences };

/** What holds the work, by its rule alone: what stands in sight needs no other rule's words. */
export const holdSentence: RuleSentence = (reason, say) =>
  before[reason.rule as keyof typeof before](reason, say);
