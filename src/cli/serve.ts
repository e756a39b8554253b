import { createServer } from 'node:http';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { siteListener } from './site-server';

/**
 * Serves the built site on this machine and prints its address.
 * The port is 4173, or the one in PORT; when it is taken, another free one.
 * The folder is `build`, or the one named as argument.
 */
const usual = 4173;
const folder = process.argv[2] ?? fileURLToPath(new URL('../../build', import.meta.url));

if (!existsSync(folder)) {
  console.error('There is no built site yet. Run: npm run build');
  process.exit(2);
}

const lost = join(folder, '404.html');
/** Where the build says that it lies on its host; the page for what is not there has to know. */
const [, base = ''] =
  /\bbase: "([^"]*)"/.exec(existsSync(lost) ? readFileSync(lost, 'utf8') : '') ?? [];

const server = createServer(siteListener(folder, base));
// Comes with no answer of its own, as all else does.
server.on('connect', (_request, socket) =>
  socket
    .on('error', () => undefined)
    .end('HTTP/1.1 405 Method Not Allowed\r\nAllow: GET, HEAD\r\nConnection: close\r\n\r\n'),
);
server.on('error', (problem: NodeJS.ErrnoException) => {
  // A named port is meant: only the usual one gives way.
  if (problem.code !== 'EADDRINUSE' || process.env.PORT) throw problem;
  server.listen(0, '127.0.0.1');
});
server.on('listening', () => {
  const address = server.address();
  if (address && typeof address === 'object')
    console.log(`Down to Sound is at http://127.0.0.1:${address.port}${base}/`);
});
server.listen(Number(process.env.PORT ?? usual), '127.0.0.1');
