/**
 * A JPEG taken apart by its markers and put together again from what the picture needs, so that
 * nothing else travels in it: no place, no camera, no hidden small picture, nothing behind its end.
 * Source: ITU-T T.81 (JPEG), annex B, for the markers; ITU-T T.871 (JFIF), 10.1, for the first part.
 */

const start = 0xd8;
const end = 0xd9;
const scan = 0xda;
const jfif = 0xe0;
const adobe = 0xee;
/** Sizes and sampling: baseline, extended, progressive. What else there is no browser makes. */
const frames = new Set([0xc0, 0xc1, 0xc2]);
/** Tables a picture is decoded with: Huffman, quantisation, restart interval. */
const tables = new Set([0xc4, 0xdb, 0xdd]);
/** What says what a file is or comes from: application parts and comments. */
const about = (marker: number) => (marker >= 0xe0 && marker <= 0xef) || marker === 0xfe;
/** Marks inside a scan: a byte of 0xff that is data, and restarts. */
const inScan = (marker: number) => marker === 0 || (marker >= 0xd0 && marker <= 0xd7);

interface Size {
  readonly width: number;
  readonly height: number;
}
export interface Plain extends Size {
  readonly bytes: Uint8Array<ArrayBuffer>;
}

const named = (bytes: Uint8Array, at: number, name: string): boolean =>
  [...name].every((letter, index) => bytes[at + index] === letter.charCodeAt(0));

/** The part that says it is a JFIF file, without the small picture it may carry. */
function bareJfif(part: Uint8Array): Uint8Array | null {
  if (part.length < 18 || !named(part, 4, 'JFIF\0')) return null;
  const bare = part.slice(0, 18);
  bare.set([0, 16], 2);
  bare.set([0, 0], 16);
  return bare;
}

/** Whether bytes begin as a JPEG does. */
export const isJpeg = (bytes: Uint8Array): boolean =>
  bytes[0] === 0xff && bytes[1] === start && bytes[2] === 0xff;

/**
 * A JPEG with nothing in it but its picture.
 * @returns null where it is none, ends too soon, or holds a part that no browser writes
 */
export function plainJpeg(bytes: Uint8Array): Plain | null {
  if (!isJpeg(bytes)) return null;
  const kept: Uint8Array[] = [bytes.subarray(0, 2)];
  let size: Size | null = null;
  let scanned = false;
  let at = 2;
  while (at < bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] ?? 0;
    // Bytes that only fill up.
    if (marker === 0xff) at += 1;
    else if (marker === end) {
      if (!size || !scanned) return null;
      kept.push(bytes.subarray(at, at + 2));
      return { ...size, bytes: joined(kept) };
    } else {
      const length = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
      const next = at + 2 + length;
      if (length < 2) return null;
      const part = bytes.subarray(at, next);
      at = next;
      if (marker === jfif && kept.length === 1) kept.push(bareJfif(part) ?? new Uint8Array());
      else if (marker === adobe && length === 14 && named(part, 4, 'Adobe')) kept.push(part);
      else if (frames.has(marker)) {
        const [, , , , , high = 0, low = 0, wide = 0, broad = 0] = part;
        size = { width: (wide << 8) | broad, height: (high << 8) | low };
        if (!size.width || !size.height) return null;
        kept.push(part);
      } else if (tables.has(marker)) kept.push(part);
      else if (marker === scan) {
        const from = at;
        while (at < bytes.length && !(bytes[at] === 0xff && !inScan(bytes[at + 1] ?? 0))) at += 1;
        scanned ||= at > from;
        kept.push(part, bytes.subarray(from, at));
      } else if (!about(marker)) return null;
    }
  }
  return null;
}

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** The size of a JPEG that is nothing but its picture; null for any other bytes. */
export function sizeOfPlain(bytes: Uint8Array): Size | null {
  const plain = plainJpeg(bytes);
  if (plain?.bytes.length !== bytes.length) return null;
  return plain.bytes.every((byte, index) => byte === bytes[index])
    ? { width: plain.width, height: plain.height }
    : null;
}
