import adapter from '@sveltejs/adapter-static';
import { vitePreprocess } from '@sveltejs/vite-plugin-svelte';
import { mdsvex } from 'mdsvex';
import { glossaryLinks } from './src/lib/learn/markdown/glossary-links.js';
import { explainerSource, moduleScript } from './src/lib/learn/markdown/preprocess.js';

/** @type {import('@sveltejs/kit').Config} */
export default {
  extensions: ['.svelte', '.md'],
  // Short names: every page carries them, and the whole site lies on the device.
  compilerOptions: { cssHash: ({ hash, css }) => `s${hash(css)}` },
  preprocess: [
    vitePreprocess(),
    explainerSource(),
    mdsvex({ extensions: ['.md'], highlight: false, rehypePlugins: [glossaryLinks] }),
    moduleScript(),
  ],
  kit: {
    adapter: adapter({ fallback: '404.html', precompress: true }),
    alias: {
      $shared: 'shared',
      '$shared/*': 'shared/*',
      $content: 'content',
      '$content/*': 'content/*',
    },
    prerender: { handleHttpError: 'fail', handleMissingId: 'fail' },
    // Hashes rather than 'unsafe-inline': the site runs no script but its own.
    csp: {
      mode: 'hash',
      directives: {
        'default-src': ['none'],
        'script-src': ['self'],
        // The hash is that of the one inline style the router puts on its own announcer.
        'style-src': [
          'self',
          'unsafe-hashes',
          'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo=',
        ],
        'img-src': ['self', 'data:'],
        'font-src': ['self'],
        'connect-src': ['self'],
        'manifest-src': ['self'],
        'worker-src': ['self'],
        'base-uri': ['self'],
        'form-action': ['none'],
      },
    },
  },
};
