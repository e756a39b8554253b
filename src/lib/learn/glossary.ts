import * as v from 'valibot';

const term = v.strictObject({
  /** Spelled as the site spells it. */
  term: v.pipe(v.string(), v.minLength(1)),
  /** Other spellings that are linked too: plurals, verbs, short forms. */
  forms: v.optional(v.array(v.pipe(v.string(), v.minLength(1)))),
  /**
   * For a word with more than one sense: beginnings of words of which one stands in the same
   * sentence where the trade's sense is meant. Without one of them it is not linked.
   */
  near: v.optional(v.array(v.pipe(v.string(), v.minLength(2)))),
  /** Beginnings of words that tell another sense: beside them it is not linked. */
  unless: v.optional(v.array(v.pipe(v.string(), v.minLength(2)))),
  /** One to three plain sentences. */
  says: v.pipe(v.string(), v.minLength(20)),
  /** Whether an owner's sheet may use it, and has to say what it means. */
  owner: v.optional(v.literal(true)),
  /** The explainer that says more. */
  see: v.optional(v.string()),
});

type Term = v.InferOutput<typeof term>;
export type Glossary = Readonly<Record<string, Term>>;

/**
 * Reads the glossary: id of a term to what it means.
 * @throws Error naming the term and the field, or two terms that share a spelling with nothing to
 * tell which is meant.
 */
export function readGlossary(raw: unknown): Glossary {
  const parsed = v.safeParse(v.record(v.pipe(v.string(), v.regex(/^[a-z0-9-]+$/)), term), raw);
  if (!parsed.success)
    throw new Error(
      parsed.issues.map((issue) => `glossary: ${v.getDotPath(issue)}: ${issue.message}`).join('\n'),
    );
  const seen = new Map<string, string>();
  for (const [id, entry] of Object.entries(parsed.output))
    for (const spelling of [entry.term, ...(entry.forms ?? [])]) {
      const key = spelling.toLowerCase();
      const other = seen.get(key);
      if (other && !entry.near && !parsed.output[other]?.near)
        throw new Error(
          `glossary: "${spelling}" stands in both ${other} and ${id}; expected near in one of them, to tell them apart`,
        );
      seen.set(key, id);
    }
  return parsed.output;
}
