import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { methodIds, type StepId } from '$shared/methods';
import { ruleSentences } from '$words/rules';
import { formatter } from '$lib/words/format';
import { untied } from '../helpers/plain-formatter';

/** What the steps of a zone say, and why not another method; all of it common practice, no source. */
const say = formatter('metric');
const plainSite: SiteAnswers = {
  element: ['slab'],
  setting: ['open'],
  salts: ['none'],
  freezeThaw: ['some'],
  thickness: 150,
  warnings: { yes: [], maybe: [] },
};
const plainZone: ZoneAnswers = {
  depth: ['film'],
  looseness: ['tight'],
  contamination: { yes: [], maybe: [] },
  texture: ['sandy'],
  cracks: ['none'],
  steel: ['none-seen'],
  finish: ['overlay'],
  area: 20,
};
const adviceOn = (zone: ZoneAnswers, site: SiteAnswers = {}) =>
  adviseZone({ ...plainSite, ...site }, { ...plainZone, ...zone }, { margins: false });
type Told = ReturnType<typeof adviceOn>;

const told = (advice: Told, id: StepId): string =>
  untied(
    (advice.steps.find((step) => step.id === id)?.why ?? [])
      .map((reason) => ruleSentences[reason.rule](reason, say))
      .join(' '),
  );
const against = ({ rejections }: Told, method: string): string =>
  untied(
    rejections
      .filter((each) => each.method === method)
      .map((each) => ruleSentences[each.rule](each, say))
      .join(' '),
  );
const spall: ZoneAnswers = { depth: ['20-to-50'], looseness: ['hollow'] };

describe('how deep the edge is sawn', () => {
  it.each<[string, ZoneAnswers, SiteAnswers, RegExp]>([
    ['a third of a thin slab', { ...spall, depth: 15 }, { thickness: 60 }, /no deeper than 20 mm/],
    ['the hole, where it is the least', { ...spall, depth: 7 }, {}, /hole will be: 20 mm at most/],
    [
      'a firm hollow no deeper than it is',
      { depth: 15, finish: ['rebuild'] },
      {},
      /hole will be: 15 mm at most/,
    ],
    [
      'clear of a bar whose cover was measured',
      { ...spall, steel: ['exposed'], barCover: 30 },
      {},
      /no deeper than 20 mm here, to stay clear of the steel/,
    ],
    [
      'by hand over a shallow bar',
      { ...spall, steel: ['exposed'], barCover: 20 },
      {},
      /too shallow here to saw above it\. Cut the edge by hand/,
    ],
    ['as usual in a thick slab', spall, { thickness: 300 }, /Saw 25 to 51 mm deep/],
  ])('%s', (_, zone, site, expected) => {
    const text = told(adviceOn(zone, site), 'saw-cut');
    expect(text).toMatch(expected);
    if (zone.barCover !== undefined) expect(text).not.toMatch(/Find how deep it lies/);
  });

  it('the ring between the cut and a firm hollow is chipped out', () => {
    expect(told(adviceOn({ depth: 15, finish: ['rebuild'] }), 'saw-cut')).toMatch(/chip out/);
  });
});

describe('under a stop nothing is offered in its place', () => {
  it.each<[string, ZoneAnswers, SiteAnswers]>([
    ['tendons', { depth: ['3-to-6'], looseness: ['flaking'] }, tendons()],
    ['a soffit', spall, { element: ['soffit'] }],
  ])('%s: whatever would do must wait', (_, zone, site) => {
    const advice = adviceOn(zone, site);
    expect(advice.verdict).toBe('stop');
    expect(advice.rejections.filter(({ wouldDo }) => wouldDo)).toEqual([]);
    expect(against(advice, 'water-jet')).toMatch(/^must wait/);
  });

  it('what one answer would stop is not called too much in another', () => {
    const advice = adviceOn(
      { depth: ['3-to-6', '20-to-50'], looseness: ['flaking', 'hollow'] },
      { element: ['suspended-slab'] },
    );
    expect(against(advice, 'break-out')).toMatch(/^must wait/);
  });

  function tendons(): SiteAnswers {
    return { element: ['suspended-slab'], warnings: { yes: ['tendons-possible'], maybe: [] } };
  }
});

describe('oil', () => {
  const perhaps = { yes: [], maybe: ['oil'] } as const;
  it('that is only possible: a drop of water before the first tool', () => {
    const advice = adviceOn({ texture: ['smooth'], contamination: perhaps });
    expect(advice.method).toBe('shotblast');
    expect(told(advice, 'shotblast')).toMatch(/drop of water .* before any tool .* degrease first/);
  });

  it('that is there, or not: no such thing', () => {
    for (const yes of [['oil'], []] as const) {
      const advice = adviceOn({ texture: ['smooth'], contamination: { yes, maybe: [] } });
      expect(told(advice, 'shotblast')).not.toMatch(/degrease first/);
    }
  });

  it('is scrubbed, rinsed, caught and dried, until a drop spreads', () => {
    const advice = adviceOn({ texture: ['smooth'], contamination: { yes: ['oil'], maybe: [] } });
    expect(told(advice, 'degrease')).toMatch(/detergent, rinse, and catch.*spreads.*dry/);
  });
});

describe('cracks', () => {
  it('routed: sealed while dry, before anything goes over it', () => {
    for (const finish of ['sealer', 'overlay'] as const)
      expect(told(adviceOn({ cracks: ['open'], finish: [finish] }), 'wet-or-dry')).toMatch(
        /^Seal the routed crack before anything goes over it: dry/,
      );
  });

  it('chased: filled before a sealer, its faces blasted; an overlay fills it itself', () => {
    const sealed = adviceOn({ cracks: ['crumbling'], finish: ['sealer'] });
    expect(told(sealed, 'wet-or-dry')).toMatch(/^Fill the chased crack before anything/);
    expect(told(sealed, 'blast-clean')).toMatch(/Blast the faces with grit/);
    expect(sealed.target.bruisedSkin).toBe('should-go');
    expect(told(adviceOn({ cracks: ['crumbling'] }), 'wet-or-dry')).not.toMatch(/Fill/);
  });
});

describe('holes that are filled', () => {
  const bar: ZoneAnswers = { ...spall, steel: ['corroded'], barLoss: ['within-limit'] };
  it('under a dry finish: the hole is the repair, on a damp surface', () => {
    const fill = told(adviceOn({ ...bar, finish: ['thin-film'] }), 'fill-level');
    expect(fill).toMatch(/That is the repair/);
    expect(fill).toMatch(/make the concrete damp first/);
    expect(fill).not.toMatch(/too rough/);
  });

  it('are not said to go unwashed where the salt at a bar is rinsed out', () => {
    const advice = adviceOn({ ...bar, finish: ['thin-film'] }, { salts: ['de-icing'] });
    expect(told(advice, 'final-wash')).toMatch(/salt/i);
    expect(told(advice, 'vacuum')).not.toMatch(/not washed any more/);
  });

  it('a bar is cleaned all round, with what gets behind it', () => {
    expect(told(adviceOn(bar), 'clean-bar')).toMatch(/Blast the bar.*all round/);
    expect(told(adviceOn(bar), 'free-bar')).toMatch(/19 mm behind it.*25 mm/);
  });

  it('name the class of the hammer, on a floor too', () => {
    expect(told(adviceOn(spall), 'break-out')).toMatch(/no heavier than the 14 kg class/);
  });

  it('below the third: the hole, and as sure as it is', () => {
    const sure = adviceOn({ ...spall, depth: 45 }, { thickness: 130 });
    expect(told(sure, 'break-out')).toMatch(/The finished hole goes below the top third/);
    expect(told(adviceOn({ ...spall, depth: ['20-to-50'] }), 'break-out')).toMatch(
      /The finished hole may go below/,
    );
  });
});

describe('what is said fits the place', () => {
  it('grit that does not bruise is not said to harm', () => {
    const spot = adviceOn(
      {
        depth: ['3-to-6'],
        looseness: ['flaking'],
        texture: ['smooth'],
        finish: ['build-coat'],
        area: 0.5,
      },
      { element: ['steps'] },
    );
    expect(spot.method).toBe('needle-scale');
    expect(against(spot, 'abrasive-blast')).toMatch(/^would do too/);
    expect(against(spot, 'water-jet')).toMatch(/for so little/);
    const wash = adviceOn({ finish: ['sealer'] });
    for (const method of methodIds.filter((id) => /blast/.test(id)))
      expect(against(wash, method)).not.toMatch(/harm/);
    expect(told(spot, 'blast-clean')).not.toMatch(/high pressure/);
    expect(told(spot, 'needle-scale').match(/down to sound/g)).toHaveLength(1);
  });

  it('a measured depth is told as measured', () => {
    const advice = adviceOn({ ...spall, depth: 30 });
    expect(told(advice, 'break-out')).toMatch(/30 mm deep/);
    expect(against(advice, 'scarify')).toMatch(/30 mm deep/);
  });

  it('a tight floor is sounded before a layer hides it, and what a coating hid as well', () => {
    const layered = adviceOn({ texture: ['smooth'] });
    expect(told(layered, 'shotblast')).toMatch(/^Sound the floor before you start/);
    for (const [zone, site] of [
      [{ texture: ['smooth'], finish: ['thin-film'] }, {}],
      [{}, { element: ['wall'] }],
    ] as [ZoneAnswers, SiteAnswers][]) {
      const { method, ...advice } = adviceOn(zone, site);
      expect(told({ method, ...advice }, method as StepId)).not.toMatch(/Sound the floor/);
    }
    const wall = adviceOn(
      { contamination: { yes: ['rubbery-coating'], maybe: [] } },
      { element: ['wall'] },
    );
    expect(told(wall, 'strip-coating')).toMatch(/Sound what comes to light/);
  });

  it('a coating comes off, and is named', () => {
    const advice = adviceOn({ contamination: { yes: ['rubbery-coating'], maybe: [] } });
    expect(told(advice, 'scarify')).toMatch(/takes off the rubbery coating/);
  });

  it('cables that a wash does not touch are nothing to deal with first', () => {
    const warned = {
      warnings: { yes: ['buried-services', 'holds-something-up'], maybe: [] },
    } as const;
    const wash = told(adviceOn({ finish: ['sealer'] }, warned), 'make-safe');
    expect(wash).toMatch(/make the place safe/);
    expect(wash).not.toMatch(/Deal first/);
    expect(told(adviceOn({ cracks: ['open'] }, warned), 'make-safe')).toMatch(/cables or pipes/);
  });

  it('dew matters to a coating, not to cement; damp looks to cement alone', () => {
    expect(told(adviceOn({}), 'cover')).not.toMatch(/dew/);
    expect(told(adviceOn({ finish: ['build-coat'] }), 'cover')).toMatch(/dew point/);
    expect(told(adviceOn({}), 'last-clean')).toMatch(/dark but without shine/);
    expect(told(adviceOn({ finish: ['undecided'] }), 'last-clean')).not.toMatch(/dark/);
  });
});
