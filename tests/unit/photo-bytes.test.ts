import ExifReader from 'exifreader';
import { describe, expect, it } from 'vitest';
import { plainJpeg, sizeOfPlain } from '$lib/keep/photos/jpeg';
import { asTaken, tinyJpeg } from '../helpers/jpeg';

/**
 * What a photo says beside its picture. Read back by a library of its own (exifreader: a reader of
 * Exif, GPS and XMP that is kept up, used here only), and by looking for the words in the bytes.
 */
const told = (bytes: Uint8Array) =>
  ExifReader.load(bytes.slice().buffer as ArrayBuffer, { expanded: true });
const has = (bytes: Uint8Array, text: string) => Buffer.from(bytes).includes(text);
const traces = [
  'Exif',
  'Marrow Quay',
  'Invented Camera',
  'ns.adobe.com',
  'Photoshop',
  'ICC_PROFILE',
];

describe('a photo by its bytes', () => {
  it('as a phone writes it says where and with what it was taken', () => {
    const taken = told(asTaken(tinyJpeg(), 6));
    expect(taken.gps).toMatchObject({ Latitude: 10.5, Longitude: 10.5 });
    expect(taken.exif?.Make?.description).toBe('Invented Camera');
    expect(taken.exif?.Orientation?.value).toBe(6);
    expect(taken.xmp?.City?.description).toBe('Marrow Quay');
    expect(sizeOfPlain(asTaken(tinyJpeg()))).toBeNull();
  });

  it('is nothing but its picture afterwards, and that is byte for byte the same', () => {
    const plain = plainJpeg(asTaken(tinyJpeg(), 6));
    expect(plain).toMatchObject({ width: 16, height: 8 });
    const bytes = plain?.bytes as Uint8Array;
    expect(Buffer.from(bytes).equals(Buffer.from(tinyJpeg()))).toBe(true);
    const left = told(bytes);
    for (const kind of ['exif', 'gps', 'xmp', 'iptc', 'icc', 'photoshop', 'mpf'] as const)
      expect(left[kind as 'exif'], kind).toBeUndefined();
    for (const trace of traces) expect(has(bytes, trace), trace).toBe(false);
    expect(sizeOfPlain(bytes)).toEqual({ width: 16, height: 8 });
  });

  it('with a small picture in its first part, or anything behind its end, is not plain', () => {
    const tiny = tinyJpeg();
    expect(sizeOfPlain(new Uint8Array([...tiny, 0]))).toBeNull();
    // The first part with one pixel of a small picture in it.
    const small = new Uint8Array([
      ...tiny.subarray(0, 4),
      0,
      19,
      ...tiny.subarray(6, 18),
      1,
      1,
      9,
      9,
      9,
      ...tiny.subarray(20),
    ]);
    expect(sizeOfPlain(small)).toBeNull();
    expect(plainJpeg(small)?.bytes).toEqual(plainJpeg(tiny)?.bytes);
  });

  it('cut short, empty, or another file is none', () => {
    const taken = asTaken(tinyJpeg());
    const ends = taken.length - Buffer.from('Marrow Quay').length - tinyJpeg().length;
    for (let length = 0; length < ends; length += 1)
      expect(plainJpeg(taken.subarray(0, length)), String(length)).toBeNull();
    expect(plainJpeg(taken.subarray(0, ends))).not.toBeNull();
    for (const other of ['%PDF-1.7', 'zones: none', '\u0089PNG\r\n', '\xff\xd8\xff\xd9'])
      expect(plainJpeg(new Uint8Array(Buffer.from(other, 'latin1'))), other).toBeNull();
  });
});
