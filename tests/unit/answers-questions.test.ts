import { describe, expect, it } from 'vitest';
import { isOpen, isSurely, notSure, sure } from '$lib/answers/answers';
import {
  choicesOf,
  followUps,
  questionIds,
  questions,
  siteQuestionIds,
  zoneQuestionIds,
  type QuestionId,
} from '$lib/answers/questions';
import { rangeOf } from '$shared/figures';

// What the trade asks, and its own order of choices, mild before severe: the table of answers on the
// design's page of the trade. Ids are kept in files and links for ever.
const site: Partial<Record<QuestionId, string>> = {
  element: 'slab steps suspended-steps suspended-slab wall soffit',
  setting: 'indoors sheltered open',
  salts: 'none de-icing sea-or-pool',
  freezeThaw: 'rare some often',
  thickness: '',
  warnings:
    'settled-or-rocking holds-something-up tendons-possible fire-or-chemical map-cracking old-coating-or-adhesive buried-services',
};
const zone: Partial<Record<QuestionId, string>> = {
  depth: 'film under-3 3-to-6 6-to-20 20-to-50 over-50 through',
  looseness: 'tight powdery flaking fractured hollow rotten',
  contamination: 'oil thin-coating thick-coating rubbery-coating salt-bloom growth',
  texture: 'smooth sandy pitted',
  cracks: 'none hairline open crumbling moving',
  crackLength: '',
  steel: 'none-seen rust-stain exposed corroded',
  barLoss: 'within-limit one-bar neighbours',
  barCover: '',
  barDiameter: '',
  barSpacing: '',
  barLength: '',
  finish: 'sealer thin-film build-coat self-levelling thin-overlay overlay rebuild undecided',
  makerProfile: 'no-sheet csp-1 csp-2 csp-3 csp-4 csp-5 csp-6 csp-7 csp-8 csp-9 csp-10',
  makerMoisture: 'no-sheet damp dry',
  area: '',
  borderLength: '',
};
const ofKind = (kind: string) => questionIds.filter((id) => questions[id].kind === kind);

describe('what is asked', () => {
  it('of the site and of each zone, with the choices there are', () => {
    const asked = (ids: readonly QuestionId[]) =>
      Object.fromEntries(ids.map((id) => [id, choicesOf(id).join(' ')]));
    expect(asked(siteQuestionIds)).toEqual(site);
    expect(asked(zoneQuestionIds)).toEqual(zone);
    expect(questionIds).toEqual([...siteQuestionIds, ...zoneQuestionIds]);
  });

  it('is one choice, all that apply, a depth, or a length or area within sense', () => {
    expect(ofKind('many')).toEqual(['warnings', 'contamination']);
    expect(ofKind('depth')).toEqual(['depth']);
    const unit = (id: QuestionId) => {
      const question = questions[id];
      if (!('unit' in question)) return undefined;
      const [least, most] = rangeOf(question.limit);
      expect(most).toBeGreaterThan(least);
      return question.unit;
    };
    expect(Object.fromEntries(ofKind('number').map((id) => [id, unit(id)]))).toEqual({
      thickness: 'mm',
      crackLength: 'm',
      barCover: 'mm',
      barDiameter: 'mm',
      barSpacing: 'mm',
      barLength: 'm',
      area: 'm2',
      borderLength: 'm',
    });
    expect(unit('depth')).toBe('mm');
  });

  it('of a crack, a bar or a data sheet only where there is one', () => {
    expect(followUps).toEqual(
      zoneQuestionIds.filter((id) => /^(crackLength|bar.*|makerMoisture)$/.test(id)),
    );
  });
});

describe('an answer', () => {
  it('not sure is every choice, nothing ticked and all that may be, or a number nobody knows', () => {
    expect(notSure('texture')).toEqual(['smooth', 'sandy', 'pitted']);
    expect(notSure('depth')).toEqual(choicesOf('depth'));
    expect(notSure('warnings')).toEqual({ yes: [], maybe: choicesOf('warnings') });
    expect(notSure('area')).toBe('unknown');
  });

  it('is sure where it is one choice and can be no other', () => {
    expect(sure('texture', 'pitted')).toEqual(['pitted']);
    expect(isSurely(['pitted'], 'pitted')).toBe(true);
    expect(isSurely(['pitted'], 'smooth')).toBe(false);
    expect(isSurely(['pitted', 'smooth'], 'pitted')).toBe(false);
    expect(isSurely([], 'pitted')).toBe(false);
    expect(isSurely(undefined, 'pitted')).toBe(false);
  });

  it('is open while more than one thing can be true', () => {
    expect(isOpen('unknown')).toBe(true);
    expect(isOpen(0)).toBe(false);
    expect(isOpen(['pitted'])).toBe(false);
    expect(isOpen(['pitted', 'smooth'])).toBe(true);
    expect(isOpen({ yes: [], maybe: ['oil'] })).toBe(true);
    expect(isOpen({ yes: ['oil', 'growth'], maybe: [] })).toBe(false);
  });
});
