import { describe, expect, it } from 'vitest';
import { respiratorsFor, silicaDuties } from '$lib/safety/duties';
import { hazardFacts } from '$lib/safety/hazards';

// 29 CFR 1926.1153 (c), (f) to (i): limits, plan, training, housekeeping, medical surveillance, fit
// test; elsewhere good practice, and the country's own rule first.
describe('the duties of dust', () => {
  const always = ['written-plan', 'competent-person', 'training', 'no-dry-sweeping'].concat(
    'no-compressed-air',
  );
  const told = (...given: Parameters<typeof silicaDuties>) =>
    silicaDuties(...given).map(({ id, figures }) => [id, ...figures].join(' '));
  it('are always those of the work, more where somebody wears a mask or measures', () => {
    expect(told('us', false, false)).toEqual(always);
    expect(told('elsewhere', false, false)).toEqual([
      'ask-your-country silica.limit-eu',
      ...always,
    ]);
    expect(told('us', true, false)).toEqual([
      ...always,
      ...['fit-test', 'medical-exam silica.exam-days'],
    ]);
    expect(told('us', false, true)).toEqual([
      'assess-exposure silica.limit silica.action-level',
      ...always,
    ]);
    expect(told('elsewhere', true, true)).toEqual([
      ...['ask-your-country silica.limit-eu', 'assess-exposure silica.limit-eu', ...always],
      ...['fit-test', 'medical-exam silica.exam-days'],
    ]);
  });

  // 29 CFR 1910.134 Table 1: 10 for a half mask, 25 for a loose hood, 50 for a full face.
  it('name every respirator whose factor is enough, the lightest first', () => {
    const all = [
      { id: 'half-mask', factor: 10, figure: 'silica.apf.half-mask' },
      { id: 'loose-hood', factor: 25, figure: 'silica.apf.loose-hood' },
      { id: 'full-face', factor: 50, figure: 'silica.apf.full-face' },
    ];
    expect(respiratorsFor(10)).toEqual(all);
    expect(respiratorsFor(11)).toEqual(all.slice(1));
    expect(respiratorsFor(25)).toEqual(all.slice(1));
    expect(respiratorsFor(50)).toEqual(all.slice(2));
    expect([respiratorsFor(51), respiratorsFor(0), respiratorsFor(-1)]).toEqual([[], [], []]);
  });

  it('hazards that a rule has a number for quote it, those that a rule is about quote the rule', () => {
    const rules = Object.fromEntries(
      Object.entries(hazardFacts).flatMap(([hazard, { figures, sources }]) =>
        figures.length + sources.length ? [[hazard, [...figures, ...sources].join(' ')]] : [],
      ),
    );
    expect(rules).toEqual({
      eyes: 'osha-1910-i',
      silica: 'silica.limit silica.action-level silica.airflow osha-1926.1153',
      noise:
        'noise.osha-criterion noise.niosh-criterion noise.eu-upper noise.eu-limit osha-1910.95 osha-1926.52 niosh-98-126 eu-2003-10',
      vibration: 'vibration.action vibration.limit vibration.maker-factor eu-2002-44 hse-reckoner',
      'water-injection': 'hazard.water-injection yim-2022 wjta',
      'carbon-monoxide': 'hazard.co-mean hazard.co-ceiling niosh-96-118',
      electric: 'osha-1926.416',
      chemicals: 'hazard.acid-ceiling',
      'lead-asbestos': 'osha-1926.62 cfr-40-61.145',
      structure: 'osha-1926.850 pta-gn01',
      'wash-water': 'hazard.wash-water-ph cfr-40-261.22',
    });
  });
});
