import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import type { Survey } from '$lib/answers/survey';
import OwnerPage from '$lib/ui/owner/OwnerPage.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import SurveyPage from '$lib/ui/survey/SurveyPage.svelte';

const user = userEvent.setup();
// Long, so that a busy machine turns nothing red.
vi.setConfig({ testTimeout: 60_000 });
// Nothing has a size in jsdom, and so nothing changes it.
globalThis.ResizeObserver ??= class {
  observe() {}
  unobserve() {}
  disconnect() {}
} as unknown as typeof ResizeObserver;
beforeEach(() => {
  preferences.units = 'metric';
});
const job = (survey?: Survey): Job => ({
  name: 'Yard, invented',
  site: { thickness: 150, freezeThaw: ['rare'] },
  zones: [
    { id: 'a', name: 'Gate', answers: {} },
    { id: 'b', name: 'Yard', answers: {} },
  ],
  ...(survey && { survey }),
});
async function open(survey?: Survey) {
  await session.startNew(job(survey));
  return render(SurveyPage);
}
const slab = { length: 6000, width: 4000 };
const drawn = () => session.job.survey;
const type = async (label: string, text: string) => {
  const field = screen.getByLabelText(label, { selector: 'input' });
  await user.clear(field);
  await user.type(field, text);
};
const pad = () => screen.getByRole('application', { name: 'Drawing of the slab' });

describe('a slab is laid out in numbers from a tape', () => {
  it('by length and width', async () => {
    await open();
    await type('Length (along)', '6 m');
    await type('Width (across)', '4000{Enter}');
    expect(drawn()?.slab).toEqual(slab);
    expect(pad()).toBeVisible();
  });

  it('by sides and turns; one that does not close says by how much, and keeps what was typed', async () => {
    await open();
    await user.click(screen.getByLabelText('Corners, by side and turn'));
    for (const [index, [side, turn]] of [
      ['6000', '90'],
      ['4000', '90'],
      ['6000', '90'],
      ['3900', '90'],
    ].entries()) {
      const row = screen.getByRole('group', { name: `Side ${index + 1}` });
      await user.type(within(row).getByLabelText('Side'), side as string);
      await user.type(within(row).getByLabelText('Turn left'), turn as string);
    }
    await user.click(screen.getByRole('button', { name: 'Draw it' }));
    expect(screen.getAllByRole('alert')[0]).toHaveTextContent('ends 100 mm from the first corner');
    expect(drawn()).toBeUndefined();
    const last = within(screen.getByRole('group', { name: 'Side 4' })).getByLabelText('Side');
    expect(last).toHaveValue('3900');
    await user.clear(last);
    await user.type(last, '4000{Enter}');
    expect(drawn()?.slab).toEqual({
      corners: [
        [0, 0],
        [6000, 0],
        [6000, 4000],
        [0, 4000],
      ],
    });
  });

  it('says which field is empty, and goes there', async () => {
    await open();
    await type('Length (along)', '6000{Enter}');
    expect(screen.getByLabelText('Width (across)')).toHaveFocus();
    expect(screen.getByLabelText('Width (across)')).toBeInvalid();
  });
});

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

  it('a zone is painted over a bay, and its area follows', async () => {
    await user.click(screen.getByLabelText('Zone', { selector: 'input' }));
    pad().focus();
    await user.keyboard('{Enter}{Enter}');
    expect(drawn()?.marks?.[0]).toMatchObject({ kind: 'zone', zone: 'a' });
    expect(screen.getByRole('region', { name: 'What it comes to' })).toHaveTextContent(
      /Gate\s+24 m²/,
    );
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
      /More than half of bay 1 is patched: .* of 12 m²/,
    );
  });

  it('the drawing stands on the owner’s sheet where there is one', async () => {
    await session.startNew(job({ slab, marks: [{ kind: 'spot', corners }] }));
    render(OwnerPage);
    expect(screen.getByRole('img', { name: /seen from above, to scale: 24 m²/ })).toBeVisible();
  });
});
