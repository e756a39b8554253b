import { describe as group, expect, it } from 'vitest';
import { describe, harmless, pathOf } from '$lib/keep/problem';

group('what was found, as it may be shown', () => {
  it.each([
    [undefined, { id: 'nothing' }],
    [null, { id: 'null' }],
    [true, { id: 'truth', value: true }],
    [false, { id: 'truth', value: false }],
    [5, { id: 'number', text: '5' }],
    [NaN, { id: 'number', text: 'NaN' }],
    ['', { id: 'text', text: '' }],
    ['Ramp', { id: 'text', text: 'Ramp' }],
    [[], { id: 'list', length: 0 }],
    [[1, 2], { id: 'list', length: 2 }],
    [{ a: 1 }, { id: 'object' }],
  ])('%j', (value, found) => {
    expect(describe(value)).toEqual(found);
  });

  it('is a text up to 160 characters, of which 40 are shown, and only its length beyond', () => {
    expect(describe('x'.repeat(160))).toEqual({ id: 'text', text: `${'x'.repeat(40)}…` });
    expect(describe('x'.repeat(161))).toEqual({ id: 'long-text', length: 161 });
  });

  it('is cut behind 40 characters, and none of them in half', () => {
    expect(harmless('x'.repeat(40))).toBe('x'.repeat(40));
    expect(harmless('x'.repeat(41))).toBe(`${'x'.repeat(40)}…`);
    expect(harmless('🧱'.repeat(41))).toBe(`${'🧱'.repeat(40)}…`);
    expect(harmless(`${'x'.repeat(39)}🧱🧱`)).toBe(`${'x'.repeat(39)}🧱…`);
  });

  it('has what acts on a screen spelled out, and everything where nothing could be seen', () => {
    expect(harmless('a\nb\u0007')).toBe('a\\u000ab\\u0007');
    expect(harmless('a\u202eb\u2066\u200f')).toBe('a\\u202eb\\u2066\\u200f');
    expect(harmless('\ud800x')).toBe('\\ud800x');
    expect(harmless('\u200b \u3164')).toBe('\\u200b \\u3164');
    expect(harmless('é 漢 🧱')).toBe('é 漢 🧱');
  });
});

group('a place', () => {
  it.each([
    [[], ''],
    [['zones', 2, 'depth'], 'zones[2].depth'],
    [[0, 'depth'], '[0].depth'],
    [['site', 'a-b', '$c', '_d'], 'site.a-b.$c._d'],
    [['own', 'removal.x'], 'own["removal.x"]'],
    [['2nd'], '["2nd"]'],
    [['a b'], '["a b"]'],
    [['x'.repeat(40)], 'x'.repeat(40)],
    [['x'.repeat(41)], `["${'x'.repeat(40)}…"]`],
    [['a\nb'], '["a\\u000ab"]'],
  ])('%j is shown as %s', (keys, shown) => {
    expect(pathOf(keys)).toBe(shown);
  });
});
