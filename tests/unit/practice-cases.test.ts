import { describe, expect, it } from 'vitest';
import { sure, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import { choicesOf, questions, type QuestionId } from '$lib/answers/questions';
import { adviseZone } from '$lib/advice/advise';
import { whyNotAsked } from '$lib/advice/relevance';
import { holdRules } from '$lib/advice/rules';
import { neverPractised } from '$lib/practice/strata';
import { authored, authoredFaults } from '$lib/practice/authored';
import { adviceOn, answersOf, callOf, type AuthoredCase } from '$lib/practice/case';
import { levelOf, levels, twists, twistsOf } from '$lib/practice/level';
import { methodLeans } from '$lib/practice/strata';
import { methodIds } from '$shared/methods';

/**
 * What a told fact has to say for each choice. Not the engine's words but the signs the trade
 * reads by ear, hand and eye: common practice, no published source.
 */
const signs: Partial<Record<QuestionId, Record<string, RegExp>>> = {
  looseness: {
    tight: /rings? clear|takes nothing|no concrete/,
    powdery: /brush lifts dust/,
    flaking: /flakes lift|lifts thin flakes/i,
    fractured: /chips .*loose|loose chips/i,
    hollow: /dull|gap|loose/,
    rotten: /crumbles|thud/,
  },
  texture: {
    smooth: /smooth|palm slides/,
    sandy: /sand/,
    pitted: /pit|hollows/,
  },
  cracks: {
    none: /no (single )?crack/i,
    hairline: /paper will not go in/i,
    open: /coin|edges ring/,
    crumbling: /break off|dull/,
    moving: /opens again/,
  },
  steel: {
    'none-seen': /no (bar|steel|rust)/i,
    'rust-stain': /brown stain/,
    exposed: /bar shows/,
    corroded: /rust comes off .*layers/i,
  },
  finish: {
    sealer: /sealer/,
    'thin-film': /thin paint/i,
    'build-coat': /thick paint/,
    'self-levelling': /self-levelling/,
    'thin-overlay': /thin (trowelled )?overlay/,
    overlay: /overlay|patch/,
    rebuild: /form(ed)? and pour/,
  },
  freezeThaw: {
    rare: /hardly (any frost|ever freezes)/,
    some: /some weeks/i,
    often: /often|most of the winter/,
  },
  salts: {
    none: /no(t)? salt|never salted|no salt|not salted/i,
    'de-icing': /salted|salts|road salt/i,
    'sea-or-pool': /salt (air|water)/i,
  },
  contamination: {
    oil: /stays a bead/,
    'thin-coating': /thin (paint|film)|film of/i,
    'thick-coating': /thicker than/,
    'rubbery-coating': /nail dents/,
    'salt-bloom': /white crust/,
    growth: /moss|algae/i,
  },
  element: {
    slab: /ground/,
    steps: /step/,
    'suspended-steps': /below them/,
    'suspended-slab': /below it/,
    wall: /wall|upright/,
    soffit: /underside/,
  },
  setting: {
    indoors: /indoors|walls all round|inside/,
    sheltered: /roof|under cover|porch/,
    open: /open/,
  },
};

const told = (one: AuthoredCase, id: QuestionId) =>
  one.told.filter(({ about }) => about.includes(id));

describe('authored cases', () => {
  it('are fifty-two, each consistent, and none is ambiguous', () => {
    expect(authored).toHaveLength(52);
    expect(authoredFaults()).toEqual([]);
  });

  it.each(authored.map((one) => [one.id, one] as const))(
    '%s: the engine answers as it was meant, for the reason that was meant',
    (_, one) => {
      // By the way a reader would go: from answers, not from the settled truth.
      const { site, zone } = answersOf(one);
      const advice = adviseZone(site, zone);
      const { verdict, call, reason, trap } = one.intended;
      expect(advice.verdict).toBe(verdict);
      expect(advice.method ?? advice.holds.find((hold) => hold.verdict === verdict)?.who).toBe(
        call,
      );
      const rules = [...advice.reasons, ...advice.holds, ...advice.steps.flatMap(({ why }) => why)];
      expect(rules.map(({ rule }) => rule)).toContain(reason);
      if (trap)
        expect(advice.rejections.find(({ method }) => method === trap.method)?.rule).toBe(
          trap.rule,
        );
      else expect(verdict).not.toBe('prepare');
    },
  );

  it('cover every method, every verdict, every hold, every twist and every level', () => {
    const advices = authored.map(adviceOn);
    expect(new Set(advices.map(({ verdict }) => verdict)).size).toBe(3);
    const answers = new Set(advices.flatMap(({ method }) => method ?? []));
    expect([...answers].sort()).toEqual(Object.keys(methodLeans).sort());
    // Two methods are never first advice; each is the pick some case invites.
    const traps = new Set(authored.flatMap(({ intended }) => intended.trap?.method ?? []));
    expect(methodIds.filter((id) => !answers.has(id)).every((id) => traps.has(id))).toBe(true);
    const holds = new Set(advices.flatMap((advice) => advice.holds.map(({ rule }) => rule)));
    expect([...holds].sort()).toEqual(
      holdRules.filter((id) => !(neverPractised as readonly string[]).includes(id)).sort(),
    );
    const met = new Set(authored.flatMap((one) => twistsOf(one)));
    expect(twists.filter((twist) => !met.has(twist))).toEqual([]);
    for (const level of levels)
      expect(authored.filter((one) => levelOf(one) === level).length).toBeGreaterThanOrEqual(3);
  });

  it('are not two of a kind', () => {
    const truths = authored.map(({ site, zone }) => JSON.stringify([site, { ...zone, area: 0 }]));
    expect(new Set(truths).size).toBe(authored.length);
    expect(new Set(authored.map(({ title }) => title)).size).toBe(authored.length);
  });

  it('tell every answer that matters', () => {
    for (const one of authored) {
      const { site, zone } = answersOf(one);
      for (const id of mattering(one, site, zone))
        expect(told(one, id).length, `${one.id}: nothing tells of ${id}`).toBeGreaterThan(0);
    }
  });

  it('tell it by its sign', () => {
    for (const one of authored)
      for (const [id, choices] of Object.entries(signs) as [QuestionId, Record<string, RegExp>][]) {
        const values = [({ ...one.site, ...one.zone } as Record<string, unknown>)[id]].flat();
        const texts = told(one, id).map(({ text }) => text);
        for (const value of values as string[])
          expect(texts.join(' '), `${one.id}: ${id} ${value}`).toMatch(choices[value] ?? /^$/);
      }
  });

  it('say what somebody long in the trade would do, and why, in words and without numbers', () => {
    for (const { id, senior } of authored) {
      expect(senior.split(/\s+/).length, id).toBeGreaterThan(15);
      expect(senior, id).not.toMatch(/\d/);
      // What to do, and why.
      expect(senior.match(/[.!?](?=\s|$)/g)?.length, id).toBeGreaterThanOrEqual(2);
    }
    expect(new Set(authored.map(({ senior }) => senior)).size).toBe(authored.length);
  });

  it('prove by a laboratory what only a laboratory can tell', () => {
    // Lead and asbestos: 40 CFR 61.145 and 29 CFR 1926.62(d) ask for a test; no tin and no eye settles it.
    for (const one of authored) {
      const coated = one.zone.contamination.some((each) => each.endsWith('-coating'));
      if (!coated || one.site.warnings.includes('old-coating-or-adhesive')) continue;
      const warnings = told(one, 'warnings').map(({ text }) => text);
      expect(warnings.join(' '), one.id).toMatch(/laboratory/i);
    }
  });

  it('tell each length where it is known, and that there is none where there is none', () => {
    for (const one of authored) {
      const depth = told(one, 'depth')
        .map(({ text }) => text)
        .join(' ');
      if (one.zone.depthMm !== undefined) expect(depth, one.id).toContain('{depth}');
      else if (one.zone.depth === 'film') expect(depth, one.id).toMatch(/measure/);
      else expect(depth, one.id).toMatch(/right through/);
      const thickness = told(one, 'thickness')
        .map(({ text }) => text)
        .join(' ');
      expect(thickness, one.id).toMatch(
        one.site.thickness === 'unknown' ? /nobody knows/i : /\{thickness\}/,
      );
      expect(told(one, 'area')[0]?.text, one.id).toContain('{area}');
      if (one.site.warnings.length) expect(told(one, 'warnings').length, one.id).toBeGreaterThan(0);
    }
  });

  it('are caught where they are not as meant', () => {
    const [first] = authored as [AuthoredCase];
    const spoilt = (change: object) => authoredFaults([{ ...first, ...change }]).join();
    expect(spoilt({ id: 'Two Words' })).toContain('an id of');
    expect(spoilt({ zone: { ...first.zone, texture: 'rough' } })).toContain('texture');
    expect(spoilt({ zone: { ...first.zone, looseness: 'rotten' } })).toContain('call: meant');
    expect(spoilt({ intended: { ...first.intended, reason: 'through' } })).toContain('reason:');
    expect(
      spoilt({ intended: { ...first.intended, trap: { method: 'grind', rule: 'held' } } }),
    ).toContain('trap:');
    expect(spoilt({ told: [{ by: 'see', about: [], text: '5 mm' }] })).toContain('bare number');
    expect(spoilt({ senior: 'Wash it.' })).toContain('senior:');
    expect(spoilt({ hint: 1 })).toContain('unknown field');
    expect(authoredFaults([first, first]).join()).toContain('used twice');
  });
});

/** The answers that decide a case: those of which another choice would change the advice. */
function mattering(one: AuthoredCase, site: SiteAnswers, zone: ZoneAnswers): QuestionId[] {
  const print = (advice: ReturnType<typeof adviseZone>) =>
    JSON.stringify([advice.verdict, advice.method, advice.steps.map((step) => step.id)]);
  const now = print(adviseZone(site, zone, { margins: false }));
  const found: QuestionId[] = [];
  for (const id of Object.keys(questions) as QuestionId[]) {
    if (questions[id].kind !== 'one' && questions[id].kind !== 'depth') continue;
    // Without a sheet in hand the table speaks: nothing told is the answer.
    if ((id === 'makerProfile' || id === 'makerMoisture') && one.zone[id] === undefined) continue;
    if (id === 'barLoss' ? one.zone.steel !== 'corroded' : whyNotAsked(id, site, zone)) continue;
    const changed = choicesOf(id).some((choice) => {
      const answer = { [id]: sure(id as 'texture', choice as never) };
      const scope = questions[id].scope === 'site';
      return (
        print(
          adviseZone(scope ? { ...site, ...answer } : site, scope ? zone : { ...zone, ...answer }, {
            margins: false,
          }),
        ) !== now
      );
    });
    if (changed) found.push(id);
  }
  return found;
}

it('the calls of authored cases are those of the advice', () => {
  for (const one of authored) expect(callOf(adviceOn(one))).toBe(one.intended.call);
});
