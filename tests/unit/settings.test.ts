import { describe, expect, it } from 'vitest';
import { checkIds } from '$lib/answers/readiness-record';
import { facing, surfaceHere } from '$lib/advice/surface-here';
import type { Step } from '$lib/advice/types';
import type { ZoneAnswers } from '$lib/answers/answers';
import { methodFrames } from '$lib/drawing/frames';
import { explainers } from '$lib/learn/library.server';
import { frameCaptions } from '$words/ui/frames';
import { formatter } from '../helpers/plain-formatter';
import { passHere, settingWords, toolHere } from '$words/settings';
import { stepHere } from '$words/steps/here';
import { figures } from '$shared/figures';
import { methodIds, stepIds } from '$shared/methods';
import { basesOf, settingParts, settings } from '$shared/settings';
import { sources } from '$shared/sources';

const speakers = (['metric', 'us'] as const).map((units) => formatter(units));
const lines = methodIds.flatMap((method) =>
  settingParts.map((part) => ({ at: `${method} ${part}`, method, part })),
);

describe('how each method is set', () => {
  it.each(lines)('$at prints the figures it names, and rests on something', ({ method, part }) => {
    const facts = settings[method][part];
    for (const say of speakers) {
      const text = settingWords(say)[method][part];
      expect(text).toMatch(/^\S.{8,79}$/);
      for (const id of facts.figures) expect(text).toContain(say.figure(id));
      // A number that no figure gives would have no basis.
      const rest = facts.figures.reduce((left, id) => left.replace(say.figure(id), ''), text);
      expect(rest).not.toMatch(/\d/);
    }
    expect(basesOf(facts).length).toBeGreaterThan(0);
  });

  it('never claims more than its numbers or its source give', () => {
    for (const { method, part } of lines) {
      const { figures: printed, beyond, source = [] } = settings[method][part];
      for (const id of printed) expect(basesOf({ figures: [id] })).toEqual([figures[id].basis]);
      for (const id of source) expect(sources).toHaveProperty(id);
      if (beyond === 'published' || beyond === 'reported') expect(source).not.toEqual([]);
    }
  });

  // Sources: MIL-HDBK-1110 6.3.2 (washing for loose dirt stays below 2,000 psi); Concrete
  // Construction, "Sandblasting of concrete surfaces" (90 psi at the nozzle, 100 better, about 2 ft
  // off); Concrete Construction, "Hydrodemolition" (10,000 to 40,000 psi); UFC 3-270-03 14.3 and
  // 15.3 (chisel at 45 to 90 degrees); UFGS 03931 3.1.8 (30 lb hammers above steel, 15 lb around it).
  it.each([
    ['pressure-wash', 'setting', /1,000 to 2,000 psi/],
    ['abrasive-blast', 'setting', /90 psi .* 100 psi/],
    ['abrasive-blast', 'pass', /24 in/],
    ['water-jet', 'setting', /10,000 to 40,000 psi/],
    ['break-out', 'setting', /45 to 90°/],
    ['break-out', 'tool', /30 lb .* 15 lb/],
  ] as const)('%s, %s, as the source has it', (method, part, wanted) => {
    expect(settingWords(formatter('us'))[method][part]).toMatch(wanted);
  });

  it('names the tool of the case with its class', () => {
    expect(toolHere('chipping-hammer', 'hammer.at-steel', formatter('us'))?.name).toBe(
      'Chipping hammer to 15 lb',
    );
    expect(toolHere('shotblaster', undefined, formatter('us'))).toBe(null);
  });
});

describe('every method and step', () => {
  it.each(methodIds)(
    '%s has its strip of settings in one explainer, as beside the main step',
    (id) => {
      expect(
        explainers.filter(({ body }) => body.includes(`<MethodSettings method="${id}"`)),
      ).toHaveLength(1);
    },
  );

  // A name, a number or a capital at the head of a line: sentences begin so on every page.
  const begins = /^[\p{Lu}\d]/u;
  it.each(stepIds)('%s is told in lines that begin with a capital, or a figure', (id) => {
    for (const say of speakers) {
      const { name, how } = stepHere({ id, why: [], hazards: [] }, say);
      for (const line of [name, ...how, ...frameCaptions({ kind: 'method', id })])
        expect(line).toMatch(begins);
    }
  });

  it('is set, and every check is shown, in lines that begin so too', () => {
    for (const { method, part } of lines)
      for (const say of speakers) expect(settingWords(say)[method][part]).toMatch(begins);
    for (const id of checkIds)
      for (const line of frameCaptions({ kind: 'check', id })) expect(line).toMatch(begins);
  });
});

// Source: common practice, no published source. Where nothing weak has to come off a machine only
// opens the face, and no depth is set for it.
describe('what the main step meets', () => {
  const firm: ZoneAnswers = {
    looseness: ['tight'],
    texture: ['sandy'],
    contamination: { yes: [], maybe: [] },
  };
  const painted: ZoneAnswers = { ...firm, contamination: { yes: ['thin-coating'], maybe: [] } };
  const met = (zone: ZoneAnswers, steps: Step['id'][] = []) =>
    surfaceHere(
      zone,
      steps.map((id) => ({ id })),
    );

  it('has no depth to take off where nothing is weak', () => {
    for (const method of ['grind', 'scarify', 'shotblast'] as const) {
      expect(passHere(method, met(firm))).toMatch(/pass/);
      expect(passHere(method, met(firm))).not.toMatch(/\d|deep/);
      expect(frameCaptions({ kind: 'method', id: method, here: met(firm) })[0]).not.toMatch(
        /weak|pitted|coat/i,
      );
    }
  });

  it('is the coating where only that has to come off, and nothing once it is scraped off', () => {
    expect(passHere('grind', met(painted))).toMatch(/until it is bare/);
    expect(frameCaptions({ kind: 'method', id: 'grind', here: met(painted) })[0]).toBe('Coated');
    expect(passHere('grind', met(painted, ['strip-coating']))).toMatch(/light pass/);
  });

  it('is what is weak, pitted only where somebody found it so', () => {
    const weak = met({ ...firm, looseness: ['flaking'] });
    expect(passHere('shotblast', weak)).toBe(null);
    expect(frameCaptions({ kind: 'method', id: 'shotblast', here: weak })[0]).toBe('Weak skin');
    const pitted = met({ ...firm, looseness: ['flaking'], texture: ['pitted'] });
    expect(frameCaptions({ kind: 'method', id: 'shotblast', here: pitted })[0]).toMatch(/^Pitted/);
  });

  it('is drawn with nothing hatched as weak where nothing is', () => {
    for (const here of [met(firm), met(painted)])
      for (const method of facing)
        for (const frame of methodFrames(method, here))
          expect(frame.map(([ink]) => ink)).not.toContain('hatch');
    expect(
      methodFrames('grind')
        .flat()
        .map(([ink]) => ink),
    ).toContain('hatch');
  });

  it('is left as usual while an answer is open', () => {
    expect(met({ ...firm, looseness: ['tight', 'powdery'] })).toBe(null);
    expect(met({ ...firm, contamination: { yes: [], maybe: ['thick-coating'] } })).toBe(null);
  });
});

describe('a step in the case in hand', () => {
  const say = formatter('metric');
  const told = (id: Step['id'], ...rules: Step['why'][number]['rule'][]) =>
    stepHere({ id, why: rules.map((rule) => ({ rule })), hazards: [] }, say);

  it('says nothing of the other case', () => {
    expect(told('wet-or-dry', 'damp-not-wet').how.join(' ')).not.toMatch(/coating|maker/i);
    expect(told('wet-or-dry', 'dry-for-coating').how.join(' ')).not.toMatch(/soak|mortar/i);
    expect(told('blast-clean', 'skin-by-grit-or-water').how.join(' ')).not.toMatch(/shotblast/i);
    expect(told('cure', 'cure-kept-damp').how.join(' ')).not.toMatch(/coating/i);
    expect(told('sound-and-mark', 'sound-before-cutting').how.join(' ')).not.toMatch(
      /floor|chain/i,
    );
    expect(told('chase-crack', 'rust-open-to-bar').how.join(' ')).not.toMatch(/\bElse\b|Rust at/);
  });

  it('says both where both are there', () => {
    const both = told('blast-clean', 'skin-by-shotblaster', 'skin-by-grit-or-water').how;
    expect(both[0]).toMatch(/Shotblast/);
    expect(both[1]).toMatch(/grit/);
  });

  it('is told whole where no rule tells the case', () => {
    expect(told('wet-or-dry').how.join(' ')).toMatch(/mortar.*coatings/i);
  });

  it('leaves out what stands beside it as its settings', () => {
    expect(told('break-out').how.join(' ')).not.toMatch(/45/);
    expect(told('break-out').how.at(-1)).toMatch(/^Done when/);
  });
});
