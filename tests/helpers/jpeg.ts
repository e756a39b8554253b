/**
 * JPEG files put together by bytes, as a phone writes them: the parts about place and camera are
 * laid out by hand after the Exif standard (JEITA CP-3451, 4.6) and Adobe's description of XMP in
 * JPEG, so that what takes them out is not what put them in.
 */

/** A whole JPEG of 16 by 8 pixels, the left half dark, made by a browser, its colour profile left out. */
const tiny =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAAYEBQYFBAYGBQYHBwYIChAKCgkJChQODwwQFxQYGBcUFhYaHSUfGhsjHBYWICwgIyYnKSopGR8tMC0oMCUoKSj/2wBDAQcHBwoIChMKChMoGhYaKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCj/wAARCAAIABADASIAAhEBAxEB/8QAFgABAQEAAAAAAAAAAAAAAAAAAAcJ/8QAFBABAAAAAAAAAAAAAAAAAAAAAP/EABQBAQAAAAAAAAAAAAAAAAAAAAD/xAAUEQEAAAAAAAAAAAAAAAAAAAAA/9oADAMBAAIRAxEAPwCBNEAB/9k=';
export const tinyJpeg = (): Uint8Array => new Uint8Array(Buffer.from(tiny, 'base64'));

const part = (marker: number, ...content: (string | Uint8Array)[]): Uint8Array => {
  const body = Buffer.concat(content.map((each) => Buffer.from(each as string)));
  return Buffer.concat([
    Buffer.from([0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 255]),
    body,
  ]);
};

const [short, long, ascii, rational] = [3, 4, 2, 5];

/** A directory of Exif entries, little end first: tag, type, count, value or offset. */
function directory(entries: readonly (readonly [number, number, number, number])[]): Buffer {
  const bytes = Buffer.alloc(2 + entries.length * 12 + 4);
  bytes.writeUInt16LE(entries.length, 0);
  for (const [index, [tag, type, count, value]] of entries.entries()) {
    const at = 2 + index * 12;
    bytes.writeUInt16LE(tag, at);
    bytes.writeUInt16LE(type, at + 2);
    bytes.writeUInt32LE(count, at + 4);
    bytes.writeUInt32LE(value, at + 8);
  }
  return bytes;
}

/** Maker, orientation and a place: 10 degrees 30 minutes north and east (invented). */
function exif(orientation: number): Uint8Array {
  const maker = Buffer.from('Invented Camera\0');
  const gpsAt = 8 + 2 + 3 * 12 + 4 + maker.length;
  const degreesAt = gpsAt + 2 + 4 * 12 + 4;
  const degrees = Buffer.alloc(24);
  for (const [index, number] of [10, 1, 30, 1, 0, 1].entries())
    degrees.writeUInt32LE(number, index * 4);
  const letter = (text: string) => text.charCodeAt(0);
  return part(
    0xe1,
    'Exif\0\0',
    Buffer.from([0x49, 0x49, 42, 0, 8, 0, 0, 0]),
    directory([
      [0x010f, ascii, maker.length, 8 + 2 + 3 * 12 + 4],
      [0x0112, short, 1, orientation],
      [0x8825, long, 1, gpsAt],
    ]),
    maker,
    directory([
      [1, ascii, 2, letter('N')],
      [2, rational, 3, degreesAt],
      [3, ascii, 2, letter('E')],
      [4, rational, 3, degreesAt],
    ]),
    degrees,
  );
}
const xmp = part(
  0xe1,
  'http://ns.adobe.com/xap/1.0/\0',
  '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">' +
    '<rdf:Description xmlns:photoshop="http://ns.adobe.com/photoshop/1.0/" photoshop:City="Marrow Quay"/>' +
    '</rdf:RDF></x:xmpmeta>',
);

/** The same picture with all a phone may say of where, when and with what it was taken. */
export function asTaken(jpeg: Uint8Array, orientation = 1): Uint8Array<ArrayBuffer> {
  // Behind the start and, as Exif has it, before anything else.
  return new Uint8Array(
    Buffer.concat([
      jpeg.subarray(0, 2),
      exif(orientation),
      xmp,
      part(0xed, 'Photoshop 3.0\0', 'Marrow Quay'),
      part(0xfe, 'taken at Marrow Quay'),
      jpeg.subarray(2),
      // Behind the end phones put a second picture, or a film.
      asSmall(jpeg),
    ]),
  );
}
const asSmall = (jpeg: Uint8Array) => Buffer.concat([jpeg, Buffer.from('Marrow Quay')]);
