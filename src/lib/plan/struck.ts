import type { FigureId, OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { figureTerm, product, times, together, type Amount, type Term } from './amount';
import type { Quantities } from './quantities';
import type { ZoneWork } from './zone-work';

/** Metres as answered; missing says which question to ask. */
export const metres = (
  what: Term['what'],
  question: 'crackLength' | 'borderLength',
  value: number | 'unknown' | undefined,
): Amount =>
  value === undefined || value === 'unknown'
    ? { missing: [question], unit: 'm' }
    : product('m', [{ what, span: [value, value], unit: 'm' }]);

/** Steps that strike the whole zone. */
const strikesAll: readonly StepId[] = ['scarify', 'needle-scale'];

/** What hammers have struck: ground by the m2, and cracks and borders by the m. */
export function struckOf(
  step: StepId,
  work: ZoneWork,
  quantities: Quantities,
): { readonly ground: Amount | null; readonly lengths: readonly Amount[] } {
  const all = step === 'blast-clean' && work.steps.some((each) => strikesAll.includes(each));
  const rough = step === 'blast-clean' && work.tools.get('edge-work')?.tool === 'needle-scaler';
  const lengths = [
    ...(quantities['crack-chased'] ? [quantities['crack-chased']] : []),
    ...(rough ? [metres('border-length', 'borderLength', work.zone.answers.borderLength)] : []),
  ];
  const ground = all || !lengths.length ? quantities.area : null;
  return { ground: quantities['patch-area'] ?? ground, lengths };
}

/** Along a crack or a border the work is a strip: by the metre, never over the whole zone. */
const alongRates: Readonly<Partial<Record<StepId, FigureId>>> = {
  'blast-clean': 'rate.blast-strip',
  're-sound': 'rate.tap-crack',
};

export function struckHours(
  step: StepId,
  work: ZoneWork,
  quantities: Quantities,
  over: Term,
  own?: OwnFigures,
): Amount | null {
  const { ground, lengths } = struckOf(step, work, quantities);
  const along = alongRates[step];
  return together('h', [
    ground && times('h', ground, over),
    ...(along
      ? lengths.map((length) => times('h', length, figureTerm('rate', along, own, 'over')))
      : []),
  ]);
}
