import type { SilicaOfTask, SilicaWay } from '$lib/safety/silica';
import { turnOf, type VibrationOfTask } from '$lib/safety/vibration';
import { briefingWords as words, controlInShort } from '$lib/words/en/safety';
import type { Formatter } from '$lib/words/types';

const way = ({ controls }: SilicaWay): string =>
  [...new Set(controls.map((control) => controlInShort[control]))].join(' + ');

/** The controls of one task for a table: all ways the table allows, in a few words. */
export function controlsInShort(silica: SilicaOfTask): string {
  if (silica.kind === 'row') return silica.ways.map(way).join(`; ${words.or} `);
  if (silica.kind === 'not-in-table') return words.assess;
  return silica.kind === 'housekeeping' ? controlInShort['vacuum-between-passes'] : words.none;
}

/** The mask of one task: the lightest that one of the ways asks for is told with its way's place in the list. */
export function maskInShort(silica: SilicaOfTask): string {
  if (silica.kind === 'not-in-table') return words.assess;
  if (silica.kind !== 'row') return words.none;
  const factors = silica.ways.map(({ protection }) =>
    protection > 0 ? words.factor(protection) : words.none,
  );
  return new Set(factors).size === 1 ? (factors[0] ?? words.none) : factors.join(`; ${words.or} `);
}

/** A turn before the action value as the tool usually shakes, as long as a crew can keep; none shorter. */
export function turnInShort(say: Formatter, { magnitude, minutes }: VibrationOfTask): string {
  if (magnitude === 'unknown') return words.ask;
  if (!minutes) return words.noTurn;
  const { atTypical = minutes.action.atHigh } = minutes.action;
  const turn = turnOf(atTypical);
  return turn === null ? words.otherTool : say.hours(turn);
}
