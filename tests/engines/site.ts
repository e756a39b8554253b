import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { siteListener } from '../../src/cli/site-server';

/**
 * Writes down whatever goes wrong in a page, before anything of the page runs; kept in the tab, so
 * that it outlasts the page. It stands before the page's policy on what may run, which it does not touch.
 */
const listener = `<script>(() => {
  let leaving = false;
  addEventListener('beforeunload', () => (leaving = true));
  const note = (what) => {
    // What is given up because the page is left is no fault of it.
    if (leaving) return;
    const all = JSON.parse(sessionStorage.getItem('noted') ?? '[]');
    sessionStorage.setItem('noted', JSON.stringify([...all, location.pathname + ': ' + what]));
  };
  addEventListener('error', (event) => {
    // A script that is only announced may be had another way first; one that is asked for and does
    // not come says so itself.
    if (event.target.rel !== 'modulepreload')
      note(event.message ?? 'not had: ' + (event.target.src ?? event.target.href));
  }, true);
  addEventListener('unhandledrejection', ({ reason }) => note('unhandled: ' + reason));
  document.addEventListener('securitypolicyviolation', (event) => note(
    'not allowed: ' + event.violatedDirective + ' ' + event.blockedURI));
  const { error } = console;
  console.error = (...told) => { note(told.join(' ')); error(...told); };
})()</script>`;

/** The built site, with that in every page, on a free port; it can be taken off the network and put back. */
export async function servedSite(build: string) {
  const folder = mkdtempSync(join(tmpdir(), 'engines-'));
  cpSync(build, folder, { recursive: true, filter: (path) => !/\.html\.(br|gz)$/.test(path) });
  for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (!path.endsWith('.html')) continue;
    const file = join(folder, path);
    writeFileSync(file, readFileSync(file, 'utf8').replace('<head>', `<head>${listener}`));
  }
  const server = createServer(siteListener(folder));
  const listen = (port: number) =>
    new Promise<void>((ready) => server.listen(port, '127.0.0.1', ready));
  await listen(0);
  const { port } = server.address() as AddressInfo;
  const off = () => {
    server.closeAllConnections();
    return new Promise<void>((closed) => server.close(() => closed()));
  };
  return {
    address: `http://127.0.0.1:${port}`,
    off,
    on: () => listen(port),
    async end() {
      if (server.listening) await off();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
