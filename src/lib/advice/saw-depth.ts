import { rangeOf, valueOf } from '$shared/figures';
import { holeRange } from './hole';
import type { Reason, SettledSite } from './types';

/**
 * How deep the edge of a patch is sawn here: no deeper than the hole will be, not below the part of
 * the thickness in which a patch is safe, and clear of a bar whose cover was measured.
 * Source: UFGS 03 93 for the usual depth (figure `sawcut.depth`); FHWA checklist 9 for the thickness
 * (figure `depth.partial-limit`); the rest common practice, no published source.
 */
export function sawDepth(
  site: Pick<SettledSite, 'thickness'>,
  zone: Parameters<typeof holeRange>[1],
): Reason {
  const { thickness } = site;
  const { steel, barCover } = zone;
  const [, usual] = rangeOf('sawcut.depth');
  const part = thickness === 'unknown' ? usual : thickness * valueOf('depth.partial-limit');
  const above =
    steel === 'none-seen' || barCover === undefined
      ? usual
      : Math.max(0, barCover - valueOf('sawcut.clear-of-steel'));
  const hole = holeRange(thickness, zone)[1];
  const least = Math.min(usual, part, above, hole);
  const why = least === above ? 'steel' : least === part ? 'thickness' : 'hole';
  return {
    rule: 'saw-depth',
    ...(least < usual && { facts: { deepest: Math.round(least), why } }),
    figures: ['sawcut.depth', 'sawcut.by-hand'],
  };
}
