import { cleanup, render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import OwnField from '$lib/ui/crew/OwnField.svelte';
import { take, measureField, plainField, takeNumber } from '$lib/ui/job/take-number';
import PriceFields from '$lib/ui/owner/PriceFields.svelte';
import EntryField from '$lib/ui/ready/EntryField.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import NumbersForm from '$lib/ui/survey/NumbersForm.svelte';
import TypedField from '$lib/ui/TypedField.svelte';
import { formatter } from '$lib/words/format';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });
beforeEach(() => (preferences.units = 'metric'));
afterEach(cleanup);

const say = formatter('us');
const user = userEvent.setup();
const field = () => screen.getByRole<HTMLInputElement>('textbox');
const thousand = /^1250 \(one thousand two hundred and fifty\)$/;
const little = /^1\.25 \(one and a quarter\)$/;

describe('a number that can be read in two ways is asked, never read', () => {
  it.each(['1,250', '1.250'])('a price of %s', async (typed) => {
    session.update((job) => ({ ...job, prices: {} }));
    render(PriceFields);
    const first = screen.getAllByRole('textbox')[0] as HTMLInputElement;
    await user.type(first, typed);
    expect(screen.getByText(new RegExp(`“${typed}” can be read in two ways`))).toBeInTheDocument();
    expect(first).toHaveValue(typed);
    // On the way there stood "1" and "1,25": neither may go on counting.
    expect(session.job.prices).toEqual({});
    await user.click(screen.getByRole('button', { name: thousand }));
    expect(Object.values(session.job.prices ?? {})).toEqual([1250]);
    expect(screen.queryByRole('button', { name: little })).toBeNull();
    expect(first).toHaveFocus();
  });

  it('a reading, which waits as it was typed', async () => {
    const onentry = vi.fn((entry) => rerender({ entry }));
    const props = { id: 'f', label: 'Force', kind: 'kN', entry: '', onentry } as const;
    const { rerender } = render(EntryField, props);
    await user.type(field(), '1,250');
    expect(onentry).toHaveBeenLastCalledWith('1,250');
    await user.click(screen.getByRole('button', { name: little }));
    expect(onentry).toHaveBeenLastCalledWith(1.25);
    expect(field()).toHaveFocus();
  });

  it('a length of the survey', async () => {
    const taken = vi.fn(() => '');
    const column = { label: 'Along', kind: 'mm', limit: 'limit.spot-place' } as const;
    render(NumbersForm, { id: 'n', columns: [column], submit: 'Add', take: taken });
    await user.type(field(), '1.250');
    await user.click(screen.getByRole('button', { name: 'Add' }));
    expect(taken).not.toHaveBeenCalled();
    await user.click(screen.getByRole('button', { name: thousand }));
    await user.click(screen.getByRole('button', { name: 'Add' }));
    expect(taken).toHaveBeenCalledWith([[1250]]);
  });

  it('minutes of a crew’s day', async () => {
    const onvalue = vi.fn((value) => rerender({ value }));
    const minutes = plainField({ least: 0, most: 1440 });
    const check = () => null;
    const props = { label: 'Minutes', unit: 'min', field: minutes, value: 0, check, onvalue };
    const { rerender } = render(OwnField, props);
    await user.clear(field());
    await user.type(field(), '1,250');
    expect(onvalue).toHaveBeenLastCalledWith(0);
    await user.click(screen.getByRole('button', { name: thousand }));
    expect(onvalue).toHaveBeenLastCalledWith(1250);
  });

  it('but a crew of “1,250” is told what was expected: one reading is no whole number', async () => {
    const wrong = takeNumber('1,250', { least: 1, most: 50, whole: true, say });
    expect(wrong).toEqual({ ok: false, problem: expect.stringContaining('Type 50 or less') });
  });
});

describe('what was typed stays as it was typed', () => {
  const shownFor = (value: number | undefined) => (value === undefined ? '' : String(value));
  const setup = () => {
    let value: number | undefined;
    const typedField = measureField('m', 'limit.crack-length', say);
    const { rerender } = render(TypedField, {
      id: 'l',
      label: 'Length',
      unit: 'ft',
      value: '',
      take: (text: string) => {
        const got = take(text, typedField, say);
        if (got.ok) {
          value = got.value;
          void rerender({ value: shownFor(value) });
        }
        return got;
      },
    });
    return { value: () => value, rerender };
  };

  it('“12 ft 6 in” after the field was left', async () => {
    const { value } = setup();
    await user.type(field(), '12 ft 6 in');
    await user.tab();
    expect(field()).toHaveValue('12 ft 6 in');
    expect(value()).toBeCloseTo(3.81, 12);
  });

  it('until the value becomes another one', async () => {
    const { rerender } = setup();
    await user.type(field(), '12');
    await user.tab();
    await rerender({ value: '40' });
    expect(field()).toHaveValue('40');
  });

  it('and so does what cannot be taken, with what was expected beside it', async () => {
    const { value } = setup();
    await user.type(field(), 'twelve');
    await user.tab();
    expect(field()).toHaveValue('twelve');
    expect(field()).toHaveAccessibleDescription(/“twelve” is not a number\. Type digits/);
    expect(value()).toBeUndefined();
  });
});
