import { bounds } from './bounds';
import { harmless, refuse, type Checked } from './problem';

/** Text as JSON values, or where it stops being JSON or says a field twice. Never throws; the work is linear in the text. */
export async function readJson(text: string): Promise<Checked<unknown>> {
  if (text.trim() === '') return refuse([], { id: 'content' }, { id: 'nothing' });
  const fields = fieldsIn(text, bounds.nesting);
  if (fields === 'deeper')
    return refuse([], { id: 'flatter', limit: bounds.nesting }, { id: 'broken' });
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    // Looking for the place takes far longer than reading; nobody looks for it by eye in so long a text.
    if (text.length > bounds.placedLength) return refuse([], { id: 'json' }, { id: 'broken' });
    const { placeOfError } = await import('./json-place');
    return refuse([], { id: 'json', ...placeOfError(text) }, { id: 'broken' });
  }
  // Of two fields with one name the platform keeps the last, without a word.
  if (fieldsOf(value) === fields) return { ok: true, value };
  const { placeOfRepeat } = await import('./json-place');
  const repeat = placeOfRepeat(text);
  if (!repeat) return refuse([], { id: 'once' }, { id: 'broken' });
  const { keys, line, column } = repeat;
  return refuse(
    keys,
    { id: 'once', line, column },
    { id: 'field', field: harmless(String(keys.at(-1))) },
  );
}

/** How many fields a text of JSON writes down, or that brackets outside of strings nest deeper than a limit. */
function fieldsIn(text: string, limit: number): number | 'deeper' {
  let depth = 0;
  let fields = 0;
  let inString = false;
  for (let index = 0; index < text.length; index += 1) {
    const character = text[index];
    if (inString) {
      if (character === '\\') index += 1;
      else if (character === '"') inString = false;
    } else if (character === '"') inString = true;
    else if (character === ':') fields += 1;
    else if (character === '[' || character === '{') depth += 1;
    else if (character === ']' || character === '}') depth -= 1;
    if (depth > limit) return 'deeper';
  }
  return fields;
}

/** How many fields a value has, at every depth. */
function fieldsOf(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 0;
  const inside = Object.values(value);
  const own = Array.isArray(value) ? 0 : inside.length;
  return inside.reduce<number>((sum, each) => sum + fieldsOf(each), own);
}
