import { valueOf } from '$shared/figures';
import type { Problem } from '$lib/climate/file/types';

/** A file's text, or why it has none. */
export type TextRead =
  { readonly text: string; readonly odd: boolean } | { readonly problem: Problem };

const megabyte = 1e6;
/** Enough of a file to tell text from anything else. */
const sample = 4096;

const startsWith = (bytes: Uint8Array, ...start: number[]): boolean =>
  start.every((byte, index) => bytes[index] === byte);

/** Bytes that never stand in text. Tab, line feed, form feed and carriage return do. */
function looksBinary(bytes: Uint8Array): boolean {
  let strange = 0;
  for (const byte of bytes.subarray(0, sample))
    if (byte < 9 || byte === 11 || (byte > 13 && byte < 32)) strange += 1;
  return strange > 0;
}

/** Which half of UTF-16 a file is in, by its mark, or by every other byte of its start being zero. */
function utf16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  if (startsWith(bytes, 0xff, 0xfe)) return 'utf-16le';
  if (startsWith(bytes, 0xfe, 0xff)) return 'utf-16be';
  const start = bytes.subarray(0, 64);
  if (start.length < 8) return null;
  const zeros = (half: number) =>
    start.filter((byte, index) => byte === 0 && index % 2 === half).length;
  const [even, odd] = [zeros(0), zeros(1)];
  if (odd >= start.length / 4 && even === 0) return 'utf-16le';
  return even >= start.length / 4 && odd === 0 ? 'utf-16be' : null;
}

/**
 * The text of a file in UTF-8, UTF-16 or, where it is neither, the old Western encoding.
 * `odd` says that the last was taken, so that names with accents may be wrong; numbers are not.
 */
export function readText(bytes: Uint8Array): TextRead {
  const limit = valueOf('weather.file-limit');
  if (bytes.length > limit * megabyte) return { problem: { id: 'too-large', count: limit } };
  if (!bytes.length) return { problem: { id: 'empty' } };
  const wide = utf16(bytes);
  if (wide) return { text: new TextDecoder(wide).decode(bytes), odd: false };
  if (looksBinary(bytes)) return { problem: { id: 'binary' } };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), odd: false };
  } catch {
    return { text: new TextDecoder('windows-1252').decode(bytes), odd: true };
  }
}
