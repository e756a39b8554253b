import type { Explainer } from './front';
import type { Glossary } from './glossary';
import { explained, kinds } from './kinds';
import { libraryWords } from '$words/ui/library';
import type { MethodId } from '$shared/methods';
import { settingFigures } from '$shared/settings';

/** What the library is checked against. */
export interface Shelf {
  readonly explainers: readonly Explainer[];
  readonly glossary: Glossary;
  readonly figureIds: readonly string[];
  readonly sourceIds: readonly string[];
}

/** Pages under /learn/ that are not explainers: no explainer may take their address. */
const otherPages = ['glossary', 'sources', 'search', 'practice', 'chart', 'interview-map'] as const;

/** The heading under which the second depth of a page stands. */
export const tradeHeading = `## ${libraryWords.tradeDetail}`;

const linkPattern = /\]\(([^)\s]+)\)/g;
const figurePattern = /<Fig\s+id="([^"]+)"/g;

const stripPattern = /<MethodSettings\s+method="([^"]+)"/g;

/** The ids of the figures a text prints, in order of first use; those of a strip of settings last. */
export const figuresIn = (body: string): string[] => [
  ...new Set([
    ...[...body.matchAll(figurePattern)].map((match) => match[1] ?? ''),
    ...[...body.matchAll(stripPattern)].flatMap(([, method]) => settingFigures(method as MethodId)),
  ]),
];

function faultsOf({ slug, front, body }: Explainer, shelf: Shelf, slugs: Set<string>): string[] {
  const faults: string[] = [];
  const fault = (text: string) => faults.push(`${slug}.md: ${text}`);
  if ((otherPages as readonly string[]).includes(slug)) fault('the address is taken by a page');
  for (const id of front.sources)
    if (!shelf.sourceIds.includes(id)) fault(`sources: unknown source "${id}"`);
  for (const id of front.related) {
    if (!slugs.has(id)) fault(`related: unknown slug "${id}"`);
    if (id === slug) fault('related: names itself');
  }
  for (const id of figuresIn(body))
    if (!shelf.figureIds.includes(id)) fault(`unknown figure "${id}"`);
  for (const [, target = ''] of body.matchAll(linkPattern)) {
    const name = /^\.\.\/([a-z0-9-]+)\/(?:#[a-z0-9-]+)?$/.exec(target)?.[1];
    if (!name) fault(`link "${target}": expected ../slug/`);
    else if (!slugs.has(name) && !(otherPages as readonly string[]).includes(name))
      fault(`dead link "${target}"`);
  }
  if (body.split(`\n${tradeHeading}\n`).length !== 2)
    fault(`expected the heading "${tradeHeading}" once`);
  if (/^# /m.test(body)) fault('a first-level heading: the title comes from the head');
  return faults;
}

/** Ids that must be covered exactly once, and what covers something that does not exist. */
function coverFaults(explainers: readonly Explainer[]): string[] {
  const faults: string[] = [];
  const wanted = new Set(kinds.flatMap((kind) => explained[kind].map((id) => `${kind}:${id}`)));
  const by = new Map<string, string>();
  for (const { slug, front } of explainers)
    for (const key of front.covers) {
      if (!wanted.has(key)) faults.push(`${slug}.md: covers: nothing is called "${key}"`);
      const other = by.get(key);
      if (other) faults.push(`${slug}.md: covers: ${key} is explained by ${other}.md already`);
      by.set(key, slug);
    }
  for (const key of wanted) if (!by.has(key)) faults.push(`no explainer covers ${key}`);
  return faults;
}

/** Everything wrong with the library, a line each; empty when it may be built. */
export function libraryFaults(shelf: Shelf): string[] {
  const faults: string[] = [];
  const slugs = new Set<string>();
  const titles = new Set<string>();
  for (const { slug, front } of shelf.explainers) {
    if (slugs.has(slug)) faults.push(`${slug}.md: the slug is used twice`);
    if (titles.has(front.title))
      faults.push(`${slug}.md: the title "${front.title}" is used twice`);
    slugs.add(slug);
    titles.add(front.title);
  }
  for (const explainer of shelf.explainers) faults.push(...faultsOf(explainer, shelf, slugs));
  for (const [id, { see }] of Object.entries(shelf.glossary))
    if (see && !slugs.has(see)) faults.push(`glossary: ${id}: see: unknown slug "${see}"`);
  return [...faults, ...coverFaults(shelf.explainers)];
}
