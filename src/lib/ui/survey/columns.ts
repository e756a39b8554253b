import { surveyWords as words } from '$words/survey';
import { rangeOf, type FigureId } from '$shared/figures';

/** What is typed in one field of a row of numbers. */
export type Column = {
  readonly label: string;
  /** It may stay empty. */
  readonly optional?: boolean;
  /** It may be below zero, which a keyboard for decimals cannot type. */
  readonly signed?: boolean;
} & (
  | { readonly kind: 'mm'; readonly limit: FigureId }
  | { readonly kind: 'degree' }
  | { readonly kind: 'count'; readonly least: number; readonly most: number }
);

const place = (label: string): Column => ({ label, kind: 'mm', limit: 'limit.spot-place' });
const side = (label: string, limit: FigureId): Column => ({ label, kind: 'mm', limit });
const [least, most] = rangeOf('limit.steps');

export const sizeColumns: readonly Column[] = [
  side(words.length, 'limit.slab-side'),
  side(words.width, 'limit.slab-side'),
];
export const placeColumns: readonly Column[] = [place(words.x), place(words.y)];
export const sideColumns: readonly Column[] = [
  side(words.side, 'limit.mark-side'),
  { label: words.turn, kind: 'degree', signed: true },
];
export const stepColumns: readonly Column[] = [
  { label: words.count, kind: 'count', least, most },
  side(words.tread, 'limit.step-side'),
  side(words.riser, 'limit.step-side'),
  side(words.stepWidth, 'limit.slab-side'),
];
export const boxColumns: readonly Column[] = [
  ...placeColumns,
  side(words.length, 'limit.mark-side'),
  side(words.width, 'limit.mark-side'),
];
export const spotColumns: readonly Column[] = [
  ...boxColumns,
  { ...side(words.depthMaybe, 'limit.depth'), optional: true },
];
export const jointColumns: readonly Column[] = [
  side(words.joints.along, 'limit.slab-side'),
  { ...side(words.joints.across, 'limit.slab-side') },
];
export const laneColumns: readonly Column[] = [side(words.sound.lane, 'limit.grid-spacing')];
export const spacingColumns: readonly Column[] = [side(words.sound.spacing, 'limit.grid-spacing')];
