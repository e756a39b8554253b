import { rangeOf, type OwnFigures } from '$shared/figures';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import {
  choicesOf,
  type Finish,
  type MakerMoisture,
  type MakerProfile,
} from '$lib/answers/questions';
import { isFloor } from './place';
import type { SettledSite, SettledZone, Target } from './types';

/**
 * What goes on next asks for: its maker's data sheet where the reader has it in hand, else the
 * usual table. The sheet outranks the table in everything that follows: the choice of method, the
 * bruised skin, the last wash, drying, checks, target.
 */

/**
 * The least roughness a sheet asks for, from the grades still possible: the roughest of them, since
 * that one meets all. Undefined without a sheet, or where there may be none.
 */
export function gradeOf(answer: readonly MakerProfile[] | undefined): number | undefined {
  if (!answer?.length || answer.includes('no-sheet')) return undefined;
  return Math.max(...answer.map((grade) => Number(grade.slice('csp-'.length))));
}

/** What moisture a sheet asks for; undefined without a sheet, or where it may say either. */
export function sheetMoisture(
  answer: readonly MakerMoisture[] | undefined,
): 'damp' | 'dry' | undefined {
  const [only, ...more] = answer ?? [];
  return only && !more.length && only !== 'no-sheet' ? only : undefined;
}

const profileFigure = {
  sealer: 'csp.needs.sealer',
  'thin-film': 'csp.needs.thin-film',
  'build-coat': 'csp.needs.build-coat',
  'self-levelling': 'csp.needs.self-levelling',
  'thin-overlay': 'csp.needs.thin-overlay',
  overlay: 'csp.needs.overlay',
  rebuild: 'csp.needs.rebuild',
} as const;

/** The figure that says which profile a finish needs; null while the finish is undecided. */
export const profileFigureOf = (finish: Finish) =>
  finish === 'undecided' ? null : profileFigure[finish];

/** The profile wanted, CSP lowest and highest; null where neither sheet nor table says. */
export function profileWanted(
  { finish, makerProfile }: Pick<SettledZone, 'finish' | 'makerProfile'>,
  own?: OwnFigures,
): readonly [number, number] | null {
  const figure = profileFigureOf(finish);
  // Nobody has the sheet of what is not decided yet.
  if (!figure) return null;
  const table = rangeOf(figure, own);
  if (makerProfile === undefined) return table;
  return [makerProfile, Math.max(makerProfile, table[1])];
}

/**
 * What a finish wants under it when no sheet says. Cement takes its water from a dry surface, so it
 * wants it damp; what is not cement lets go of a wet one.
 * Source: common practice, no published source.
 */
const moisture: Readonly<Record<Finish, Target['moisture']>> = {
  sealer: 'dry',
  'thin-film': 'dry',
  'build-coat': 'dry',
  'self-levelling': 'dry',
  'thin-overlay': 'saturated-surface-dry',
  overlay: 'saturated-surface-dry',
  rebuild: 'saturated-surface-dry',
  undecided: 'ask-maker',
};

/** What goes on wants the surface damp or dry. */
export const moistureOf = ({
  finish,
  makerMoisture,
}: Pick<SettledZone, 'finish' | 'makerMoisture'>): Target['moisture'] =>
  finish === 'undecided' || !makerMoisture
    ? moisture[finish]
    : makerMoisture === 'damp'
      ? 'saturated-surface-dry'
      : 'dry';

const sealing: ReadonlySet<Finish> = new Set<Finish>(['build-coat', 'self-levelling']);

/**
 * Whether what goes on closes the floor of a room, so that its moisture is read by probes in holes
 * and not under a sheet alone. What wants it damp is not asked here.
 * Source: common practice, no published source.
 */
export const isProbed = (
  { element, setting }: Pick<SettledSite, 'element' | 'setting'>,
  { finish }: Pick<SettledZone, 'finish'>,
): boolean => sealing.has(finish) && setting === 'indoors' && isFloor(element);

/** The same while answers are open: the longer test is reckoned with where it may be called for. */
export const mayBeProbed = (site: SiteAnswers, { finish }: ZoneAnswers): boolean =>
  (site.element ?? choicesOf('element')).some((element) =>
    (site.setting ?? choicesOf('setting')).some((setting) =>
      finish?.some((each) => isProbed({ element, setting }, { finish: each })),
    ),
  );
