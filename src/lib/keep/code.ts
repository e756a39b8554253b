/**
 * A square that a camera reads as a text (QR code, ISO/IEC 18004), drawn as one path. The library
 * that makes it is fetched when a code is.
 */
export interface Code {
  /** Modules on a side, without the quiet zone. */
  readonly size: number;
  /** Light modules that stand on every side of it. */
  readonly quiet: number;
  /** The dark modules as an SVG path, a module being 1; the quiet zone is at 0. */
  readonly path: string;
}

/** As the standard asks: four modules stay light round a code. */
const quiet = 4;
/** A phone reads version 18 from paper at arm's length: 89 modules, each half a millimetre at 45 mm. */
const mostVersion = 18;
/** Bytes that version 18 holds with the least correction, by the standard's own table. */
const mostBytes = 718;

/** The code of a text; null where it would be finer than a phone reads from paper. */
export async function codeOf(text: string): Promise<Code | null> {
  if (new TextEncoder().encode(text).length > mostBytes) return null;
  const { encode } = await import('uqr');
  const { data, size } = encode(text, { ecc: 'L', border: 0, maxVersion: mostVersion });
  return { size, quiet, path: pathOf(data) };
}

/** Each run of dark modules in a row as one bar. */
function pathOf(rows: readonly (readonly boolean[])[]): string {
  let path = '';
  rows.forEach((row, y) => {
    for (let x = 0; x < row.length; x += 1) {
      if (!row[x]) continue;
      let end = x;
      while (row[end + 1]) end += 1;
      path += `M${String(x + quiet)} ${String(y + quiet)}h${String(end - x + 1)}v1h-${String(end - x + 1)}z`;
      x = end;
    }
  });
  return path;
}
