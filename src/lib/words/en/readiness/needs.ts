import { capital } from '$lib/words/by-language';
import type { NeedRule } from '$lib/readiness/rules';
import { finishNames } from '$words/names';
import type { NeedSentence } from '$lib/words/readiness-types';

const finishOf: (...why: Parameters<NeedSentence>) => string = (why) => {
  const finish = why.facts?.finish;
  return typeof finish === 'string' && finish in finishNames
    ? finishNames[finish as keyof typeof finishNames]
    : 'the finish';
};

/** Why each check is called for. */
export const needSentences: Readonly<Record<NeedRule, NeedSentence>> = {
  'sound-everywhere': () =>
    'Whatever is loose under the repair takes the repair with it when it lets go.',
  'dust-breaks-bond': () => 'What is laid on dust sticks to the dust.',
  'drop-shows-film': () => 'Oil, sealer and curing compound cannot be seen, but a drop shows them.',
  'must-drink': () => 'A closed surface does not let the repair take hold in its pores.',
  'profile-for-finish': (why, say) =>
    `${capital(finishOf(why, say))} needs ${why.figures?.[0] ? say.figure(why.figures[0]) : 'its own roughness'} to grip.`,
  'profile-from-sheet': (why, say) =>
    `The data sheet asks for ${typeof why.facts?.least === 'number' ? `${say.csp(why.facts.least)} or rougher` : 'its own roughness'}. It counts for more than the usual table.`,
  'finish-open': () =>
    'What goes on next is not decided. Until it is, nobody can say what is asked of the surface.',
  'bond-carries-finish': (why, say) =>
    `${capital(finishOf(why, say))} pulls on what is under it as it hardens and moves. On ${say.figure('pulloff.large-area')} or more, prove that it holds.`,
  'small-if-specified': (_, say) =>
    `On less than ${say.figure('pulloff.large-area')} this is tested where the specification asks for it.`,
  'thin-if-specified': () =>
    'Under a thin finish this is tested where the specification asks for it.',
  'coating-hates-damp': (why, say) => `Water pushes ${finishOf(why, say)} off from below.`,
  'sheet-wants-dry': () =>
    'The data sheet asks for a dry surface. It counts for more than the usual rule.',
  'sheet-wants-damp': () =>
    'The data sheet asks for a damp surface. It counts for more than the usual rule.',
  'slurry-harms': () =>
    'Water from cutting and washing concrete is alkaline. It burns skin and kills fish. The covering does not wait for this, but the water must not go anywhere before you know.',
  'fill-cures-apart': () =>
    'The fill is a repair of its own. Cover it too early, and the finish comes off with it.',
  'dew-under-cover': (why, say) =>
    `Out here the concrete can be colder than the air. Then water forms on it that you cannot see, and ${finishOf(why, say)} does not stick.`,
  'cold-under-cement': () =>
    'Cement hardens badly on concrete that is too cold, and dries out on concrete that is too hot. Dew does not harm it.',
  'dew-if-specified': () =>
    'In a heated room the concrete is nearly as warm as the air. Measure where the specification or the maker asks, or where it is cold all the same.',
  'sealer-if-specified': () => 'How dry a sealer wants it stands on its label.',
  'film-traps-moisture': () =>
    'A tight layer on an indoor floor traps the water that is still in the slab.',
  'damp-for-cement': () =>
    'Dry concrete drinks the water the repair needs. Standing water weakens its underside.',
  'chemicals-left': () => 'The cleaner that took off the oil must be rinsed off too.',
  'salts-reach-steel': () =>
    'Salt that has reached the steel lets rust go on under the new repair.',
  'air-reaches-steel': () =>
    'Concrete guards steel until air has changed it. A rusted bar says that it may have.',
  'air-if-specified': () => 'There is steel near. An engineer may ask how far the air has got.',
  'potential-if-specified': () =>
    'Where steel and salt meet, an engineer may ask where corrosion is going on.',
  'bar-gripped-round': () => 'The repair has to grip a freed bar all round.',
  'rust-off': () => 'Nothing bonds to a flake of rust, and rust goes on under it.',
  'edge-square': () => 'A thin edge breaks off first.',
  'stale-after-a-day': (_, say) =>
    `A clean surface gathers dust. After ${say.figure('open.limit')}, clean it again.`,
};
