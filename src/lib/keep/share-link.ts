import type { Job } from '$lib/answers/job';
import { bounds } from './bounds';
import { compact, spread } from './compact';
import { parseJob } from './job-file';
import { pack, unpack } from './packing';
import { describe, harmless, refuse, type Checked } from './problem';
import { readJson } from './read-json';
import { newestVersion, tables } from './tables/tables';

/** Link versions that can be read, oldest first; the last is written. */
const versions = tables.map((_, index) => String(index + 1));
const prefix = 'job';

export type ShareLink =
  | { readonly ok: true; readonly link: string }
  /** Too long to travel safely: offer the file instead. Lengths in characters. */
  | { readonly ok: false; readonly length: number; readonly most: number };

/**
 * A link that carries a whole job behind its `#`, so no server ever sees it.
 * @param page the address of the page that opens shared jobs, without a fragment
 */
export async function shareLink(job: Job, page: string): Promise<ShareLink> {
  const link = `${page}#${prefix}${newestVersion}.${await pack(JSON.stringify(compact(job)))}`;
  const most = bounds.linkOffered;
  return link.length <= most ? { ok: true, link } : { ok: false, length: link.length, most };
}

/** Whether the part of an address behind `#` means to carry a job. */
export const carriesJob = (fragment: string): boolean => /^#?job[^/]*\./.test(fragment);

/** The job in the part of an address behind `#`. Never throws; bounded work whatever comes. */
export async function readShareLink(fragment: string): Promise<Checked<Job>> {
  if (fragment.length > bounds.linkLength)
    return refuse(
      [],
      { id: 'smaller', limit: bounds.linkLength },
      { id: 'long-text', length: fragment.length },
    );
  const version = /^#?job([^.]*)\./.exec(fragment)?.[1];
  if (version === undefined) return refuse([], { id: 'link' }, describe(fragment));
  if (!versions.includes(version))
    return refuse(
      [],
      { id: 'link-version', known: versions },
      { id: 'text', text: harmless(version) },
    );
  const unpacked = await unpack(fragment.slice(fragment.indexOf('.') + 1), bounds.linkContent);
  if (unpacked === 'too-large')
    return refuse([], { id: 'smaller', limit: bounds.linkContent }, { id: 'broken' });
  if (unpacked === 'broken') return refuse([], { id: 'whole-link' }, { id: 'broken' });
  const json = await readJson(unpacked.text);
  if (!json.ok) return refuse([], { id: 'whole-link' }, { id: 'broken' });
  const file = spread(json.value, Number(version), tables);
  return file.ok ? parseJob(file.value) : file;
}
