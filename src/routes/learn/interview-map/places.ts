import type { SkipReason } from '$lib/advice/relevance';
import type { InterviewPlace } from '$lib/interview/context';
import type { InterviewMap } from '$lib/interview/map';
import { skipWords } from '$words/ui/question';

/** A state of the machine, as a box. */
export type MapState = InterviewPlace | 'next';

/** Measures of the sheet, in its own units; a phone shows one unit as one pixel. */
export const sheet = { width: 360, left: 6, box: 168, height: 44, pitch: 84, top: 4 } as const;
const lineHeight = 14;
const lettersInLine = 22;
/** Heavier letters than beside the boxes. */
const lettersInBox = 20;

const firstSentence = (text: string) => text.slice(0, text.indexOf('.') + 1);

/** The name in a box, in as many lines as it needs. */
export const nameLines = (name: string): readonly string[] => broken(name, lettersInBox);

/** Breaks a sentence into lines; by itself, such as fit between the boxes and the lines at the side. */
function broken(text: string, letters = lettersInLine): string[] {
  const lines = [''];
  for (const word of text.split(' ')) {
    const last = lines.at(-1) ?? '';
    if (`${last} ${word}`.trim().length <= letters)
      lines[lines.length - 1] = `${last} ${word}`.trim();
    else lines.push(word);
  }
  return lines;
}

/** Where everything stands on the sheet: boxes from top to bottom, jumps in lanes at the right. */
export function layOut({ questions, arrows }: InterviewMap) {
  const states: readonly MapState[] = ['next', ...questions, 'done'];
  const rowOf = (state: MapState) => states.indexOf(state);
  const middle = (state: MapState) => sheet.top + rowOf(state) * sheet.pitch + sheet.height / 2;
  const right = sheet.left + sheet.box;

  const jumps = new Map<string, { from: MapState; to: MapState; why: SkipReason[] }>();
  for (const { from, to, why } of arrows) {
    if (!why) continue;
    const jump = jumps.get(`${from} ${to}`) ?? { from, to, why: [] };
    jump.why.push(why);
    jumps.set(`${from} ${to}`, jump);
  }
  // The longest jump runs furthest out, and comes in lowest, so that no two lines cross.
  const span = ({ from, to }: { from: MapState; to: MapState }) => rowOf(to) - rowOf(from);
  const byLength = [...jumps.values()].sort((one, other) => span(other) - span(one));
  const into = (to: MapState) => byLength.filter((jump) => jump.to === to);
  /** Lines of text beside a box so far: what two jumps out of one box say stands below one another. */
  const said = new Map<MapState, readonly string[]>();
  return {
    height: sheet.top + states.length * sheet.pitch - (sheet.pitch - sheet.height) + 4,
    boxes: states.map((state) => ({ state, y: middle(state) - sheet.height / 2 })),
    steps: [
      { from: 'next' as MapState, to: questions[0] as MapState },
      ...arrows.filter(({ why }) => why === null),
    ].map(({ from, to }) => {
      const [start, end] = [middle(from) + sheet.height / 2, middle(to) - sheet.height / 2];
      const x = sheet.left + sheet.box / 2;
      return { from, to, path: `M${x} ${start}V${end - 2}m-5-7l5 7 5-7` };
    }),
    jumps: byLength.map((jump) => {
      const kin = into(jump.to);
      const long = kin.length > 1;
      const lane = long ? 354 - kin.indexOf(jump) * 8 : 332;
      const leaves = middle(jump.from) + 5;
      const arrives = middle(jump.to) - 12 + (long ? (kin.length - 1 - kin.indexOf(jump)) * 8 : 0);
      const above = (said.get(jump.from) ?? []).length;
      // Two jumps for one reason say it once.
      const lines = jump.why
        .flatMap((why) => broken(firstSentence(skipWords[why])))
        .filter((line) => !said.get(jump.from)?.includes(line));
      said.set(jump.from, [...(said.get(jump.from) ?? []), ...lines]);
      return {
        from: jump.from,
        to: jump.to,
        why: jump.why,
        path: `M${right} ${leaves}H${lane}V${arrives}H${right + 2}`,
        head: `M${right + 9} ${arrives - 5}l-7 5 7 5`,
        lines: lines.map((text, index) => ({
          text,
          x: right + 6,
          y: leaves + (above + index + 1) * lineHeight + 2,
        })),
      };
    }),
  };
}
