import type { FigureId } from '$shared/figures';
import { sayFigure } from './figure-words';
import { tradeHeading } from './check';

/** Markdown of an explainer as running text: for search and for measuring how hard it reads. */
export function plainText(markdown: string): string {
  return markdown
    .replace(/<Fig\s+id="([^"]+)"[^>]*\/>/g, (_, id: FigureId) => sayFigure(id))
    .replace(/<[^>]+>/g, ' ')
    .replace(/\[([^\]]+)\]\([^)]*\)/g, '$1')
    .replace(/^#+ .*$/gm, ' ')
    .replace(/^(?:[-*]|\d+\.)\s+/gm, '')
    .replace(/[*_`]/g, '')
    .replace(/[ \t]+/g, ' ')
    .trim();
}

/** The two depths of an explainer, as Markdown: what everyone reads, and the trade detail. */
export function depthsOf(body: string): { plain: string; trade: string } {
  const [plain = '', trade = ''] = body.split(`\n${tradeHeading}\n`);
  return { plain, trade };
}
