import * as v from 'valibot';
import { bounds } from './bounds';
import { name } from './shapes';

/** Whether a name can be kept as it is. */
export const isName = (text: string): boolean => v.is(name, text);

/**
 * A typed or pasted text as a name that can be kept: line ends and tabs become spaces, characters
 * that act on the screen or turn the writing direction go, and it ends at the length allowed.
 * Where nothing is left that can be seen, no name is.
 */
export function cleanName(text: string): string {
  const plain = text
    .replace(/[\t\n\r\u2028\u2029]+/g, ' ')
    .replace(/\p{Cc}|\p{Cs}|[\u202a-\u202e\u2066-\u2069]/gu, '');
  const name = [...plain].slice(0, bounds.nameLength).join('');
  return isName(name) ? name : '';
}
