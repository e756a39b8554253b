import { choicesOf, questionIds } from '$lib/answers/questions';
import type { RuleId } from '$lib/advice/rules';
import type { Advice, Reason } from '$lib/advice/types';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import { words } from '$lib/words';
import { formatter } from '$lib/words/format';
import type { Say } from '$lib/words/types';

/** One text of the site and where it stands. */
export interface Placed {
  readonly at: string;
  readonly text: string;
  /** Whether it is meant to be whole sentences, with a capital and a full stop. */
  readonly whole: boolean;
}

/** Whole sentences: a capital or a number first, a full stop or a question mark last. */
export const sentence = /^(?:[A-Z“]|\d).*[.?]$/s;

/** What shows that a value went missing on its way into a sentence. */
export const broken = /undefined|NaN|\[object|Infinity|\bnull\b|\$\{| {2}|\.\.| [.,;:]/;

/** Spellings that are not the house's: it is British, with each term of the trade spelled one way. */
// A cover meter is an instrument: that is spelled so on both sides of the ocean.
export const strangers = [
  /\bshot[- ]blast/i,
  /\bscarif(?!y|ying|ier|ied|ies)/i,
  /\bsaw cut\b/i,
  /\bpower[- ]?wash/i,
  /\bhydro-?demolition/i,
  /\bjackhammer/i,
  /\bcolor\b|\bgray\b|\bcenter\b|(?<!\bcover )\bmeters?\b(?! close by|\.|:)|\bliters?\b|\bmold\b|\bsidewalk/i,
  /\bleveling|\bleveled|\bcurb\b|\bcaulk/i,
  /\w+(?:iz)(?:e|ed|ing|ation)\b(?<!\bsize|sized|sizing|seize|prize)/i,
  /\broute (?:a|the) /i,
  /\bspal\b|\bdelaminat/i,
];

const numeric = formatter('metric');

/** A formatter that says a letter for every number: what digits are left were typed into a sentence. */
export const mute: Say = Object.fromEntries(
  Object.entries(numeric).map(([name, value]) => [
    name,
    typeof value !== 'function' || name === 'list' || name === 'either' || name === 'valueOf'
      ? value
      : () => 'some',
  ]),
) as unknown as Say;

/** Every text in `words` but the rules, which speak only of what a rule saw: see `spokenBy`. */
export function allTexts(say: Say): Placed[] {
  const placed: Placed[] = [];
  walk(words.questions(say), 'questions', placed);
  walk(words.methods(say), 'methods', placed);
  walk(words.steps(say), 'steps', placed);
  walk(words.hazards(say), 'hazards', placed);
  walk(words.tests(say), 'tests', placed);
  walk(words.verdicts, 'verdicts', placed);
  return placed;
}

/** Every sentence a piece of advice is told in, each with its rule. */
export function spokenBy(advice: Advice | ZoneAdvice, say: Say): (Placed & { rule: RuleId })[] {
  const rejections = new Set<Reason>(advice.rejections);
  const all = [
    ...advice.reasons,
    ...advice.holds,
    ...advice.rejections,
    ...advice.steps.flatMap(({ why }) => why),
  ];
  return all.map((reason) => ({
    rule: reason.rule,
    at: `rules.${reason.rule}`,
    text: words.rules[reason.rule](reason, say),
    whole: !rejections.has(reason),
  }));
}

/** Fields that are labels rather than sentences. */
const labels = new Set(['name', 'short', 'label', 'unit', 'example', 'unknown', 'doing']);

function walk(value: unknown, at: string, placed: Placed[]): void {
  if (typeof value === 'string') {
    const field = at.split('.').at(-1) ?? '';
    placed.push({ at, text: value, whole: !labels.has(field) });
  } else if (value && typeof value === 'object')
    for (const [key, inner] of Object.entries(value)) walk(inner, `${at}.${key}`, placed);
}

/** What an owner reads about a question: all of it, choices and hints included. */
export function ownerTexts(say: Say): { readonly id: string; readonly text: string }[] {
  const questions = words.questions(say);
  return questionIds.map((id) => {
    const { ask, why, find, choices, number } = questions[id];
    const hints = (choicesOf(id) as readonly string[]).map(
      (choice) => (choices as Record<string, { hint: string }>)[choice]?.hint ?? '',
    );
    return { id, text: [ask, why, ...find, ...hints, number?.hint ?? ''].join(' ') };
  });
}
