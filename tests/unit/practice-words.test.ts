import { describe, expect, it } from 'vitest';
import { questionIds } from '$lib/answers/questions';
import { authored } from '$lib/practice/authored';
import { generate } from '$lib/practice/generate';
import { callWords, ratingWords, spareWords, waitWords } from '$words/practice/grade';
import { practiceWords } from '$words/practice/page';
import { streets } from '$words/practice/places';
import { caseTitle, toldByTruth, toldOf } from '$words/practice/told';
import { formatter } from '$lib/words/format';
import { readingGrade, sentencesOf, wordsOf } from '../helpers/reading-grade';
import { broken, mute, sentence, strangers } from '../helpers/words';

const generated = Array.from({ length: 240 }, (_, seed) => generate(seed));
const all = [...authored, ...generated];
const metric = formatter('metric');

describe('what is told of a case', () => {
  it('is whole sentences in the units of the reader, with nothing missing', () => {
    for (const one of all)
      for (const units of ['metric', 'us'] as const)
        for (const { text } of toldOf(one, formatter(units))) {
          expect(text, one.id).toMatch(sentence);
          expect(text, one.id).not.toMatch(broken);
          expect(text, one.id).not.toMatch(/[{}]/);
        }
  });

  it('holds no number but those of the case, and no stranger’s spelling', () => {
    for (const one of all) {
      for (const { text } of toldOf(one, mute)) expect(text, one.id).not.toMatch(/\d/);
      const texts = [caseTitle(one), ...toldOf(one, metric).map(({ text }) => text)];
      for (const text of texts)
        for (const stranger of strangers) expect(text, one.id).not.toMatch(stranger);
    }
  });

  it('gives away every answer of a generated case, each in its place', () => {
    const optional = [
      'warnings',
      'barLoss',
      'crackLength',
      // No sheet and no tape in hand: what is not told is not known.
      'barCover',
      'barDiameter',
      'barSpacing',
      'barLength',
      'makerProfile',
      'makerMoisture',
      'borderLength',
    ];
    for (const one of generated) {
      const told = toldByTruth(one).flatMap(({ about }) => about);
      const wanted = questionIds.filter(
        (id) =>
          !optional.includes(id) ||
          (id === 'warnings' && one.site.warnings.length > 0) ||
          (id === 'barLoss' && !!one.zone.barLoss) ||
          (id === 'borderLength' && one.zone.border !== undefined) ||
          ((id === 'makerProfile' || id === 'makerMoisture') && one.zone[id] !== undefined),
      );
      expect(
        wanted.filter((id) => !told.includes(id)),
        one.id,
      ).toEqual([]);
    }
  });

  it('differs from choice to choice, so that no two truths read the same', () => {
    const texts = new Map<string, string>();
    for (const { site, zone } of generated) {
      const told = JSON.stringify(toldOf({ id: 'same', site, zone }, metric));
      const truth = JSON.stringify([site, zone]);
      expect(texts.get(told) ?? truth).toBe(truth);
      texts.set(told, truth);
    }
  });

  it('reads as easily as a short message', () => {
    const text = all.flatMap((one) => toldOf(one, metric).map((each) => each.text)).join(' ');
    expect(readingGrade(text)).toBeLessThan(5);
    for (const each of sentencesOf(text)) expect(wordsOf(each).length, each).toBeLessThan(25);
  });

  it('has titles that say where, not what is wrong', () => {
    expect(new Set(generated.map(caseTitle)).size).toBeGreaterThan(streets.length);
    for (const one of generated) expect(caseTitle(one)).toMatch(/^[A-Z][a-z ]+, [A-Z].+$/);
  });
});

describe('what is said to a pick', () => {
  it('is sentences with a name', () => {
    for (const { name, line } of [...Object.values(callWords), ...Object.values(waitWords)]) {
      expect(line).toMatch(sentence);
      expect(name).not.toMatch(/[.]$/);
    }
    for (const line of Object.values(spareWords)) expect(line).toMatch(sentence);
    expect(Object.values(ratingWords).every(Boolean)).toBe(true);
  });

  it('calls nothing but what is right, right', () => {
    for (const [kind, { name, line }] of Object.entries(callWords))
      if (kind !== 'right')
        expect(`${name} ${line}`, kind).not.toMatch(/^right|well done|correct/i);
  });

  it('is easy to read', () => {
    const lines = [
      practiceWords.lead,
      practiceWords.standing.how,
      practiceWords.builder.line,
      ...Object.values(callWords).map(({ line }) => line),
      ...Object.values(spareWords),
    ];
    expect(readingGrade(lines.join(' '))).toBeLessThan(6);
  });
});
