import { flushSync } from 'svelte';

/**
 * What the reader ticked, typed or picked on the page as it came, before this code takes it over:
 * taking over would set every control back. Ask before that, call what is returned after it, when
 * what was kept has been taken up. A question looks after itself: it also keeps the units it came in.
 */
export function touchedEarly(): () => void {
  if (typeof document === 'undefined' || restored()) return () => undefined;
  const touched = [
    ...document.querySelectorAll<HTMLInputElement>('input:not([data-question] *)'),
  ].filter(isTouched);
  const was = touched.map(({ checked, value }) => ({ checked, value }));
  return () =>
    touched.forEach((input, place) => {
      const { checked, value } = was[place] as (typeof was)[number];
      if (input.type !== 'file') Object.assign(input, { checked, value });
      for (const kind of ['input', 'change'])
        input.dispatchEvent(new Event(kind, { bubbles: true }));
      // One may follow from another, as when the reader does them one by one.
      flushSync();
    });
}

/** A page come back to is filled in by the browser, not by the reader; what was kept tells better. */
const restored = (): boolean => {
  const [entry] = performance.getEntriesByType?.('navigation') ?? [];
  return !!entry && (entry as PerformanceNavigationTiming).type !== 'navigate';
};

/** Of radios, only the one that was chosen: the one it took the place of follows. */
const isTouched = (input: HTMLInputElement): boolean => {
  if (input.type === 'file') return !!input.files?.length;
  if (input.type === 'radio') return input.checked && !input.defaultChecked;
  if (input.type === 'checkbox') return input.checked !== input.defaultChecked;
  return input.value !== input.defaultValue;
};
