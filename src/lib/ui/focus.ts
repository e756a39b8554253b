import { tick } from 'svelte';

/** Where the net has put the focus: a better place may still be told. */
let caught: HTMLElement | null = null;

const lost = (): boolean => {
  const { activeElement, body } = document;
  return !activeElement || activeElement === body || !activeElement.isConnected;
};
const usable =
  'a[href], button:not(:disabled), input:not(:disabled), select, textarea, summary, [tabindex]';
const inSight = (element: HTMLElement) => element.getClientRects().length > 0;

/**
 * Once the page has followed what was done: where the focus went with what it stood on, puts it
 * where the reader goes on. Focus that stands elsewhere is left alone.
 * @param to finds the place; the heading of the page where there is none
 */
export async function focusOn(to: () => Element | null | undefined = () => null): Promise<void> {
  await tick();
  if (!lost() && document.activeElement !== caught) return;
  const place = to() ?? document.querySelector('h1[tabindex]');
  (place as HTMLElement | null)?.focus();
}

/**
 * Catches the focus wherever something that had it is taken from the page, and puts it on what can
 * be used next in the nearest part of the page that still stands.
 */
export function focusNet(): void {
  let path: readonly Element[] = [];
  const follow = (event: FocusEvent) =>
    (path = event.composedPath().filter((each): each is Element => each instanceof Element));
  const look = () => {
    const [held] = path;
    if (!held || held.isConnected || !lost()) return;
    const part = path.find((each) => each.isConnected && each !== document.body);
    path = [];
    const near = part && !part.contains(document.querySelector('main')) ? part : null;
    const next = [...(near?.querySelectorAll<HTMLElement>(usable) ?? [])].find(inSight);
    caught = next ?? document.querySelector<HTMLElement>('h1[tabindex]');
    caught?.focus();
  };
  // Later than what is told of the place; a page that comes is read from its heading.
  const observer = new MutationObserver(() => setTimeout(look));
  observer.observe(document.body, { childList: true, subtree: true });
  document.addEventListener('focusin', follow);
}
