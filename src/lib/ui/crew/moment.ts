import type { Moment } from '$lib/answers/day-log';

const two = (number: number): string => String(Math.floor(Math.abs(number))).padStart(2, '0');

/** A date as a moment of this device's clock. */
export function momentAt(date: Date): Moment {
  const ahead = -date.getTimezoneOffset();
  const day = [
    String(date.getFullYear()).padStart(4, '0'),
    two(date.getMonth() + 1),
    two(date.getDate()),
  ];
  const time = [date.getHours(), date.getMinutes(), date.getSeconds()].map(two);
  return `${day.join('-')}T${time.join(':')}${ahead < 0 ? '-' : '+'}${two(ahead / 60)}:${two(Math.abs(ahead) % 60)}`;
}

export const momentNow = (): Moment => momentAt(new Date());

/** A moment as a `datetime-local` field shows it. */
export const fieldText = (moment: Moment | undefined): string => moment?.slice(0, 16) ?? '';

/** What such a field holds; what stood there before where it was not changed, with its seconds and its clock. */
export function fromField(text: string, before?: Moment): Moment | undefined {
  if (before && text === fieldText(before)) return before;
  const time = Date.parse(text);
  return Number.isNaN(time) ? undefined : momentAt(new Date(time));
}
