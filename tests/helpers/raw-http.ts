import fc from 'fast-check';
import { connect } from 'node:net';

/** Milliseconds after which a sender who hears nothing has said all. */
const patience = 1000;
const endOfHead = /\r?\n\r?\n/;

/** Sends bytes as they are; gives back all that comes until the other side is done, as Latin-1. */
export function sendRaw(port: number, bytes: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    const socket = connect({ port, host: '127.0.0.1' }, () => socket.write(bytes, 'latin1'));
    // Of a request that has no end, the other side would wait for the rest.
    const enough = setTimeout(() => socket.end(), endOfHead.test(bytes) ? patience : 0);
    socket.on('close', () => clearTimeout(enough));
    const done = () => resolve(Buffer.concat(chunks).toString('latin1'));
    socket.on('data', (chunk) => chunks.push(chunk));
    socket.on('end', done);
    // A server may drop a sender of nonsense in the middle; one that has gone refuses.
    socket.on('error', (problem: NodeJS.ErrnoException) =>
      problem.code === 'ECONNREFUSED' ? reject(problem) : done(),
    );
    socket.setTimeout(60_000, () => {
      socket.destroy();
      reject(new Error(`no answer in a minute to ${JSON.stringify(bytes.slice(0, 300))}`));
    });
  });
}

const bytes = (maxLength: number) =>
  fc.uint8Array({ maxLength }).map((each) => Buffer.from(each).toString('latin1'));
/** Mostly the first, now and then one of the others. */
const mostly = <T>(weight: number, usual: fc.Arbitrary<T>, ...others: fc.Arbitrary<T>[]) =>
  fc.oneof({ weight, arbitrary: usual }, ...others.map((each) => ({ weight: 1, arbitrary: each })));

const steps = fc.constantFrom(
  ...['', '.', '..', '...', '%2e%2e', '%2E.', '..%2f', '..%5c', '%', '%zz', '%00', '%c0%ae', '\\'],
  ...['assess', 'depth', 'index.html', '404.html', '_headers', '.secret', '_app', 'etc', 'passwd'],
  ...['CON', 'a:b', '%ff', '%E2%80%AE', '%252e%252e', 'ü', '~', '*', '?', '#', 'a'.repeat(300)],
);
const target = mostly(
  6,
  fc.array(steps, { minLength: 1, maxLength: 6 }).map((parts) => `/${parts.join('/')}`),
  fc.constantFrom(
    ...['/', '//', '///assess', '/\\assess', '*', '', '?', '/?', '/#', 'assess', ':', 'http://'],
    ...['http://[', 'http://a/../..', 'https://elsewhere.example/', '//elsewhere.example/assess'],
    ...[
      '/assess/depth',
      '/_app/immutable/entry/start.abc.js',
      '/%2fassess',
      `/${'a/'.repeat(4000)}`,
    ],
  ),
  bytes(60),
);
const bound = fc.oneof(
  fc.constantFrom('', '', '-', '9'.repeat(40), 'x', ' ', '-5'),
  fc.nat(9000).map(String),
);
/** Ranges that run forward, backward, over the end, into nothing, and several at once. */
const range = fc
  .tuple(
    mostly(6, fc.constant('bytes='), fc.constantFrom('bytes', 'Bytes = ', 'items=', '')),
    fc.array(
      fc.tuple(bound, bound).map(([from, to]) => `${from}-${to}`),
      {
        minLength: 1,
        maxLength: 3,
      },
    ),
  )
  .map(([unit, parts]) => unit + parts.join(','));
/** Headers a parser of HTTP lets through, with values that mean nothing or too much. */
const oddHeader = fc.oneof(
  range.map((value) => `Range: ${value}`),
  range.map((value) => `Range: ${value}`),
  fc
    .constantFrom('br', 'gzip', 'br;q=0', 'identity;q=0', '*;q=0', 'br;q=x', ';', ',,,', 'gzip;q=9')
    .map((value) => `Accept-Encoding: ${value}`),
  fc
    .tuple(
      fc.constantFrom('If-None-Match', 'If-Match', 'If-Range', 'If-Modified-Since', 'Cookie'),
      fc.constantFrom('*', 'W/"', '"a', 'Thu, 99 Foo 0000', '"1-1"', '\xff\xfe', '{}', ','),
    )
    .map(([name, value]) => `${name}: ${value}`),
);
const header = fc.oneof(
  oddHeader,
  fc.constantFrom(
    ...['Content-Length: -1', 'Content-Length: 5', 'Transfer-Encoding: chunked', 'Expect: x'],
    ...['Expect: 100-continue', 'Connection: upgrade\r\nUpgrade: websocket', 'Upgrade: h2c'],
    ...['Host: ', 'Host: a, b', 'Host: a\r\nHost: b', ' folded', 'no colon', ': none', 'X\0: 1'],
    `X: ${'y'.repeat(20_000)}`,
  ),
  bytes(40),
);
const method = mostly(
  6,
  fc.constantFrom('GET', 'GET', 'GET', 'HEAD'),
  fc.constantFrom('POST', 'PUT', 'DELETE', 'OPTIONS', 'TRACE', 'CONNECT', 'PATCH', 'PROPFIND'),
  fc.constantFrom('get', 'BREW', '', 'G\u0000T', 'GET GET'),
);
const version = mostly(
  12,
  fc.constant('HTTP/1.1'),
  fc.constantFrom('HTTP/1.0', 'HTTP/0.9', 'HTTP/2.0', 'HTTP/9', 'http/1.1', '', 'X'),
);
const end = mostly(8, fc.constant('\r\n'), fc.constantFrom('\n', '\r', '', '\r\n\r\n'));

const lines = (first: string, headers: readonly string[], end: string): string =>
  [first, 'Host: x', 'Connection: close', ...headers, '', ''].join(end);

/** Requests as bytes (one character a byte): near to what HTTP allows, and far from it. */
export const anyRequest: fc.Arbitrary<string> = mostly(
  9,
  fc.oneof(
    // A file that is there, asked for in the strangest ways.
    fc
      .tuple(
        fc.constantFrom('/', '/assess/depth/', '/_app/immutable/entry/start.abc.js', '/no'),
        fc.array(oddHeader, { minLength: 1, maxLength: 4 }),
      )
      .map(([path, headers]) => lines(`GET ${path} HTTP/1.1`, headers, '\r\n')),
    // The strangest addresses, asked for as is usual.
    fc
      .tuple(method, target, fc.array(oddHeader, { maxLength: 2 }))
      .map(([method, path, headers]) => lines(`${method} ${path} HTTP/1.1`, headers, '\r\n')),
    fc
      .record({ method, target, version, end, headers: fc.array(header, { maxLength: 4 }) })
      .map(({ method, target, version, end, headers }) =>
        lines(`${method} ${target} ${version}`, headers, end),
      ),
  ),
  bytes(300),
).map((text) => Buffer.from(text, 'latin1').toString('latin1'));
