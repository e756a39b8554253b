import { existsSync, readFileSync } from 'node:fs';
import { STATUS_CODES, type IncomingMessage, type RequestListener } from 'node:http';
import { join } from 'node:path';
import { contentType } from 'mime-types';
import Negotiator from 'negotiator';
import send from 'send';

/** Copies that the build puts beside a file, by the name HTTP has for the way they are packed. */
const packings = { br: '.br', gzip: '.gz' } as const;
const forGood = 'public, max-age=31536000, immutable';

/**
 * What no address of the site has, and a browser does not send: two slashes, which in a redirect
 * would be another host; steps up, which would leave the folder.
 */
const odd = /\/\/|\\|\0|\/\.\.?(\/|$)/;

/** The headers that the file for static hosts sets for all pages. */
function headersFor(folder: string): ReadonlyMap<string, string> {
  const rules = join(folder, '_headers');
  if (!existsSync(rules)) return new Map();
  const [, all = ''] = readFileSync(rules, 'utf8').split(/^\/\*$/m);
  return new Map(
    [...all.matchAll(/^ +([^:\s]+): (.+)$/gm)].map(([, name = '', value = '']) => [name, value]),
  );
}

/** Path and query as they were asked for, and the path decoded; undefined where they are none. */
function partsOf(request: IncomingMessage) {
  const [, path = '', query = ''] = /^(\/[^?#]*)(\?[^#]*)?/.exec(request.url ?? '') ?? [];
  try {
    return path ? { path, query, plain: decodeURIComponent(path) } : undefined;
  } catch {
    return undefined;
  }
}

/**
 * What hands out a folder as a static host does: files with the headers named in its `_headers`,
 * packed as the reader takes them, folders by their page, `404.html` for what is not there.
 * No request ends it, and files may come and go meanwhile.
 * @param base where the site lies on its host, as it was built: '' or '/some/path'
 */
export function siteListener(folder: string, base = ''): RequestListener {
  const headers = headersFor(folder);

  return (request, response) => {
    for (const [name, value] of headers) response.setHeader(name, value);
    response.setHeader('Cache-Control', 'no-cache');

    const plainly = (status: number) => {
      response.statusCode = status;
      response.removeHeader('Content-Encoding');
      response.setHeader('Content-Type', 'text/plain; charset=utf-8');
      response.end(request.method === 'HEAD' ? undefined : STATUS_CODES[status]);
    };
    /** A file of the folder, by its path there, or its packed copy. */
    const hand = (path: string, failed: (status: number) => void, acceptRanges = true) => {
      const takes = new Negotiator(request).encodings(['br', 'gzip', 'identity'], {
        preferred: ['br', 'gzip'],
      });
      const packed = (Object.keys(packings) as (keyof typeof packings)[]).find(
        (each) => each === takes[0] && existsSync(join(folder, path + packings[each])),
      );
      if (packed) response.setHeader('Content-Encoding', packed);
      response.setHeader('Vary', 'Accept-Encoding');
      const type = contentType(path.slice(path.lastIndexOf('/') + 1));
      if (type) response.setHeader('Content-Type', type);
      send(request, encodeURI(path + (packed ? packings[packed] : '')), {
        root: folder,
        index: false,
        cacheControl: false,
        acceptRanges,
      })
        .on('headers', () => {
          if (acceptRanges && path.startsWith('/_app/immutable/'))
            response.setHeader('Cache-Control', forGood);
        })
        .on('directory', () => failed(404))
        .on('error', ({ status, headers = {} }: { status: number; headers?: object }) => {
          for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
          failed(status);
        })
        .pipe(response);
    };
    const lost = () => {
      response.statusCode = 404;
      hand('/404.html', () => plainly(404), false);
    };

    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.setHeader('Allow', 'GET, HEAD');
      return plainly(405);
    }
    const asked = partsOf(request);
    if (!asked) return plainly(400);
    const { path, query, plain } = asked;
    if (odd.test(plain) || !`${plain}/`.startsWith(`${base}/`)) return lost();
    const within = plain.slice(base.length);
    if (!within.endsWith('/') && existsSync(join(folder, within, 'index.html'))) {
      response.writeHead(301, { Location: `${path}/${query}` });
      return response.end();
    }
    if (within === '/_headers') return lost();
    hand(within.endsWith('/') ? `${within}index.html` : within, (status) =>
      status === 404 || status === 403 ? lost() : plainly(status),
    );
  };
}
