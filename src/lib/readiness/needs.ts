import { isProbed, moistureOf, profileFigureOf } from '$lib/advice/sheet';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { checkIds, type CheckId } from '$lib/answers/readiness-record';
import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import { hazardsOfStep, methodIds, methods, type StepId } from '$shared/methods';
import { checks } from './checks';
import type { NeedRule, ReadinessReason } from './rules';

/** What the rules about checks look at: part of the settled answers, and the steps advised. */
export interface CheckSituation {
  readonly site: Pick<SettledSite, 'element' | 'setting' | 'salts'>;
  readonly zone: Pick<
    SettledZone,
    'steel' | 'finish' | 'area' | 'contamination' | 'makerProfile' | 'makerMoisture'
  >;
  readonly steps: readonly StepId[];
}

/** How strongly a check is called for: by these answers, or only where the specification says so. */
type NeedLevel = 'needed' | 'if-specified';

export interface Need {
  readonly check: CheckId;
  readonly level: NeedLevel;
  readonly why: ReadinessReason<NeedRule>;
  /** Figures that say what passes. */
  readonly passes: readonly FigureId[];
}

type Call = readonly [NeedLevel, NeedRule, (readonly FigureId[])?] | null;

const thick = new Set(['build-coat', 'self-levelling', 'thin-overlay', 'overlay', 'rebuild']);

/**
 * Whether each check is called for, and why.
 * Source: common practice, no published source; the figures of a check carry their own.
 */
const calls: Readonly<Record<CheckId, (s: CheckSituation, own?: OwnFigures) => Call>> = {
  sounding: () => ['needed', 'sound-everywhere'],
  edges: ({ steps }) => (steps.includes('saw-cut') ? ['needed', 'edge-square'] : null),
  'bars-free': ({ zone }) => (barShows(zone) ? ['needed', 'bar-gripped-round'] : null),
  'bars-clean': ({ zone }) => (barShows(zone) ? ['needed', 'rust-off'] : null),
  chloride: ({ site, zone }) => (steelAndSalt(site, zone) ? ['needed', 'salts-reach-steel'] : null),
  carbonation: ({ zone }) =>
    zone.steel === 'corroded'
      ? ['needed', 'air-reaches-steel']
      : zone.steel === 'none-seen'
        ? null
        : ['if-specified', 'air-if-specified'],
  'half-cell': ({ site, zone }) =>
    steelAndSalt(site, zone) ? ['if-specified', 'potential-if-specified'] : null,
  profile: ({ zone, steps }) => {
    if (zone.makerProfile !== undefined) return ['needed', 'profile-from-sheet'];
    if (takesTexture({ zone, steps })) return null;
    const figure = profileFigureOf(zone.finish);
    return figure ? ['needed', 'profile-for-finish', [figure]] : ['needed', 'finish-open'];
  },
  'pull-off': ({ zone }, own) => {
    if (zone.finish === 'undecided') return ['if-specified', 'finish-open'];
    if (!thick.has(zone.finish)) return ['if-specified', 'thin-if-specified'];
    const large = zone.area === 'unknown' || zone.area >= valueOf('pulloff.large-area', own);
    return large
      ? ['needed', 'bond-carries-finish', ['pulloff.large-area']]
      : ['if-specified', 'small-if-specified', ['pulloff.large-area']];
  },
  ph: ({ zone }) => (zone.contamination.includes('oil') ? ['needed', 'chemicals-left'] : null),
  'dust-tape': () => ['needed', 'dust-breaks-bond'],
  'water-drop': () => ['needed', 'drop-shows-film'],
  absorption: () => ['needed', 'must-drink'],
  'plastic-sheet': ({ zone }) => {
    if (zone.makerMoisture === 'dry') return ['needed', 'sheet-wants-dry'];
    if (wantsDamp(zone)) return null;
    if (zone.finish === 'undecided') return ['if-specified', 'finish-open'];
    return zone.finish === 'sealer'
      ? ['if-specified', 'sealer-if-specified']
      : ['needed', 'coating-hates-damp'];
  },
  humidity: ({ site, zone }) =>
    !wantsDamp(zone) && isProbed(site, zone) ? ['needed', 'film-traps-moisture'] : null,
  'surface-damp': ({ zone }) =>
    !wantsDamp(zone)
      ? null
      : ['needed', zone.makerMoisture === 'damp' ? 'sheet-wants-damp' : 'damp-for-cement'],
  'slurry-ph': ({ steps }) => (steps.some(makesSlurry) ? ['needed', 'slurry-harms'] : null),
  'fill-cured': ({ steps }) =>
    steps.includes('fill-level') ? ['needed', 'fill-cures-apart'] : null,
  /**
   * Outdoors and under a roof without heating the surface is colder than the air in the morning and
   * hotter by noon, whatever goes on. In a heated room it is near the air: measured where somebody
   * asks, and not under a sealer, which is wiped on in a minute and takes up what little there is.
   */
  'dew-point': ({ site, zone }) => {
    if (site.setting === 'indoors')
      return zone.finish === 'sealer' ? null : ['if-specified', 'dew-if-specified'];
    return ['needed', wantsDamp(zone) ? 'cold-under-cement' : 'dew-under-cover'];
  },
  'open-time': () => ['needed', 'stale-after-a-day'],
};

/** What goes on wants the surface damp, by its sheet or by the usual rule. */
export const wantsDamp = (zone: Pick<SettledZone, 'finish' | 'makerMoisture'>) =>
  moistureOf(zone) === 'saturated-surface-dry';

const cements = new Set(['thin-overlay', 'overlay', 'rebuild']);
/** What goes on is cement, placed like concrete. */
export const isCement = ({ finish }: Pick<SettledZone, 'finish'>) => cements.has(finish);

/** Work that leaves water full of cement to catch and get rid of. */
export const makesSlurry = (step: StepId) => hazardsOfStep[step].includes('wash-water');

/** A method that leaves a roughness of its own; washing leaves what it finds. */
export const roughens = (step: StepId) =>
  methodIds.some((id) => id === step && methods[id].profile !== 'as-found');

/** A sealer soaks into the texture it finds: where nothing roughens it there is nothing to compare. */
export const takesTexture = ({ zone, steps }: Pick<CheckSituation, 'zone' | 'steps'>) =>
  zone.finish === 'sealer' && zone.makerProfile === undefined && !steps.some(roughens);

const barShows = (zone: CheckSituation['zone']) =>
  zone.steel === 'exposed' || zone.steel === 'corroded';

const steelAndSalt = (site: CheckSituation['site'], zone: CheckSituation['zone']) =>
  zone.steel !== 'none-seen' && site.salts !== 'none';

/** The checks that one settled zone calls for, in the order they are done. */
export function checksFor(situation: CheckSituation, own?: OwnFigures): Need[] {
  const needs: Need[] = [];
  for (const check of checkIds) {
    const call = calls[check](situation, own);
    if (!call) continue;
    const [level, rule, figures] = call;
    const { finish, steel, makerProfile } = situation.zone;
    const facts = { finish, steel, ...(makerProfile !== undefined && { least: makerProfile }) };
    needs.push({
      check,
      level,
      why: { rule, facts, ...(figures && { figures }) },
      passes: [
        ...(check === 'profile' && figures ? figures : []),
        // The whole scale of grades passes nobody.
        ...checks[check].figures.filter((id) => id !== 'csp.scale'),
      ],
    });
  }
  return needs;
}
