import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { SiteAnswers } from '$lib/answers/answers';
import type { Job, Zone } from '$lib/answers/job';
import { choicesOf, zoneQuestionIds } from '$lib/answers/questions';
import { cellText, plainCell } from '$lib/keep/export-csv';
import { choiceIn } from '$lib/ui/choice-words';
import { readZones } from '$lib/ui/job/read-zones';
import { zonesCsv } from '$lib/ui/job/zones-table';
import { questionWords } from '$words/questions';
import { formatter } from '../helpers/plain-formatter';
import { anyJob } from '../helpers/any-job';
import { onTrial, rounds } from '../helpers/rounds';

const says = { metric: formatter('metric'), us: formatter('us') };
const units = fc.constantFrom('metric', 'us');
const site: SiteAnswers = {};
const read = (text: string, say = says.metric, room = 1000) => readZones(text, site, say, room);
const csv = (job: Job, say = says.metric) => zonesCsv(job, questionWords(say), say);

describe('zones as a table', () => {
  it('come back exactly, whichever units they are saved and read in', () => {
    fc.assert(
      fc.property(anyJob(5, 1, false), units, units, (job, saved, opened) => {
        const { zones, problems } = read(csv(job, says[saved]), says[opened]);
        expect(problems).toEqual([]);
        expect(zones).toEqual(job.zones.map(({ name, answers }) => ({ name, answers })));
      }),
      { numRuns: onTrial(rounds(75, 300), 20) },
    );
  });

  it.each([1.234, 1.25, 0.125, 12.345, 999.999, 1e-3, 1234.567])('so does %s', (area) => {
    const job: Job = { name: '', site, zones: [{ id: 'a', name: '', answers: { area } }] };
    for (const say of Object.values(says))
      expect(read(csv(job, say), say)).toEqual({
        zones: [{ name: '', answers: { area } }],
        problems: [],
      });
  });

  it('hold nothing a spreadsheet would run, and lose nothing by that', () => {
    const names = ['=1+1', "'=1", '-2', '@x', '+a', "''", '“=x', ' =x', 'a;=b', '＝x', "'"];
    const zones = names.map((name, at): Zone => ({ id: `z${at}`, name, answers: {} }));
    const text = csv({ name: '', site, zones });
    for (const [, name = ''] of Papa.parse<string[]>(text.slice(1)).data)
      expect(name.normalize('NFKC')).not.toMatch(/(^|[;|])["\s]*[=+\-@]/);
    expect(read(text).zones.map(({ name }) => name)).toEqual(names);
  });

  const signs = fc.constantFrom(...'=+-@＝;|\'" a1');
  it('the guard against formulas is undone for any text in one line', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.oneof(signs, fc.string({ unit: 'binary', maxLength: 1 })) }),
        (any) => {
          const text = any.replace(/[\t\r\n\u0085\u2028\u2029]/g, '');
          expect(cellText(plainCell(text))).toBe(text);
        },
      ),
      { numRuns: onTrial(rounds(500, 2000), 20) },
    );
  });

  it('each choice has a name of its own, without the sign that parts two', () => {
    for (const say of Object.values(says))
      for (const id of zoneQuestionIds) {
        const names = choicesOf(id).map((each) => choiceIn(questionWords(say)[id], each).name);
        expect(new Set(names).size).toBe(names.length);
        expect(names.join()).not.toMatch(/;|^maybe|^not sure$/i);
      }
  });
});

describe('a pasted table', () => {
  const rows = [
    ['Zone', 'Depth (mm)', 'looseness', 'Dirt and coatings', 'How large is this zone?'],
    ['Ramp', '60', 'Hollow', 'none', '12,5'],
    ['Step', 'not sure', 'hollow; rotten', 'Oil or grease; maybe salt-bloom', '3/4'],
  ];
  const oil = choiceIn(questionWords(says.metric).contamination, 'oil').name;
  rows[2] = ['Step', 'not sure', 'hollow; rotten', `${oil}; maybe salt-bloom`, '3/4'];
  const expected = [
    {
      name: 'Ramp',
      answers: {
        depth: 60,
        looseness: ['hollow'],
        contamination: { yes: [], maybe: [] },
        area: 12.5,
      },
    },
    {
      name: 'Step',
      answers: {
        depth: choicesOf('depth'),
        looseness: ['hollow', 'rotten'],
        contamination: { yes: ['oil'], maybe: ['salt-bloom'] },
        area: 0.75,
      },
    },
  ];

  it.each(['\t', ',', ';'])(
    'is read whatever parts its cells (%j), with names in words or ids',
    (sign) => {
      const text = Papa.unparse(rows, { delimiter: sign });
      expect(read(text)).toEqual({ zones: expected, problems: [] });
    },
  );

  it.each([
    ['3.2 to 6.4 mm', '3-to-6'],
    ['3 to 6 mm', '3-to-6'],
    ['1/8 to 1/4 in', '3-to-6'],
    ['6.4 to 20 mm', '6-to-20'],
  ])('takes a band by its name, and by the one that it had before: %s', (cell, band) => {
    expect(read(`Depth\n${cell}\n`)).toEqual({
      zones: [{ name: '', answers: { depth: [band] } }],
      problems: [],
    });
  });

  it('takes the unit of a heading, and one in the cell before it', () => {
    const { zones } = read('Depth (in)\tArea\n1 1/2\t12 ft²\n10 mm\t1\n');
    expect(zones.map(({ answers }) => answers.depth)).toEqual([38.099999999999994, 10]);
    expect(zones[0]?.answers.area).toBeCloseTo(1.1148, 4);
  });

  it.each([
    [
      'Zone\tDepth\nRamp\tdeep',
      /^Row 2, Depth: “deep” cannot be read\. Expected a number in mm from 0 mm to 1 m/,
    ],
    [
      'Zone\tArea\n\n\nRamp\t1,250',
      /^Row 4, Area: “1,250” cannot be read\. Expected 1250 or 1\.25/,
    ],
    ['Zone\tLooseness\nRamp\tsoft', /^Row 2, Looseness: “soft” .* one of: Tight, Powdery/],
    ['Zone\tColour\nRamp\tgrey', /^Column 2: “Colour” .*“Zone” or a question: Depth/],
    ['Depth\tDepth\n1\t2', /^Column 2: “Depth” .*each question once/],
    ['Zone\nRamp\t12', /^Row 2, 2: “12” .*no more cells/],
    ['Ramp\n12', /^Column 1: “Ramp”/],
    ['Zone\tDepth\nRamp\t4000', /Expected a number in mm/],
    [`Zone\n${'x'.repeat(200)}`, /^Row 2, Zone: .*at most 120 characters/],
    ['Zone\tArea\nRamp\t-4', /^Row 2, Area: “-4”/],
  ])('%j names the place and what was expected', (text, message) => {
    expect(read(text).problems[0]).toMatch(message);
  });

  it('refuses a depth past the slab, and more zones than a job holds', () => {
    const deep = readZones('Zone,Depth\nRamp,200', { thickness: 150 }, says.metric, 1000);
    expect(deep.problems).toEqual([
      'Row 2, Depth: “200” cannot be read. Expected no more than the slab, which is 150 mm thick.',
    ]);
    expect(read('Zone\na\nb\nc', says.metric, 2).problems[0]).toMatch(/room for 2/);
  });

  it('never throws, and always says what was expected', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        for (const each of read(text).problems) expect(each).toMatch(/Expected /);
      }),
    );
  });
});
