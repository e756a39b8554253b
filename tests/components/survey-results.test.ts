import { render, screen, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import JobPage from '$lib/ui/job/JobPage.svelte';
import OwnerPage from '$lib/ui/owner/OwnerPage.svelte';
import { session } from '$lib/ui/session.svelte';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { choicesOf } from '$lib/answers/questions';
import { rectangle } from '../helpers/drawings';
import { drawn, job, open, pad, slab, type, user } from '../helpers/survey-page';

describe('soundings', () => {
  const tap = (x: number, y: number, rings: boolean) =>
    ({ kind: 'tap', at: [x, y], rings }) as const;

  it('what the grid can have missed is told, and a lone dull tap is tapped again', async () => {
    const marks = Array.from({ length: 10 }, (_, row) =>
      Array.from({ length: 15 }, (_, column) =>
        tap(200 + column * 400, 200 + row * 400, row !== 5 || column !== 5),
      ),
    ).flat();
    await open({ slab, spacing: 400, marks });
    const results = screen.getByRole('region', { name: 'What it comes to' });
    // 2 x 0.56 of the spacing: closed form, ASTM D6982.
    expect(results).toHaveTextContent('finds a round hollow of 446 mm across or more');
    expect(results).toHaveTextContent('too wide to lay patches by');
    expect(results).toHaveTextContent('1 dull tap stands alone');
    await user.click(screen.getByRole('button', { name: 'It rings now' }));
    expect(results).not.toHaveTextContent('stands alone');
  });

  // Common practice, no source: nothing is sawn where the part is made new or an engineer has to look.
  it('a zone that is stopped is told beside its saw cuts, and the spot for which it is', async () => {
    const spot = (x: number, depth: number) =>
      ({ kind: 'spot', corners: rectangle(x, 500, 500, 500), zone: 'b', depth }) as const;
    const answers: ZoneAnswers = {
      looseness: ['hollow'],
      contamination: { yes: [], maybe: [] },
      texture: ['sandy'],
      cracks: ['none'],
      steel: ['none-seen'],
      finish: ['overlay'],
    };
    const site: SiteAnswers = {
      element: ['slab'],
      setting: ['open'],
      salts: ['none'],
      freezeThaw: ['rare'],
      thickness: 150,
      warnings: { yes: [], maybe: [] },
    };
    const { rerender } = await open({ slab, marks: [spot(500, 40), spot(3000, 90)] });
    session.update((now) => ({
      ...now,
      site,
      zones: now.zones.map((zone) => ({ ...zone, answers })),
    }));
    await rerender({});
    const told = await screen.findAllByText('Yard: saw nothing yet.');
    // In the results, and on the sheet to chalk by.
    expect(told).toHaveLength(2);
    expect(told[0]?.parentElement).toHaveTextContent(/contractor/);
    const marks = screen.getByRole('region', { name: 'Marks' });
    expect(
      within(marks)
        .getByText(/Too deep to patch/)
        .closest('li'),
    ).toHaveTextContent('Spot 2');
    // Crayon is an order: nobody reads one where the work is stopped.
    const legend = screen.getByRole('list', { name: 'How to read it' });
    expect(legend).toHaveTextContent('saw nothing yet');
    expect(legend).not.toHaveTextContent('saw and break out here');
    expect(pad().querySelectorAll('path.crayon')).toHaveLength(0);
    // The same without the deep one: it is broken out.
    session.update((now) => ({
      ...now,
      survey: { slab, marks: [spot(3000, 40), spot(500, 30)] },
    }));
    await rerender({});
    expect(legend).toHaveTextContent('saw and break out here');
    expect(legend).not.toHaveTextContent('saw nothing yet');
    expect(pad().querySelectorAll('path.crayon')).toHaveLength(2);
    // Spots are counted as they were made, patches as they are chalked.
    const rows = within(marks).getAllByRole('listitem');
    expect(rows.find((row) => row.textContent?.includes('Spot 1'))).toHaveTextContent('in patch 2');
    expect(rows.find((row) => row.textContent?.includes('Spot 2'))).toHaveTextContent('in patch 1');
  });

  // Common practice, no source: how deep nobody measured is measured, before it is priced or sawn.
  it('a patch with a spot that nobody measured is to be measured on the sheet to chalk by', async () => {
    const spot = (x: number, depth?: number) =>
      ({
        kind: 'spot',
        corners: rectangle(x, 500, 300, 500),
        ...(depth !== undefined && { depth }),
      }) as const;
    await open({ slab, marks: [spot(500, 40), spot(900), spot(3000), spot(4500, 30)] });
    const sheet = screen.getByRole('table');
    const depths = within(sheet)
      .getAllByRole('row')
      .slice(1)
      .map((row) => within(row).getAllByRole('cell')[4]?.textContent);
    expect(depths).toEqual(['40\u00A0mm or deeper: measure', 'measure', '30\u00A0mm']);
  });

  it('a chain is dragged in lanes, and what it can have missed is told', async () => {
    await open({ slab });
    const results = screen.getByRole('region', { name: 'What it comes to' });
    expect(results).toHaveTextContent('Nothing is sounded yet');
    await user.click(screen.getByLabelText('Tap'));
    await user.click(screen.getByLabelText('A chain'));
    // Nine lanes of 4000 / 9 mm along 6 m.
    expect(pad().querySelector('path.lanes')?.getAttribute('d')?.match(/M/g)).toHaveLength(9);
    pad().focus();
    await user.keyboard('{Enter}');
    expect(screen.getAllByRole('alert')[0]).toHaveTextContent('draw what sounds dull as a spot');
    await user.click(screen.getByRole('button', { name: 'I dragged the chain over all of it' }));
    expect(drawn()).toEqual({ slab, lanes: 450 });
    expect(results).toHaveTextContent('in lanes of 450 mm. It misses less than taps on a grid');
    expect(results).not.toHaveTextContent('Nothing is sounded yet');
    await type('Width of a lane', '900{Enter}');
    expect(results).toHaveTextContent('A chain covers about 450 mm');
    await user.click(screen.getByRole('button', { name: 'Take that back' }));
    expect(drawn()).toEqual({ slab });
  });

  it('a grid that is too wide to lay patches by is told before it is tapped', async () => {
    await open({ slab });
    await user.click(screen.getByLabelText('Tap'));
    const wide = /Dots more than 300 mm apart are too wide/;
    expect(screen.queryByText(wide)).toBeNull();
    await type('Spacing of the dots', '450{Enter}');
    expect(screen.getByText(wide)).toBeVisible();
  });

  it('dots are tapped by keys, and the rest rings with one button', async () => {
    await open({ slab });
    await user.click(screen.getByLabelText('Tap'));
    pad().focus();
    await user.keyboard('{ArrowRight}{Enter}');
    expect(drawn()?.marks).toMatchObject([{ kind: 'tap', rings: false }]);
    await user.click(screen.getByRole('button', { name: 'All the other dots ring' }));
    const taps = drawn()?.marks ?? [];
    expect(taps.length).toBeGreaterThan(280);
    expect(taps.filter((mark) => mark.kind === 'tap' && !mark.rings)).toHaveLength(1);
  });
});

describe('what comes out', () => {
  const corners = [
    [300, 400],
    [900, 400],
    [900, 700],
    [300, 700],
  ] as const;
  const half = [
    [0, 1000],
    [2900, 1000],
    [2900, 3600],
    [0, 3600],
  ] as const;
  const joints = [
    [
      [3000, 0],
      [3000, 4000],
    ],
  ] as const;

  it('every patch stands on the sheet to chalk by, with its distances from two edges', async () => {
    await open({ slab, joints, marks: [{ kind: 'spot', corners, depth: 40 }] });
    const sheet = screen.getByRole('region', { name: 'Sheet to chalk by' });
    const [, row] = within(sheet).getAllByRole('row');
    // 100 mm past the damage on each side: FHWA, 3 to 4 in.
    expect(row).toHaveTextContent('200 mm from the left side');
    expect(row).toHaveTextContent('300 mm from the near side');
    expect(row).toHaveTextContent('800 mm x 500 mm');
    expect(row).toHaveTextContent('40 mm');
  });

  it('a bay that is more than half patched is offered whole, with both amounts', async () => {
    await open({ slab, joints, marks: [{ kind: 'spot', corners: half }] });
    expect(screen.getByRole('region', { name: 'What it comes to' })).toHaveTextContent(
      // 3 x 2.8 m with its margins, sawn on the two sides that lie in the bay.
      /More than half of bay 1 is patched: 8.4 m² of 12 m², with 6 m to saw\. .* the bay whole as well: 12 m², nothing to saw.*With bay 1 whole, the slab comes to 12 m² of patches and bays, with 0 m to saw/,
    );
  });

  it('the drawing stands on the owner’s sheet where there is one', async () => {
    await session.startNew(job({ slab, marks: [{ kind: 'spot', corners }] }));
    render(OwnerPage);
    expect(screen.getByRole('img', { name: /seen from above, to scale: 24\sm²/ })).toBeVisible();
  });

  it('areas on the job page are those of the drawing', async () => {
    const yard = job({ slab, marks: [{ kind: 'zone', corners: half, zone: 'a' }] });
    await session.startNew(yard);
    render(JobPage);
    // 2.9 x 2.6 m; the yard is the rest of 6 x 4 m.
    expect(document.getElementById('zone-a')).toHaveTextContent('7.54 m²');
    expect(document.getElementById('zone-b')).toHaveTextContent('16.5 m²');
  });

  // Whoever reads both has to see which is which: the answer, and what outranks it.
  it('a depth that is drawn is told as drawn on the card, and beside the answer', async () => {
    const deep = { kind: 'spot', corners, zone: 'a', depth: 90 } as const;
    const yard = job({ slab, marks: [{ kind: 'zone', corners: half, zone: 'a' }, deep] });
    await session.startNew({
      ...yard,
      zones: yard.zones.map((zone) => ({
        ...zone,
        answers: { ...zone.answers, depth: choicesOf('depth') as never, looseness: ['hollow'] },
      })),
    });
    render(JobPage);
    const card = document.getElementById('zone-a') as HTMLElement;
    expect(card).toHaveTextContent('Depth: 90 mm (drawn)');
    await user.click(card.querySelector('summary') as HTMLElement);
    const depth = within(card)
      .getAllByRole('listitem')
      .find((row) => row.textContent?.startsWith('Depth'));
    expect(depth).toHaveTextContent(/Not sure.*Drawn: 90.mm/);
    const other = document.getElementById('zone-b') as HTMLElement;
    expect(other).not.toHaveTextContent(/drawn\)|Drawn:/);
  });
});
