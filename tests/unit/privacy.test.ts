import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parts } from '$lib/keep/everything';
import { jobsWords } from '$words/ui/jobs';
import { privacyWords } from '$words/privacy';
import { hostHeaders } from '../helpers/small-site';

/** The page on privacy says what holds: held here against the headers, the rules in each page, and the code. */
const directives = (policy: string) =>
  Object.fromEntries(
    policy.split('; ').map((each) => {
      const [name = '', ...sources] = each.split(' ');
      return [name, sources];
    }),
  );
const code = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(ts|js|svelte|html)$/.test(path))
  .map((path) => ({ path, text: readFileSync(`src/${path}`, 'utf8') }));
const using = (what: RegExp) => code.filter(({ text }) => what.test(text)).map(({ path }) => path);

describe('privacy', () => {
  it('is told of everything that “Delete everything” deletes', () => {
    expect(Object.keys(privacyWords.kept)).toEqual([...parts]);
    expect(Object.keys(jobsWords.everything.parts)).toEqual([...parts]);
  });

  it('keeps camera, microphone and place shut, and no page asks for them', () => {
    const shut = hostHeaders.get('permissions-policy')?.split(', ') ?? [];
    for (const what of ['camera', 'microphone', 'geolocation', 'display-capture'])
      expect(shut).toContain(`${what}=()`);
    expect(using(/getUserMedia|getDisplayMedia|\.geolocation|ImageCapture/)).toEqual([]);
    // The camera of the device is opened by the browser, and on the one page that needs it.
    expect(using(/\bcapture=/)).toEqual(['lib/ui/FilePick.svelte']);
    expect(using(/^\s+camera$/m)).toEqual(['lib/ui/photos/PhotosPage.svelte']);
  });

  it('lets a page talk to its own host alone, and show beside that only what it holds itself', async () => {
    const sent = directives(hostHeaders.get('content-security-policy') ?? '');
    const file = new URL('../../svelte.config.js', import.meta.url).href;
    const { default: config } = (await import(/* @vite-ignore */ file)) as {
      default: { kit: { csp: { directives: Record<string, string[]> } } };
    };
    const inPage = config.kit.csp.directives;
    for (const name of ['connect-src', 'img-src', 'worker-src', 'form-action'])
      expect(
        sent[name]?.map((each) => each.replaceAll("'", '')),
        name,
      ).toEqual(inPage[name]);
    expect(inPage['img-src']).toEqual(['self', 'data:', 'blob:']);
    expect(inPage['connect-src']).toEqual(['self']);
  });

  it('asks the browser once to keep what is here', () => {
    expect(using(/storage\.persist\(/)).toEqual(['lib/ui/photos/persist.ts']);
  });
});
