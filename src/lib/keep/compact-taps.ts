import type { Survey, TapMark } from '$lib/answers/survey';

/**
 * The taps of a drawing in few characters, for a link. A grid of soundings is hundreds of marks
 * that differ by the same step, so a run of taps stands as one flat list: for each tap how far it
 * lies from the one before, mm, and how it sounded. The order of the marks stays.
 */
const first = [0, 0] as const;
const perTap = 3;
const mostSound = 5;

/** How a tap sounded: 1 rings, plus 2 tapped again, plus 4 said not to have been. */
const soundOf = ({ rings, again }: TapMark): number =>
  (rings ? 1 : 0) + (again === undefined ? 0 : again ? 2 : 4);

/** The drawing with its runs of taps folded. Places that are no whole millimetres stay as they are. */
export function foldTaps(survey: Survey): unknown {
  if (!survey.marks) return survey;
  const folded: unknown[] = [];
  let run: number[] | undefined;
  let before: readonly [number, number] = first;
  for (const mark of survey.marks) {
    if (mark.kind !== 'tap' || !mark.at.every(Number.isSafeInteger)) {
      folded.push(mark);
      run = undefined;
      continue;
    }
    if (!run) {
      run = [];
      folded.push(run);
      before = first;
    }
    run.push(mark.at[0] - before[0], mark.at[1] - before[1], soundOf(mark));
    before = mark.at;
  }
  return { ...survey, marks: folded };
}

/** The drawing with every folded run spelled out; what is no such run is left for the parser to refuse. */
export function unfoldTaps(survey: unknown): unknown {
  if (typeof survey !== 'object' || survey === null || !('marks' in survey)) return survey;
  const { marks } = survey;
  if (!Array.isArray(marks)) return survey;
  return { ...survey, marks: marks.flatMap((mark) => (isRun(mark) ? tapsOf(mark) : [mark])) };
}

const isRun = (mark: unknown): mark is readonly number[] =>
  Array.isArray(mark) &&
  mark.length % perTap === 0 &&
  mark.every(
    (value, at) =>
      Number.isSafeInteger(value) && (at % perTap < 2 || (value >= 0 && value <= mostSound)),
  );

function tapsOf(run: readonly number[]): unknown[] {
  const taps: unknown[] = [];
  let [x, y]: readonly [number, number] = first;
  for (let at = 0; at < run.length; at += perTap) {
    x += run[at] as number;
    y += run[at + 1] as number;
    const sound = run[at + 2] as number;
    taps.push({
      kind: 'tap',
      at: [x, y],
      rings: sound % 2 === 1,
      ...(sound >= 2 && { again: sound < 4 }),
    });
  }
  return taps;
}
