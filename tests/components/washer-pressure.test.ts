import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/svelte';
import { tick } from 'svelte';
import { afterEach, expect, it, vi } from 'vitest';
import TrialPage from '$lib/ui/trial/TrialPage.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { box, mossy, start, user } from '../helpers/trial-page';

vi.setConfig({ testTimeout: 60_000 });
afterEach(() => {
  cleanup();
  preferences.units = 'metric';
});

const unitOf = (field: HTMLElement) =>
  field.closest('.field, label, div')?.textContent?.replace(/\s+/g, ' ') ?? '';
const push = () => Number(/with ([\d.]+).N/.exec(document.body.textContent ?? '')?.[1]);

// Gauges of washers in metric countries are marked in bar, in US ones in psi: common practice, no source.
it('a washer’s pressure is shown and typed in bar for metric readers, in psi for US ones', async () => {
  await start(mossy);
  preferences.units = 'metric';
  render(TrialPage, { zone: null });
  await user.click(screen.getByText(/what the water does/i));
  const pressure = () => box(/pressure at the gauge/i);
  expect(unitOf(pressure())).toMatch(/\bbar\b/);
  expect(unitOf(pressure())).not.toMatch(/MPa|psi/);
  for (const [field, text] of [
    [pressure(), '100'],
    [box(/^flow/i), '10'],
  ] as const) {
    await user.clear(field);
    await user.type(field, text);
    await user.tab();
  }
  // By hand: 10 L/min at 100 bar leave at 141 m/s and push with 23.6 N, less what the hose takes.
  expect(push()).toBeGreaterThan(22);
  expect(push()).toBeLessThan(23.7);
  expect(screen.getByText(/the hose takes [\d.,]+\sbar of it/i)).toBeInTheDocument();
  preferences.units = 'us';
  await tick();
  expect(unitOf(pressure())).toMatch(/\bpsi\b/);
  // 100 bar are 1,450 psi.
  expect(Number((pressure() as HTMLInputElement).value.replace(',', ''))).toBeCloseTo(1450, -1);
});
