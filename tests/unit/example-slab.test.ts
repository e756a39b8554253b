import { expect, it } from 'vitest';
import { sheetOf } from '$lib/drawing/survey/sheet';
import { slabDrawing } from '$lib/drawing/survey/slab';
import { demoJob } from '$lib/keep/demos';
import { surveyOf } from '$lib/survey/survey';

// The start page shows it without fetching the engine. After a change: vitest run --update.
it('the picture on the start page is the drawing of the example, without its taps', async () => {
  const job = demoJob('larch-row');
  const { survey } = job;
  if (!survey) throw new Error('no drawing');
  const sheet = sheetOf(survey, 420, 420);
  const bare = { ...survey, marks: (survey.marks ?? []).filter(({ kind }) => kind !== 'tap') };
  const zones = job.zones.map(({ id }) => id);
  const { marks, labels } = slabDrawing(bare, surveyOf({ ...job, survey: bare }), sheet, zones);
  const tenths = (path: string) =>
    path.replace(/\d+\.\d+/g, (text) => String(Number(Number(text).toFixed(1))));
  const picture = {
    width: Math.round(sheet.width),
    height: Math.round(sheet.height - 20),
    marks: marks.filter(([, path]) => path).map(([ink, path]) => [ink, tenths(path)]),
    labels: labels
      .filter(({ of }) => of === 'patch')
      .map(({ x, y, text }) => ({ x: Math.round(x), y: Math.round(y), text })),
  };
  expect(picture.labels).toHaveLength(5);
  await expect(`${JSON.stringify(picture)}\n`).toMatchFileSnapshot(
    '../../src/lib/ui/home/example-slab.json',
  );
});

// What must wait is not shown as work of a day: whoever reads "saw and break out here" does it.
it('on the sheet of a day only the patches of its zones are drawn, with their numbers', () => {
  const job = demoJob('larch-row');
  const { survey } = job;
  const result = surveyOf(job);
  if (!survey || !result) throw new Error('no drawing');
  const zones = job.zones.map(({ id }) => id);
  const shown = (only?: readonly string[]) =>
    slabDrawing(survey, result, sheetOf(survey, 420, 420), zones, only);
  const numbers = (only?: readonly string[]) =>
    shown(only).labels.flatMap(({ of, text }) => (of === 'patch' ? [text] : []));
  expect(numbers()).toEqual(['1', '2', '3', '4', '5']);
  expect(numbers([])).toEqual([]);
  expect(shown([]).marks.filter(([ink]) => ink === 'crayon')).toEqual([]);
  for (const zone of zones)
    expect(numbers([zone])).toEqual(
      result.patches.flatMap((patch, at) => (patch.zone === zone ? [`${at + 1}`] : [])),
    );
});

// Crayon means "do this": a patch of a zone that is stopped is dashed, and keeps its number.
it('only what may be sawn is drawn in crayon', () => {
  const job = demoJob('larch-row');
  const { survey } = job;
  const result = surveyOf(job);
  if (!survey || !result) throw new Error('no drawing');
  const zones = job.zones.map(({ id }) => id);
  const shown = (sawn?: readonly string[]) => {
    const { marks, labels } = slabDrawing(
      survey,
      result,
      sheetOf(survey, 420, 420),
      zones,
      undefined,
      sawn,
    );
    return {
      crayon: marks.filter(([ink]) => ink === 'crayon').length,
      numbers: labels.filter(({ of }) => of === 'patch').length,
    };
  };
  expect(shown()).toEqual({ crayon: 5, numbers: 5 });
  expect(shown([])).toEqual({ crayon: 0, numbers: 5 });
  for (const zone of zones)
    expect(shown([zone]).crayon).toBe(result.patches.filter((patch) => patch.zone === zone).length);
});
