import * as v from 'valibot';
import { parse } from 'yaml';
import { groups } from './kinds';
import { ownLanguage } from '$words/language';

/** The three ways of reading the site. */
const readerIds = ['works', 'owns', 'explains'] as const;

const oneLine = (most: number) =>
  v.pipe(
    v.string('expected a line of text'),
    v.minLength(1, 'expected some text'),
    v.maxLength(most, `expected at most ${most} characters`),
    v.regex(/^[^\n]+$/, 'expected one line'),
  );

const shape = v.strictObject({
  title: oneLine(60 * ownLanguage.longer),
  summary: oneLine(160 * ownLanguage.longer),
  group: v.picklist(groups, 'expected one of the groups in kinds.ts'),
  readers: v.pipe(v.array(v.picklist(readerIds)), v.minLength(1, 'expected at least one reader')),
  sources: v.array(v.string()),
  related: v.pipe(v.array(v.string()), v.minLength(1, 'expected at least one related slug')),
  reviewed: v.pipe(v.string(), v.isoDate('expected a date like 2026-11-25')),
  covers: v.array(v.pipe(v.string(), v.regex(/^[a-z]+:[a-zA-Z0-9-]+$/, 'expected kind:id'))),
});

/** What stands at the head of an explainer. `covers` holds `kind:id` of everything the page explains. */
type Front = v.InferOutput<typeof shape>;

/** An explainer as it lies in `content/explainers/`: its file name without ending, head and text. */
export interface Explainer {
  readonly slug: string;
  readonly front: Front;
  /** Markdown under the head. */
  readonly body: string;
}

const head = /^---\n([\s\S]*?)\n---\n/;

/**
 * Reads one explainer.
 * @throws Error naming the file, the place in its head, and what was expected there.
 */
export function readExplainer(slug: string, text: string): Explainer {
  const found = head.exec(text);
  if (!found) throw new Error(`${slug}.md: expected a head between two lines of three dashes`);
  const parsed = v.safeParse(shape, parse(found[1] ?? ''));
  if (!parsed.success)
    throw new Error(
      parsed.issues
        .map((issue) => `${slug}.md: ${v.getDotPath(issue) ?? 'head'}: ${issue.message}`)
        .join('\n'),
    );
  return { slug, front: parsed.output, body: text.slice(found[0].length) };
}
