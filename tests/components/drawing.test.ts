import type { Hole } from '$lib/drawing/section/state';
import type { Formatter } from '$lib/words/types';
import { gzipSync } from 'node:zlib';
import { render } from '@testing-library/svelte';
import type { ComponentProps } from 'svelte';
import { describe, expect, it } from 'vitest';
import glossary from '$content/glossary.json';
import { checkIds } from '$lib/answers/readiness-record';
import { choicesOf, questionIds, questions } from '$lib/answers/questions';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { loadPictures } from '$lib/drawing/choice/load';
import { drawingOf } from '$lib/drawing/choice';
import { hasSection, viewOf } from '$lib/drawing/view';
import { termPictures } from '$lib/learn/term-pictures';
import Picture from '$lib/drawing/Picture.svelte';
import Frames from '$lib/drawing/Frames.svelte';
import CrossSection from '$lib/drawing/CrossSection.svelte';
import HazardPlate from '$lib/drawing/HazardPlate.svelte';
import HazardSign from '$lib/drawing/HazardSign.svelte';
import MethodDrawing from '$lib/drawing/MethodDrawing.svelte';
import VerdictMark from '$lib/drawing/VerdictMark.svelte';
import { hazardIds, stepIds } from '$shared/methods';

/** The drawing in a rendered component, checked to be one. */
function drawn(container: Element): string {
  const svg = container.querySelector('svg');
  if (!svg) throw new Error('nothing was drawn');
  expect(svg.querySelectorAll('path').length).toBeGreaterThan(1);
  const text = svg.innerHTML.replaceAll(/\s?class="[^"]*"/g, '');
  expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
  for (const path of svg.querySelectorAll('path')) {
    // Empty layers are allowed, broken ones are not: SVG stops at the first bad number.
    expect(path.getAttribute('d')).toMatch(/^(M[-\d\sMLHVCSQTAZlhvcsqtaz.m]*)?$/);
    expect(path.getAttribute('style')).toBeNull();
  }
  return text;
}
const distinct = (all: readonly string[]) => expect(new Set(all).size).toBe(all.length);

describe('choices', () => {
  it.each(questionIds)('%s: each choice has a drawing of its own', async (question) => {
    const { kind } = questions[question];
    const choices: string[] =
      kind === 'number'
        ? ['typed']
        : [...choicesOf(question), ...(kind === 'many' ? ['none'] : [])];
    const pictureOf = await loadPictures(question);
    const all = [...choices, 'not-sure'].map((choice) => {
      const marks = viewOf(question, choice);
      expect(pictureOf(choice)).toEqual(marks);
      const { container } = render(Picture, { marks });
      // Decoration: the label beside it says it.
      expect(container.querySelector('svg')).toHaveAttribute('aria-hidden', 'true');
      expect(container.querySelector('text')).toBeNull();
      return drawn(container);
    });
    distinct(all);
    for (const text of all) expect(gzipSync(text).length).toBeLessThan(8000);
  });
});

describe('terms of the glossary', () => {
  const pictures = Object.entries(termPictures);
  it.each(pictures)('%s: the picture is of something the site names', (term, picture) => {
    expect(Object.keys(glossary)).toContain(term);
    if (picture.kind === 'view')
      expect(choicesOf(picture.question) as readonly string[]).toContain(picture.choice);
  });
});

describe('sections', () => {
  it.each(questionIds.filter(hasSection))('%s: each choice has one of its own', (question) => {
    distinct(
      choicesOf(question).map((choice) =>
        drawn(render(Picture, { marks: drawingOf(question, choice) }).container),
      ),
    );
  });
});

describe('methods, checks, hazards, verdicts', () => {
  it('each method and step has a drawing of its own', () => {
    distinct(stepIds.map((method) => drawn(render(MethodDrawing, { method }).container)));
  });
  const three = (props: ComponentProps<typeof Frames>) => {
    const { container } = render(Frames, props);
    const pictures = [...container.querySelectorAll('li')];
    expect(pictures).toHaveLength(3);
    return pictures.map((picture) => {
      // Decoration: the words under it say it.
      expect(picture.querySelector('svg')).toHaveAttribute('aria-hidden', 'true');
      expect(picture.textContent.trim().split(/\s+/).length).toBeLessThanOrEqual(4);
      expect(picture.textContent.trim()).not.toBe('');
      const text = drawn(picture);
      expect(gzipSync(text).length).toBeLessThan(8000);
      return text;
    });
  };
  it('each method and step stands in three pictures: before, at work, done', () => {
    distinct(stepIds.flatMap((id) => three({ kind: 'method', id })));
  });
  it('each check before covering stands in three pictures', () => {
    distinct(checkIds.flatMap((id) => three({ kind: 'check', id })));
  });
  it('each hazard has a sign of its own, alone and on the plate of a warning', () => {
    distinct(hazardIds.map((hazard) => drawn(render(HazardSign, { hazard }).container)));
    distinct(hazardIds.map((hazard) => drawn(render(HazardPlate, { hazard }).container)));
  });
  it('each verdict has a mark of its own', () => {
    const verdicts = ['prepare', 'find-out-first', 'stop'] as const;
    distinct(verdicts.map((verdict) => drawn(render(VerdictMark, { verdict }).container)));
  });
});

describe('cross-section', () => {
  const section = (site: SiteAnswers, zone: ZoneAnswers, more = {}) => {
    const { container } = render(CrossSection, {
      props: {
        site,
        zone,
        units: 'metric',
        label: 'A slab, cut through',
        thicknessNote: 'thickness not known',
        ...more,
      },
    });
    return { container, text: drawn(container) };
  };
  const slab: SiteAnswers = { element: ['slab'], thickness: 100 };

  it('is named for those who do not see it, and never changes its frame', () => {
    const frames = [
      section({}, {}),
      section(slab, { depth: 5 }),
      section({ element: ['wall'], thickness: 400 }, { depth: ['through'], steel: ['corroded'] }),
    ].map(({ container }) => {
      const svg = container.querySelector('svg');
      expect(svg).toHaveAccessibleName('A slab, cut through');
      return svg?.getAttribute('viewBox');
    });
    expect(new Set(frames).size).toBe(1);
  });

  it('changes with every answer it shows', () => {
    const zone: ZoneAnswers = { depth: 30, looseness: ['fractured'] };
    const base = section(slab, zone).text;
    const changed = [
      ...choicesOf('element').map((element) => section({ ...slab, element: [element] }, zone).text),
      ...choicesOf('looseness')
        .filter((looseness) => looseness !== 'fractured')
        .map((looseness) => section(slab, { ...zone, looseness: [looseness] }).text),
      ...choicesOf('contamination').map(
        (one) => section(slab, { ...zone, contamination: { yes: [one], maybe: [] } }).text,
      ),
      ...choicesOf('cracks')
        .filter((crack) => crack !== 'none')
        .map((crack) => section(slab, { ...zone, cracks: [crack] }).text),
      ...choicesOf('steel')
        .filter((steel) => steel !== 'none-seen')
        .map((steel) => section(slab, { ...zone, steel: [steel] }).text),
      section(slab, { ...zone, texture: ['pitted'] }).text,
      section(slab, { ...zone, texture: ['sandy'] }).text,
      section({ ...slab, thickness: 150 }, zone).text,
      section({ ...slab, thickness: 'unknown' }, zone).text,
      section(slab, zone, { target: { leaves: [7, 10] } }).text,
      section(slab, zone, { units: 'us' }).text,
    ];
    // A slab on ground is the one that stands for the element drawn already.
    expect(changed.filter((text) => text === base)).toHaveLength(1);
    expect(new Set(changed).size).toBe(changed.length);
    // Some thirty sections: more than the usual five seconds on a busy machine.
  }, 60_000);

  it('says when the thickness is not known, and not when it is', () => {
    expect(section({}, {}).container).toHaveTextContent('thickness not known');
    expect(section(slab, {}).container).not.toHaveTextContent('thickness not known');
  });

  it('puts a lens over thin damage only, with a scale of its own', () => {
    const rims = (zone: ZoneAnswers) => section(slab, zone).container.querySelectorAll('clipPath');
    expect(rims({ depth: 3 })).toHaveLength(1);
    expect(rims({ depth: 40 })).toHaveLength(0);
    expect(rims({})).toHaveLength(0);
  });

  it('draws the depth to scale: twice as deep reaches twice as far', () => {
    const reach = (depth: number) => {
      const line = section(slab, { depth }).container.querySelector('path.crayon');
      // The first stroke of the crayon goes from the face down to the floor.
      const [, down] = (line?.getAttribute('d') ?? '').match(/l-?[\d.]+[ ]?(-?[\d.]+)/) ?? [];
      return Number(down);
    };
    // 150 sheet units for 100 mm.
    expect(reach(20)).toBeCloseTo(30, 1);
    expect(reach(40)).toBeCloseTo(60, 1);
  });

  it('measures the clear space behind an open bar in the reader’s units', () => {
    const zone: ZoneAnswers = { depth: 40, looseness: ['fractured'], steel: ['exposed'] };
    const target = { behindBar: 19 };
    expect(section(slab, zone, { target }).container).toHaveTextContent('19 mm');
    expect(section(slab, zone, { target, units: 'us' }).container).toHaveTextContent('3/4 in');
    expect(
      section(slab, { ...zone, steel: ['none-seen'] }, { target }).container,
    ).not.toHaveTextContent('19 mm');
  });

  // Common practice, no source: the hole goes 13 mm into sound concrete (UFC 3-270-03), and a bar is
  // cleared by 19 mm (ICRI 310.1R) to 25 (UFGS 03 93): 40 of cover and 12 of bar make 71 to 77.
  it('tells how deep the finished hole gets, against a third and half of the thickness', () => {
    const holeNote = ({ least, most }: Hole, say: Formatter) => `hole ${say.lengths(least, most)}`;
    const hollow: ZoneAnswers = { depth: 20, looseness: ['hollow'], steel: ['none-seen'] };
    const plain = section({ ...slab, thickness: 150 }, hollow, { holeNote }).container;
    expect(plain).toHaveTextContent('hole 33 mm');
    expect(plain).toHaveTextContent('a third');
    expect(plain).toHaveTextContent('half');
    const bar = section(
      { ...slab, thickness: 150 },
      { ...hollow, steel: ['exposed'], barCover: 40, barDiameter: 12 },
      { holeNote },
    ).container;
    expect(bar).toHaveTextContent('hole 71 to 77 mm');
    const unknown = section({ ...slab, thickness: 'unknown' }, hollow, { holeNote }).container;
    expect(unknown).not.toHaveTextContent('a third');
    // Nothing is broken out of a skin that is ground off.
    const skin = section(slab, { depth: 2, looseness: ['flaking'] }, { holeNote }).container;
    expect(skin).not.toHaveTextContent('hole');
  });

  it('draws a bar where its cover was measured, as thick as it is', () => {
    const zone: ZoneAnswers = { depth: 40, looseness: ['fractured'], steel: ['exposed'] };
    const drawings = [
      section(slab, zone).text,
      section(slab, { ...zone, barCover: 30 }).text,
      section(slab, { ...zone, barCover: 60 }).text,
      section(slab, { ...zone, barCover: 60, barDiameter: 25 }).text,
    ];
    distinct(drawings);
  });
});
