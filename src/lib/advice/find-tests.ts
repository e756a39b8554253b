import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { Contaminant, QuestionId } from '$lib/answers/questions';
import { openMany } from './completions';
import type { Branch } from './find-next';
import type { Survey } from './survey';
import type { TestId } from './types';

/** The cheapest field test that settles each question. Source: common practice, no published source. */
const testFor: Readonly<
  Record<Exclude<QuestionId, 'cracks' | 'warnings' | 'contamination'>, TestId>
> = {
  element: 'look-round',
  setting: 'look-round',
  salts: 'ask-owner',
  freezeThaw: 'local-weather',
  thickness: 'measure-thickness',
  depth: 'measure-depth',
  looseness: 'hammer-tap',
  texture: 'look-close',
  crackLength: 'measure-area',
  steel: 'look-at-steel',
  barLoss: 'measure-bar',
  barCover: 'measure-bar',
  barDiameter: 'measure-bar',
  barSpacing: 'measure-bar',
  barLength: 'measure-bar',
  finish: 'ask-owner',
  makerProfile: 'ask-maker',
  makerMoisture: 'ask-maker',
  area: 'measure-area',
  borderLength: 'measure-area',
};

/**
 * The tests that settle a question here. What cannot be seen or heard has a test of its own, and no
 * test is named for what it cannot tell.
 */
export function testsFor(
  question: QuestionId,
  site: SiteAnswers,
  zone: ZoneAnswers,
): readonly TestId[] {
  switch (question) {
    case 'cracks':
      return !zone.cracks || zone.cracks.includes('moving')
        ? ['tap-crack', 'crack-gauge']
        : ['tap-crack'];
    case 'warnings':
      return openMany(question, site.warnings).maybe.includes(oldCoating)
        ? ['look-round', 'lead-asbestos-test']
        : ['look-round'];
    case 'contamination': {
      const { maybe } = openMany(question, zone.contamination);
      return [
        ...(maybe.some(beads) ? (['water-drop'] as const) : []),
        ...(maybe.some((each) => each !== 'oil') ? (['look-close'] as const) : []),
      ];
    }
    default:
      return [testFor[question]];
  }
}

/** What keeps a drop of water round. */
const beads = (on: Contaminant): boolean => on === 'oil' || on === 'thin-coating';
const oldCoating = 'old-coating-or-adhesive';

/**
 * What is left after a test that cannot tell every choice of its question from every other; null
 * where it can. A tap tells how a crack's edges hold, never whether it moves: that is watched. A
 * look round never tells what is in an old coating: a laboratory does, and nothing else. A water drop
 * stays a bead on oil and on a film, a clear sealer too, which no look finds.
 * Source: common practice, no published source.
 */
export function partedBy(
  survey: Survey,
  question: QuestionId,
  test: TestId,
): readonly Branch[] | null {
  const { possibilities, warningSets } = survey;
  if (question === 'warnings')
    return parted(
      survey,
      warningSets.map((set) => ({
        seen: set.includes(oldCoating),
        rest: set.filter((each) => each !== oldCoating).join(),
      })),
      test === 'lead-asbestos-test',
      (tally, indices) => indices.some((index) => tally.warnings.has(index)),
    );
  if (question === 'contamination')
    return parted(
      survey,
      possibilities.contamination.map(({ value }) => ({
        seen: test === 'water-drop' ? value.some(beads) : value.includes('oil'),
        rest: value.filter((each) => each !== 'oil').join(),
      })),
      test === 'water-drop',
      (tally, indices) => indices.some((index) => (tally.seen.contamination & (1 << index)) !== 0),
    );
  const moving = possibilities.cracks.findIndex(({ value }) => value === 'moving');
  if (question !== 'cracks' || moving < 0) return null;
  const others = possibilities.cracks.flatMap((_, index) => (index === moving ? [] : [index]));
  const left = (indices: readonly number[]) =>
    survey.tallies.filter(({ seen }) => indices.some((index) => (seen.cracks & (1 << index)) !== 0))
      .length;
  return test === 'crack-gauge'
    ? [
        { outcomes: left([moving]), weight: 1 },
        { outcomes: left(others), weight: others.length },
      ]
    : others.map((index) => ({ outcomes: left([index, moving]), weight: 1 }));
}

/** Possibilities parted by the one thing that a test sees, or by all but that. */
function parted(
  { tallies }: Survey,
  possibilities: readonly { readonly seen: boolean; readonly rest: string }[],
  bySeen: boolean,
  reaches: (tally: Survey['tallies'][number], indices: readonly number[]) => boolean,
): Branch[] {
  const groups = new Map<string, number[]>();
  possibilities.forEach(({ seen, rest }, index) => {
    const key = bySeen ? `${seen}` : rest;
    groups.set(key, [...(groups.get(key) ?? []), index]);
  });
  return [...groups.values()].map((indices) => ({
    outcomes: tallies.filter((tally) => reaches(tally, indices)).length,
    weight: indices.length,
  }));
}
