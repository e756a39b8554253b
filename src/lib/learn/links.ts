import { covered, titles } from 'virtual:explainers';
import type { Explained, Kind } from './kinds';

/** Where to read on. The page is at `/learn/<slug>/`. */
export interface ExplainerLink {
  readonly slug: string;
  readonly title: string;
}

/**
 * The explainer of anything the advice can name.
 * The build fails while an id has none, so there is always one.
 * @throws Error for an id from outside its kind
 */
export function explainerFor<K extends Kind>(kind: K, id: Explained[K]): ExplainerLink {
  const slug = covered[`${kind}:${id}`] ?? (kind === 'step' ? covered[`method:${id}`] : undefined);
  const title = slug && titles[slug];
  if (!slug || !title) throw new Error(`no explainer covers ${kind}:${id}`);
  return { slug, title };
}
