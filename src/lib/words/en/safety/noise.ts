import { toStep } from '$lib/safety/bounds';
import type { Ears } from '$lib/safety/ears';
import type { NoiseOfDay, NoiseStanding } from '$lib/safety/noise';
import type { NoiseLimitId } from '$lib/safety/noise-limits';
import type { Protector, ProtectorCautionId } from '$lib/safety/protector';
import type { Bounds, Standing } from '$lib/safety/types';
import type { Say } from '$lib/words/types';
import { toolWords } from './tools';

/** The name of each noise limit and what it means to pass it. */
export const noiseLimitWords = (
  say: Say,
): Readonly<Record<NoiseLimitId, { readonly name: string; readonly means: string }>> => ({
  'osha-action': {
    name: `US action level, ${say.figure('noise.osha-action')} over ${say.figure('noise.day')}`,
    means: 'From here employers in general industry must test and protect hearing.',
  },
  'osha-limit': {
    name: `US legal limit (OSHA), ${say.figure('noise.osha-criterion')} over ${say.figure('noise.day')}`,
    means: 'Past this the law asks for less noise or less time, and protectors.',
  },
  niosh: {
    name: `US recommended limit (NIOSH), ${say.figure('noise.niosh-criterion')} over ${say.figure('noise.day')}`,
    means: 'Past this hearing is at risk. It is stricter than the law, and closer to the harm.',
  },
  'eu-lower': {
    name: `European lower action value, ${say.figure('noise.eu-lower')} over ${say.figure('noise.day')}`,
    means: 'From here protectors must be offered, and people told of the risk.',
  },
  'eu-upper': {
    name: `European upper action value, ${say.figure('noise.eu-upper')} over ${say.figure('noise.day')}`,
    means: 'From here protectors must be worn, and the noise brought down by a plan.',
  },
  'eu-limit': {
    name: `European limit, ${say.figure('noise.eu-limit')} over ${say.figure('noise.day')} at the ear`,
    means: 'Nobody may pass this, protectors counted in.',
  },
});

/** How a day stands to a limit, in a few words that need no colour. */
export const standingWords: Readonly<Record<Standing, string>> = {
  over: 'over',
  'may-be-over': 'may be over',
  under: 'under',
  unknown: 'not known',
};

/** A number with its ends, and "at least" where something unknown comes on top. */
export function boundsWords(say: Say, { low, high, open }: Bounds, unit: string): string {
  const text = say.ends(say.number(low), say.number(high));
  const label = unit === '%' ? unit : ` ${unit}`;
  // Nothing of it is known.
  if (open && high <= 0) return 'unknown';
  return open ? `unknown, at least ${text}${label}` : `${text}${label}`;
}

/** From twice what a limit allows on, times are easier to grasp than per cent. */
const manifold = 2;

/** A day's noise against what a limit allows: in per cent, or how many times as much. */
function against(say: Say, part: Bounds): string {
  if (part.high < manifold) {
    const percent = toStep({ ...part, low: part.low * 100, high: part.high * 100 }, 1);
    return `${boundsWords(say, percent, '%')} of what it allows`;
  }
  const times = toStep(part, part.low < 10 ? 0.1 : 1);
  return `${boundsWords(say, { ...times, high: Math.round(part.high) }, 'times')} what it allows`;
}

/** The usual value beside two ends, from the quietest tools to the loudest. */
function usually(say: Say, part: Bounds, typical: number): string {
  if (part.low === part.high || part.open) return '';
  return part.high < manifold
    ? ` (usually ${say.number(Math.round(typical * 100))}%)`
    : ` (usually ${say.number(Math.round(10 * typical) / 10)} times)`;
}

/** How much of a limit a day uses up, from the quietest tools to the loudest. */
export function noiseSentence(say: Say, { part, level, typical, standing }: NoiseStanding): string {
  const used = `${against(say, part)}${usually(say, part, typical.part)}, without protectors`;
  const mean = boundsWords(say, toStep(level, 1), 'dB(A)');
  switch (standing) {
    case 'over':
      return `Over the limit: ${used}. The mean of the day is ${mean}.`;
    case 'may-be-over':
      return `It may pass the limit: ${used}. The mean of the day is ${mean}.`;
    case 'under':
      return `Under the limit: ${used}. The mean of the day is ${mean}.`;
    case 'unknown':
      if (part.high <= 0)
        return 'We cannot tell: no level is known. Ask the maker for the level at the operator, or have it measured.';
      return `We cannot tell: ${used}. Ask the maker for the level at the operator, or have it measured.`;
  }
}

/** The tools whose level nobody has published. */
export function unknownNoiseSentence(say: Say, { unknown }: NoiseOfDay): string | null {
  if (!unknown.length) return null;
  const names = say.list(unknown.map((tool) => toolWords[tool].name));
  return `We found no published level for: ${names}. Type the maker’s figure or a measurement. Until then we show what the other tools give at least, and never a guess.`;
}

/** The time left before a limit. */
export function hoursLeftSentence(say: Say, { hoursLeft, standing }: NoiseStanding): string {
  if (standing === 'over') return 'No time is left today.';
  if (hoursLeft.open) return 'How much time is left cannot be told until every level is known.';
  const day = 24;
  const quarter = (hours: number) => Math.floor(hours * 4) / 4;
  const [least, most] = [quarter(hoursLeft.low), quarter(hoursLeft.high)];
  if (least >= day) return 'This mix does not reach the limit in a day.';
  if (least <= 0) return 'There may be no time left today.';
  return `After the longest time planned: at the loudest, ${say.hours(least)} more of this mix ${
    most > least && most < day ? `(at the quietest ${say.hours(most)}) ` : ''
  }and the limit is reached.`;
}

/** What a protector has to do: with tools as they usually are, and with the loudest there are. */
export function protectorSentence(
  say: Say,
  { needed, rating, beyondOne }: Protector,
  ears: Ears | null,
): string {
  if (needed.high <= 0 && !needed.open)
    return 'No protector is needed for this limit. It does no harm to wear one.';
  if (needed.high <= 0)
    return 'Whether a protector is needed is not known: no level is. Measure first, and wear one until then.';
  const up = (value: number) => say.number(Math.ceil(value - 1e-9));
  const open = needed.open ? ' or more: some levels are not known' : '';
  const most = up(needed.high);
  const usual = ears ? up(ears.needed) : '0';
  const amount =
    usual === most
      ? `${most} dB at the ear`
      : `${usual} dB at the ear with tools as they usually are, ${most} dB with the loudest`;
  const off = `Protectors have to take off ${amount}${open}. Worn on a site they lose about ${say.figure('noise.rating-derating')} of what the label says.`;
  const both = `plugs and muffs together, both of the highest rating sold (NRR up to ${say.figure('noise.rating-highest')})`;
  if (ears?.by === 'neither')
    return `${off} Not even plugs and muffs together do that. Wear ${both}, and do not stop there: ${wearAndMore}.`;
  // No rating that nobody sells is asked for.
  return beyondOne
    ? `${off} No single protector does ${ears?.by === 'both' ? 'that' : 'the last'}. Wear ${both}, and cut the time or take a quieter tool.`
    : `${off} Look for a rating (NRR) of ${up(rating.high)} or more: it does for the loudest.`;
}

/** What helps where all that can be worn is too little, the source first. Source: common practice. */
export const wearAndMore =
  'fewer hours a person, a quieter tool, a screen or distance, a specialist for ears';

/** What always goes with a protector. */
export const protectorCautions: Readonly<Record<ProtectorCautionId, string>> = {
  'rating-is-laboratory':
    'The rating on the label was found in a laboratory. Real use gives less, and a bad fit gives nothing.',
  'fit-it-and-check':
    'Roll plugs thin, pull the ear up and back, and hold them in until they fill it. Have the fit checked.',
  'hear-the-warnings': 'Make sure that warnings and machines can still be heard or seen.',
  'quieter-first': 'A quieter tool or more distance comes before any protector.',
};
