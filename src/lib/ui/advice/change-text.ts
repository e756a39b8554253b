import { depthBands } from '$lib/answers/depth';
import type { DepthBand } from '$lib/answers/questions';
import type { Margin } from '$lib/advice/zone-advice';
import { choiceWords } from '$lib/ui/speak-answer';
import { advicePageWords as labels } from '$words/ui/advice';
import type { QuestionsWords, Say } from '$lib/words/types';

/** A changed answer in a few words: "Depth from 6 mm", "Cracks: Crumbling edges", "Oil: no". */
export function changeText(
  change: Pick<Margin, 'question' | 'from' | 'to' | 'atMm' | 'reach'>,
  /** What was measured, mm, where it was. */
  measured: number | null,
  words: QuestionsWords,
  say: Say,
): string {
  const { question, from, to, atMm, reach } = change;
  if (question === 'makerProfile' && reach)
    return labels.marginSheet(choiceWords(words, question, to).name, reach === 'at-most');
  if (atMm !== undefined && to !== 'through') {
    const place = (band: string) => depthBands.indexOf(band as DepthBand);
    const deeper = from === to && measured !== null ? atMm >= measured : place(to) >= place(from);
    return labels.marginAt(words[question].short, say.edge(atMm), deeper);
  }
  const not = to.startsWith('no ');
  const name = choiceWords(words, question, not ? to.slice(3) : to).name;
  return labels.marginTo(words[question].short, not ? labels.without(name) : name);
}
