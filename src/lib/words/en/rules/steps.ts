import type { stepRules } from '$lib/advice/rules';
import { depthNames, looseNames, saltNames } from '$lib/words/en/names';
import type { RuleSentence } from '$lib/words/types';
import { crackAndSteelSentences } from './cracks-steel';
import { amount, named, namedAll, saw } from './facts';
import { warningNames } from './warnings';

/** Why a step is there, and how it is to be done here. */
export const stepSentences: Readonly<Record<(typeof stepRules)[number], RuleSentence>> = {
  ...crackAndSteelSentences,
  'does-the-removal': (reason, say) =>
    saw(reason, 'looseness', 'tight')
      ? 'This cleans and opens the sound concrete, so that the next layer grips it.'
      : `This takes off ${named(reason, 'looseness', looseNames)}, ${named(reason, 'depth', depthNames(say))}.`,
  'make-safe-first': (reason, say) => {
    const warnings = namedAll(reason, 'warnings', warningNames);
    return warnings.length
      ? `Before any tool comes out, deal with what you found here: ${say.list(warnings)}.`
      : 'Before any tool comes out, make the place safe for you and for those who pass by.';
  },
  'engine-outside': () =>
    'You work indoors, so no engine may run in here. Use electric tools, or leave the engine well outside.',
  'oil-before-anything': () =>
    'Oil comes off first. A tool that goes over it would smear it and drive it in.',
  'soaked-oil-must-go': () =>
    'If a water drop still beads after two rounds of degreasing, the oil has soaked in. That concrete has to come off too.',
  'growth-first': () =>
    'Moss and algae clog tools and hide the surface, so they come off before it is worked.',
  'coating-by-scraper': () =>
    'No floor machine can lift this coating here, so it is scraped off by hand first.',
  'sound-before-cutting': () =>
    'Hollow concrete looks like sound concrete. Find its edge by ear and mark it before you cut.',
  'square-edge': (reason, say) =>
    `A repair breaks away where its edge thins out. Saw a square edge ${say.figure('sawcut.depth')} deep, with no corner sharper than ${say.figure('patch.min-corner')}. Never saw into steel.`,
  'past-the-damage': (reason, say) => {
    const past = say.figure(reason.figures?.[0] ?? 'patch.past-damage');
    return saw(reason, 'frost', 'often')
      ? `Set the edge ${past} past the damage you can hear. Where it freezes often, loosening hides along the edges.`
      : `Set the edge ${past} past the damage you can see or hear.`;
  },
  'shallow-edge-unsawn': () =>
    'There is steel here. Find how deep it lies first, and where the saw would reach it, cut the edge by hand.',
  'sound-again': () =>
    'Breaking shakes the concrete around it. Sound the bottom and the edges again, and take off what has let go.',
  'machine-leaves-border': () =>
    'A floor machine cannot reach the last strip along walls and edges. A hand tool does that strip.',
  'pits-under-coating': () =>
    'The scarifier took the coating and left what lies in the pits. Blasting cleans the pits.',
  'bruised-skin-must-go': (_, say) =>
    `The tool leaves a bruised skin, usually about ${say.figure('depth.bruise')} thick and full of fine cracks. It freezes often here, so the skin may not stay.`,
  'bruised-skin-should-go': (_, say) =>
    `The tool leaves a bruised skin, usually about ${say.figure('depth.bruise')} thick and full of fine cracks. What is bonded to it comes off with it.`,
  'bruised-skin-wash-will-do': (_, say) =>
    `The tool leaves a bruised skin, usually about ${say.figure('depth.bruise')} thick. Frost is rare here and the zone is no larger than ${say.figure('blast.small-area')}, so a thorough wash under pressure will do.`,
  'dust-off': () =>
    'Dust keeps a repair from sticking, and it harms your lungs. Vacuum it up; never sweep it dry.',
  'wash-everything': () =>
    'A last wash takes the fine dust out of the pores, here and in the zones beside it.',
  'salt-bloom-off': () =>
    'There is salt bloom. Wash it off, let it dry, and look whether it comes back. If it does, water is coming through.',
  'too-rough-fill-first': (reason, say) => {
    const leaves = amount(reason, 'leaves');
    const needs = amount(reason, 'needs');
    const why =
      leaves === null || needs === null
        ? ''
        : ` The work leaves at least ${say.csp(leaves)}, and the finish takes at most ${say.csp(needs)}.`;
    return `The surface will be too rough for the finish, so fill it level with repair mortar first.${why}`;
  },
  'prove-it': () =>
    'You cannot see whether a surface will hold. The checks prove it before it is covered for good.',
  'cover-within-a-day': (_, say) =>
    `Cover it within ${say.figure('open.limit')}. Left open longer, it gathers dust and damp, and is cleaned again.`,
  'damp-not-wet': () =>
    'Dry concrete sucks the water out of the repair, and a wet film keeps it from sticking. Make it damp, with no water standing on it.',
  'dry-for-coating': () =>
    'Damp under this finish makes it blister and peel. Let the concrete dry as far as the maker asks.',
  'finish-undecided': () =>
    'Whether it must be damp or dry depends on the product that goes on. Ask its maker before this step.',
  'light-hammer-here': (_, say) =>
    `Use a light hammer: no heavier than the ${say.figure('hammer.at-steel')} class around steel and along edges, and the ${say.figure('hammer.above-steel')} class elsewhere. A heavy one cracks what should stay.`,
  'several-passes': (_, say) =>
    `To get as deep as ${say.figure('depth.shallow')} takes several passes. Look after each one, and stop when you are down to sound.`,
  'dry-before-shot': () =>
    'The floor must be dry. On a damp floor the shot and the dust clump, and the machine cannot pick them up.',
  'depth-past-third': (reason, say) => {
    const third = amount(reason, 'third');
    const limit = third === null ? '' : `, past ${say.length(third)}`;
    return `The damage may go below the top ${partName(say)} of the slab${limit}. A patch that deep is doubtful. If you find that it reaches ${say.fraction(say.valueOf('depth.full-limit'))}, stop: that part is replaced through its full depth.`;
  },
  'thickness-unknown': (_, say) =>
    `You do not know the thickness. Measure it as soon as an edge is open. If you find that the damage reaches ${say.fraction(say.valueOf('depth.full-limit'))} of it, stop: that part is replaced through its full depth.`,
  'water-jet-alternative': () =>
    'Over a large area, or where no bruised skin can be accepted, ask for a price for water jetting. It leaves no bruised skin.',
  'salts-at-steel': (reason) =>
    `${capital(named(reason, 'salts', saltNames)) || 'Salt'} reaches this concrete, and steel is near. Have the salt in it tested, rinse it well, and call an engineer if there is much.`,
};

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** "third" out of "a third": the part of the slab in which a patch is safe. */
const partName = (say: Parameters<RuleSentence>[1]): string =>
  say.fraction(say.valueOf('depth.partial-limit')).replace(/^a /, '');
