import { screen, within } from '@testing-library/svelte';
import { beforeEach, describe, expect, it } from 'vitest';
import { session } from '$lib/ui/session.svelte';
import type { Survey } from '$lib/answers/survey';
import { rectangle } from '../helpers/drawings';
import { drawn, job, open, pad, slab, type, user } from '../helpers/survey-page';

describe('on the drawing', () => {
  beforeEach(() => open({ slab }));

  it('a spot is placed with eight keys, and can be undone and done again', async () => {
    pad().focus();
    await user.keyboard('{Enter}{ArrowRight}{ArrowRight}{ArrowRight}{ArrowUp}{ArrowUp}{Enter}');
    expect(drawn()?.marks).toEqual([
      {
        kind: 'spot',
        corners: [
          [3000, 2000],
          [3300, 2000],
          [3300, 2200],
          [3000, 2200],
        ],
      },
    ]);
    expect(screen.getByRole('status')).toHaveTextContent('Spot 1 placed.');
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    expect(drawn()?.marks).toBeUndefined();
    await user.click(screen.getByRole('button', { name: 'Redo' }));
    expect(drawn()?.marks).toHaveLength(1);
  });

  it('a spot is typed with its depth, changed in the list, and taken out', async () => {
    await user.click(screen.getByText('Type it in numbers'));
    for (const [label, text] of [
      ['x (along)', '1000'],
      ['y (across)', '500'],
      ['Length (along)', '600'],
      ['Width (across)', '300'],
      ['Depth, if known', '40'],
    ] as const)
      await user.type(screen.getByLabelText(label), text);
    await user.click(screen.getByRole('button', { name: 'Place it' }));
    const rows = () => screen.getByRole('region', { name: 'Marks' });
    expect(rows()).toHaveTextContent('Spot 1: 600 mm x 300 mm');
    expect(rows()).toHaveTextContent('40 mm deep');
    await user.click(within(rows()).getByRole('button', { name: 'Change Spot 1' }));
    await type('Depth', '55');
    expect(drawn()?.marks?.[0]).toMatchObject({ depth: 55 });
    await user.click(within(rows()).getByRole('button', { name: 'Take out Spot 1' }));
    expect(drawn()?.marks).toBeUndefined();
  });

  it('what lies off the slab is told at the mark, and what was typed stays', async () => {
    await user.click(screen.getByText('Type it in numbers'));
    for (const [label, text] of [
      ['x (along)', '9000'],
      ['y (across)', '500'],
      ['Length (along)', '600'],
      ['Width (across)', '300'],
    ] as const)
      await user.type(screen.getByLabelText(label), text);
    await user.click(screen.getByRole('button', { name: 'Place it' }));
    const form = screen.getByRole('button', { name: 'Place it' }).closest('form');
    expect(within(form as HTMLElement).getByRole('alert')).toHaveTextContent('off the slab');
    expect(screen.getByLabelText('x (along)')).toHaveValue('9000');
    expect(drawn()?.marks).toBeUndefined();
  });

  it('joints are laid at a spacing, and part the slab into bays', async () => {
    await user.click(screen.getByLabelText('Joint'));
    await type('Spacing along', '3000');
    await type('Spacing across', '4000{Enter}');
    expect(drawn()?.joints).toEqual([
      [
        [3000, 0],
        [3000, 4000],
      ],
    ]);
  });

  it('a joint is changed in numbers, and one off the slab is told and not taken', async () => {
    await user.click(screen.getByLabelText('Joint'));
    await type('Spacing along', '3000');
    await type('Spacing across', '4000{Enter}');
    await user.click(screen.getByRole('button', { name: 'Change Joint 1' }));
    const editor = within(screen.getByRole('region', { name: 'Joint 1' }));
    for (const point of ['Point 1', 'Point 2']) {
      const field = within(editor.getByRole('group', { name: point })).getByLabelText('x (along)');
      await user.clear(field);
      await user.type(field, '9000');
    }
    await user.click(editor.getByRole('button', { name: 'Change it' }));
    expect(editor.getByRole('alert')).toHaveTextContent('off the slab');
    expect(drawn()?.joints?.[0]?.[0]).toEqual([3000, 0]);
    for (const point of ['Point 1', 'Point 2']) {
      const field = within(editor.getByRole('group', { name: point })).getByLabelText('x (along)');
      await user.clear(field);
      await user.type(field, '2500');
    }
    await user.click(editor.getByRole('button', { name: 'Change it' }));
    expect(drawn()?.joints).toEqual([
      [
        [2500, 0],
        [2500, 4000],
      ],
    ]);
  });

  it('what is typed and not taken yet is taken when somebody is done, or says why it cannot be', async () => {
    await user.click(screen.getByLabelText('Joint'));
    await type('Spacing along', '3000');
    await type('Spacing across', '4000{Enter}');
    await user.click(screen.getByRole('button', { name: 'Change Joint 1' }));
    const editor = within(screen.getByRole('region', { name: 'Joint 1' }));
    const x = (point: string) =>
      within(editor.getByRole('group', { name: point })).getByLabelText('x (along)');
    const done = () => user.click(editor.getByRole('button', { name: 'Done' }));
    await user.clear(x('Point 1'));
    await done();
    expect(x('Point 1')).toHaveAttribute('aria-invalid', 'true');
    await user.type(x('Point 1'), '2500');
    await user.clear(x('Point 2'));
    await user.type(x('Point 2'), '2500');
    await done();
    expect(screen.queryByRole('region', { name: 'Joint 1' })).toBeNull();
    expect(drawn()?.joints?.[0]).toEqual([
      [2500, 0],
      [2500, 4000],
    ]);
  });

  it('a zone is painted over a bay, and its area follows', async () => {
    await user.click(screen.getByLabelText('Zone', { selector: 'input' }));
    pad().focus();
    await user.keyboard('{Enter}{Enter}');
    expect(drawn()?.marks?.[0]).toMatchObject({ kind: 'zone', zone: 'a' });
    expect(screen.getByRole('region', { name: 'What it comes to' })).toHaveTextContent(
      /Gate\s+24\sm²/,
    );
  });

  it('a spot belongs where it lies, not to the zone that was painted last', async () => {
    await user.click(screen.getByLabelText('Zone', { selector: 'input' }));
    await user.selectOptions(screen.getByLabelText('Zone to paint'), 'b');
    pad().focus();
    await user.keyboard('{Enter}{Enter}');
    expect(drawn()?.marks?.[0]).toMatchObject({ kind: 'zone', zone: 'b' });
    await user.click(screen.getByLabelText('Spot', { selector: 'input' }));
    expect(screen.getByLabelText('Zone of the next spot')).toHaveValue('');
    pad().focus();
    await user.keyboard('{Enter}{ArrowRight}{ArrowUp}{Enter}');
    expect(drawn()?.marks?.[1]).not.toHaveProperty('zone');
    // One box for this spot, one for the next, each by its own name.
    const names = [...document.querySelectorAll('label[for]')].map((each) => each.textContent);
    expect(names.filter((name) => name?.startsWith('Zone')).sort()).toEqual([
      'Zone',
      'Zone of the next spot',
    ]);
  });

  it('a crack is drawn by keys, point by point', async () => {
    await user.click(screen.getByLabelText('Crack'));
    await user.selectOptions(screen.getByLabelText('Kind of crack'), 'open');
    pad().focus();
    await user.keyboard('{Enter}{ArrowRight}{ArrowRight}{Enter}{ArrowUp}{Enter}{Enter}');
    expect(drawn()?.marks?.[0]).toMatchObject({
      kind: 'crack',
      crack: 'open',
      line: [
        [3000, 2000],
        [3200, 2000],
        [3200, 2100],
      ],
    });
  });

  it('what was typed before is put on the drawing, each area at its size where it is tapped', async () => {
    await session.startNew({
      ...job({ slab }),
      zones: [
        { id: 'a', name: 'Gate', answers: { area: 4 } },
        {
          id: 'b',
          name: 'Yard',
          answers: {},
          patches: [{ x: 500, y: 500, length: 400, width: 300 }],
        },
      ],
    });
    await user.click(
      await screen.findByRole('button', { name: 'Bring in 1 spot typed on the plan' }),
    );
    expect(drawn()?.marks?.[0]).toMatchObject({ kind: 'spot', zone: 'b' });
    await user.click(screen.getByRole('button', { name: /^Place Gate, 4\sm²$/ }));
    expect(pad()).toHaveFocus();
    await user.keyboard('{Enter}{Enter}');
    // A square of 2 m round the middle of 6 x 4 m.
    expect(drawn()?.marks?.[1]).toEqual({
      kind: 'zone',
      zone: 'a',
      corners: rectangle(2000, 1000, 2000, 2000),
    });
    expect(screen.queryByRole('button', { name: /^Place Gate/ })).toBeNull();
    expect(session.job.zones[0]?.answers.area).toBe(4);
  });

  it('a zone that a joint cuts, and a mark over the edge, are told in their rows', async () => {
    await user.click(screen.getByLabelText('Joint'));
    await type('Spacing along', '3000');
    await type('Spacing across', '4000{Enter}');
    await session.startNew(
      job({
        ...(drawn() as Survey),
        marks: [
          { kind: 'zone', zone: 'a', corners: rectangle(2000, 1000, 2000, 1000) },
          { kind: 'spot', corners: rectangle(5800, 100, 400, 400) },
        ],
      }),
    );
    const rows = await screen.findAllByRole('listitem');
    const row = (name: string) => rows.find((each) => each.textContent?.includes(name));
    expect(row('Painted zone 1')).toHaveTextContent('A joint runs through it.');
    expect(row('Spot 1')).toHaveTextContent('Reaches past the edge');
  });

  it('an outline that leaves a mark outside is not taken', async () => {
    pad().focus();
    await user.keyboard('{Enter}{Enter}');
    await user.click(screen.getByText('Change the outline'));
    const form = await screen.findByRole('button', { name: 'Change the outline' });
    const length = within(form.closest('form') as HTMLElement).getByLabelText('Length (along)');
    await user.clear(length);
    await user.type(length, '1000{Enter}');
    expect(within(form.closest('form') as HTMLElement).getByRole('alert')).toHaveTextContent(
      'Spot 1 would not fit this outline',
    );
    expect(drawn()?.slab).toEqual(slab);
  });
});
