import type { Handle } from '@sveltejs/kit';
import { ownLanguage } from '$words/language';

/**
 * What the head of a page runs before anything is shown: inside a frame nothing is, since a page
 * laid under another can be made to be clicked unseen. `hooks.client.ts` then says so.
 * Where the host sends the header `frame-ancestors`, the browser has refused before.
 */
const frameGuard = 'if(top!==self)document.documentElement.hidden=true';

const speaks = new Intl.Locale(ownLanguage.locale).language;

/** What the framework leaves in a page to find its places again when it takes it over. */
const marks = /<!--(?:\[[-!\d]*|\]|)-->/g;

/** The head without the line ends and indents between its tags. */
const closeUp = (html: string): string => {
  const end = html.indexOf('</head>');
  return html.slice(0, end).replace(/>\s*\n\s*</g, '><') + html.slice(end);
};
/** Line ends and indents of running text, which count as one space. */
const indents = /\n\s+/g;

/**
 * Pages as they go out: the whole site lies on the device, so what nobody reads is left out.
 * Pages without JavaScript are never taken over: they need no marks for it.
 */
export const handle: Handle = ({ event, resolve }) =>
  resolve(event, {
    transformPageChunk: ({ html, done }) => {
      if (!done) return html;
      const page = closeUp(html).replace('%lang%', speaks);
      if (!page.includes('<script')) return page.replace(marks, '').replace(indents, ' ');
      // Before the style sheets, for which it would wait, and the rules for scripts, which know it not.
      return page.replace('<link', `<script>${frameGuard}</script><link`);
    },
  });
