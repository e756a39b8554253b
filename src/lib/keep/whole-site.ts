import names from './whole-site.json';

/** The file that holds the whole site, from where the site lies. A `.txt`: hosts pack text on the way. */
export const wholeSite = names.file;

/**
 * Instructions to the host, the description of the job file for other programs, data of pages that
 * are never taken over, and the icon the device takes when it installs: no page asks for them.
 */
export const notKept: readonly string[] = names.notKept;

/** What the first line of the file says: the version of the site, and each file's path, bytes, type. */
interface Head {
  readonly version: string;
  readonly files: readonly (readonly [path: string, bytes: number, type: string])[];
}

export interface KeptFile {
  /** From where the site lies, as it is asked for: `learn/`, and '' for the first page. */
  readonly path: string;
  /** Media type with its charset; '' where it has none. */
  readonly type: string;
  readonly body: Uint8Array<ArrayBuffer>;
}

/**
 * The files of the whole site as they come, one after another; none where it is another version's.
 * @param stream what the host sends for `_app/whole-site.txt`
 * @throws {Error} when it ends too early or does not begin with what it holds
 */
export async function* filesOf(
  stream: ReadableStream<Uint8Array<ArrayBuffer>>,
  version: string,
): AsyncGenerator<KeptFile> {
  const reader = stream.getReader();
  let held = new Uint8Array();
  /** Adds what comes next; false at the end. */
  const more = async () => {
    const { value, done } = await reader.read();
    if (done) return false;
    const both = new Uint8Array(held.length + value.length);
    both.set(held);
    both.set(value, held.length);
    held = both;
    return true;
  };
  const take = (bytes: number) => {
    const taken = held.slice(0, bytes);
    held = held.subarray(bytes);
    return taken;
  };
  try {
    let end: number;
    while ((end = held.indexOf(lineEnd)) < 0) if (!(await more())) throw new Error('no first line');
    const line = new TextDecoder().decode(take(end + 1));
    const head = JSON.parse(line) as Head;
    if (head.version !== version) return;
    for (const [path, bytes, type] of head.files) {
      while (held.length < bytes)
        if (!(await more())) throw new Error(`ends in the middle of ${path}`);
      yield { path, type, body: take(bytes) };
    }
  } finally {
    // What is not wanted is not fetched to its end.
    await reader.cancel().catch(() => undefined);
  }
}
const lineEnd = '\n'.charCodeAt(0);
