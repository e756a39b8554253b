import { describe, expect, it } from 'vitest';
import type { UnitSystem } from '$lib/answers/units';
import { formatter } from '$lib/words/format';
import { wholeFigures } from '$shared/figure-notes';
import { untied } from '../helpers/plain-formatter';
import { advices } from '../helpers/settled-cases';
import { contentWritten, wordsWritten } from '../helpers/texts';
import { allTexts, spokenBy } from '../helpers/words';

/** Units of the one system and of the other: as words, or as signs behind a number. */
const names: Readonly<Record<UnitSystem, RegExp>> = {
  metric: /\b(?:(?:milli|centi|kilo)?metres?|litres?|kilos?|kilograms?|tonnes?|celsius)(?!\w)/i,
  us: /\b(?:inch|inches|cubic yards?|gallons?|pounds?|fahrenheit)\b|[\d#] cfm\b|\b(?:square|cubic|two|three) feet\b|\bone yard\b/i,
};
const signs: Readonly<Record<UnitSystem, RegExp>> = {
  metric: /[\d#] ?(?:mm|cm|m|km|m³\/min|m²|m³|L|kg|°C|MPa|bar|kPa|kN)(?![\w²³/-])/,
  us: /\d ?(?:ft|sq ft|cu ft|cu yd|lb|psi|gal|mil|°F)(?![\w-])|(?<![A-Z])\d ?in(?! (?:a|an|the|one|its|any|each|every)\b)(?![\w-])/,
};
const has = (system: UnitSystem, text: string) =>
  names[system].test(text) || signs[system].test(text);
const other = { metric: 'us', us: 'metric' } as const;

describe('units follow the reader', () => {
  // A reader who has chosen one system meets no sentence in the other.
  it.each(['us', 'metric'] as const)('%s: no text and no sentence of the advice', (system) => {
    const say = formatter(system);
    const told = [...allTexts(say), ...advices.flatMap((advice) => spokenBy(advice, say))];
    const strange = new Set(
      told.flatMap(({ at, text }) => (has(other[system], untied(text)) ? [`${at}: ${text}`] : [])),
    );
    expect([...strange]).toEqual([]);
  });

  // A note stands beside its figure for every reader. Records of weather stations keep the unit they were taken in.
  it('no note of a figure has a metric unit alone', () => {
    const alone = Object.entries(wholeFigures)
      .filter(([id]) => !id.startsWith('snow.water.'))
      .flatMap(([id, { note = '' }]) =>
        untied(note)
          .split(/(?<=[.?!;])\s+/)
          .filter((sentence) => has('metric', sentence) && !has('us', sentence))
          .map((sentence) => `${id}: ${sentence}`),
      );
    expect(alone).toEqual([]);
  });

  /** Where one system alone is meant: what a unit is called, what is asked in the reader's own, a file's format. */
  const meant = [
    'src/lib/words/en/language.ts',
    'src/lib/words/en/ui/frame.ts',
    'src/lib/words/en/prices.ts',
    'src/lib/words/en/climate-file.ts',
    'src/lib/words/en/keep.ts',
  ];

  // What is written out without asking for the reader's units names both, or none.
  it('no written text has a unit of one system alone', () => {
    const alone = [...wordsWritten(), ...contentWritten()]
      .filter(({ file }) => !meant.includes(file))
      .flatMap(({ file, text }) =>
        untied(text)
          .split(/(?<=[.?!])\s+/)
          .flatMap((sentence) =>
            has('metric', sentence) === has('us', sentence) ? [] : [`${file}: ${sentence.trim()}`],
          ),
      );
    expect(alone).toEqual([]);
  });
});
