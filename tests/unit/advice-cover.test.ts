import { describe, expect, it } from 'vitest';
import {
  gradeOf,
  moistureOf,
  profileFigureOf,
  profileWanted,
  sheetMoisture,
} from '$lib/advice/sheet';
import { choicesOf, type Finish } from '$lib/answers/questions';
import { rangeOf } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { situationOn, toldOf, type SiteChange, type ZoneChange } from '../helpers/settled';

const told = (step: StepId, zone: ZoneChange, site: SiteChange = {}) =>
  toldOf(step, situationOn(zone, site));

// Common practice, no source: cement takes its water from a dry surface, what is not cement lets go
// of a wet one.
const damp: readonly Finish[] = ['thin-overlay', 'overlay', 'rebuild'];
const dry: readonly Finish[] = ['sealer', 'thin-film', 'build-coat', 'self-levelling'];

// That a surface lies open no longer than a day: UFC 3-270-03 (`open.limit`).
const inTime = 'cover-within-a-day open.limit';

describe('from the proven surface to the covered one', () => {
  it.each(damp)('%s goes on damp, and is kept damp', (finish) => {
    expect(moistureOf({ finish })).toBe('saturated-surface-dry');
    expect(told('wet-or-dry', { finish })).toEqual([`damp-not-wet finish=${finish}`]);
    expect(told('moisture-test', { finish })).toBeNull();
    expect(told('last-clean', { finish })).toEqual(['last-look', inTime]);
    expect(told('cover', { finish })).toEqual(['surface-warm-enough']);
    expect(told('cure', { finish })).toEqual(['cure-kept-damp']);
  });
  it.each(dry)('%s goes on dry, measured, above the dew point', (finish) => {
    expect(moistureOf({ finish })).toBe('dry');
    expect(told('wet-or-dry', { finish })).toEqual([`dry-for-coating finish=${finish}`]);
    expect(told('moisture-test', { finish })).toEqual(['dry-enough-measured']);
    expect(told('last-clean', { finish })).toEqual(['last-vacuum-and-tape', inTime]);
    expect(told('cover', { finish })).toEqual(['surface-warm-and-above-dew']);
    expect(told('cure', { finish })).toEqual(['cure-as-maker-says']);
  });
  it('what is not decided is neither wetted nor covered', () => {
    const zone: ZoneChange = { finish: 'undecided', makerMoisture: 'dry' };
    expect(moistureOf({ finish: 'undecided', makerMoisture: 'damp' })).toBe('ask-maker');
    expect(told('wet-or-dry', zone)).toEqual(['finish-undecided finish=undecided']);
    expect(told('moisture-test', zone)).toBeNull();
    expect(told('last-clean', zone)).toEqual(['last-look-as-maker-says', inTime]);
    expect(told('cover', zone)).toBeNull();
    expect(told('cure', zone)).toBeNull();
  });

  // Trade page 1: the sheet outranks the table.
  it('the sheet has the last word on damp or dry', () => {
    expect(told('wet-or-dry', { finish: 'overlay', makerMoisture: 'dry' })).toEqual([
      'dry-for-coating finish=overlay',
      'moisture-from-sheet',
    ]);
    expect(told('wet-or-dry', { finish: 'sealer', makerMoisture: 'damp' })).toEqual([
      'damp-not-wet finish=sealer',
      'moisture-from-sheet',
    ]);
  });

  // Common practice, no source: a groove is sealed dry; a chased crack is filled before what goes over
  // it, and by what is poured.
  it.each<[string, ZoneChange, string | null]>([
    ['a routed crack is sealed', { cracks: 'open' }, 'routed-crack-sealed seal.temperature'],
    [
      'under an overlay too',
      { cracks: 'hairline', finish: 'sealer' },
      'routed-crack-sealed seal.temperature',
    ],
    [
      'a chased one is filled under a sealer',
      { cracks: 'crumbling', finish: 'sealer' },
      'chased-crack-filled',
    ],
    [
      'under a thin overlay',
      { cracks: 'crumbling', finish: 'thin-overlay' },
      'chased-crack-filled',
    ],
    ['an overlay fills it', { cracks: 'crumbling', finish: 'overlay' }, null],
    ['so does what is formed and poured', { cracks: 'crumbling', finish: 'rebuild' }, null],
  ])('%s', (_, zone, first) => {
    const why = told('wet-or-dry', zone) ?? [];
    expect(why.slice(0, -1)).toEqual(first ? [first] : []);
  });
});

// ICRI 310.2R for the usual table (figures `csp.needs.*`); that the sheet outranks it: trade page 1.
describe('the roughness wanted', () => {
  it('is that of the finish by its own figure', () => {
    for (const finish of choicesOf('finish').filter((each) => each !== 'undecided')) {
      expect(profileFigureOf(finish)).toBe(`csp.needs.${finish}`);
      expect(profileWanted({ finish })).toEqual(rangeOf(`csp.needs.${finish}`));
    }
  });
  it('is nobody’s while that is not decided, whatever a sheet says', () => {
    expect(profileFigureOf('undecided')).toBeNull();
    expect(profileWanted({ finish: 'undecided', makerProfile: 3 })).toBeNull();
  });
  it('is the sheet’s least, and no rougher than the table unless the sheet is', () => {
    const [, most] = rangeOf('csp.needs.overlay');
    expect(profileWanted({ finish: 'overlay', makerProfile: 3 })).toEqual([3, most]);
    expect(profileWanted({ finish: 'sealer', makerProfile: 5 })).toEqual([5, 5]);
  });
  it('counts with the reader’s own figure', () => {
    expect(profileWanted({ finish: 'sealer' }, { 'csp.needs.sealer': 4 })).toEqual([4, 4]);
  });
});

describe('what a sheet says', () => {
  it('of several grades the roughest meets all; without a sheet there is none', () => {
    expect(gradeOf(['csp-3', 'csp-10', 'csp-2'])).toBe(10);
    expect(gradeOf(['csp-3'])).toBe(3);
    expect(gradeOf(['csp-3', 'no-sheet'])).toBeUndefined();
    expect(gradeOf([])).toBeUndefined();
    expect(gradeOf(undefined)).toBeUndefined();
  });
  it('of damp or dry counts where it says one of them', () => {
    expect(sheetMoisture(['damp'])).toBe('damp');
    expect(sheetMoisture(['dry'])).toBe('dry');
    expect(sheetMoisture(['damp', 'dry'])).toBeUndefined();
    expect(sheetMoisture(['no-sheet'])).toBeUndefined();
    expect(sheetMoisture([])).toBeUndefined();
    expect(sheetMoisture(undefined)).toBeUndefined();
  });
});
