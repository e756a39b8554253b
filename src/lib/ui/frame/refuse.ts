import { frameWords } from '$words/ui/frame';

/** In place of the page: that it does not work inside another, and a link to it on its own. */
export function refuseFrame(): void {
  const { line, open } = frameWords.framed;
  const main = document.createElement('main');
  const told = document.createElement('p');
  told.textContent = line;
  const link = document.createElement('a');
  Object.assign(link, {
    href: location.href,
    target: '_blank',
    rel: 'noopener',
    textContent: open,
  });
  main.append(told, link);
  document.body.replaceChildren(main);
  document.documentElement.hidden = false;
}
