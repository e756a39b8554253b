/** What of its style a drawing takes along: it has to look the same without the site's style sheets. */
const looks = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-opacity',
  'paint-order',
  'font-size',
  'font-weight',
  'font-family',
  'text-anchor',
] as const;

/** A drawing on the page as an SVG file of its own, on a sheet of its own. */
export function svgText(drawing: SVGSVGElement): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const copies = copy.querySelectorAll<SVGElement>('path, text');
  for (const [index, shown] of drawing.querySelectorAll<SVGElement>('path, text').entries()) {
    const style = getComputedStyle(shown);
    const own = copies[index] as SVGElement;
    own.removeAttribute('class');
    for (const look of looks) own.setAttribute(look, style.getPropertyValue(look));
  }
  const [x = 0, y = 0, width = 1, height = 1] = (drawing.getAttribute('viewBox') ?? '')
    .split(' ')
    .map(Number);
  const sheet = document.createElementNS(copy.namespaceURI, 'rect') as SVGRectElement;
  for (const [name, value] of Object.entries({ x, y, width, height }))
    sheet.setAttribute(name, String(value));
  sheet.setAttribute('fill', getComputedStyle(document.body).backgroundColor);
  copy.prepend(sheet);
  copy.removeAttribute('class');
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  return new XMLSerializer().serializeToString(copy);
}

const inAddress = (svg: string) => `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;

/** Pixels to a unit of the drawing. */
const sharp = 3;

/**
 * The same as a PNG.
 * @throws Error when the browser does not draw it
 */
export async function pngOf(drawing: SVGSVGElement): Promise<Blob> {
  const picture = new Image();
  picture.src = inAddress(svgText(drawing));
  await picture.decode();
  const canvas = document.createElement('canvas');
  canvas.width = picture.naturalWidth * sharp;
  canvas.height = picture.naturalHeight * sharp;
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((take, fail) =>
    canvas.toBlob((blob) => {
      if (blob) take(blob);
      else fail(new Error('no picture'));
    }),
  );
}

/** Hands a file to the reader. */
export function hand(blob: Blob, name: string): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers begin to read only after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
