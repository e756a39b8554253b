import { timeWords } from '$lib/words/by-language';

/** A stored time as a `datetime-local` field shows it, in the reader's own time zone; empty where it cannot be read. */
export function localTime(iso: string | undefined): string {
  const time = iso === undefined ? Number.NaN : Date.parse(iso);
  if (Number.isNaN(time)) return '';
  const shifted = new Date(time - new Date(time).getTimezoneOffset() * 60_000);
  return shifted.toISOString().slice(0, 16);
}

/** What such a field holds, as a time to store; undefined where nothing is in it. */
export function isoTime(local: string): string | undefined {
  const time = Date.parse(local);
  return Number.isNaN(time) ? undefined : new Date(time).toISOString();
}

/** A stored time in words, for the record; as it was typed where it cannot be read. */
export function spokenTime(iso: string): string {
  const time = Date.parse(iso);
  return Number.isNaN(time) ? iso : timeWords(time);
}
