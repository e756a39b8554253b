import { bounds } from './bounds';
import { refuse, type Checked } from './problem';

/** Text as JSON values, or where it stops being JSON. Never throws; the work is linear in the text. */
export async function readJson(text: string): Promise<Checked<unknown>> {
  if (text.trim() === '') return refuse([], { id: 'content' }, { id: 'nothing' });
  if (nestsDeeper(text, bounds.nesting))
    return refuse([], { id: 'flatter', limit: bounds.nesting }, { id: 'broken' });
  try {
    return { ok: true, value: JSON.parse(text) as unknown };
  } catch {
    // Looking for the place takes far longer than reading; nobody looks for it by eye in so long a text.
    if (text.length > bounds.placedLength) return refuse([], { id: 'json' }, { id: 'broken' });
    const { placeOfError } = await import('./json-place');
    return refuse([], { id: 'json', ...placeOfError(text) }, { id: 'broken' });
  }
}

/** Whether brackets outside of strings nest deeper than a limit. */
function nestsDeeper(text: string, limit: number): boolean {
  let depth = 0;
  let inString = false;
  for (let index = 0; index < text.length; index += 1) {
    const character = text[index];
    if (inString) {
      if (character === '\\') index += 1;
      else if (character === '"') inString = false;
    } else if (character === '"') inString = true;
    else if (character === '[' || character === '{') depth += 1;
    else if (character === ']' || character === '}') depth -= 1;
    if (depth > limit) return true;
  }
  return false;
}
