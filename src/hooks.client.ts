import type { ClientInit } from '@sveltejs/kit';

/** Inside a frame the site does not start: it says so, with the way out. */
export const init: ClientInit = async () => {
  if (top === self) return;
  const { refuseFrame } = await import('$lib/ui/frame/refuse');
  refuseFrame();
  await new Promise(() => undefined);
};
