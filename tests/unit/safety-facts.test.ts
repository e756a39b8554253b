import { expect, test } from 'vitest';
import { stepIds } from '$shared/methods';
import { figureFaults } from '$shared/check';
import { wholeFigures } from '$shared/figure-notes';
import { figures, type FigureId } from '$shared/figures';
import {
  silicaControlIds,
  silicaOptions,
  silicaReadingOf,
  silicaRowIds,
} from '$shared/silica-table';
import { sources } from '$shared/sources';
import { toolIds, tools, toolsOf } from '$shared/tools';
import { hazardFacts } from '$lib/safety/hazards';
import { hazardIds, hazardsOfStep } from '$shared/methods';

test('every figure a tool names exists, in the right unit, and is sound', () => {
  for (const id of toolIds) {
    const { noise, vibration } = tools[id];
    if (noise && noise !== 'quiet') expect(figures[noise].unit, id).toBe('dB(A)');
    if (vibration && vibration !== 'still') expect(figures[vibration].unit, id).toBe('m/s2');
    for (const figure of [noise, vibration])
      if (figure && figure in figures)
        expect(figureFaults(figure, wholeFigures[figure as FigureId], sources)).toEqual([]);
  }
});

test('tools without a published level stay without one', () => {
  const silent = toolIds.filter((id) => tools[id].noise === null);
  expect(silent).toEqual([
    'floor-grinder',
    'scarifier',
    'shotblaster',
    'scabbler',
    'pressure-washer',
    'jetting-lance',
    'power-scraper',
    'vacuum',
  ]);
});

test('every step has known tools, on floors and off them; off floors none that is walked behind', () => {
  for (const step of stepIds)
    for (const onFloor of [true, false])
      for (const tool of toolsOf(step, onFloor)) expect(toolIds).toContain(tool);
  for (const step of stepIds.filter((id) => !['shotblast'].includes(id)))
    for (const tool of toolsOf(step, false))
      expect(tools[tool].held, `${step}: ${tool}`).not.toBe('walk-behind');
});

test('a step that brings silica has a tool the table is asked about', () => {
  for (const step of stepIds)
    if (hazardsOfStep[step].includes('silica') && step !== 'vacuum' && step !== 'last-clean')
      for (const tool of toolsOf(step, true))
        expect(silicaReadingOf(tool, step), `${step}: ${tool}`).toBeDefined();
});

test('a step that brings vibration or noise has a usual tool that can bring it', () => {
  for (const step of stepIds) {
    const usual = tools[toolsOf(step, true)[0]];
    if (hazardsOfStep[step].includes('vibration')) expect(usual.vibration, step).not.toBe('still');
    if (hazardsOfStep[step].includes('noise')) expect(usual.noise, step).not.toBe('quiet');
  }
});

test('the rows name known controls, and every control is used', () => {
  const used = silicaRowIds.flatMap((row) =>
    silicaOptions(row).flatMap(({ controls, enclosedControls = [] }) => [
      ...controls,
      ...enclosedControls,
    ]),
  );
  expect([...new Set(used)].sort()).toEqual([...silicaControlIds].sort());
});

test('the figures and sources of every hazard exist', () => {
  for (const hazard of hazardIds) {
    for (const figure of hazardFacts[hazard].figures) expect(figures).toHaveProperty([figure]);
    for (const source of hazardFacts[hazard].sources) expect(sources).toHaveProperty([source]);
  }
});
