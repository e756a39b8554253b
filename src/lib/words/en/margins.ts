import { depthBands } from '$lib/answers/depth';
import type { DepthBand, MakerProfile } from '$lib/answers/questions';
import type { Margin } from '$lib/advice/zone-advice';
import type { QuestionsWords, Say } from '$lib/words/types';
import type { StepId } from '$shared/methods';
import { methodNames } from './names';

const cleaningNames: Readonly<Partial<Record<StepId, string>>> = {
  degrease: 'degreasing',
  'strip-growth': 'taking off growth',
  'strip-coating': 'scraping off the coating',
};

/** A change of one answer in "tick all that apply" is named by its choice, taken away with this before it. */
const without = 'no ';

/** What would change the advice: the smallest change of one answer, and what it would come to. */
export function marginSentence(margin: Margin, say: Say, questions: QuestionsWords): string {
  const stop = margin.stopsFrom ? `; from ${say.edge(margin.stopsFrom)} it would be to stop` : '';
  return `${conditionOf(margin, say, questions)}, ${endingOf(margin)}${firstOf(margin)}${stop}.`;
}

/** The same for what a data sheet would change: it needs the words of that question alone. */
export const sheetSentence = (
  margin: Margin,
  questions: Pick<QuestionsWords, 'makerProfile'>,
): string => `${sheetCondition(margin, questions)}, ${endingOf(margin)}.`;

const sheetCondition = (
  { to, reach }: Margin,
  questions: Pick<QuestionsWords, 'makerProfile'>,
): string =>
  `If the data sheet asked for ${reach === 'at-most' ? 'no more than' : 'at least'} ${questions.makerProfile.choices[to as MakerProfile].name}`;

function conditionOf(margin: Margin, say: Say, questions: QuestionsWords): string {
  const { question, from, to, atMm } = margin;
  const names = questions[question].choices as Readonly<Record<string, { name: string }>>;
  const name = (choice: string) => `“${names[choice]?.name ?? choice}”`;
  if (question === 'depth' && atMm !== undefined && to !== 'through')
    return depthCondition(margin, atMm, say);
  if (question === 'makerProfile') return sheetCondition(margin, questions);
  if (from.startsWith(without)) return `If ${name(to)} were true as well`;
  if (to.startsWith(without)) return `If ${name(from)} were not true`;
  return `If the answer to “${questions[question].ask}” were ${name(to)} instead of ${name(from)}`;
}

/** Which side the edge itself belongs to differs from edge to edge; both of these hold for all. */
function depthCondition({ from, to, ...margin }: Margin, at: number, say: Say): string {
  const place = (band: string) => depthBands.indexOf(band as DepthBand);
  const deeper = margin.deeper ?? place(to) >= place(from);
  return `If it were ${deeper ? 'more' : 'less'} than ${say.edge(at)} deep`;
}

/** What lies on it comes off before the method. */
const firstOf = ({ first }: Margin): string =>
  first ? `, after ${cleaningNames[first] ?? ''}` : '';

function endingOf({ verdict, method }: Margin): string {
  const named = method && methodNames[method];
  if (verdict === 'stop') return 'the answer would be to stop';
  if (verdict === 'prepare') return `the method would be ${named ?? 'another'}`;
  return named
    ? `something would have to be found out first, and the method would then be ${named}`
    : 'something would have to be found out first';
}
