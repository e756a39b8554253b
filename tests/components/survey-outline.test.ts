import { screen, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { drawn, open, pad, slab, type, user } from '../helpers/survey-page';

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

  it('an outline that crosses itself is told, and what was typed stays', async () => {
    await open();
    await user.click(screen.getByLabelText('Corners, by x and y'));
    await user.click(screen.getByRole('button', { name: 'Add a corner' }));
    for (const [index, [x, y]] of [
      ['0', '0'],
      ['6000', '4000'],
      ['6000', '0'],
      ['0', '4000'],
    ].entries()) {
      const row = within(screen.getByRole('group', { name: `Corner ${index + 1}` }));
      await user.clear(row.getByLabelText('x (along)'));
      await user.type(row.getByLabelText('x (along)'), x as string);
      await user.clear(row.getByLabelText('y (across)'));
      await user.type(row.getByLabelText('y (across)'), y as string);
    }
    await user.click(screen.getByRole('button', { name: 'Draw it' }));
    expect(screen.getAllByRole('alert')[0]).toHaveTextContent('crosses or touches itself');
    expect(drawn()).toBeUndefined();
    const last = within(screen.getByRole('group', { name: 'Corner 4' }));
    expect(last.getByLabelText('y (across)')).toHaveValue('4000');
  });

  it('a number in another unit is told at its field', async () => {
    await open();
    await type('Length (along)', '6');
    await type('Width (across)', '4{Enter}');
    expect(drawn()).toBeUndefined();
    const field = screen.getByLabelText('Length (along)');
    expect(field).toBeInvalid();
    expect(field).toHaveValue('6');
    expect(field).toHaveAccessibleDescription(/mm/);
  });

  it('says which field is empty, and goes there', async () => {
    await open();
    await type('Length (along)', '6000{Enter}');
    expect(screen.getByLabelText('Width (across)')).toHaveFocus();
    expect(screen.getByLabelText('Width (across)')).toBeInvalid();
  });
});
