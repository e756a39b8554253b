import type { ProtectionPair } from '$shared/silica-table';
import type { Say } from '$lib/words/types';

/** The mask of one place: up to the long shift, and past it. */
function maskCell(say: Say, pair: ProtectionPair | null): string {
  if (!pair) return 'not allowed';
  const [short, long] = pair.map((factor) => (factor ? `factor ${String(factor)}` : 'no mask'));
  if (short === long) return short as string;
  return `${short as string}; over ${say.figure('silica.long-shift')} ${long as string}`;
}

/** The dust table as a page to learn from shows it. */
export const dustTableWords = {
  title: 'The dust table',
  lead: 'The mask that each tool asks for while its control runs. A shift adds up the hours of all these tools.',
  tool: 'Tool, and its control',
  outdoors: 'Outdoors',
  enclosed: 'Indoors',
  mask: maskCell,
  from: (basis: string) =>
    `Rows of the US silica rule, Table 1, for the tools used here (${basis}).`,
} as const;
