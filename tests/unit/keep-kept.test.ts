import { readdirSync, readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { questionIds, questions, type QuestionId } from '$lib/answers/questions';
import { readJobText, type Checked } from '$lib/keep/job-file';
import { readProgressText } from '$lib/keep/practice/progress-file';
import { readResultCode } from '$lib/keep/practice/result-code';
import { resultTables } from '$lib/keep/practice/result-tables';
import { readSetLink, setLink } from '$lib/keep/practice/set-link';
import { readShareLink } from '$lib/keep/share-link';
import { newestVersion } from '$lib/keep/tables/tables';
import { drawing } from '$lib/practice/generate';
import { findCase } from '$lib/practice/next';
import { onTrial } from '../helpers/rounds';

/**
 * Links and files as they were written by each version of the site, with what they meant on that
 * day. Nobody changes them; a version adds its own. `tests/kept/README.md` says how.
 */
interface Kept {
  readonly what: string;
  readonly link?: string;
  readonly text?: string;
  readonly means: unknown;
}
const folder = new URL('../kept/', import.meta.url);
const named = (kind: string) =>
  readdirSync(folder)
    .filter((name) => name.startsWith(`${kind}-`))
    .map((name) => ({
      name,
      all: JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as readonly Kept[],
    }));

const read: Record<string, (kept: Kept) => Checked<unknown> | Promise<Checked<unknown>>> = {
  links: ({ link }) => readShareLink(link ?? ''),
  files: ({ text }) => readJobText(text ?? ''),
  sets: ({ link }) => readSetLink(link ?? ''),
  progress: ({ text }) => readProgressText(text ?? ''),
  results: ({ link }) => readResultCode(link ?? ''),
};

/** How the cases of a set were drawn, by its link or the version of its result. */
const drawnIn = (link: string): string =>
  resultTables[Number(/^#done(\d+)\./.exec(link)?.[1]) - 1]?.drawing ??
  /seed=(g\d+)-/.exec(link)?.[1] ??
  'g1';
/** A set with cases that this copy of the site would draw otherwise: refused, never exchanged. */
const drawnAnotherWay = ({ link = '', means }: Kept) => {
  const { set = means } = means as { readonly set?: unknown };
  return typeof set === 'object' && set !== null && 'generated' in set && drawnIn(link) !== drawing;
};
const other = { ok: false, problem: { path: 'seed', expected: { id: 'case-drawing' } } };

/** Lists of choices are sets, and so are the names in an object: their order is the screen's. */
const asSets = (value: unknown): unknown =>
  Array.isArray(value) && value.every((item) => typeof item === 'string')
    ? [...value].sort()
    : Array.isArray(value)
      ? value.map(asSets)
      : typeof value === 'object' && value !== null
        ? Object.fromEntries(
            Object.entries(value)
              .map(([key, inside]): [string, unknown] => [key, asSets(inside)])
              .sort(([one], [other]) => (one < other ? -1 : 1)),
          )
        : value;

async function misread(kinds: readonly string[]): Promise<string[]> {
  const wrong: string[] = [];
  for (const kind of kinds)
    for (const { name, all } of named(kind))
      for (const kept of all) {
        const now = await read[kind]?.(kept);
        const same =
          now?.ok && JSON.stringify(asSets(now.value)) === JSON.stringify(asSets(kept.means));
        if (!same) wrong.push(`${name}: ${kept.what}`);
      }
  return wrong;
}

describe('links and files of every version', () => {
  it.each(Object.keys(read))('%s read as they did on the day they were made', async (kind) => {
    for (const { name, all } of named(kind)) {
      for (const kept of all) {
        const now = await read[kind]?.(kept);
        if (drawnAnotherWay(kept)) expect([kept.what, now]).toMatchObject([kept.what, other]);
        else expect([kept.what, now]).toEqual([kept.what, { ok: true, value: kept.means }]);
      }
      console.log(`${name}: ${all.length} kept`);
    }
  });

  it('cases drawn from a seed are those of the day, or none', () => {
    const drawn = named('drawn');
    expect(drawn.map(({ name }) => name)).toContain(`drawn-${drawing}.json`);
    for (const { name, all } of drawn)
      for (const { what, means } of all)
        expect([what, findCase(what)]).toEqual([
          what,
          name === `drawn-${drawing}.json` ? means : undefined,
        ]);
  });

  it('of every version are here', () => {
    for (let version = 1; version <= newestVersion; version += 1)
      for (const kind of ['links', 'files'])
        expect(named(kind).map(({ name }) => name)).toContain(`${kind}-${version}.json`);
    expect(named('sets').map(({ name }) => name)).toContain(
      `sets-${/#set(\d+)\./.exec(setLink({ cases: [] }, ''))?.[1]}.json`,
    );
    for (const at of resultTables.keys())
      expect(named('results').map(({ name }) => name)).toContain(`results-${at + 1}.json`);
  });

  it('are enough, and hold every question, sure, half sure and not sure', () => {
    const count = (kind: string) => named(kind).reduce((sum, { all }) => sum + all.length, 0);
    expect(count('links')).toBeGreaterThanOrEqual(40);
    expect(count('files')).toBeGreaterThanOrEqual(20);
    const means = [...named('links'), ...named('files')].flatMap(({ all }) =>
      all.map((kept) => kept.means as Job),
    );
    const answered = (id: QuestionId) =>
      means.flatMap(({ site, zones }) =>
        [site, ...zones.map(({ answers }) => answers)].flatMap((answers) =>
          id in answers ? [JSON.stringify((answers as Record<string, unknown>)[id])] : [],
        ),
      );
    for (const id of questionIds)
      expect([id, new Set(answered(id)).size]).toSatisfy(([, n]) => n >= 3);
  });
});

describe('a choice that comes to a question', () => {
  type Choices = string[];
  const original = new Map<Choices, readonly string[]>();
  const change = (choices: Choices, to: readonly string[]) => {
    if (!original.has(choices)) original.set(choices, [...choices]);
    choices.splice(0, choices.length, ...to);
  };
  afterEach(() => {
    for (const [choices, before] of original) choices.splice(0, choices.length, ...before);
    original.clear();
  });
  // Numbered grades grow at their end alone: the number is what the sheet says.
  const withChoices = questionIds
    .filter((id) => 'choices' in questions[id] && id !== 'makerProfile')
    .slice(0, onTrial(Infinity, 1));
  const choicesIn = (id: QuestionId) => (questions[id] as unknown as { choices: Choices }).choices;

  it.each(withChoices)('%s: changes no link and no file sent before', async (id) => {
    const choices = choicesIn(id);
    change(choices, [...choices, 'come-later']);
    expect(await misread(['links', 'files'])).toEqual([]);
    change(choices, ['come-first', ...choices]);
    expect(await misread(['links', 'files'])).toEqual([]);
  });

  it.each(withChoices)('%s: may stand in another order on the screen', async (id) => {
    change(choicesIn(id), [...choicesIn(id)].reverse());
    expect(await misread(['links', 'files'])).toEqual([]);
  });
});
