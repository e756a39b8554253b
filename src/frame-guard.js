/**
 * What the head of a page runs before anything is shown: inside a frame nothing is, since a page
 * laid under another can be made to be clicked unseen. `hooks.client.ts` then says so.
 * Where the host sends the header `frame-ancestors`, the browser has refused before.
 */
export const frameGuard = 'if(top!==self)document.documentElement.hidden=true';
