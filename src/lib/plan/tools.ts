import { isFirmHollow } from '$lib/advice/demands';
import { isFloor, placeOf, type Place } from '$lib/advice/place';
import type { RuleId } from '$lib/advice/rules';
import type { Advice } from '$lib/advice/types';
import { isSurely, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import { bandOf, depthBands } from '$lib/answers/depth';
import { choicesOf } from '$lib/answers/questions';
import type { FigureId } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { tools, toolsOf, type ToolId } from '$shared/tools';

/** A tool with the class it must be of: a figure with the most it may weigh, kg. */
export interface Tooling {
  readonly tool: ToolId;
  readonly class?: FigureId;
}

/** What of a step and its zone decides the tool. */
export interface ToolPlace {
  readonly place: Place;
  readonly onFloor: boolean;
  /** Reasons the advice gives for the step. */
  readonly why: readonly RuleId[];
  /** Whether steel shows, or rust of it. */
  readonly steel: boolean;
}

const large = 'hammer.large-patch' as const;
const small = 'hammer.small-patch' as const;
const above = 'hammer.above-steel' as const;
const beside = 'hammer.at-steel' as const;

/**
 * The tool a step is done with in a zone. The advice has said what the place allows; the plan, the
 * day and the sharing-out reckon with that tool and no other. A spot gets hand tools, a shotblaster
 * only a flat floor it can seal on, a patch the light hammer of its class, and the border gets what
 * reaches the roughness of the rest.
 * Source: common practice, no published source; classes of hammers from figures `hammer.*`.
 */
export function toolFor(step: StepId, { place, onFloor, why, steel }: ToolPlace): Tooling {
  const wide = onFloor && place === 'floor';
  const [usual] = toolsOf(step, onFloor);
  switch (step) {
    case 'break-out':
      if (why.includes('light-hammer-here'))
        return { tool: 'chipping-hammer', class: steel || onFloor ? above : beside };
      return { tool: 'chipping-hammer', class: wide ? large : small };
    case 'free-bar':
      return { tool: 'chipping-hammer', class: beside };
    case 'chase-crack':
      return { tool: 'chipping-hammer', class: steel ? beside : small };
    case 'grind':
      return { tool: wide ? 'floor-grinder' : 'hand-grinder' };
    case 'scarify':
      return { tool: wide ? 'scarifier' : 'scabbler' };
    case 'saw-cut':
      return { tool: onFloor && place !== 'floor-spot' ? 'walk-behind-saw' : 'hand-saw' };
    case 'blast-clean':
      return { tool: wide && why.includes('skin-by-shotblaster') ? 'shotblaster' : 'blast-nozzle' };
    case 'edge-work':
      return { tool: why.includes('border-by-grinder') ? 'hand-grinder' : 'needle-scaler' };
    case 'last-clean':
      // On a damp face there is nothing to vacuum: it is looked at, and rinsed where it got dirty.
      return { tool: why.includes('last-look') ? 'hand-tools' : usual };
    default:
      return { tool: usual };
  }
}

/** The place of a zone; where the element is open, the harder of what is possible. */
export function placeOfZone(
  site: SiteAnswers,
  answers: ZoneAnswers,
): Pick<ToolPlace, 'place' | 'onFloor' | 'steel'> {
  const elements = site.element ?? choicesOf('element').slice(0, 1);
  const element = elements.find((each) => !isFloor(each)) ?? elements[0] ?? 'slab';
  const { depth = [] } = answers;
  const bands = typeof depth === 'number' ? [bandOf(depth, 'unknown')] : depth;
  const shallowest = depthBands.find((band) => bands.includes(band));
  const firm =
    shallowest !== undefined &&
    isSurely(answers.looseness, 'tight') &&
    isSurely(answers.finish, 'rebuild') &&
    isFirmHollow({ looseness: 'tight', finish: 'rebuild', depth: shallowest });
  return {
    place: placeOf(element, answers.area ?? 'unknown', firm),
    onFloor: isFloor(element),
    steel: !isSurely(answers.steel, 'none-seen'),
  };
}

/** The tools of every step of a zone, by its advice. */
export function toolingOf(
  advice: Advice,
  place: Pick<ToolPlace, 'place' | 'onFloor' | 'steel'>,
): ReadonlyMap<StepId, Tooling> {
  return new Map(
    advice.steps.map(({ id, why }) => [
      id,
      toolFor(id, { ...place, why: why.map(({ rule }) => rule) }),
    ]),
  );
}

/**
 * What has to stand beside a tool: air for what runs on air alone, and a vacuum for the slurry of a
 * wet saw and the dust of a routed crack. Source: common practice, no published source.
 */
export function besideTool(step: StepId, tool: ToolId): readonly ToolId[] {
  const { power } = tools[tool];
  return [
    ...(power.length === 1 && power[0] === 'air' ? (['compressor'] as const) : []),
    ...(step === 'saw-cut' || step === 'route-crack' ? (['vacuum'] as const) : []),
  ];
}
