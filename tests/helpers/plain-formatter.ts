import { formatter as tied } from '$lib/words/format';
import type { Formatter } from '$lib/words/types';

/** What a formatter says with plain spaces: what keeps a measure on one line is tested in one place. */
export const untied = (text: string): string => text.replaceAll('\u00a0', ' ');

/** A formatter that ties nothing, for tests of what is said. */
export function formatter(...args: Parameters<typeof tied>): Formatter {
  const say = tied(...args);
  return new Proxy(say, {
    get(target, name) {
      const value: unknown = Reflect.get(target, name);
      if (typeof value !== 'function') return value;
      return (...given: unknown[]) => {
        const said: unknown = Reflect.apply(value, target, given);
        return typeof said === 'string' ? untied(said) : said;
      };
    },
  });
}
