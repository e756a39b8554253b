import { execFileSync, spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { connect } from 'node:http2';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hostHeaders, smallFiles, smallSite } from '../helpers/small-site';

/** The example for nginx, tried with a real nginx on a small folder built like the site. */
const root = fileURLToPath(new URL('../..', import.meta.url));
const example = readFileSync(join(root, 'src/cli/nginx.conf'), 'utf8');
const secure = readFileSync(join(root, 'src/cli/nginx-tls.conf'), 'utf8');

const has = (command: string) => spawnSync(command, ['-v']).error === undefined;
const withNginx = (): boolean => {
  if (has('nginx')) return true;
  if (process.getuid?.() === 0 && has('apt-get')) {
    spawnSync('apt-get', ['update']);
    spawnSync('apt-get', ['install', '-y', '--no-install-recommends', 'nginx-light']);
    if (has('nginx')) return true;
  }
  console.log(
    'SKIPPED: the nginx example was not tried, there is no nginx here and no right to add it',
  );
  return false;
};

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const { port } = server.address() as { port: number };
  await new Promise((closed) => server.close(closed));
  return port;
}

describe.runIf(withNginx())('the nginx example', () => {
  let folder: string;
  let files: string;
  let tls: number;
  let nginx: ChildProcess;
  let site: string;
  const get = (path: string) => fetch(site + path, { redirect: 'manual' });

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'nginx-'));
    files = smallSite();
    const port = await freePort();
    const server = example
      .replace('listen 8080', `listen 127.0.0.1:${port}`)
      .replace('/srv/down-to-sound', files)
      .replace('/etc/nginx/tls/', `${folder}/tls/`);
    tls = await freePort();
    mkdirSync(join(folder, 'tls'));
    writeFileSync(
      join(folder, 'tls/tls.conf'),
      secure
        .replace('listen 8443', `listen 127.0.0.1:${tls}`)
        .replaceAll('/etc/nginx/tls/', `${folder}/tls/`),
    );
    const [key, crt] = ['key', 'crt'].map((ending) => join(folder, `tls/site.${ending}`));
    const made = `req -x509 -newkey rsa:2048 -nodes -days 2 -subj /CN=localhost -keyout ${key} -out ${crt}`;
    execFileSync('openssl', made.split(' '), { stdio: 'pipe' });
    const user = process.getuid?.() === 0 ? 'user root;' : '';
    const temp = ['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi']
      .map((kind) => `${kind}_temp_path ${folder}/${kind};`)
      .join(' ');
    writeFileSync(join(folder, 'site.conf'), server);
    writeFileSync(
      join(folder, 'nginx.conf'),
      `${user} daemon off; pid ${folder}/pid; error_log stderr; events {}
       http { include /etc/nginx/mime.types; access_log off; ${temp} include ${folder}/site.conf; }`,
    );
    const run = ['-p', folder, '-e', 'stderr', '-c', join(folder, 'nginx.conf')];
    execFileSync('nginx', ['-t', ...run], { stdio: 'pipe' });
    nginx = spawn('nginx', run, { stdio: 'ignore' });
    site = `http://127.0.0.1:${port}`;
    for (let wait = 0; wait < 100; wait += 1) {
      if (await get('/').catch(() => undefined)) break;
      await new Promise((waited) => setTimeout(waited, 50));
    }
  });
  afterAll(async () => {
    const ended = new Promise((resolve) => nginx.once('exit', resolve));
    nginx.kill('SIGTERM');
    await ended;
    for (const each of [folder, files]) rmSync(each, { recursive: true, force: true });
  });

  it.each([
    '/',
    '/assess/depth/',
    '/lost',
    '/service-worker.js',
    '/_app/immutable/entry/start.abc.js',
  ])('sends the headers of the file for static hosts with %s, and no cookie', async (path) => {
    const sent = (await get(path)).headers;
    expect(hostHeaders.size).toBeGreaterThanOrEqual(5);
    for (const [name, value] of hostHeaders) expect(sent.get(name), name).toBe(value);
    expect(sent.get('set-cookie')).toBeNull();
    expect(sent.get('server')).toBe('nginx');
  });

  it('gives pages, their folders without the slash, and the page for what is not there', async () => {
    expect(await (await get('/assess/depth/')).text()).toBe(smallFiles['assess/depth/index.html']);
    const moved = await get('/assess/depth');
    expect([moved.status, moved.headers.get('location')]).toEqual([301, '/assess/depth/']);
    const lost = await get('/nowhere/');
    expect([lost.status, await lost.text()]).toEqual([404, smallFiles['404.html']]);
    for (const path of ['/_headers', '/.secret', '/assess/../.secret'])
      expect((await get(path)).status, path).toBe(404);
  });

  it('speaks HTTP/2 to whoever asks for it, where there is a certificate', async () => {
    const client = connect(`https://localhost:${tls}`, { rejectUnauthorized: false });
    const status = await new Promise((resolve, reject) => {
      client.on('error', reject);
      client.request({ ':path': '/' }).on('response', (sent) => resolve(sent[':status']));
    });
    expect([client.alpnProtocol, status]).toEqual(['h2', 200]);
    client.destroy();
  });

  it('hands out the copies packed at build', async () => {
    const plain = await fetch(site, { headers: { 'accept-encoding': 'identity' } });
    const packed = await fetch(site, { headers: { 'accept-encoding': 'gzip' } });
    const length = ({ headers }: Response) => Number(headers.get('content-length'));
    expect(length(plain)).toBe(smallFiles['index.html'].length);
    expect(length(packed)).toBe(statSync(join(files, 'index.html.gz')).size);
    expect(packed.headers.get('content-encoding')).toBe('gzip');
    expect(await packed.text()).toBe(smallFiles['index.html']);
  });

  it('names the kinds of files, keeps named ones for good and asks for the others anew', async () => {
    const kind = async (path: string) => (await get(path)).headers.get('content-type');
    expect(await kind('/')).toBe('text/html; charset=utf-8');
    expect(await kind('/service-worker.js')).toMatch(/^(application|text)\/javascript/);
    expect(await kind('/manifest.webmanifest')).toBe('application/manifest+json');
    expect(await kind('/job.schema.json')).toMatch(/^application\/json/);
    const cache = async (path: string) => (await get(path)).headers.get('cache-control');
    expect(await cache('/_app/immutable/entry/start.abc.js')).toMatch(/immutable/);
    for (const path of ['/', '/service-worker.js', '/nowhere/'])
      expect(await cache(path)).toBe('no-cache');
  });
});
