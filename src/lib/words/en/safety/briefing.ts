import type { BriefingLine } from '$lib/safety/briefing';
import { noiseAim } from '$lib/safety/noise-limits';
import type { Safety } from '$lib/safety/safety-of';
import { hazardWords } from '$words/hazards';
import { eyesWorn } from '$words/hazards/eyes';
import type { Say } from '$lib/words/types';
import { keepOffLine } from './ears';
import { protectorSentence } from './noise';
import { toolWords } from './tools';

/** A line that is read out: what it is about, and what to do. */
export interface SpokenLine {
  readonly name: string;
  readonly line: string;
}

/**
 * Who changes over, by what shakes as tools usually do; noise is met by what is on the ears. The plan
 * lays days by hours of work: where a day of it shakes too much, it is told what is passed and by what.
 */
function turnsLine(say: Say, { sharing, workers }: Safety): string {
  const [action, limit] = [sharing['vibration-action'], sharing['vibration-limit']];
  const shared = ({ people, days }: { people: number; days: number }, value: string) => {
    if (days > 1)
      return `The plan goes by hours, not by what shakes. In one day it is too much for ${say.number(workers.length)} by the ${value}: take ${say.number(days)} days, in equal turns.`;
    return people < 2
      ? 'By vibration, one person can do all that shakes today.'
      : `${say.number(people)} people take turns at what shakes, each as long as the others.`;
  };
  if (action.can === 'share') {
    const within = action.days > 1 && limit.can === 'share' && limit.days === 1;
    return `${shared(action, 'action value')}${within ? ' Equal turns keep you under the limit value today.' : ''}`;
  }
  const names = say.list(action.tools.map((tool) => toolWords[tool].name));
  if (limit.can === 'share')
    return `${shared(limit, 'limit value')} That keeps you under the limit value, not under the action value: ask for another tool in place of the ${names}.`;
  return `Do not begin with the ${names}: ${say.hours(say.valueOf('share.step'))} of it is too much for one day. The crew lead finds another tool or method first.`;
}

/** What everybody breathes through, and what is only a safe beginning. */
function maskLine(
  say: Say,
  { factor, hood, near, measure }: Extract<BriefingLine, { id: 'mask' }>,
): string {
  return [
    `Wear a mask of factor ${String(factor)} or more where the list asks for one, tight on shaved skin.`,
    ...(near ? ['Near it wear one too, or stay out of the dust.'] : []),
    ...(hood
      ? [
          'Behind the nozzle, wear a hood fed with clean air. Near it wear that mask, or stay outside the barrier.',
        ]
      : []),
    ...(measure.length
      ? [
          `No table has a row for the ${say.list(measure.map((tool) => toolWords[tool].name))}: keep to this until a competent person has measured the dust.`,
        ]
      : []),
  ].join(' ');
}

const cleaning = 'Do not sweep dry and do not blow with air. Vacuum, or wet it first.';

/** A line of the briefing, as an order that can be followed. */
export function briefingLine(say: Say, line: BriefingLine, safety: Safety): SpokenLine {
  switch (line.id) {
    case 'dust-controls':
      return {
        name: 'Dust',
        line: `Run what the list says against dust, all the time. When it stops, you stop. ${cleaning}`,
      };
    case 'mask':
      return {
        name: 'Mask',
        line: maskLine(say, line),
      };
    case 'cleaning':
      return {
        name: 'Cleaning',
        line: cleaning,
      };
    case 'ears':
      return {
        name: 'Ears',
        line: `${protectorSentence(say, line.worker.noise.limits[noiseAim[safety.region]].protector, line.worker.ears)}${line.away ? ` ${keepOffLine(say, line.away)}` : ''}`,
      };
    case 'hands':
      return {
        name: 'Hands',
        line: `Keep to the longest turns in the list. Change over before your fingers tingle or go white. ${turnsLine(say, safety)}`,
      };
    case 'eyes':
      return {
        name: 'Eyes',
        line: `Pieces fly. ${eyesWorn} Guards stay on, and nobody passes by without goggles.`,
      };
    case 'leave':
      return { name: 'Leave alone', line: `It waits: ${say.list(line.zones)}.` };
    case 'stop': {
      const { name, stop } = hazardWords(say)[line.hazard];
      return { name, line: stop };
    }
    case 'anyone':
      return { name: 'Stop', line: 'Anybody may stop the work. Nobody is blamed for it.' };
  }
}
