import type { PairMargin } from '$lib/advice/pairs';
import type { Say } from '$lib/words/types';
import { endingText } from './ending-text';

/** Two changes told in one line. */
export interface PairRow {
  readonly one: string;
  readonly other: string;
  readonly effect: string;
}

type Told = PairMargin['changes'][number];

/** Pairs that share the first change, the question of the second and what they come to are one row. */
export function pairRows(
  pairs: readonly PairMargin[],
  tell: (change: Told) => string,
  say: Say,
): readonly PairRow[] {
  const rows = new Map<string, { one: string; others: string[]; effect: string }>();
  for (const { changes, verdict, method } of pairs) {
    const [one, other] = changes;
    const effect = endingText({ verdict, method }, say);
    const key = `${tell(one)} ${other.question} ${effect}`;
    const row = rows.get(key);
    const said = tell(other);
    if (!row) rows.set(key, { one: tell(one), others: [said], effect });
    else {
      // "Finish: sealer, thin paint": the name of the question once.
      const [name, ...rest] = said.split(': ');
      const same = row.others[0]?.startsWith(`${name}: `) ?? false;
      row.others.push(same ? rest.join(': ') : said);
    }
  }
  return [...rows.values()].map(({ one, others, effect }) => ({
    one,
    other: say.either(others),
    effect,
  }));
}
