import { describe, expect, it } from 'vitest';
import { product } from '$lib/plan/amount';
import { hoursOf } from '$lib/plan/hours';
import { endsOf, quantitiesWith, reach, workOf } from '../helpers/zone-work';

// Figures `rate.break-out-light` and `rate.break-out-least`; sums by hand.
describe('hours of breaking out', () => {
  const removing = (low: number, typical: number, high: number, patches: unknown = null) =>
    endsOf(
      hoursOf(
        'break-out',
        workOf({ patches }),
        quantitiesWith({ removed: reach('m3', [low, typical, high]) }),
      ),
    );
  const spots = Array.from({ length: 8 }, () => ({ area: 0.1, saw: 1.2 }));
  it('go by the volume: 5 to 25 h/m3, usually 12', () =>
    expect(removing(0.2, 0.3, 0.4)).toEqual([1, 3.6, 10]));
  it('are never shorter than the least of each patch: 0.25 to 0.75 h, usually half an hour', () => {
    expect(removing(0.001, 0.002, 0.003)).toEqual([0.25, 0.5, 0.75]);
    expect(removing(0.001, 0.002, 0.003, spots)).toEqual([2, 4, 6]);
    expect(removing(0.001, 0.002, 0.003, [])).toEqual([0.25, 0.5, 0.75]);
  });
  it('show how they were come to: by the patch where that is longer throughout, else by the volume', () => {
    const working = (m3: number, patches: object[]) => {
      const quantities = quantitiesWith({
        removed: product('m3', [{ what: 'removed', span: [m3, m3], unit: 'm3' }]),
      });
      const hours = hoursOf('break-out', workOf({ patches }), quantities);
      return hours && 'working' in hours ? hours.working.map(({ what }) => what) : null;
    };
    expect(working(0.001, spots)).toEqual(['patches', 'rate']);
    expect(working(2, spots)).toEqual(['removed', 'rate']);
    // 0.05 m3 at 5 to 25 h/m3 against 0.25 to 0.75 h: alike at the least, longer by volume else.
    expect(working(0.05, [])).toEqual(['removed', 'rate']);
  });
  it('are the longer end by end, with no one working, where the two cross', () => {
    const hours = hoursOf(
      'break-out',
      workOf({ patches: spots }),
      quantitiesWith({ removed: reach('m3', [0.2, 0.3, 0.4]) }),
    );
    expect(hours).toEqual({ span: [2, 10], typical: 4, unit: 'h', working: [] });
  });
  it('are not known while what comes off is not, and none where nothing does', () => {
    const open = quantitiesWith({ removed: { missing: ['depth'], unit: 'm3' } });
    expect(hoursOf('break-out', workOf(), open)).toEqual({ missing: ['depth'], unit: 'h' });
    expect(hoursOf('break-out', workOf(), quantitiesWith({}))).toBeNull();
  });
});
