import type { Aim } from '$lib/trial/aim';
import type { Found } from '$lib/trial/found';
import { readAll } from '$lib/trial/read';

/** A patch on which all is well. */
export const good: Found = {
  notch: 1,
  passes: 1,
  area: 1,
  depths: [4],
  stones: 'cut',
  left: 'nothing',
  bar: 'no',
  sound: 'clear',
};

/** What the last of some patches comes to, each well but for what is given. */
export const last = (aim: Aim, ...patches: Partial<Found>[]) =>
  readAll(
    patches.map((patch) => ({ ...good, ...patch })),
    aim,
  ).at(-1);

export const goesOn = { kind: 'go-on', why: ['meets-all'] };
export const again = (kind: string, notch: number, passes: number, ...why: string[]) => ({
  kind,
  why,
  next: { notch, passes },
});
export const other = (because: string, ended: boolean, ...why: string[]) => ({
  kind: 'other-method',
  why,
  because,
  ...(ended && { ladderEnded: true }),
});
