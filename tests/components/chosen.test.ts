import { cleanup, fireEvent, render, screen } from '@testing-library/svelte';
import { afterEach, describe, expect, it } from 'vitest';
import ReaderSwitch from '$lib/ui/advice/ReaderSwitch.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { preferencesKey } from '$lib/ui/site-name';

const kept = (): Record<string, unknown> =>
  JSON.parse(localStorage.getItem(preferencesKey) ?? '{}') as Record<string, unknown>;
const keptFirst = (value: object) => {
  localStorage.setItem(preferencesKey, JSON.stringify(value));
  preferences.load();
};
afterEach(() => {
  cleanup();
  localStorage.clear();
  preferences.load();
});

// What somebody chose holds; what nobody chose does not look chosen. A matter of this site, no source.
describe('who reads it', () => {
  it('is nobody until somebody is chosen, and then holds', async () => {
    keptFirst({});
    render(ReaderSwitch);
    for (const radio of screen.getAllByRole('radio')) expect(radio).not.toBeChecked();
    expect(screen.getByText(/^Not chosen yet/)).toBeInTheDocument();
    await fireEvent.click(screen.getByLabelText('I own it'));
    expect(screen.getByLabelText('I own it')).toBeChecked();
    expect(screen.queryByText(/^Not chosen yet/)).not.toBeInTheDocument();
    preferences.load();
    expect(preferences.reader).toBe('own');
  });
});

describe('units', () => {
  it('that came with a job are taken where the reader has chosen none, and kept', () => {
    keptFirst({});
    preferences.offer('us');
    expect(preferences.units).toBe('us');
    expect(kept()).toMatchObject({ units: null, offered: 'us' });
    preferences.load();
    expect(preferences.units).toBe('us');
  });

  it('that the reader has chosen stay, whatever comes', () => {
    keptFirst({ units: 'metric' });
    preferences.offer('us');
    expect(preferences.units).toBe('metric');
    for (const nonsense of ['furlong', null, 3, { units: 'us' }]) preferences.offer(nonsense);
    expect(preferences.units).toBe('metric');
  });
});
