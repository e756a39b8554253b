import { describe, expect, it } from 'vitest';
import { isJpeg, plainJpeg, sizeOfPlain } from '$lib/keep/photos/jpeg';

/**
 * JPEGs put together by their markers, as ITU-T T.81 (annex B) and T.871 (JFIF, 10.1) lay them out.
 */
type Part = readonly number[];
const part = (marker: number, ...body: readonly number[]): Part => [
  0xff,
  marker,
  (body.length + 2) >> 8,
  (body.length + 2) & 255,
  ...body,
];
const text = (letters: string) => [...letters].map((letter) => letter.charCodeAt(0));
const frame = (width = 700, height = 300, marker = 0xc0) =>
  part(marker, 8, height >> 8, height & 255, width >> 8, width & 255, 1, 1, 0x11, 0);
const scan = (...data: readonly number[]) => [...part(0xda, 1, 1, 0, 0, 63, 0), ...data];
const jfif = (thumbnail: readonly number[] = [0, 0], ...more: readonly number[]) =>
  part(0xe0, ...text('JFIF\0'), 1, 1, 0, 0, 1, 0, 1, ...thumbnail, ...more);
const adobe = part(0xee, ...text('Adobe'), 0, 100, 0, 0, 0, 0, 0);
const table = part(0xdb, 0, 1, 2, 3);

const jpeg = (...parts: readonly Part[]) =>
  Uint8Array.from([0xff, 0xd8, ...parts.flat(), 0xff, 0xd9]);
const picture = [table, frame(), scan(1, 2, 3)];
const left = (...parts: readonly Part[]) => plainJpeg(jpeg(...parts))?.bytes;

describe('of a JPEG is kept', () => {
  it.each([
    ['the tables it is decoded with', [table, part(0xc4, 1, 2), part(0xdd, 0, 4), ...picture]],
    ['a first part that says it is JFIF', [jfif(), ...picture]],
    ['how Adobe means its colours', [adobe, ...picture]],
    ['what comes in several scans, with tables between', [...picture, part(0xc4, 9), scan(4, 5)]],
    [
      'a byte of 0xff that is data, and where it begins anew',
      [table, frame(), scan(0xff, 0, 7, 0xff, 0xd0, 8, 0xff, 0xd3, 9, 0xff, 0xd7, 0)],
    ],
  ] as [string, Part[]][])('%s', (_what, parts) => {
    expect(left(...parts)).toEqual(jpeg(...parts));
    expect(sizeOfPlain(jpeg(...parts))).toEqual({ width: 700, height: 300 });
  });

  it.each([0xc0, 0xc1, 0xc2])('its size, out of a frame of kind %i', (kind) => {
    expect(plainJpeg(jpeg(table, frame(1600, 900, kind), scan(1)))).toMatchObject({
      width: 1600,
      height: 900,
    });
  });
});

describe('of a JPEG goes', () => {
  it.each([
    ...Array.from({ length: 15 }, (_, at) => [`application part ${at + 1}`, part(0xe1 + at, 1, 2)]),
    ['a comment', part(0xfe, ...text('Marrow Quay'))],
    ['a comment of 300 bytes', part(0xfe, ...Array.from({ length: 300 }, () => 65))],
    ['an empty comment', part(0xfe)],
    ['a part of Adobe under another marker', part(0xed, ...adobe.slice(4))],
    [
      'a part of another maker that is as long',
      part(0xee, ...text('Adobx'), 0, 100, 0, 0, 0, 0, 0),
    ],
    ['a longer part of Adobe', part(0xee, ...adobe.slice(4), 0)],
    ['a second part that says it is JFIF', jfif()],
    ['a byte that only fills up', [0xff]],
  ] as [string, Part][])('%s', (_what, more) => {
    for (const bytes of [
      jpeg(table, more, frame(), scan(1, 2, 3)),
      jpeg(table, frame(), more, scan(1, 2, 3)),
      jpeg(...picture, more),
    ])
      expect(plainJpeg(bytes)?.bytes).toEqual(jpeg(...picture));
    expect(sizeOfPlain(jpeg(table, more, frame(), scan(1, 2, 3)))).toBeNull();
  });

  it.each([
    ['a small picture in the first part', jfif([1, 1], 9, 9, 9)],
    ['the size of a small picture that is not there', jfif([1, 1])],
  ])('%s', (_what, first) => {
    expect(left(first, ...picture)).toEqual(jpeg(jfif(), ...picture));
    expect(sizeOfPlain(jpeg(first, ...picture))).toBeNull();
  });

  it.each([
    ['says it is something else', part(0xe0, ...text('JFXX\0'), 1, 1, 0, 0, 1, 0, 1, 0, 0)],
    ['is named in small letters', part(0xe0, ...text('jFIF\0'), 1, 1, 0, 0, 1, 0, 1, 0, 0)],
    ['is too short to be JFIF', part(0xe0, ...text('JFIF\0'), 1, 1)],
  ])('a first part that %s', (_what, first) => {
    expect(left(first, ...picture)).toEqual(jpeg(...picture));
  });
});

describe('no JPEG of ours', () => {
  it.each([
    ['begins otherwise', [0xfe, 0xd8, 0xff]],
    ['begins with another marker', [0xff, 0xd9, 0xff]],
    ['goes on without a marker', [0xff, 0xd8, 0xfe]],
    ['is three bytes of a kind', [0xff, 0xff, 0xff]],
    ['is too short', [0xff, 0xd8]],
    ['is empty', []],
  ])('%s', (_what, bytes) => {
    expect(isJpeg(Uint8Array.from(bytes))).toBe(false);
    const rest = [...jpeg(...picture)].slice(2);
    const whole = Uint8Array.from([...bytes.slice(0, 2), ...rest]);
    if (bytes.length > 2) expect(plainJpeg(Uint8Array.from([...bytes, ...rest]))).toBeNull();
    if (bytes[0] !== 0xff || bytes[1] !== 0xd8) expect(plainJpeg(whole)).toBeNull();
  });

  it('is what begins as one does', () => {
    expect(isJpeg(jpeg(...picture))).toBe(true);
  });

  it.each([
    ['has no size', [table, scan(1)]],
    ['has no picture', [table, frame()]],
    ['has a scan without data', [table, frame(), scan()]],
    ['has no width', [table, frame(0, 300), scan(1)]],
    ['has no height', [table, frame(700, 0), scan(1)]],
    ['has a frame no browser makes (lossless)', [...picture, part(0xc3, 1)]],
    ['has a part of a kind that says nothing', [part(0xf0, 1), ...picture]],
    ['has a start within', [[0xff, 0xd8, 0, 2], ...picture]],
    ['has a restart outside of a scan', [[0xff, 0xd0, 0, 2], ...picture]],
    ['has a part whose length cannot be', [[0xff, 0xfe, 0, 0], ...picture]],
    ['has a part whose length takes in but half of itself', [[0xff, 0xfe, 0, 1, 0], ...picture]],
    ['has bytes between its parts', [table, [0, 0xfe, 0, 2], frame(), scan(1)]],
  ] as [string, Part[]][])('%s', (_what, parts) => {
    expect(plainJpeg(jpeg(...parts))).toBeNull();
  });

  it('ends in the middle of anything', () => {
    const whole = jpeg(jfif(), adobe, ...picture);
    for (let length = 0; length < whole.length; length += 1)
      expect([length, plainJpeg(whole.subarray(0, length))]).toEqual([length, null]);
    // A part that says it goes on behind the end.
    expect(plainJpeg(Uint8Array.from([0xff, 0xd8, 0xff, 0xfe, 9, 9, 1, 2]))).toBeNull();
  });
});
