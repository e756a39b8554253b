import { capital } from '$lib/words/by-language';
import type { stepRules } from '$lib/advice/rules';
import { contaminantNames, looseNames, saltNames } from '$words/names';
import type { RuleSentence, Say } from '$lib/words/types';
import { crackAndSteelSentences } from './cracks-steel';
import { sawDepthHere } from '$words/steps/saw-depth';
import { amount, depthSaid, named, namedAll, saw } from './facts';
import { warningNames } from './warnings';

/** Whether it comes back shows in days, which no plan waits where the finish may lie on damp concrete. */
const bloomAgain = 'If it shows again before you cover, water is coming through: find it first.';

/** Why a step is there, and how it is to be done here. */
export const stepSentences: Readonly<Record<(typeof stepRules)[number], RuleSentence>> = {
  ...crackAndSteelSentences,
  'does-the-removal': (reason, say) =>
    saw(reason, 'looseness', 'tight')
      ? 'This cleans and opens the sound concrete, so that the next layer grips it.'
      : `This takes off ${named(reason, 'looseness', looseNames)}, ${depthSaid(reason, say)}.`,
  'coating-comes-off': (reason, say) =>
    `This takes off ${say.list(namedAll(reason, 'contamination', contaminantNames))}. Sound what comes to light.`,
  'sound-before-layer': () =>
    'Sound the floor before you start. A layer holds no better than what lies under it.',
  'drop-before-tools': () =>
    'There may be oil. Put a drop of water on it before any tool starts. If it beads, degrease first.',
  'make-safe-first': () =>
    'Before any tool comes out, make the place safe for you and for those who pass by.',
  'warnings-first': (reason, say) => {
    const warnings = namedAll(reason, 'warnings', warningNames);
    return `Deal first with what you found here: ${say.list(warnings)}.`;
  },
  'nothing-cut': () =>
    'The work cuts and breaks nothing here, so no cables or pipes have to be marked for it.',
  'engine-outside': () =>
    'Walls or a roof hold exhaust gas, so no engine may run in here, not even with open doors. Use electric tools, or leave the engine well outside.',
  'oil-before-anything': () =>
    'Oil comes off first. A tool that goes over it would smear it and drive it in. Scrub with detergent, rinse, and catch the rinse. Do it again until a drop of water spreads out. Then let it dry before any tool.',
  'soaked-oil-must-go': () =>
    'If a water drop still beads after two rounds of degreasing, the oil has soaked in. That concrete has to come off too.',
  'growth-washed-off': () =>
    'Growth is on it. The jet takes it off, once what is thick has been scraped away.',
  'growth-first': () =>
    'Moss and algae clog tools and hide the surface, so they come off before it is worked.',
  'coating-by-scraper': () =>
    'No floor machine can lift this coating here, so it is scraped off by hand first. Sound what comes to light.',
  'sound-whole-slab': () =>
    'Sound the whole slab, not only the part you know is bad. Hollow concrete looks like sound concrete. Mark where the ring turns dull.',
  'sound-before-cutting': () =>
    'Hollow concrete looks like sound concrete. Find its edge by ear and mark it before you cut.',
  'square-edge': (_, say) =>
    `A repair breaks away where its edge thins out. Saw a square edge, with no corner sharper than ${say.figure('patch.min-corner')}. Never saw into steel.`,
  'saw-depth': sawDepthHere,
  'no-feather-edge': () =>
    'The new concrete must not thin out to nothing at its rim. Cut the rim square, chip out the ring between the cut and the hollow with a light hammer, then clean the old face inside.',
  'slurry-caught': () =>
    'Wet concrete dust is as strong as lye. Catch it with the water, measure its pH before you get rid of it, and keep it out of every drain.',
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
  'border-if-upright': () =>
    'Where a wall, a column or a post stands at the edge, the machine leaves a strip. Say how long that edge is, and it is planned too.',
  'border-by-grinder': (reason, say) =>
    `The machine leaves a strip along ${borderOf(reason, say)}. A hand grinder with a shroud does it as smooth as the rest.`,
  'border-by-bush-hammer': (reason, say) =>
    `The machine leaves a strip along ${borderOf(reason, say)}. A plain hand grinder would leave it too smooth: use a bush-hammer head or a needle scaler, then blast off what it bruised.`,
  'pits-under-coating': () =>
    'The scarifier took the coating and left what lies in the pits. Blasting cleans the pits.',
  'profile-under-coating': () =>
    'The scarifier took the coating and left the floor too smooth. Shotblasting roughens it.',
  'bruised-skin-must-go': (_, say) =>
    `The tool leaves a bruised skin, usually about ${say.figure('depth.bruise')} thick and full of fine cracks. It freezes often here, so the skin may not stay.`,
  'bruised-skin-should-go': (_, say) =>
    `The tool leaves a bruised skin, usually about ${say.figure('depth.bruise')} thick and full of fine cracks. What is bonded to it comes off with it.`,
  'bruised-skin-wash-will-do': (_, say) =>
    `The tool leaves a bruised skin, usually about ${say.figure('depth.bruise')} thick. Frost is rare here and the zone is no larger than ${say.figure('blast.small-area')}, so a thorough wash under pressure will do.`,
  'skin-by-shotblaster': () =>
    'The floor is flat and dry, so a shotblaster takes the skin off. In holes and at bars it cannot: blast those with grit.',
  'skin-by-grit': () =>
    'No shotblaster gets into a hole, a chased crack or round a bar, or is worth setting up on a spot. Blast the faces with grit: water would have to dry out again.',
  'skin-by-grit-or-water': () =>
    'No shotblaster gets into a hole, a chased crack, round a bar or up to a wall. Blast the faces with grit, or wash them at high pressure.',
  'vacuum-twice-no-wash': () =>
    'What goes on wants it dry, so it is not washed any more. Vacuum it twice, the second time across the first.',
  'coating-debris-apart': () =>
    'What came off with the coating is kept apart, in closed bags. Ask the waste office where it goes.',
  'spent-grit-away': (reason) =>
    saw(reason, 'method', 'shotblast')
      ? 'Used shot lies on the surface afterwards. Take all of it up: what stays rusts.'
      : 'Used grit lies on the surface afterwards. Take all of it up: what stays keeps the repair off the concrete.',
  'dust-off': () =>
    'Dust keeps a repair from sticking, and it harms your lungs. Vacuum it up; never sweep it dry.',
  'wash-everything': () => 'A last wash takes the fine dust out of the pores.',
  'salt-bloom-off': () => `There is salt bloom. Wash it off. ${bloomAgain}`,
  'salt-bloom-brushed': () => `There is salt bloom. Brush it off dry. ${bloomAgain}`,
  'too-rough-fill-first': (reason, say) => {
    const leaves = amount(reason, 'leaves');
    const needs = amount(reason, 'needs');
    const why =
      leaves === null || needs === null
        ? ''
        : ` The work leaves at least ${say.csp(leaves)}, and the finish takes at most ${say.csp(needs)}.`;
    return `The surface will be too rough for the finish, so fill it level with repair mortar first.${why}`;
  },
  'hole-filled-first': () =>
    'The hole is filled level with repair mortar. That is the repair; the finish goes over it.',
  'damp-before-fill': () =>
    'If the mortar is cement, make the concrete damp first, with no water standing on it.',
  'fill-cures-first': () =>
    'The fill needs its own cure and then its own roughness. Only after that comes the finish.',
  'prove-it': () =>
    'You cannot see whether a surface will hold. The checks prove it before it is covered for good.',
  'cover-within-a-day': (_, say) =>
    `Cover it within ${say.figure('open.limit')}. Left open longer, it gathers dust and damp, and is cleaned again.`,
  'damp-not-wet': () =>
    'Dry concrete sucks the water out of the repair, and a wet film keeps it from sticking. Make it damp, with no water standing on it.',
  'dry-for-coating': (reason) =>
    saw(reason, 'finish', 'sealer')
      ? 'Wet concrete does not drink a sealer. Let it dry as long as its label says.'
      : 'Damp under this finish makes it blister and peel. Let the concrete dry as far as the maker asks.',
  'moisture-from-sheet': () => 'That is what the data sheet asks for, and it counts.',
  'dry-enough-measured': () =>
    'A dry surface can hide wet concrete. Measure it as the maker asks, and leave the test the time it needs.',
  'last-vacuum-and-tape': () =>
    'Dust settles while you wait. Vacuum once more right before, and press tape on it: it has to come up clean.',
  'last-look': () =>
    'Look once more right before: nothing loose, no dust, no puddle, dark but without shine. What has got dirty is rinsed again.',
  'last-look-as-maker-says': () =>
    'Look once more right before: nothing loose, no dust, no puddle, and as damp or dry as its maker asks.',
  'surface-warm-enough': () =>
    'Measure the surface, not the air. Stay inside the maker’s limits for heat and cold, and never on frozen concrete.',
  'surface-warm-and-above-dew': (_, say) =>
    `Measure the surface, not the air. Stay inside the maker's limits for heat and cold, at least ${say.figure('cover.above-dew')} above the dew point, and never on frozen concrete.`,
  'cure-kept-damp': (_, say) =>
    `Keep it damp and covered for ${say.figure('cure.damp')}, longer in the cold. Bond grows more slowly than strength.`,
  'cure-as-maker-says': () => 'Keep water, dust and feet off it for as long as its label says.',
  'finish-undecided': () =>
    'Whether it must be damp or dry depends on the product that goes on. Ask its maker before this step.',
  'light-hammer-here': (_, say) =>
    `Use a light hammer: no heavier than the ${say.figure('hammer.at-steel')} class around steel and along edges, and the ${say.figure('hammer.above-steel')} class elsewhere. A heavy one cracks what should stay.`,
  'hammer-for-patch': (reason, say) =>
    `Use a hammer no heavier than the ${say.figure(reason.figures?.[0] ?? 'hammer.small-patch')} class. A heavier one cracks what should stay.`,
  'several-passes': (_, say) =>
    `To get as deep as ${say.figure('depth.shallow')} takes several passes.`,
  'depth-each-pass': () =>
    'Measure how deep you are after each pass, and stop when you are down to sound.',
  'sound-what-is-under': (reason) => {
    const then = saw(reason, 'deeper', 'engineer')
      ? 'Stop there and call a licensed structural engineer before anybody breaks deeper.'
      : saw(reason, 'deeper', 'break-out')
        ? 'Only breaking out clears it.'
        : 'Only breaking out clears it. Where it carries load, or cables may lie in it, a licensed structural engineer says first what may go.';
    return `Sound what lies under the skin. Where it still rings dull, the layer goes deeper. ${then}${saw(reason, 'lines', 'yes') ? ' Have cables and pipes located before anybody breaks deeper.' : ''}`;
  },
  'profile-after-first-pass': () =>
    'After the first pass, hold the profile chip beside it. Change one setting, not two.',
  'dry-before-shot': () =>
    'The floor must be dry. On a damp floor the shot and the dust clump, and the machine cannot pick them up.',
  'depth-past-third': (reason, say) => {
    const third = amount(reason, 'third');
    const limit = third === null ? '' : `, past ${say.length(third)}`;
    const goes = saw(reason, 'surely', 'yes') ? 'goes' : 'may go';
    return `The finished hole ${goes} below the top ${partName(say)} of the thickness${limit}. A patch that deep is doubtful. If you find that the hole reaches ${say.fraction(say.valueOf('depth.full-limit'))}, stop: that part is replaced through its full depth.`;
  },
  'thickness-unknown': (_, say) =>
    `You do not know the thickness. Measure it as soon as an edge is open. If you find that the hole reaches ${say.fraction(say.valueOf('depth.full-limit'))} of it, stop: that part is replaced through its full depth.`,
  'water-jet-alternative': () =>
    'Over a large area, or where no bruised skin can be accepted, ask for a price for water jetting. It leaves no bruised skin.',
  'salts-at-steel': (reason) =>
    `${capital(named(reason, 'salts', saltNames)) || 'Salt'} reaches this concrete, and steel is near. Have the salt in it tested, rinse it well, and call an engineer if there is much.`,
};

/** "6 m of wall": how long the strip is. */
const borderOf = (reason: Parameters<RuleSentence>[0], say: Say): string => {
  const length = amount(reason, 'length');
  return `${length === null ? '' : `${say.distance(length)} of `}walls and posts`;
};

/** "third" out of "a third": the part of the slab in which a patch is safe. */
const partName = (say: Parameters<RuleSentence>[1]): string =>
  say.fraction(say.valueOf('depth.partial-limit')).replace(/^a /, '');
