import { rangeOfBand } from '$lib/answers/depth';
import { valueOf } from '$shared/figures';
import { call, type Situation, type Work } from './work';

/**
 * What has to be done before the main method: make safe, take off what would be driven in or
 * hide the concrete, find the edge of the damage.
 * Source: common practice, no published source, except where a reason names figures.
 */
export function callBefore(work: Work, { site, zone, demands, method }: Situation): void {
  call(work, 'make-safe', { rule: 'make-safe-first', facts: { warnings: site.warnings } });
  if (site.setting === 'indoors') call(work, 'make-safe', { rule: 'engine-outside' });

  if (demands.oil) {
    call(work, 'degrease', { rule: 'oil-before-anything' }, { rule: 'soaked-oil-must-go' });
  }
  if (zone.contamination.includes('growth') && method !== 'pressure-wash')
    call(work, 'strip-growth', { rule: 'growth-first' });
  if (demands.stripped) call(work, 'strip-coating', { rule: 'coating-by-scraper' });

  const breaks = method === 'break-out';
  const steelShows = zone.steel === 'exposed' || zone.steel === 'corroded';
  if (breaks || steelShows || zone.cracks === 'crumbling')
    call(work, 'sound-and-mark', { rule: 'sound-before-cutting' });
  if (zone.steel === 'rust-stain') call(work, 'sound-and-mark', { rule: 'stain-look-beneath' });
  if (breaks) callSawCut(work, { site, zone });
}

/** A break-out gets a square sawn edge, past the damage; never a feather edge, never into steel. */
function callSawCut(work: Work, { site, zone }: Pick<Situation, 'site' | 'zone'>): void {
  call(
    work,
    'saw-cut',
    { rule: 'square-edge', figures: ['sawcut.depth', 'patch.min-corner'] },
    {
      rule: 'past-the-damage',
      facts: { frost: site.freezeThaw },
      figures: [site.freezeThaw === 'often' ? 'patch.past-damage-frost' : 'patch.past-damage'],
    },
  );
  if (zone.steel !== 'none-seen') call(work, 'saw-cut', { rule: 'shallow-edge-unsawn' });
}

/** The main method itself, and how it is to be done here. */
export function callMethod(work: Work, { site, zone, demands, method }: Situation): void {
  call(work, method, {
    rule: 'does-the-removal',
    facts: { depth: zone.depth, looseness: zone.looseness },
  });
  if (method === 'break-out') {
    if (!demands.floor || zone.steel === 'exposed' || zone.steel === 'corroded')
      call(work, method, {
        rule: 'light-hammer-here',
        figures: ['hammer.above-steel', 'hammer.at-steel'],
      });
    call(work, method, { rule: 'water-jet-alternative' });
    callDepthDoubt(work, { site, zone });
  }
  if (method === 'scarify' || method === 'shotblast') {
    if (zone.looseness !== 'tight' && zone.depth === '3-to-6')
      call(work, method, { rule: 'several-passes', figures: ['depth.shallow'] });
    if (method === 'shotblast') call(work, method, { rule: 'dry-before-shot' });
  }
  const floorMachine = method === 'grind' || method === 'scarify' || method === 'shotblast';
  if (floorMachine && demands.floor) call(work, 'edge-work', { rule: 'machine-leaves-border' });
}

/** Past the top third of a slab a partial-depth repair is doubtful: the reader should know before breaking. */
function callDepthDoubt(work: Work, { site, zone }: Pick<Situation, 'site' | 'zone'>): void {
  if (site.thickness === 'unknown') {
    call(work, 'break-out', { rule: 'thickness-unknown', figures: ['depth.full-limit'] });
    return;
  }
  const deepest = zone.depthMm ?? rangeOfBand(zone.depth, site.thickness)[1];
  if (deepest > site.thickness * valueOf('depth.partial-limit'))
    call(work, 'break-out', {
      rule: 'depth-past-third',
      facts: { thickness: site.thickness, third: site.thickness * valueOf('depth.partial-limit') },
      figures: ['depth.partial-limit', 'depth.full-limit'],
    });
}
