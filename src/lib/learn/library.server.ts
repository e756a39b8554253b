import glossaryFile from '$content/glossary.json';
import { inOrder } from '$lib/words/by-language';
import { figures } from '$shared/figures';
import { sources } from '$shared/sources';
import { libraryFaults } from './check';
import { readExplainer, type Explainer } from './front';
import { readGlossary } from './glossary';

const files = import.meta.glob<string>('$content/explainers/*.md', {
  query: '?raw',
  import: 'default',
  eager: true,
});

export const glossary = readGlossary(glossaryFile);

/** Every explainer, by slug, in alphabetical order of title. */
export const explainers: readonly Explainer[] = Object.entries(files)
  .map(([path, text]) => readExplainer(path.replace(/^.*\/|\.md$/g, ''), text))
  .sort((a, b) => inOrder(a.front.title, b.front.title));

const faults = libraryFaults({
  explainers,
  glossary,
  figureIds: Object.keys(figures),
  sourceIds: Object.keys(sources),
});
// The pages import this, so a fault stops the build.
if (faults.length) throw new Error(`The explainers are not sound:\n${faults.join('\n')}`);

const bySlug = new Map(explainers.map((explainer) => [explainer.slug, explainer]));

/**
 * One explainer.
 * @throws Error for a slug that is not in the library
 */
export function explainerOf(slug: string): Explainer {
  const found = bySlug.get(slug);
  if (!found) throw new Error(`no explainer is called "${slug}"`);
  return found;
}

/** What a list of explainers shows of each. */
export const listed = ({ slug, front: { title, summary, group } }: Explainer) => ({
  slug,
  title,
  summary,
  group,
});
