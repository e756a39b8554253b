import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { expect, it } from 'vitest';
import { generatedId } from '$lib/practice/generate';
import { practice } from '$lib/ui/practice/practice.svelte';

it('goes on where what is kept cannot be read, and keeps what was done once that is cleared', async () => {
  const database = await openDB('down-to-sound.practice', 1, {
    upgrade: (fresh) => void fresh.createObjectStore('progress'),
  });
  await database.put('progress', 'soup', 'mine');

  await practice.open();
  expect(practice.ready).toBe(true);
  expect(practice.trouble).toBe('damaged');
  expect(practice.problem?.expected.id).toBe('object');
  expect(practice.one).toBeDefined();

  await practice.check({ call: 'crew', steps: [], hazards: [] });
  expect(practice.trouble).toBe('damaged');
  expect(practice.progress).toHaveLength(1);
  expect(await database.get('progress', 'mine')).toBe('soup');

  await practice.afresh();
  expect([practice.trouble, practice.canUndo]).toEqual([null, false]);
  expect(practice.progress).toHaveLength(1);
  expect((await database.get('progress', 'mine')).results).toEqual(practice.progress);

  // Forgetting has a way back that stays, also past the next result.
  await practice.forget();
  practice.goOn();
  await practice.check({ call: 'crew', steps: [], hazards: [] });
  expect(practice.progress).toHaveLength(1);
  expect(practice.canUndo).toBe(true);
  await practice.undo();
  expect(practice.progress).toHaveLength(2);
  expect((await database.get('progress', 'mine')).results).toHaveLength(2);

  // A set goes case by case and ends; leaving it goes back to endless practice.
  practice.start({ cases: ['bakery-dust'], generated: { seed: 3, count: 1 } });
  expect(practice.one?.id).toBe('bakery-dust');
  practice.goOn();
  expect(practice.one?.id).toBe(generatedId(3));
  practice.goOn();
  expect([practice.one, practice.run?.ids.length]).toEqual([undefined, 2]);
  practice.leaveSet();
  expect(practice.one).toBeDefined();
  database.close();
});
