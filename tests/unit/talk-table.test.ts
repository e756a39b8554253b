import { describe, expect, it } from 'vitest';
import { refusalOf, standsAt } from '$lib/interview/refusal';
import type { TalkContext, TalkEvent, TalkJob } from '$lib/interview/talk-types';
import { after, events, from, places, ways } from '../helpers/talk';

const plain = (what: unknown): string => JSON.stringify(what).replaceAll('"', '');
/** A job by what is in its zones, and its hand where that is another one. */
const short = ({ hand, zones }: TalkJob): string =>
  [
    ...zones.map(({ id, answers }) => `${id}${plain(answers)}`),
    ...(hand === 1 ? [] : [`hand ${hand}`]),
  ].join(' ');

function said({ type, ...rest }: TalkEvent): string {
  const facts = Object.values(rest as Record<string, unknown>).map((fact) =>
    fact && typeof fact === 'object' && 'zones' in fact ? short(fact as TalkJob) : plain(fact),
  );
  return [type, ...facts].join(' ');
}

/** What is kept in mind that was not before. */
function learnt(before: TalkContext, now: TalkContext): string {
  const changed = Object.entries(now).filter(
    ([key, value]) => plain(value) !== plain(before[key as keyof TalkContext]),
  );
  return changed
    .map(([key, value]) => `${key} ${key === 'job' && value ? short(value) : plain(value)}`)
    .join(', ');
}

/** A place, how it is come to, and what it makes of every event: where that leads, what is ordered, what is learnt. */
function told(place: (typeof places)[number]): string[] {
  const way = after(...ways[place]);
  const { job, ...known } = way.state().context;
  return [
    `## ${place}`,
    `by ${ways[place].map(said).join('; ') || 'nothing'}`,
    `ordered ${way.orders.map(plain).join('; ') || 'nothing'}`,
    `knows ${job ? short(job) : 'no job'}; ${plain(known)}`,
    ...events.map((event) => {
      const before = way.state();
      const why = refusalOf(before, event);
      if (why) return `- ${said(event)}: refused, ${why}`;
      const { actor, state, orders } = from(before);
      actor.send(event);
      const parts = [
        standsAt(state()),
        ...orders.map(plain),
        learnt(before.context, state().context),
      ];
      return `- ${said(event)}: ${parts.filter(Boolean).join('; ')}`;
    }),
  ];
}

/**
 * The interview as a table: at each place where a reader can stand, what every event comes to: a
 * changed rule shows as a line that a person can read. `npx vitest run tests/unit/talk-table.test.ts -u` writes it anew.
 */
describe('every place of the interview, and every event', () => {
  it('comes to what the table says', async () => {
    const table = places.map((place) => told(place).join('\n')).join('\n\n');
    await expect(`${table}\n`).toMatchFileSnapshot('./talk-table.md');
  });
});
