import { choose } from '$lib/advice/choice';
import { demandsOf } from '$lib/advice/demands';
import { adviseSettled } from '$lib/advice/settle';
import { workFor } from '$lib/advice/steps/all';
import type { Situation } from '$lib/advice/steps/work';
import type { Hold, Reason, SettledSite, SettledZone } from '$lib/advice/types';
import type { StepId } from '$shared/methods';

/** A floor on the ground of which everything is known; each test says what is otherwise. Invented. */
export const siteWith = (change: Partial<SettledSite> = {}): SettledSite => ({
  element: 'slab',
  setting: 'open',
  salts: 'none',
  freezeThaw: 'some',
  thickness: 300,
  warnings: [],
  ...change,
});

/** Sound, clean, broomed and uncracked, for an overlay: it is shotblasted for its roughness alone. */
export const zoneWith = (change: Partial<SettledZone> = {}): SettledZone => ({
  depth: 'film',
  looseness: 'tight',
  contamination: [],
  texture: 'sandy',
  cracks: 'none',
  steel: 'none-seen',
  finish: 'overlay',
  area: 20,
  ...change,
});

export type ZoneChange = Partial<SettledZone>;
export type SiteChange = Partial<SettledSite>;

export const adviceOn = (zone: ZoneChange = {}, site: SiteChange = {}) =>
  adviseSettled(siteWith(site), zoneWith(zone));

/** What the rules about steps see; a method that is given stands in the place of the chosen one. */
export function situationOn(
  zone: ZoneChange = {},
  site: SiteChange = {},
  given: Partial<Pick<Situation, 'method' | 'rest'>> = {},
): Situation {
  const [where, what] = [siteWith(site), zoneWith(zone)];
  const demands = demandsOf(where, what);
  const { method, rest } = choose(demands);
  return { site: where, zone: what, demands, method, rest, ...given };
}

/** A reason in one line: the rule, what it saw, and the figures it used. */
export const inLine = ({ rule, facts = {}, figures = [] }: Reason): string =>
  [
    rule,
    ...Object.entries(facts).map(([name, value]) => `${name}=${[value].flat().join('+')}`),
    ...figures,
  ].join(' ');

/** What is told of one step, whatever may still hold up the work; null where it is no step here. */
export const toldOf = (step: StepId, situation: Situation): readonly string[] | null =>
  workFor(situation)
    .find(({ id }) => id === step)
    ?.why.map(inLine) ?? null;

/** A hold in one line: how grave, who lifts it, and why. */
export const holdInLine = (hold: Hold): string => `${hold.verdict}, ${hold.who}: ${inLine(hold)}`;
