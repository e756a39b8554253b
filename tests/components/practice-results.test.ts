import 'fake-indexeddb/auto';
import { cleanup, render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  minuteOf,
  readResultCode,
  resultCode,
  resultLink,
  runOf,
} from '$lib/keep/practice/result-code';
import { resultsName } from '$lib/keep/practice/result-store';
import { readSetLink } from '$lib/keep/practice/set-link';
import type { SetResult } from '$lib/practice/given';
import { deleteAll } from '$lib/ui/jobs/everything';
import { given } from '$lib/ui/practice/results/given.svelte';
import ResultsPage from '$lib/ui/practice/results/ResultsPage.svelte';
import { resultsCsv } from '$lib/ui/practice/results/results-table';
import { speech } from '$lib/ui/speech.svelte';

vi.mock('$app/navigation', () => ({
  goto: () => Promise.resolve(),
  replaceState: () => (location.hash = ''),
}));
// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });
const user = userEvent.setup();

const mira: SetResult = {
  set: { cases: ['larch-row-oil', 'gannet-court-balcony', 'hall-steps-nosing'] },
  calls: ['pressure-wash', 'break-out', 'break-out'],
  minute: minuteOf(Date.UTC(2026, 2, 2, 9)),
  mark: 4711,
  name: 'Mira',
};
const ilo: SetResult = {
  ...mira,
  calls: ['pressure-wash', 'engineer', 'break-out'],
  minute: mira.minute + 5,
  mark: 3,
  name: 'Ilo',
};
const other: SetResult = { ...mira, set: { cases: ['bakery-dust'] }, calls: ['grind'], name: '' };
const one = 'https://example.org/learn/practice/results/';

const rows = () => screen.queryAllByRole('row', { hidden: true }).slice(1);
const rowOf = (name: string) =>
  rows().find((row) => row.textContent?.includes(name)) as HTMLElement;
const told = () =>
  screen
    .getAllByRole('status')
    .map((each) => each.textContent ?? '')
    .join(' ');
async function paste(...lines: string[]) {
  const field = screen.getByLabelText('Codes or links, one a line');
  await user.clear(field);
  await user.click(field);
  await user.paste(lines.join('\n'));
  await user.click(screen.getByRole('button', { name: 'Add' }));
  return field as HTMLTextAreaElement;
}
async function database() {
  await given.open();
  return openDB(resultsName, 1);
}
async function emptied() {
  const base = await database();
  await base.clear('given');
  base.close();
  await given.refresh();
}
beforeEach(emptied);
afterEach(cleanup);

describe('the page of a crew lead', () => {
  it('says when nothing is there, and gathers what is pasted in a table', async () => {
    render(ResultsPage);
    expect(screen.getByText(/No result is here yet/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Add' }));
    expect(told()).toContain('Paste a code or a link first.');

    const field = await paste(
      `[9:14] ${resultLink(mira, one)}`,
      '',
      resultCode(ilo),
      'hello',
      'done1.abc',
    );
    await vi.waitFor(() => expect(rows()).toHaveLength(2));
    expect(told()).toContain('Added: 2 results (Mira, Ilo).');
    expect(told()).toContain('Line 4 was not added: it holds no code.');
    expect(told()).toContain('Line 5 was not added: expected the whole code');
    expect(field.value).toBe('hello\ndone1.abc');
    expect(rowOf('Mira')).toHaveTextContent('1 of 3 right');
    expect(rowOf('Ilo')).toHaveTextContent('2 of 3 right');
    // In the order of the table of cases: oil, nosing, balcony.
    expect(within(rowOf('Mira')).getByRole('img')).toHaveAccessibleName('Not right: cases 1, 3');
    expect(rowOf('Mira')).toHaveTextContent(
      '3. A balcony at Gannet Court: picked Breaking out; right is Engineer first.',
    );
    const mixed = screen.getAllByRole('listitem').map((each) => each.textContent);
    expect(mixed.find((text) => text.includes('2 times'))).toMatch(
      /Too gentle\.\s+Picked Pressure washing; right is Grinding\./,
    );
    expect(mixed.find((text) => text.includes('Once'))).toContain('Not safe to start');
    const next = screen.getByRole('link', { name: 'Pressure washing or Grinding? (6 cases)' });
    expect(readSetLink(new URL((next as HTMLAnchorElement).href).hash).ok).toBe(true);
  });

  it('tells what comes twice, with other picks, or of another set', async () => {
    render(ResultsPage);
    await paste(resultCode(mira));
    await vi.waitFor(() => expect(rows()).toHaveLength(1));
    await paste(resultCode({ ...mira, name: 'Somebody' }));
    await vi.waitFor(() => expect(told()).toContain('Already here: Somebody'));
    await paste(resultCode({ ...mira, calls: ['grind', 'engineer', 'break-out'] }));
    await vi.waitFor(() => expect(told()).toContain('The same run is here with other picks'));
    expect(rows()).toHaveLength(1);
    expect(rowOf('Mira')).toHaveTextContent('1 of 3 right');
    await paste(resultCode(other));
    await vi.waitFor(() => expect(told()).toContain('It is of another set than those before it'));
    expect(screen.getAllByRole('heading', { level: 2 }).map((each) => each.textContent)).toEqual(
      expect.arrayContaining(['A set of 3 cases', 'A set of 1 case']),
    );
  });

  it('takes a result from its link once, and the link out of the address', async () => {
    location.hash = resultCode(mira);
    render(ResultsPage);
    await vi.waitFor(() => expect(told()).toContain('Added: 1 result (Mira).'));
    expect(location.hash).toBe('');
    location.hash = `${resultCode(ilo).slice(0, -1)}2`;
    await vi.waitFor(() =>
      expect(told()).toContain('The link was not added: expected the whole code'),
    );
    expect(rows()).toHaveLength(1);
  });

  it('lets names go, one by one and all at once, and results, each with a way back', async () => {
    render(ResultsPage);
    await paste(resultCode(mira), resultCode(ilo));
    await vi.waitFor(() => expect(rows()).toHaveLength(2));
    await user.click(screen.getByRole('button', { name: /^Remove the name: Mira/, hidden: true }));
    await vi.waitFor(() => expect(told()).toContain('The name Mira is removed.'));
    expect(rows()[0]).toHaveTextContent('No name');
    const base = await database();
    const kept = (await base.getAll('given')).map(({ code }) => readResultCode(code));
    expect(kept.map((read) => read.ok && read.value.name)).toEqual(
      expect.arrayContaining(['', 'Ilo']),
    );
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    await vi.waitFor(() => expect(rowOf('Mira')).toBeTruthy());

    await user.click(screen.getByRole('button', { name: 'Remove all names', hidden: true }));
    await vi.waitFor(() => expect(told()).toContain('All names are removed.'));
    expect(document.body).not.toHaveTextContent(/Mira|Ilo/);
    expect(screen.queryByRole('button', { name: 'Remove all names', hidden: true })).toBeNull();

    const [first] = screen.getAllByRole('button', { name: /^Delete the result/, hidden: true });
    await user.click(first as HTMLElement);
    await vi.waitFor(() => expect(rows()).toHaveLength(1));
    const undo = screen.getByRole('button', { name: 'Undo' });
    await vi.waitFor(() => expect(undo).toHaveFocus());
    expect(await base.count('given')).toBe(1);
    await user.click(undo);
    await vi.waitFor(() => expect(rows()).toHaveLength(2));
    base.close();
  });

  it('has nothing to bring back once everything was deleted', async () => {
    await given.bring(resultCode(mira));
    await given.remove(runOf(mira));
    expect(given.canUndo).toBe(true);
    await deleteAll();
    expect([given.canUndo, given.results]).toEqual([false, []]);
    await given.bring(resultCode(mira));
    await deleteAll();
    await given.open();
    expect(given.results).toEqual([]);
  });

  it('tells nonsense in one record, shows the rest, and lets it be deleted', async () => {
    await given.bring(resultCode(mira));
    const base = await database();
    await base.put('given', { version: 1, code: 'soup' }, 'bad');
    await base.put('given', { version: 1, code: resultCode(ilo) }, runOf(ilo));
    await given.refresh();
    render(ResultsPage);
    expect(rows()).toHaveLength(2);
    expect(screen.getByText(/1 result kept here cannot be read/)).toHaveTextContent(
      'expected the code',
    );
    expect(await given.rawDamaged()).toContain('soup');
    await user.click(screen.getByRole('button', { name: 'Delete what cannot be read' }));
    await vi.waitFor(() => expect(screen.queryByText(/cannot be read/)).toBeNull());
    expect(await base.count('given')).toBe(2);
    base.close();
  });

  it('makes a table without formulas, a row for each pick', async () => {
    await given.bring(resultCode({ ...mira, name: '=1+1' }));
    const table = resultsCsv(given.sets, speech.say).split('\r\n');
    expect(table[0]).toContain('Name,Ended,Set,Number,Case,Picked,Right is,Right');
    expect(table[1]).toMatch(
      /^'=1\+1,2026-03-0\d \d\d:\d\d,1,1,Under the car on Larch Row,Pressure washing,Grinding,no$/,
    );
    expect(table[2]).toMatch(/,2,The broken edge .*,Breaking out,Breaking out,yes$/);
    expect(table).toHaveLength(5);
  });
});
