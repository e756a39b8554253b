import { maskOfTask } from '$lib/safety/masks';
import type { Ears } from '$lib/safety/ears';
import type { SafetyOfWorker } from '$lib/safety/safety-of';
import type { SilicaOfTask, SilicaWay } from '$lib/safety/silica';
import { turnWith, type Turn } from '$lib/safety/person-cards';
import type { Protector } from '$lib/safety/protector';
import type { Region } from '$lib/safety/types';
import type { VibrationOfTask } from '$lib/safety/vibration';
import { capital } from '$lib/words/by-language';
import {
  briefingWords as words,
  cardWords as card,
  controlInShort,
  hoursInShort,
  minutesInShort,
  toolWords,
} from '$words/safety';
import type { Formatter } from '$lib/words/types';

const way = ({ controls }: SilicaWay): string =>
  [...new Set(controls.map((control) => controlInShort[control]))].join(' + ');

/** The controls of one task for a table: all ways the table allows, in a few words. */
export function controlsInShort(silica: SilicaOfTask): string {
  if (silica.kind === 'row') return silica.ways.map(way).join(`; ${words.or} `);
  if (silica.kind === 'not-in-table')
    return silica.tool === 'blast-nozzle' ? words.barrier : words.collector;
  return silica.kind === 'housekeeping' ? controlInShort['vacuum-between-passes'] : words.none;
}

/** The mask of one task: the lightest that one of the ways asks for is told with its way's place in the list. */
export function maskInShort(silica: SilicaOfTask, region: Region): string {
  const { factor, hood, by } = maskOfTask(silica, region);
  if (by === 'begin') return hood ? words.hood(factor) : words.begin(factor);
  if (by === 'country') return words.factor(factor);
  if (silica.kind !== 'row') return words.none;
  const factors = silica.ways.map(({ protection }) =>
    protection > 0 ? words.factor(protection) : region === 'us' ? words.none : words.noneByTable,
  );
  return new Set(factors).size === 1 ? (factors[0] ?? words.none) : factors.join(`; ${words.or} `);
}

/** A turn before the action value as the tool usually shakes, as long as a crew can keep; else what there is in all. */
export function turnInShort(say: Formatter, task: VibrationOfTask): string {
  const turn = turnWith(task);
  if (!turn) return words.noTurn;
  if (turn.hours === 'unknown') return words.ask;
  return turn.inAll ? words.inAll(minutesInShort(say, turn.hours * 60)) : say.hours(turn.hours);
}

/** Everybody's turns on a card: tool by tool, those there is too little of to take turns with last. */
export function turnsInShort(say: Formatter, turns: readonly Turn[]): string {
  const named = (some: readonly Turn[]) => say.list(some.map(({ tool }) => toolWords[tool].name));
  const timed = turns.flatMap(({ tool, hours, inAll, over }) =>
    typeof hours === 'number' && !inAll && !over
      ? [`${toolWords[tool].name} ${say.hours(hours)}`]
      : [],
  );
  const tooLong = turns.flatMap(({ tool, over }) =>
    over
      ? [
          card.tooLong(
            capital(toolWords[tool].name),
            hoursInShort(say, over.planned),
            minutesInShort(say, over.minutes.action),
            minutesInShort(say, over.minutes.limit),
          ),
        ]
      : [],
  );
  const short = turns.flatMap(({ tool, hours, inAll, over }) =>
    typeof hours === 'number' && inAll && !over
      ? [card.inAll(capital(toolWords[tool].name), minutesInShort(say, hours * 60))]
      : [],
  );
  const unknown = turns.filter(({ hours }) => hours === 'unknown');
  return [
    ...tooLong,
    ...(tooLong.length ? [card.shareIt] : []),
    ...(timed.length ? [capital(card.turns(say.list(timed)))] : []),
    ...short,
    ...(unknown.length ? [card.askMaker(named(unknown))] : []),
  ].join(' ');
}

/** What somebody wears on the ears for the whole day. */
export function earsInShort(
  say: Formatter,
  { needed, rating, beyondOne }: Protector,
  ears: Ears | null,
): string {
  if (needed.high <= 0) return needed.open ? card.earsUnknown : card.earsNone;
  if (ears?.by === 'neither') return card.earsTooLittle;
  if (ears?.by === 'both') return card.earsBoth;
  if (beyondOne) return card.earsBothAtWorst;
  const rated = say.number(Math.ceil(rating.high - 1e-9));
  return needed.open ? card.earsAtLeast(rated) : card.ears(rated);
}

/** What is run against dust and worn against it: the controls of the tools, then the mask of the day. */
export function lungsInShort(
  say: Formatter,
  { silica, mask }: SafetyOfWorker,
  region: Region,
): string {
  const controls = [
    ...new Set(
      silica.tasks.filter(({ kind }) => kind === 'row').map((task) => controlsInShort(task)),
    ),
  ];
  // Named where others of their tools ask for none, so that card and list say the same.
  const asks = (task: SilicaOfTask) => maskOfTask(task, region).factor > 0;
  const dusty = silica.tasks.filter(({ kind }) => kind === 'row' || kind === 'not-in-table');
  const tools = [...new Set(dusty.filter(asks).map(({ tool }) => toolWords[tool].name))];
  const some = !mask.besideBlast && dusty.some((task) => !asks(task));
  const measured = mask.measure.map((tool) => toolWords[tool].name);
  return [
    ...(controls.length ? [`${capital(controls.join(', '))}.`] : []),
    ...(mask.hood ? [card.hood] : []),
    mask.factor > 0 ? card.mask(mask.factor, some ? say.list(tools) : '') : card.noMask,
    ...(mask.besideBlast ? [card.besideBlast] : []),
    ...(mask.besideDust
      ? [
          card.besideDust(
            say.list(mask.besideDust.tools.map((tool) => toolWords[tool].name)),
            mask.besideDust.factor,
          ),
        ]
      : []),
    ...(measured.length ? [card.begin(measured.join(', '))] : []),
  ].join(' ');
}

export const firstSentence = (text: string): string => /^.*?[.!?](?= |$)/.exec(text)?.[0] ?? text;
