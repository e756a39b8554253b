import { render, screen } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import { demoJob } from '$lib/keep/demos';
import { waitingZones } from '$lib/plan/waiting';
import DayOnSlab from '$lib/ui/survey/DayOnSlab.svelte';
import { planned } from '$lib/ui/job/plan.svelte';
import { session } from '$lib/ui/session.svelte';
import { surveyResultWords } from '$words/survey-results';

it('a day’s sheet to chalk by is there only where something of that day is drawn, and never what waits', async () => {
  const job = demoJob('larch-row');
  await session.startNew(job);
  const { plan } = planned;
  const { count } = plan.schedule;
  const { container } = render(DayOnSlab, { plan, days: [1, count[1]], name: 'All days' });
  expect(screen.queryByText(surveyResultWords.chalk.none)).toBeNull();
  const waiting = waitingZones(plan);
  const rows = [...container.querySelectorAll('tbody tr')].map(({ textContent }) => textContent);
  for (const id of waiting)
    expect(rows.filter((row) => row?.includes(planned.nameOf(id)))).toEqual([]);
  const boxes = [...container.querySelectorAll('.sheet path.crayon, .sheet .crayon')];
  expect(boxes).toHaveLength(rows.length);
});
