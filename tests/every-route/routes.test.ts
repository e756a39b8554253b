import { describe, expect, it } from 'vitest';
import { adviseSettled } from '$lib/advice/settle';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { choicesOf, type Contaminant } from '$lib/answers/questions';
import { unsafe, wrong } from './promises';
import { say } from './report';
import { unspoken } from './spoken';

const elements = choicesOf('element');
const settings = choicesOf('setting');
const depths = choicesOf('depth');
const loosenesses = choicesOf('looseness');
const textures = choicesOf('texture');
const finishes = choicesOf('finish');
const frosts = choicesOf('freezeThaw');
const contaminants = choicesOf('contamination');

/** Every set of contaminants; bit i stands for the i-th. */
const dirt: Contaminant[][] = Array.from({ length: 1 << contaminants.length }, (_, bits) =>
  contaminants.filter((_each, index) => bits & (1 << index)),
);

/** Washing 0, skimming 1, cutting 2, breaking 3; no surface method left counts as harsher than all. */
const strength: Record<string, number> = {
  'pressure-wash': 0,
  grind: 1,
  'abrasive-blast': 1,
  'needle-scale': 1,
  scarify: 2,
  shotblast: 2,
  'break-out': 3,
};

describe('every route', () => {
  it('ends in a sound advice for every combination of the answers that decide the method', () => {
    const lists = [elements, settings, frosts, depths, loosenesses, dirt, textures, finishes];
    const count = lists.reduce((product, list) => product * list.length, 1);
    const perElement =
      depths.length * loosenesses.length * dirt.length * textures.length * finishes.length;
    const classes = new Int8Array(elements.length * perElement).fill(-1);
    const rules = new Set<string>();
    const started = performance.now();
    let walked = 0;
    for (const [ei, element] of elements.entries())
      for (const setting of settings)
        for (const freezeThaw of frosts) {
          const site: SettledSite = {
            element,
            setting,
            salts: 'none',
            freezeThaw,
            thickness: 'unknown',
            warnings: [],
          };
          let slot = ei * perElement;
          for (const zone of everyZone()) {
            const advice = adviseSettled(site, zone);
            const fault = wrong(site, zone, advice) ?? unspoken(advice, rules);
            if (fault) expect.fail(`${fault}\n${JSON.stringify({ site, zone })}`);
            const now = advice.underneath ? (strength[advice.underneath] as number) : 4;
            if (classes[slot] === -1) classes[slot] = now;
            // Setting and frost have no say in the class.
            else if (classes[slot] !== now)
              expect.fail(`setting or frost changed the class\n${JSON.stringify({ site, zone })}`);
            slot += 1;
            walked += 1;
          }
        }
    const seconds = (performance.now() - started) / 1000;
    say(
      `every route: ${walked.toLocaleString('en')} combinations in ${seconds.toFixed(1)} s, ` +
        `${Math.round(walked / seconds).toLocaleString('en')} a second with all checks; ` +
        `${rules.size} rules spoken`,
    );
    expect(walked).toBe(count);
    expect(weaker(classes)).toEqual([]);
  });

  it('advises in well under 50 microseconds on average', () => {
    const site: SettledSite = {
      element: 'slab',
      setting: 'open',
      salts: 'none',
      freezeThaw: 'often',
      thickness: 150,
      warnings: [],
    };
    const zones = [...everyZone()];
    // Time of this process on the processor, so that a busy machine does not count.
    const started = process.cpuUsage();
    for (const zone of zones) adviseSettled(site, zone);
    const each = process.cpuUsage(started).user / zones.length;
    say(`one advice: ${each.toFixed(1)} microseconds on average over ${zones.length} zones`);
    expect(each).toBeLessThan(50);
  });

  it('keeps every promise over cracks, steel, salts, frost, element and warnings', () => {
    const warnings = choicesOf('warnings');
    const bases: Partial<SettledZone>[] = [
      {},
      { depth: 'under-3', looseness: 'flaking' },
      { depth: '3-to-6', looseness: 'fractured', contamination: ['oil'] },
      { depth: '20-to-50', looseness: 'hollow' },
      { depth: '6-to-20', looseness: 'rotten', contamination: ['thick-coating'] },
    ];
    let walked = 0;
    for (const element of elements)
      for (const freezeThaw of frosts)
        for (const salts of choicesOf('salts'))
          for (let bits = 0; bits < 1 << warnings.length; bits++) {
            const site: SettledSite = {
              element,
              setting: 'open',
              salts,
              freezeThaw,
              thickness: 150,
              warnings: warnings.filter((_each, index) => bits & (1 << index)),
            };
            for (const cracks of choicesOf('cracks'))
              for (const steel of choicesOf('steel'))
                for (const base of bases) {
                  const zone = { ...plain, ...base, cracks, steel };
                  const advice = adviseSettled(site, zone);
                  const fault =
                    wrong(site, zone, advice) ?? unsafe(site, zone, advice) ?? unspoken(advice);
                  if (fault) expect.fail(`${fault}\n${JSON.stringify({ site, zone })}`);
                  walked += 1;
                }
          }
    say(`cracks, steel and warnings: ${walked.toLocaleString('en')} combinations`);
    expect(walked).toBe(5 * 3 * 3 * 128 * 5 * 4 * bases.length);
  });
});

const plain: SettledZone = {
  depth: 'film',
  looseness: 'tight',
  contamination: [],
  texture: 'sandy',
  cracks: 'none',
  steel: 'none-seen',
  finish: 'overlay',
  area: 4,
};

/** Every zone by depth, looseness, contaminants, texture and finish, in that order of digits. */
function* everyZone(): Generator<SettledZone> {
  for (const depth of depths)
    for (const looseness of loosenesses)
      for (const contamination of dirt)
        for (const texture of textures)
          for (const finish of finishes)
            yield { ...plain, depth, looseness, contamination, texture, finish };
}

/** Deeper, looser or dirtier never gives a weaker class: every neighbour one step worse is compared. */
function weaker(classes: Int8Array): string[] {
  const found: string[] = [];
  const tail = textures.length * finishes.length;
  const perLooseness = dirt.length * tail;
  const perDepth = loosenesses.length * perLooseness;
  let compared = 0;
  classes.forEach((here, slot) => {
    const dirtAt = Math.floor(slot / tail) % dirt.length;
    const looseAt = Math.floor(slot / perLooseness) % loosenesses.length;
    const depthAt = Math.floor(slot / perDepth) % depths.length;
    const worse = contaminants.flatMap((_each, bit) =>
      dirtAt & (1 << bit) ? [] : [slot + (1 << bit) * tail],
    );
    if (looseAt + 1 < loosenesses.length) worse.push(slot + perLooseness);
    if (depthAt + 1 < depths.length) worse.push(slot + perDepth);
    for (const other of worse) {
      compared += 1;
      if ((classes[other] as number) < here) found.push(`${slot} -> ${other}`);
    }
  });
  say(`never weaker: ${compared.toLocaleString('en')} neighbours compared`);
  return found.slice(0, 5);
}
