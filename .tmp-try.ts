import { readFileSync, writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
const css = /<style>([\s\S]*)<\/style>/.exec(readFileSync('src/lib/drawing/Marks.svelte', 'utf8'))![1]!.split('@media')[0];
const tokens = readFileSync('src/lib/ui/tokens.css', 'utf8');
const [, , out, dark, ...mods] = process.argv;
const cards: string[] = [];
let n = 0;
for (const spec of mods) {
  const [file, name] = spec.split(':');
  const mod = (await import('./src/lib/drawing/' + file)) as any;
  const t = mod[name!];
  const list = typeof t === 'function' ? Object.entries(t()) : Object.entries(t);
  for (const [k, f] of list as any) {
    let ms = 1e9; let d: any;
    for (let i = 0; i < 8; i++) { const t0 = performance.now(); d = typeof f === 'function' ? f('metric') : f; ms = Math.min(ms, performance.now() - t0); }
    const frames = Array.isArray(d[0]?.[0]) ? d : [d];
    const svgs = frames.map((m: any) => `<svg viewBox="0 0 120 72" width="${frames.length > 1 ? 200 : 300}">${m.map(([c, p, tr]: any) => `<path class="${c}" d="${p}"${tr ? ` transform="${tr}"` : ''}/>`).join('')}</svg>`);
    const gz = gzipSync(svgs.join('')).length;
    n++;
    cards.push(`<figure>${svgs.join(' ')}<figcaption>${process.env.BLIND ? n : k + ' ' + gz + ' B ' + ms.toFixed(0) + ' ms'}</figcaption></figure>`);
  }
}
writeFileSync(out!, `<meta charset=utf8><style>${tokens}${dark === 'dark' ? ':root{color-scheme:dark;--film:#0e1614;--sheet:#17221f;--ink:#e8efec;--ink-2:#abbab4;--line:#3a4a45;--crayon:#ff8f63;--crayon-wash:#3b2219;--stone:#64746e}' : ':root{color-scheme:light}'} body{background:var(--sheet);color:var(--ink);margin:8px;display:flex;flex-wrap:wrap;gap:10px;width:1240px} figure{margin:0} svg{border:1px solid var(--edge)} ${css}</style>${cards.join('')}`);
