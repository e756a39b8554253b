import { createServer, type Server } from 'node:http';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import { siteListener } from '../../src/cli/site-server';
import { frameWords } from '$words/ui/frame';
import { nightUnless } from '../helpers/rounds';

/**
 * A page laid under another can be made to be clicked unseen (clickjacking, CWE-1021). The header
 * that forbids it is not sent by every host: here by none.
 */
const hand = siteListener(fileURLToPath(new URL('../../build', import.meta.url)));
let servers: Server[];
let site: string;
let other: string;

const listen = async (server: Server) => {
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  return (server.address() as { port: number }).port;
};
test.beforeEach(async () => {
  const bare = createServer((request, response) => {
    const { setHeader } = response;
    response.setHeader = function (name, value) {
      return name === 'Content-Security-Policy' ? this : setHeader.call(this, name, value);
    };
    hand(request, response);
  });
  site = `http://127.0.0.1:${await listen(bare)}`;
  const foreign = createServer((request, response) => {
    response.setHeader('Content-Type', 'text/html');
    response.end(
      `<!doctype html><title>Other</title><iframe src="${site}${request.url}" width="800" height="600"></iframe>`,
    );
  });
  // By another name, so that it is another site to the browser as well.
  other = `http://localhost:${await listen(foreign)}`;
  servers = [bare, foreign];
});
test.afterEach(async () => {
  for (const server of servers) {
    server.closeAllConnections();
    await new Promise((closed) => server.close(closed));
  }
});

for (const path of ['/jobs/', '/assess/element/', '/no/such/page/'])
  test(`inside another page ${path} shows nothing of itself, says why, and opens on its own${nightUnless(path === '/jobs/')}`, async ({
    page,
    context,
  }) => {
    // Whatever is painted inside the frame, from the first moment on.
    await context.addInitScript(() => {
      if (top === self) return;
      const seen: string[] = [];
      const look = () => {
        const control = document.querySelector('button, input, a[href]');
        if (control && !document.documentElement.hidden) seen.push(document.body.innerText);
        requestAnimationFrame(look);
      };
      look();
      Object.assign(window, { seen });
    });
    await page.goto(other + path);
    const frame = page.frameLocator('iframe');
    await expect(frame.getByText(frameWords.framed.line)).toBeVisible();
    await expect(frame.locator('button, input, select, nav')).toHaveCount(0);
    const [inner] = page.frames().slice(1);
    const seen =
      (await inner?.evaluate(() => (window as unknown as { seen: string[] }).seen)) ?? [];
    expect(seen.filter((text) => !text.includes(frameWords.framed.line))).toEqual([]);
    const opening = context.waitForEvent('page');
    await frame.getByRole('link', { name: frameWords.framed.open }).click();
    const own = await opening;
    await expect(own.getByRole('navigation').first()).toBeVisible();
    expect(new URL(own.url()).pathname).toBe(path);
  });

test('on its own the page stands as ever @nightly', async ({ page }) => {
  await page.goto(`${site}/jobs/`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.getByText(frameWords.framed.line)).toHaveCount(0);
});
