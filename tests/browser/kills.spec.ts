import { fileURLToPath } from 'node:url';
import { test } from '@playwright/test';
import { killer, nameNumber, openJob, saveOn, sessionFile, typeOn } from '../helpers/faults';
import { expect, kept, withJob } from '../helpers/jobs-page';
import { rounds } from '../helpers/rounds';

/** Tabs killed while they save. What was called saved before must be there after. */
const build = fileURLToPath(new URL('../../build', import.meta.url));

/** Waits up to so many ms, spread evenly over the rounds in an order that repeats nothing (golden section). */
async function moment(round: number, most: number): Promise<void> {
  const until = performance.now() + ((round * 0.618034) % 1) * most;
  while (performance.now() < until) await new Promise((turn) => setImmediate(turn));
}

/** Kills in the middle of a write. */
const wanted = rounds(3, 100);

test('a tab killed in the middle of a write, again and again, loses nothing that was saved', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(600_000);
  // Workers blocked: they would only load the whole site again beside each round.
  const context = await browser.newContext({
    serviceWorkers: 'block',
    ...(baseURL && { baseURL }),
  });
  await context.route('**/empty', (route) =>
    route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>Empty</title>' }),
  );
  const module = sessionFile(build);
  let [kills, saved, inWrite, lost, before] = [0, 0, 0, 0, 0];
  for (;;) {
    const tab = await context.newPage();
    await tab.goto('/empty');
    const kill = await killer(tab);
    const said = await saveOn(tab, module);
    if (said.found < before) lost += 1;
    // The last tab only looks at what is there.
    if (inWrite === wanted || kills === 2 * wanted) {
      expect(await kept(tab)).toHaveLength(1);
      break;
    }
    await said.begun;
    await moment(kills, 40);
    await kill();
    kills += 1;
    await tab.close();
    saved += said.saved - said.found;
    if (said.typed > said.saved) inWrite += 1;
    before = said.saved;
  }
  await context.close();
  console.log(
    `${kills} kills, ${inWrite} of them in the middle of a write; ${saved} changes called saved, ${lost} lost`,
  );
  expect(lost).toBe(0);
  expect(inWrite).toBe(wanted);
});

test('the page of a job, killed while it is typed into, comes back with what it called saved @nightly', async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  await withJob(page);
  await page.close();
  let [before, saved] = [0, 0];
  const kills = 3;
  for (let round = 0; round < kills; round += 1) {
    const tab = await context.newPage();
    await openJob(tab);
    const found = round === 0 ? 0 : await nameNumber(tab);
    expect(found).toBeGreaterThanOrEqual(before);
    const kill = await killer(tab);
    const said = await typeOn(tab, found);
    await said.begun;
    await moment(round, 40);
    await kill();
    await tab.close();
    saved += said.saved - found;
    before = said.saved;
  }
  const last = await context.newPage();
  await openJob(last);
  expect(await nameNumber(last)).toBeGreaterThanOrEqual(before);
  console.log(`${kills} kills of the page of a job: ${saved} names called saved, 0 lost`);
});
