import type { Choice, OneQuestion, QuestionId, Warning, Contaminant } from '$lib/answers/questions';
import type { AuthoredCase, Case, Sense, Told } from '$lib/practice/case';
import { seedOf } from '$lib/practice/dice';
import { seedIn } from '$lib/practice/generate';
import type { Say } from '$lib/words/types';
import { lowered } from '$lib/words/by-language';
import { questionWords } from '$words/questions';
import { elementPlaces, settingPlaces, streets } from './places';
import { contaminantSigns, signs, warningSigns } from './signs';

/** A fact as it is read: how it was found out, and what. */
export interface Spoken {
  readonly by: Sense;
  /** The answers it gives away. */
  readonly about: readonly QuestionId[];
  readonly text: string;
}

const isAuthored = (one: Case): one is AuthoredCase => 'told' in one;

/** What a case is called: where it is, never what is wrong. */
export function caseTitle(one: Case): string {
  if (isAuthored(one)) return one.title;
  const { name } = elementPlaces[one.site.element];
  const street = streets[(seedIn(one.id) ?? 0) % streets.length] ?? '';
  return `${name}, ${street}`;
}

/** What somebody long in the trade would do; undefined for a generated case. */
export const seniorOf = (one: Case): string | undefined =>
  isAuthored(one) ? one.senior : undefined;

/** What somebody on the spot could tell of a case, in the reader's units. */
export function toldOf(one: Case, say: Say): readonly Spoken[] {
  const told = isAuthored(one) ? one.told : toldByTruth(one);
  return told.map((fact) => ({ ...fact, text: withLengths(fact.text, one, say) }));
}

/** Where a case is and what goes on next, as far as asked, in a few words: "Slab on the ground. Next: thin paint." */
export function inShort(
  { site, zone }: Case,
  ids: readonly ('element' | 'finish')[],
  say: Say,
): string {
  const asked = questionWords(say);
  const parts = {
    element: `${asked.element.choices[site.element].name}.`,
    finish: `Next: ${lowered(asked.finish.choices[zone.finish].name)}.`,
  };
  return ids.map((id) => parts[id]).join(' ');
}

function withLengths(text: string, { site, zone }: Case, say: Say): string {
  const length = (value: number | 'unknown' | undefined) =>
    typeof value === 'number' ? say.length(value) : '';
  return text
    .replaceAll('{depth}', length(zone.depthMm))
    .replaceAll('{thickness}', length(site.thickness))
    .replaceAll('{grade}', zone.makerProfile === undefined ? '' : say.csp(zone.makerProfile))
    .replaceAll('{border}', zone.border === undefined ? '' : say.distance(zone.border))
    .replaceAll('{area}', zone.area === 'unknown' ? '' : say.area(zone.area));
}

/** What the data sheet asks for, where there is one. */
function sheetOf({ makerProfile, makerMoisture }: Case['zone']): Told[] {
  if (makerProfile === undefined || makerMoisture === undefined) return [];
  const moisture = makerMoisture === 'damp' ? 'a damp face with no water on it' : 'a dry face';
  return [
    {
      by: 'owner',
      about: ['makerProfile', 'makerMoisture'],
      text: `Its data sheet asks for {grade} or rougher, and for ${moisture}.`,
    },
  ];
}

/** What stands at its edge, where somebody has looked. */
function borderOf({ border }: Case['zone']): Told[] {
  if (border === undefined) return [];
  const text =
    border === 0
      ? 'Nothing stands upright at its edges.'
      : 'A wall stands along {border} of its edge.';
  return [{ by: 'see', about: ['borderLength'], text }];
}

/** The facts of a generated case: every answer by the sign it shows, put in one of a few ways. */
export function toldByTruth({ id, site, zone }: Case): readonly Told[] {
  const way = (question: string, ways: readonly string[]) =>
    ways[seedOf(`${id} ${question}`) % ways.length] ?? '';
  const sign = <Q extends OneQuestion & keyof typeof signs>(
    question: Q,
    choice: Choice<Q>,
  ): Told => {
    const { by, ways } = signs[question][
      choice as keyof (typeof signs)[Q]
    ] as (typeof signs)['steel']['exposed'];
    return { by, about: [question], text: way(question, ways) };
  };
  const depth =
    zone.depthMm !== undefined
      ? way('depth', ['At its worst it goes {depth} deep.', 'The deepest spot measures {depth}.'])
      : zone.depth === 'through'
        ? 'You reach what is behind it: it goes right through.'
        : way('depth', ['A tape finds no depth to measure.', 'There is no depth to measure.']);
  const thickness =
    site.thickness === 'unknown'
      ? 'Nobody knows how thick it is, and no edge shows.'
      : way('thickness', ['It is {thickness} thick.', 'At a free edge it is {thickness} thick.']);
  const many = <C extends Warning | Contaminant>(
    about: 'warnings' | 'contamination',
    all: readonly C[],
    words: Readonly<Record<C, Pick<Spoken, 'by' | 'text'>>>,
  ): Told[] => all.map((each) => ({ ...words[each], about: [about] }));
  return [
    {
      by: 'see',
      about: ['element', 'setting', 'area'],
      text: `${elementPlaces[site.element].stands}, ${settingPlaces[site.setting]}: {area} of it.`,
    },
    ...many('warnings', site.warnings, warningSigns),
    sign('looseness', zone.looseness),
    { by: 'scrape', about: ['depth'], text: depth },
    sign('texture', zone.texture),
    ...(zone.contamination.length
      ? many('contamination', zone.contamination, contaminantSigns)
      : [
          {
            by: 'drop' as const,
            about: ['contamination' as const],
            text: way('clean', [
              'A drop of water soaks in. Nothing is on it.',
              'Water soaks in at once. Nothing is on it.',
            ]),
          },
        ]),
    sign('cracks', zone.cracks),
    sign('steel', zone.steel),
    ...(zone.barLoss ? [sign('barLoss', zone.barLoss)] : []),
    { by: 'owner', about: ['thickness'], text: thickness },
    sign('finish', zone.finish),
    ...sheetOf(zone),
    ...borderOf(zone),
    sign('salts', site.salts),
    sign('freezeThaw', site.freezeThaw),
  ];
}
