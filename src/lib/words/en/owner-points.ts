import { capital } from '$lib/words/by-language';
import type { MeasureId, OwnerOptionId } from '$lib/plan/options';
import type { Point, PointId } from '$lib/plan/points';
import type { Say } from '$lib/words/types';
import { shareSaid } from './shares';

const measureNames: Readonly<Record<MeasureId, string>> = {
  debris: 'debris',
  material: 'new material',
  water: 'water',
  hours: 'hours of work',
  'days-closed': 'days closed',
  'noise-days': 'days with noise',
  'dust-days': 'days with dust',
  'hire-days': 'days of hire',
  carbon: 'carbon',
  cost: 'cost at your prices',
};

const doing: Readonly<Record<OwnerOptionId, string>> = {
  restore: 'restoring',
  parts: 'replacing parts',
  replace: 'replacing all',
};

const places = (zones: readonly string[] | undefined, say: Say) =>
  zones?.length ? ` (${say.list(zones)})` : '';

/** One point for or against. `zones` in the point are names by then. */
export const pointSentences: Readonly<Record<PointId, (point: Point, say: Say) => string>> = {
  'mostly-sound': ({ share = 0 }, say) =>
    `${capital(shareSaid(share, say))} of the whole surface is sound.`,
  'surface-only': () => 'All that is wrong is at the surface. Nothing has to be broken out.',
  'sound-broken-out': ({ share = 0 }, say) =>
    `${capital(shareSaid(share, say))} of the whole surface is sound, and would be broken out too.`,
  less: ({ measures = [], than = 'replace' }, say) =>
    `In ${say.list(measures.map((id) => measureNames[id]))} it surely takes less than ${doing[than]}.`,
  more: ({ measures = [], than = 'replace' }, say) =>
    `In ${say.list(measures.map((id) => measureNames[id]))} it surely takes more than ${doing[than]}.`,
  'parts-made-new': ({ zones }, say) =>
    `No repair has to hold where the damage is worst${places(zones, say)}: that part is made new through its full depth.`,
  'cause-stays': () => 'New concrete moves too, until what moves it has been found and put right.',
  'salts-stay': () =>
    'Salt and frost made it scale, and both stay. It can scale again, new concrete too, unless it is salted less, drained and sealed.',
  'full-depth-parts': ({ zones }, say) =>
    `A part is damaged through, or the finished hole reaches half the slab${places(zones, say)}. That is not a surface repair.`,
  'mostly-gone': ({ share = 0 }, say) =>
    `${capital(shareSaid(share, say))} of the whole surface is rotten or gone to full depth.`,
  'depth-past-third': ({ zones }, say) =>
    `The finished hole passes, or may pass, the top third of the slab${places(zones, say)}. A repair of part of the depth is doubtful there.`,
  settled: () =>
    'It has settled or rocks. A repair on a slab that moves will crack again, so the cause comes first.',
  'fire-or-chemical': () =>
    'Fire or chemicals may have changed the concrete deeper than can be seen.',
  structure: ({ zones }, say) =>
    `Concrete that holds something up would have to be cut${places(zones, say)}. An engineer says how, and what to prop.`,
  'props-for-all': ({ zones }, say) =>
    `It carries a load, as a balcony or a beam does${places(zones, say)}. Taking all of it out needs the engineer and the props as well.`,
  'map-cracking': () =>
    'Cracks like a map can mean that the concrete itself is failing. Then it will not hold a patch. A laboratory can tell.',
  'moving-crack': ({ zones }, say) =>
    `A crack still moves${places(zones, say)}. Whatever moves it comes first.`,
  'bar-loss': ({ zones }, say) =>
    `Rust has taken too much of a bar${places(zones, say)}. An engineer decides.`,
  'open-answers': ({ zones }, say) =>
    `What decides has not been found out yet${places(zones, say)}.`,
  unmeasured: ({ zones }, say) =>
    `These have no area yet, so they are in no share${places(zones, say)}.`,
  'whole-unknown': () =>
    'How large the whole surface is. Without it no share can be given, and replacing cannot be worked out.',
  'not-entered': ({ share = 0 }, say) =>
    `${capital(shareSaid(share, say))} of the surface has not been entered. Nobody has said what state it is in.`,
  'thickness-unknown': () =>
    'The thickness of the slab, without which replacing cannot be worked out.',
  'finish-undecided': ({ zones }, say) =>
    `What goes on top${places(zones, say)}. The days to cover it and let it cure come on top of the days closed.`,
  'not-sounded': ({ zones }, say) =>
    `Whether more is hollow than the spots that were given${places(zones, say)}. No sounding of all of it is noted.`,
  'skin-left': ({ zones }, say) =>
    `What the rest takes beside the spots${places(zones, say)}. Its surface is loose too, and only the spots are counted.`,
  'patch-life': ({ figures = [] }, say) =>
    figures.includes('patch.life-poor')
      ? `Patches do fail: in one published survey only ${say.figure('patch.life-poor')} were good after about 3 years, in others ${say.figure('patch.life-good')} at 3 to 10.`
      : `Well built patches last: published surveys found ${say.figure('patch.life-good')} good at 3 to 10 years.`,
  'no-one-percentage': () =>
    'At what share of damage replacing pays. Published sidewalk rules disagree widely, so no one number decides here.',
};
