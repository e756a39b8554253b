import { frameWords } from '$words/ui/frame';
import { ownLanguage } from '$words/language';

export const prerender = true;

const icon = (size: number) => ({
  src: `icon-${size}.png`,
  sizes: `${size}x${size}`,
  type: 'image/png',
});

/** What a device reads that installs the site; its colours are those of the page in the light. */
export const GET = () =>
  new Response(
    JSON.stringify({
      name: frameWords.name,
      short_name: frameWords.name,
      description: frameWords.installed,
      lang: new Intl.Locale(ownLanguage.locale).language,
      dir: 'ltr',
      id: './',
      start_url: './',
      scope: './',
      display: 'standalone',
      background_color: '#edf1ee',
      theme_color: '#edf1ee',
      icons: [
        { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
        icon(192),
        icon(512),
        { ...icon(512), purpose: 'maskable' },
      ],
    }),
    { headers: { 'content-type': 'application/manifest+json' } },
  );
