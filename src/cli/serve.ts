import { createServer } from 'node:http';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sirv from 'sirv';

/**
 * Serves the built site on this machine and prints its address.
 * The port is 4173, or the one in PORT; when it is taken, another free one.
 */
const usual = 4173;
const folder = fileURLToPath(new URL('../../build', import.meta.url));

if (!existsSync(folder)) {
  console.error('There is no built site yet. Run: npm run build');
  process.exit(2);
}

const serveFiles = sirv(folder, { dev: false, etag: true, gzip: true, brotli: true });
const server = createServer((request, response) => {
  serveFiles(request, response, () => {
    // What a static host does: the page for what is not there, with the status that says so.
    response.statusCode = 404;
    request.url = '/404.html';
    serveFiles(request, response);
  });
});

server.on('error', (problem: NodeJS.ErrnoException) => {
  // A named port is meant: only the usual one gives way.
  if (problem.code !== 'EADDRINUSE' || process.env.PORT) throw problem;
  server.listen(0, '127.0.0.1');
});
server.on('listening', () => {
  const address = server.address();
  if (address && typeof address === 'object')
    console.log(`Down to Sound is at http://127.0.0.1:${address.port}/`);
});
server.listen(Number(process.env.PORT ?? usual), '127.0.0.1');
