import type { ReadinessReason, VerdictRule } from '$lib/readiness/rules';
import type { VerdictSentence } from '$lib/words/readiness-types';
import type { Say } from '$lib/words/types';

type Verdict = ReadinessReason<VerdictRule>;

const count = (verdict: Verdict, fact: string): number => {
  const value = verdict.facts?.[fact];
  return typeof value === 'number' ? value : 0;
};
const degrees = (verdict: Verdict, fact: string, say: Say) => say.temperature(count(verdict, fact));
const stress = (verdict: Verdict, fact: string, say: Say) => say.stress(count(verdict, fact));
/** "2 of 5" */
const share = (verdict: Verdict, say: Say) =>
  `${say.number(count(verdict, 'failed'))} of ${say.number(count(verdict, 'have'))}`;
const low =
  (where: string): VerdictSentence =>
  (verdict, say) =>
    `The mean of the tests that broke ${where} is ${stress(verdict, 'mean', say)}. ${stress(verdict, 'asked', say)} is asked.`;
const spoilers: Readonly<Record<string, string>> = {
  rain: 'Rain',
  dust: 'Dust',
  traffic: 'Traffic',
};

/** Why each check stands as it does. */
export const verdictSentences: Readonly<Record<VerdictRule, VerdictSentence>> = {
  passed: (verdict) =>
    verdict.facts?.sure === 'no'
      ? 'Passes on its mean. So few tests do not prove that the true mean is that high: more would.'
      : 'Passes.',
  'nothing-entered': () => 'Nothing entered yet.',
  'taken-before': () => 'Taken before the answers changed: do it again.',
  'too-few': (verdict, say) =>
    `${say.number(count(verdict, 'have'))} of ${say.number(count(verdict, 'need'))} entered.`,
  'fix-entries': () => 'Something typed here cannot be read. Mend it first.',
  held: () => 'The advice for this zone holds the work. Clear that first.',
  'sounds-dull': () =>
    'It sounds dull somewhere. Mark it, break it out to sound concrete, and sound again.',
  'edge-not-square': () => 'An edge is thin, sloping or sharp. Saw it square.',
  'bar-too-close': (verdict, say) =>
    `${share(verdict, say)} too tight. Clear more behind the bar, and clean it.`,
  'bar-must-be-freed': () => 'A bar that has rusted may not stay bonded. Free it all round.',
  'bar-rusty': () => 'Rust is left. Clean on, and follow the bar until it is bright.',
  'chloride-high': (verdict, say) =>
    `${share(verdict, say)} so high that rust is likely to go on under the repair. Salt in the depth does not rinse out. An engineer decides before you cover it: take that concrete out, or protect the steel.`,
  'chloride-tendons': (_, say) =>
    `Low for bars. If there are tendons in it, that is no answer: new concrete with tendons may have ${say.figure('chloride.prestressed')}. Ask an engineer.`,
  'chloride-between': () =>
    'A medium risk: not low, not high. The number alone does not decide. An engineer who knows the job sets the limit: put it in as your own figure.',
  'carbonated-to-bar': (verdict, say) =>
    `At ${share(verdict, say)} the change has reached the bar. Free the bar there, and ask an engineer.`,
  'cover-unknown': () => 'Measure how deep the bar lies, and type it in above.',
  'potential-high': (verdict, say) =>
    `${share(verdict, say)} point to a high risk that steel is rusting. Ask an engineer.`,
  'potential-between': () =>
    'The values lie where they do not decide. Ask someone who knows corrosion tests.',
  'too-smooth': (verdict, say) =>
    `${share(verdict, say)} too smooth. ${say.csp([count(verdict, 'low'), count(verdict, 'high')])} is asked.`,
  'too-rough': (verdict, say) =>
    `${share(verdict, say)} too rough. ${say.csp([count(verdict, 'low'), count(verdict, 'high')])} is asked. Fill level with repair mortar.`,
  'profile-unknown': () =>
    'What is asked is not known while the finish is open. Decide it, or ask its maker.',
  'ph-off': (verdict, say) =>
    `${share(verdict, say)} too far from the rinse water. Rinse again, and measure again.`,
  'rinse-unknown': () => 'Measure the rinse water itself, and type its pH in above.',
  'dust-left': (verdict, say) =>
    `${share(verdict, say)} still dusty. Clean it once more: vacuum under a dry finish, rinse under a damp one.`,
  'drop-beads': (verdict, say) =>
    `At ${share(verdict, say)} the drop stayed round: a film is left. Degrease again. If it beads after two rounds, the oil has soaked in and the concrete must go.`,
  'drinks-too-slowly': (verdict, say) =>
    `At ${share(verdict, say)} the drop stood too long. The pores are closed: clean again, or cut a little deeper.`,
  'sheet-damp': () => 'It is damp. Let it dry, and ask the maker of the finish what it can stand.',
  'too-humid': () =>
    'The slab holds too much water for this. Wait, or ask the maker for a way to seal it in.',
  'surface-dry': () => 'Too dry. Soak it again.',
  'surface-wet': () => 'Too wet. Take off the water, and wait until the shine is gone.',
  'slurry-corrosive': (_, say) =>
    `At ${say.figure('hazard.wash-water-ph')} or more it counts as corrosive waste. Keep it closed, and hand it to a licensed carrier.`,
  'fill-young': () =>
    'The fill is not as old as its label asks. Wait, and keep it as the label says.',
  'fill-dull': () => 'The fill has not taken. Take it out, clean, and fill again.',
  'fill-closed': () => 'The fill is closed or too smooth. Open its skin, then vacuum it.',
  'air-unknown': () =>
    'Measure the air too, its temperature and its humidity, and type both in above.',
  'too-near-dew': (verdict, say) =>
    `The dew point is ${degrees(verdict, 'dew', say)}, and the surface is less than ${say.figure('cover.above-dew')} above it. Wait until it is warmer, or the air holds less water. Do not burn gas for heat: that makes water.`,
  'too-cold': (_, say) =>
    `Too cold. Nothing goes on frozen concrete, and no cement on concrete below ${say.figure('place.temperature-least')}.`,
  'too-hot': (_, say) =>
    `Too hot: the repair dries before it sets. Shade it, and start early. ${say.figure('place.temperature')} is asked.`,
  cool: (_, say) =>
    `Cold for cement: ${say.figure('place.temperature')} is asked. Colder than that only insulated and cured for longer, if the maker agrees.`,
  'gone-stale': (verdict, say) =>
    `Open for ${say.hours(count(verdict, 'open'))}. Clean it again, and start the clock anew.`,
  spoiled: (verdict) =>
    `${spoilers[String(verdict.facts?.by)] ?? 'Something'} got on it. Clean it again, and start the clock anew.`,
  'not-started': () => 'The clock has not been started.',
  'time-ahead': () => 'The time typed has not come yet.',
  'no-requirement': (_, say) =>
    `Choose what is asked. Specifications often ask ${say.figure('pulloff.specified')}.`,
  'glue-failed': (verdict, say) =>
    `${say.number(count(verdict, 'voided'))} broke in the glue and do not count. Test again beside them, until ${say.number(count(verdict, 'need'))} count.`,
  'too-few-alike': (verdict, say) =>
    `Some broke another way, and too few of those to average (${say.number(count(verdict, 'have'))} of ${say.number(count(verdict, 'need'))}). Test more.`,
  'mean-low-base': (verdict, say) =>
    `${low('in the base concrete')(verdict, say)} Thin flakes on the discs, up to about ${say.figure('depth.bruise')}: a bruised skin, blast it off. Thick plugs: weak concrete, remove more.`,
  'mean-low-bond': (verdict, say) =>
    `${low('at the bond line')(verdict, say)} Look for dust, a film, or a surface too dry or too wet when it was covered.`,
  'mean-low-repair': (verdict, say) =>
    `${low('in the repair')(verdict, say)} The surface held. Ask the maker about the repair material and its curing.`,
  'mean-low-mixed': (verdict, say) =>
    `${low('through more than one plane')(verdict, say)} Remove more, clean again, and test again.`,
  'single-low': (verdict, say) =>
    `One result is ${stress(verdict, 'lowest', say)}. No single one may be below ${stress(verdict, 'least', say)}.`,
};
