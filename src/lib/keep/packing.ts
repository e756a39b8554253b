/** Bytes through one of the platform's compression streams, giving up past `most` bytes. */
async function through(
  stream: CompressionStream | DecompressionStream,
  bytes: Uint8Array<ArrayBuffer>,
  most: number,
): Promise<Uint8Array | 'too-large' | 'broken'> {
  const writer = stream.writable.getWriter();
  // A broken stream refuses the write as well as the read; the read says it.
  writer.write(bytes).catch(() => undefined);
  writer.close().catch(() => undefined);
  const reader = stream.readable.getReader();
  const chunks: Uint8Array[] = [];
  let length = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      length += value.length;
      if (length > most) {
        reader.cancel().catch(() => undefined);
        return 'too-large';
      }
      chunks.push(value);
    }
  } catch {
    return 'broken';
  }
  const whole = new Uint8Array(length);
  chunks.reduce((offset, chunk) => (whole.set(chunk, offset), offset + chunk.length), 0);
  return whole;
}

/** Text as deflated base64url, for a link; with the checksum that deflate-raw lacks, so that a link changed on the way is noticed. */
export async function pack(text: string): Promise<string> {
  const bytes = new TextEncoder().encode(text);
  const packed = await through(new CompressionStream('deflate'), bytes, Infinity);
  if (typeof packed === 'string') throw new Error('The platform could not compress a text.');
  let binary = '';
  for (const byte of packed) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** The text packed in a link. Stops as soon as more than `most` bytes have come out. */
export async function unpack(
  packed: string,
  most: number,
): Promise<{ readonly text: string } | 'too-large' | 'broken'> {
  if (!/^[A-Za-z0-9_-]+$/.test(packed) || packed.length % 4 === 1) return 'broken';
  const binary = atob(packed.replaceAll('-', '+').replaceAll('_', '/'));
  const bytes = Uint8Array.from(binary, (character) => character.charCodeAt(0));
  const unpacked = await through(new DecompressionStream('deflate'), bytes, most);
  if (typeof unpacked === 'string') return unpacked;
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(unpacked) };
  } catch {
    return 'broken';
  }
}
