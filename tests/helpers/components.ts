import '@testing-library/jest-dom/vitest';
import { configure } from '@testing-library/svelte';
import { afterAll, vi } from 'vitest';
import { preferences } from '$lib/ui/preferences.svelte';
import { readerHere } from '$lib/ui/reader-here';

// In these tests somebody goes on with every page from the start.
configure({ asyncUtilTimeout: 60_000 });
void readerHere();
dispatchEvent(new Event('scroll'));

// Metric, unless a test says otherwise: jsdom speaks American English, whose readers are met in feet.
Object.defineProperty(navigator, 'language', { value: 'en-GB', configurable: true });
// Files share their modules: each begins with a reader who has chosen nothing, and leaves nothing on its way.
localStorage.clear();
preferences.load();
afterAll(() => vi.dynamicImportSettled());

/**
 * No style sheet but the browser's own is loaded here: how an element is shown depends on its name and
 * these attributes alone. The names of roles ask for it at every node, which is half of these tests' time.
 */
const shownBy = ['hidden', 'open', 'popover', 'type'];
const known = new Map<string, CSSStyleDeclaration>();
const reckon = window.getComputedStyle.bind(window);
window.getComputedStyle = (element, pseudo) => {
  if (element.hasAttribute('style')) return reckon(element, pseudo);
  const key = [
    pseudo,
    element.tagName,
    ...shownBy.map((name) => element.getAttribute(name)),
  ].join();
  const style = known.get(key) ?? reckon(element, pseudo);
  known.set(key, style);
  return style;
};
