import { siteName } from '$lib/ui/site-name';

/** Whether the browser keeps what is here until the reader deletes it: asked for once, after the first photo. */
export type Kept = 'yes' | 'no';

const key = siteName('down-to-sound.asked-to-keep');

const asked = (): boolean => {
  try {
    return localStorage.getItem(key) !== null;
  } catch {
    return true;
  }
};

/** What holds now; undefined where the browser has no such thing. */
export async function whetherKept(): Promise<Kept | undefined> {
  try {
    return (await navigator.storage.persisted()) ? 'yes' : 'no';
  } catch {
    return undefined;
  }
}

/** Asks the browser, unless it was asked before; some then ask the reader. */
export async function askToKeep(): Promise<Kept | undefined> {
  try {
    if (asked()) return await whetherKept();
    localStorage.setItem(key, '1');
    return (await navigator.storage.persist()) ? 'yes' : 'no';
  } catch {
    return undefined;
  }
}
