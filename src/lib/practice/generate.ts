import { bandOf, rangeOfBand } from '$lib/answers/depth';
import { choicesOf, type DepthBand, type Finish, type Warning } from '$lib/answers/questions';
import { isFloor } from '$lib/advice/place';
import { moistureOf, profileWanted } from '$lib/advice/sheet';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import type { Case } from './case';
import { diceFrom, type Dice } from './dice';
import { nonsenseIn } from './nonsense';
import { isOf, leanOf, round, type Lean, type Size, type Stratum } from './strata';

/**
 * The way cases are drawn. It is part of every generated case's id, so that a link or a kept
 * result never comes to mean another case: whoever changes the drawing raises it.
 */
export const drawing = 'g3';

/** Seeds of generated cases go from 0 to this. */
export const lastSeed = 2 ** 31 - 1;
/** Tries at one case. Tests show that a few hundred are enough. */
const tries = 20_000;

export const generatedId = (seed: number): string => `${drawing}-${seed}`;

/** The seed in the id of a generated case, or null for any other text. */
export function seedIn(id: string): number | null {
  const [, drawn, digits] = /^(g\d+)-(0|[1-9]\d{0,9})$/.exec(id) ?? [];
  if (drawn !== drawing) return null;
  const seed = Number(digits);
  return seed <= lastSeed ? seed : null;
}

/** The kind of case a seed gives: each run of seeds as long as a round has every kind in its share. */
export function stratumOf(seed: number): Stratum {
  const block = diceFrom(Math.floor(seed / round.length)).shuffle(round);
  return block[seed % round.length] as Stratum;
}

/**
 * The case of a seed: consistent, and of the seed's kind.
 * @param seed whole, 0 to `lastSeed`
 */
export function generate(seed: number): Case {
  const stratum = stratumOf(seed);
  const lean = leanOf(stratum);
  const dice = diceFrom(seed);
  for (let turn = 0; turn < tries; turn += 1) {
    const site = drawSite(dice, lean);
    const zone = drawZone(dice, lean, site);
    if (nonsenseIn(site, zone).length) continue;
    const drawn = { id: generatedId(seed), site, zone };
    if (isOf(drawn, stratum)) return drawn;
  }
  throw new Error(`No case found for seed ${seed}.`);
}

/** Usual thicknesses of invented concrete, mm: what tapes read on sites, not figures of the trade. */
const thicknesses = [100, 120, 150, 180, 200, 250] as const;

function drawSite(dice: Dice, lean: Lean): SettledSite {
  const warnings: Warning[] = lean.warning ? [lean.warning] : [];
  // Now and then a sign that need not hold anything up: whether it does is what is to be learned.
  if (dice.chance(lean.warning ? 0.1 : 0.25)) warnings.push(dice.pick(choicesOf('warnings')));
  const known = lean.thickness ? lean.thickness === 'known' : dice.chance(0.7);
  return {
    element: dice.pick(lean.element ?? choicesOf('element')),
    setting: dice.pick(choicesOf('setting')),
    salts: dice.chance(0.6) ? 'none' : dice.pick(choicesOf('salts')),
    freezeThaw: dice.pick(choicesOf('freezeThaw')),
    thickness: known ? dice.pick(thicknesses) : 'unknown',
    warnings: choicesOf('warnings').filter((warning) => warnings.includes(warning)),
  };
}

function drawZone(dice: Dice, lean: Lean, site: SettledSite): SettledZone {
  const contaminants = lean.contamination ?? choicesOf('contamination');
  const finish = dice.pick(
    lean.finish ?? choicesOf('finish').filter((each) => each !== 'undecided'),
  );
  const dirty = dice.chance(lean.contamination ? 0.9 : 0.35);
  const steel = lean.steel
    ? dice.pick(lean.steel)
    : dice.chance(0.7)
      ? 'none-seen'
      : dice.pick(choicesOf('steel'));
  return {
    ...drawDepth(dice, dice.pick(lean.depth ?? choicesOf('depth')), site.thickness),
    looseness: dice.pick(lean.looseness ?? choicesOf('looseness')),
    contamination: dirty ? [dice.pick(contaminants)] : [],
    texture: dice.pick(lean.texture ?? choicesOf('texture')),
    cracks: lean.cracks
      ? dice.pick(lean.cracks)
      : dice.chance(0.6)
        ? 'none'
        : dice.pick(choicesOf('cracks')),
    steel,
    ...(steel === 'corroded' && { barLoss: dice.pick(lean.barLoss ?? ['within-limit']) }),
    finish,
    ...drawSheet(dice, lean, finish),
    ...drawSize(dice, lean.size ?? drawnSize(dice), isFloor(site.element)),
  };
}

const drawnSize = (dice: Dice): Size =>
  dice.chance(0.15) ? 'spot' : dice.chance(0.2) ? 'wide' : 'usual';

/** Areas in m2 as a tape gives them, on either side of the limits the ladders turn on. */
function drawSize(dice: Dice, size: Size, floor: boolean): Pick<SettledZone, 'area' | 'border'> {
  if (size === 'spot') return { area: dice.between(1, 9) / 10 };
  const area = size === 'wide' ? dice.between(11, 40) : dice.between(2, 20) / 2;
  if (!floor) return { area };
  // Along one side of it, or along none.
  return { area, border: dice.chance(0.5) ? 0 : Math.ceil(Math.sqrt(area)) };
}

/**
 * What a data sheet of the finish asks for: a grade up to two below the usual table's lowest, never
 * past its highest, and now and then the other moisture than the usual.
 */
function drawSheet(
  dice: Dice,
  lean: Lean,
  finish: Finish,
): Pick<SettledZone, 'makerProfile' | 'makerMoisture'> {
  const table = profileWanted({ finish });
  const inHand = lean.sheet ?? dice.chance(0.15);
  if (!inHand || !table) return {};
  const usual = moistureOf({ finish }) === 'dry' ? 'dry' : 'damp';
  const mayTurn = finish === 'thin-overlay' || finish === 'self-levelling';
  const other = usual === 'dry' ? 'damp' : 'dry';
  return {
    makerProfile: dice.between(Math.max(1, table[0] - 2), table[1]),
    makerMoisture: mayTurn && dice.chance(0.3) ? other : usual,
  };
}

/** A depth in whole mm within a band, as a tape gives it; none where a tape gives nothing. */
function drawDepth(
  dice: Dice,
  band: DepthBand,
  thickness: number | 'unknown',
): Pick<SettledZone, 'depth' | 'depthMm'> {
  if (band === 'film' || band === 'through') return { depth: band };
  const [lower, upper] = rangeOfBand(band, 'unknown');
  const most = Math.min(Math.ceil(upper) - 1, 2 * lower + 2);
  const depthMm = dice.between(Math.floor(lower) + 1, Math.max(most, Math.floor(lower) + 1));
  return { depth: bandOf(depthMm, thickness), depthMm };
}
