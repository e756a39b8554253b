import { authored } from '$lib/practice/authored';
import { drawing, generatedId } from '$lib/practice/generate';
import { lastStart, mostGenerated, type PracticeSet } from '$lib/practice/set';
import { describe, harmless, refuse, type Checked } from '$lib/keep/problem';

/**
 * Link versions that can be read; the last is written. Cases go by id and the first generated one
 * by its own (`g1-77`), which names the way it was drawn. Version 1 gave the bare seed and means
 * the first way of drawing.
 */
const versions = ['1', '2'] as const;
const written = versions[versions.length - 1];
const firstDrawing = 'g1';

/** Characters of a fragment that are read: twice what all authored cases take. */
const mostCharacters = 4_000;

/**
 * A link to a set of cases, behind the `#`, so no server ever sees it. It can be read by eye.
 * @param page the address of the practice page, without a fragment
 */
export function setLink({ cases, generated }: PracticeSet, page: string): string {
  const parts = [
    ...(cases.length ? [`cases=${cases.join(',')}`] : []),
    ...(generated ? [`seed=${generatedId(generated.seed)}`, `count=${generated.count}`] : []),
  ];
  return `${page}#set${written}.${parts.join('&')}`;
}

/** Whether the part of an address behind `#` means to carry a set. */
export const carriesSet = (fragment: string): boolean => /^#?set[^/]*\./.test(fragment);

/** The set in the part of an address behind `#`. Never throws; bounded work whatever comes. */
export function readSetLink(fragment: string): Checked<PracticeSet> {
  const { length } = fragment;
  if (length > mostCharacters)
    return refuse([], { id: 'smaller', limit: mostCharacters }, { id: 'long-text', length });
  const version = /^#?set([^.]*)\./.exec(fragment)?.[1];
  if (version === undefined) return refuse([], { id: 'set-link' }, describe(fragment));
  if (!versions.some((known) => known === version))
    return refuse(
      [],
      { id: 'link-version', known: versions },
      { id: 'text', text: harmless(version) },
    );
  const parts = new Map<string, string>();
  for (const part of fragment.slice(fragment.indexOf('.') + 1).split('&')) {
    const [, key, value] = /^(cases|seed|count)=(.*)$/s.exec(part) ?? [];
    if (key === undefined || value === undefined || parts.has(key))
      return refuse([], { id: 'set-part' }, describe(part));
    parts.set(key, value);
  }
  const seed = parts.get('seed');
  if (seed !== undefined && version === '1') parts.set('seed', `${firstDrawing}-${seed}`);
  return readParts(parts);
}

function readParts(parts: ReadonlyMap<string, string>): Checked<PracticeSet> {
  const cases = parts.get('cases')?.split(',') ?? [];
  for (const [index, id] of cases.entries()) {
    if (!authored.some((one) => one.id === id))
      return refuse(['cases', index], { id: 'authored-case' }, describe(id));
    if (cases.indexOf(id) !== index)
      return refuse(['cases', index], { id: 'unique' }, describe(id));
  }
  if (!parts.has('seed') && !parts.has('count')) return { ok: true, value: { cases } };
  const count = wholeIn(parts.get('count'), 'count', [1, mostGenerated]);
  if (!count.ok) return count;
  const first = parts.get('seed');
  const [, drawn, start] = /^(g\d{1,4})-(.*)$/s.exec(first ?? '') ?? [];
  // Drawn another way the same seed is another case; better none than one that nobody chose.
  if (first !== undefined && drawn !== drawing)
    return refuse(['seed'], { id: 'case-drawing', drawing }, describe(first));
  const seed = wholeIn(start, 'seed', [0, lastStart(count.value)]);
  if (!seed.ok) return seed;
  return { ok: true, value: { cases, generated: { seed: seed.value, count: count.value } } };
}

/** A whole number written in digits, within a range. */
function wholeIn(
  text: string | undefined,
  key: 'seed' | 'count',
  range: readonly [number, number],
): Checked<number> {
  const value = text && /^(0|[1-9]\d{0,9})$/.test(text) ? Number(text) : NaN;
  return value >= range[0] && value <= range[1]
    ? { ok: true, value }
    : refuse([key], { id: 'count', range }, describe(text));
}
